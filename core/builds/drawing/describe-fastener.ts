import { sentenceOf } from '../../problem/index.ts'
import { formatShort, inMillimetres } from '../../quantity/index.ts'
import type { EngineSpec, Procedure } from '../../engine/index.ts'
import {
  counts,
  flagProblem,
  nextPull,
  openFlags,
  passName,
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
import { flagsOn } from '../sheet/runs.ts'
import { stampOf, type Stamp } from '../events/stamp.ts'
import { plain, type Description, type DescriptionLine, type DescribedBuild } from './description.ts'

/** A fastener: what it is, and what is asked of it and was done to it in every pass. */
export function describeFastener(build: DescribedBuild, id: string): Description | null {
  const { spec } = build
  const fastener = spec.fasteners.find((each) => each.id === id)
  if (fastener === undefined) return null
  const procedures = spec.procedures.filter((procedure) =>
    procedure.passes.some((_, pass) => asks(procedure, pass, id)),
  )
  return {
    title: `Fastener ${fastener.number}, ${fastener.where}`,
    lines: [
      ...groupLines(build, fastener.group),
      ...procedures.flatMap((procedure) => [
        ...(procedures.length > 1 ? [plain(`${procedure.name}:`)] : []),
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

function groupLines({ spec, entries }: DescribedBuild, id: string): readonly DescriptionLine[] {
  const group = spec.fastenerGroups.find((each) => each.id === id)
  if (group === undefined) return []
  const declared = entries.findLast(
    ({ event }) => event.type === 'fasteners-declared-new' && event.group === id,
  )
  const clamped = `${formatShort(inMillimetres(group.grip), 1)} mm clamped`
  const washer = group.washer ? ', on its washer' : ''
  const what = plain(`${group.name}: ${threadText(group)}, ${clamped}${washer}`)
  if (group.reuse === 'reusable') return [what, plain('May be used again')]
  return [
    what,
    declared === undefined
      ? plain('New each time: may be used once only')
      : { text: 'New each time: declared new', state: 'done', by: stampOf(declared) },
  ]
}

function passLine(
  { state, entries, units }: DescribedBuild,
  procedure: Procedure,
  pass: number,
  id: string,
): DescriptionLine {
  const asked = procedure.passes[pass]!
  const run = state.runs[procedure.id]
  const window = windowOf(asked, id)
  const what = `Pass ${pass + 1}, ${passName[asked.kind]}${window === null ? '' : `: ${targetAndLimits(window, units)}`}`
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
    text: [what, ...doneWords(pull)].join(' · '),
    state: isOpen ? 'flagged' : 'done',
    ...(entry !== undefined && { by: stampOf(entry) }),
  }
}

function doneWords({ reading, verdict, outOfOrder }: Pull): readonly string[] {
  const read = reading === null ? 'done' : `read ${readingText(reading)}`
  const judged = verdict === 'within' || verdict === 'unread' ? [] : [verdictWords[verdict]]
  return [read, ...judged, ...(outOfOrder === null ? [] : [`before its turn: ${outOfOrder}`])]
}

const verdictWords = { under: 'too little', over: 'too much', moved: 'it moved' } as const

function readingText(reading: Reading): string {
  return reading.unit === '°' ? `${reading.value}°` : scaleText(reading)
}

/** What was flagged at it, with the answer where there is one. */
function flagLines(build: DescribedBuild, procedure: Procedure, id: string): readonly DescriptionLine[] {
  const { spec, state, entries } = build
  const run = state.runs[procedure.id]
  if (run === undefined) return []
  const own = entries.filter(({ event }) => 'procedure' in event && event.procedure === procedure.id)
  const onSheet = flagsOn(spec, state, procedure, own)
  return run.flags
    .filter(({ fastener }) => fastener === id)
    .map((flag) => {
      const noted = onSheet.find(({ number }) => number === flag.number)
      return flagLine(spec, procedure, run, flag, noted?.answer ?? noted?.raised)
    })
}

function flagLine(
  spec: EngineSpec,
  procedure: Procedure,
  run: Run,
  flag: Flag,
  by: Stamp | undefined,
): DescriptionLine {
  const said = sentenceOf(flagProblem(spec, procedure, run, flag))
  const stamped = by === undefined ? {} : { by }
  return flag.answer === null
    ? { text: said, state: 'flagged', ...stamped }
    : { text: `${said} · answered: ${flag.answer}`, state: 'done', ...stamped }
}
