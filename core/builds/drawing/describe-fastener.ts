import { sentenceIn } from '../../problem/index.ts'
import { lengthAmount, shortLengthAmount } from '../../quantity/index.ts'
import type { Words } from '../../words/index.ts'
import type { EngineSpec, Procedure } from '../../engine/index.ts'
import {
  answerText,
  counts,
  flagProblem,
  isLengthUnit,
  nextPull,
  openFlags,
  plannedIn,
  scaleText,
  targetAndLimits,
  threadText,
  windowOf,
  type Flag,
  type Pull,
  type Reading,
  type Run,
} from '../../tightening/index.ts'
import { flagsOn } from '../sheet/flags.ts'
import { stampOf, type Stamp } from '../events/stamp.ts'
import { plain, type Description, type DescriptionLine, type DescribedBuild } from './description.ts'

/** A fastener: what it is, and what is asked of it and was done to it in every pass. */
export function describeFastener(build: DescribedBuild, id: string): Description | null {
  const { spec, words } = build
  const fastener = spec.fasteners.find((each) => each.id === id)
  if (fastener === undefined) return null
  const procedures = spec.procedures.filter((procedure) =>
    procedure.passes.some((_, pass) => asks(procedure, pass, id)),
  )
  return {
    title: words.described.fastener(fastener),
    lines: [
      ...groupLines(build, fastener.group),
      ...procedures.flatMap((procedure) => [
        ...(procedures.length > 1 ? [plain(words.described.ofProcedure({ procedure: procedure.name }))] : []),
        ...procedure.passes.flatMap((_, pass) =>
          asks(procedure, pass, id) ? [passLine(build, procedure, pass, id)] : [],
        ),
        ...flagLines(build, procedure, id),
      ]),
    ],
  }
}

function asks(procedure: Procedure, pass: number, fastener: string): boolean {
  return plannedIn(procedure, pass).some((planned) => planned.fastener === fastener)
}

function groupLines({ spec, entries, words }: DescribedBuild, id: string): readonly DescriptionLine[] {
  const group = spec.fastenerGroups.find((each) => each.id === id)
  if (group === undefined) return []
  const declared = entries.findLast(
    ({ event }) => event.type === 'fasteners-declared-new' && event.group === id,
  )
  const { described, amounts } = words
  const what = plain(
    described.group({
      ...{ group: group.name, thread: threadText(words, group), hasWasher: group.washer !== undefined },
      grip: amounts.amount(shortLengthAmount(group.grip, 'mm', 1)),
    }),
  )
  if (group.reuse === 'reusable') return [what, plain(described.reusable)]
  return [
    what,
    declared === undefined
      ? plain(described.onceOnly)
      : { text: described.declaredNew, state: 'done', by: stampOf(declared) },
  ]
}

function passLine(
  { state, entries, units, words }: DescribedBuild,
  procedure: Procedure,
  pass: number,
  id: string,
): DescriptionLine {
  const passOfSpec = procedure.passes[pass]!
  const run = state.runs[procedure.id]
  const window = windowOf(passOfSpec, id)
  const what = words.described.pass({
    ...{ pass: pass + 1, kind: words.passes.kinds[passOfSpec.kind] },
    limits: window === null ? null : targetAndLimits(words, window, units),
  })
  const pull = run?.pulls.findLast((each) => each.pass === pass && each.fastener === id && counts(each))
  if (pull === undefined) {
    const next = run === undefined || run.paused !== null ? null : nextPull(procedure, run)
    const isNext = next?.pass === pass && next.fastener === id
    return { text: what, state: isNext ? 'next' : 'open' }
  }
  const entry = entries.findLast(
    ({ event }) =>
      event.type === 'fastener-pulled' && event.procedure === procedure.id && event.pull === pull.number,
  )
  const isOpen = openFlags(run).some((flag) => flag.pull === pull.number && flag.about !== 'problem')
  return {
    text: doneText(words, what, pull),
    state: isOpen ? 'flagged' : 'done',
    ...(entry !== undefined && { by: stampOf(entry) }),
  }
}

function doneText(words: Words, pass: string, pull: Pull): string {
  const { verdict, outOfOrder } = pull
  return words.described.passDone({
    ...{ pass, read: readText(words, pull), beforeTurn: outOfOrder },
    verdict: verdict === 'within' || verdict === 'unread' ? null : verdict,
  })
}

/** What was read, and of a stretch by how much longer that is and at which torque; null where nothing was. */
function readText(words: Words, { reading, stretch, torque }: Pull): string | null {
  if (reading === null) return null
  const { longer, atTorque } = words.sheet.run
  const unit = isLengthUnit(reading.unit) ? reading.unit : 'mm'
  return [
    readingText(words, reading),
    ...(stretch === null ? [] : [longer({ stretch: words.amounts.amount(lengthAmount(stretch, unit)) })]),
    ...(torque === null ? [] : [atTorque({ torque: scaleText(words, torque) })]),
  ].join(', ')
}

function readingText(words: Words, reading: Reading): string {
  return reading.unit === '°' ? `${reading.value}°` : scaleText(words, reading)
}

/** What was flagged at it, with the answer where there is one. */
function flagLines(build: DescribedBuild, procedure: Procedure, id: string): readonly DescriptionLine[] {
  const { spec, state, entries, words } = build
  const run = state.runs[procedure.id]
  if (run === undefined) return []
  const own = entries.filter(({ event }) => 'procedure' in event && event.procedure === procedure.id)
  const onSheet = flagsOn(spec, state, procedure, own)
  return run.flags
    .filter(({ fastener }) => fastener === id)
    .map((flag) => {
      const noted = onSheet.find(({ number }) => number === flag.number)
      return flagLine(words, spec, procedure, run, flag, noted?.answer ?? noted?.raised)
    })
}

function flagLine(
  words: Words,
  spec: EngineSpec,
  procedure: Procedure,
  run: Run,
  flag: Flag,
  by: Stamp | undefined,
): DescriptionLine {
  const flagText = sentenceIn(words, flagProblem(spec, procedure, run, flag))
  const stamped = by === undefined ? {} : { by }
  return flag.answer === null
    ? { text: flagText, state: 'flagged', ...stamped }
    : {
        text: words.described.answered({ flag: flagText, answer: answerText(words, flag.answer) }),
        state: 'done',
        ...stamped,
      }
}
