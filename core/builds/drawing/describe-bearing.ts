import { clearanceText, undersizeCalled, whyIn, wholeRange } from '../../bearing/index.ts'
import { sentenceIn } from '../../problem/index.ts'
import { lengthAmount, type Length } from '../../quantity/index.ts'
import type { Words } from '../../words/index.ts'
import { halfName, type EngineSpec, type Fit, type Pattern } from '../../engine/index.ts'
import { bearingAt, type BearingCase } from '../shells/bearing-at.ts'
import { clearanceAt } from '../shells/clearance-at.ts'
import type { Half, ShellChoice } from '../events/events.ts'
import type { ProposedHalf } from '../shells/proposal-at.ts'
import { proposalsFor } from '../shells/proposals.ts'
import { stampOf } from '../events/stamp.ts'
import { halfKey } from '../events/state.ts'
import { plain, type Description, type DescriptionLine, type DescribedBuild } from './description.ts'

/** A half of a bearing: its shell and why that one, the clearance, how it lies, and who put it in. */
export function describeHalf(build: DescribedBuild, position: string, half: Half): Description | null {
  const { spec, state, words } = build
  const fit = fitAt(spec, position)
  if (fit === null) return null
  const bearing = bearingAt(state, fit, position)
  const chosen = state.shells[fit.id]?.find((each) => each.position === position && each.half === half)
  const proposed =
    proposalsFor(spec, state, fit.id).find((each) => each.position === position)?.[half] ?? null
  const shell = chosen ?? proposed
  const grade = fit.grades.find((each) => each.grade === shell?.grade)
  return {
    title: words.described.half({ bearing: fit.kind, position, half: halfName(fit, half) }),
    lines: [
      ...shellLines(words, chosen, proposed, grade?.pattern, undersizeCalled(fit, bearing.undersize)),
      ...clearanceLines(build, fit, position),
      ...faultLines(words, fit, bearing),
      ...sizeLines(words, bearing),
      fittedLine(build, position, half, chosen),
      ...(fit.seating === undefined ? [] : [plain(fit.seating[half])]),
    ],
    ...(grade !== undefined && { grade }),
  }
}

/** A main journal of the crank between the rods. */
export function describeJournal(
  { spec, state, words }: DescribedBuild,
  position: string,
): Description | null {
  const fit = fitAt(spec, position)
  if (fit === null) return null
  const bearing = bearingAt(state, fit, position)
  const { undersize, measured, marks } = bearing
  const { described } = words
  return {
    title: described.journal({ position }),
    lines: [
      plain(described.mark({ mark: marks.journal })),
      ...(undersize === null
        ? []
        : [plain(described.groundTo({ undersize: undersizeCalled(fit, undersize) }))]),
      ...(measured.journal === null ? [] : [plain(described.measured(sizesIn(words, measured.journal)))]),
    ],
  }
}

function fitAt(spec: EngineSpec, position: string): Fit | null {
  return spec.fits.find(({ positions }) => positions.includes(position)) ?? null
}

function shellLines(
  words: Words,
  chosen: ShellChoice | undefined,
  proposed: ProposedHalf | null,
  pattern: Pattern | undefined,
  undersize: string | null,
): readonly DescriptionLine[] {
  const shell = chosen ?? proposed
  if (shell === null) return [plain(words.described.notChosen)]
  const what = words.described.shell({
    ...{ isChosen: chosen !== undefined, grade: shell.grade, undersize, pattern: pattern ?? null },
  })
  const why = chosen?.reason ?? (proposed?.grade === shell.grade ? whyIn(words, proposed.reason) : null)
  const from =
    shell.label === undefined
      ? null
      : shell.label === null
        ? words.described.toBeOrdered
        : words.described.fromTray({ label: shell.label })
  return [plain(what), ...[why, from].filter((each) => each !== null).map(plain)]
}

function clearanceLines(
  { state, words }: DescribedBuild,
  fit: Fit,
  position: string,
): readonly DescriptionLine[] {
  const limits = wholeRange(words, fit.clearance)
  const known = clearanceAt(state, fit, position)
  if (known === null) return [plain(words.described.clearanceAllowed({ limits }))]
  const text = words.described.clearance({
    clearance: clearanceText(words, known.clearance),
    verdict: words.clearance.verdicts[known.within],
    limits,
  })
  return [{ text, state: known.within === 'inside' ? 'plain' : 'flagged' }]
}

/** What speaks against the bearing, and what a person decided about it. */
function faultLines(words: Words, fit: Fit, bearing: BearingCase): readonly DescriptionLine[] {
  const { basis, sizeDispute, disagreements, shapeFaults, decision } = bearing
  const isOpen = basis === 'undecided'
  const { countsAs, decided } = words.described
  return [
    ...(sizeDispute === null
      ? []
      : [
          { text: sentenceIn(words, sizeDispute.problem), state: isOpen ? 'flagged' : 'plain' } as const,
          ...(sizeDispute.reason === null
            ? []
            : [
                plain(
                  countsAs({
                    size: undersizeCalled(fit, sizeDispute.declared),
                    reason: sizeDispute.reason,
                  }),
                ),
              ]),
        ]),
    ...disagreements.map((each): DescriptionLine => ({
      text: sentenceIn(words, each),
      state: isOpen ? 'flagged' : 'plain',
    })),
    ...(decision === null ? [] : [plain(decided(decision))]),
    ...shapeFaults.map((each): DescriptionLine => ({ text: sentenceIn(words, each), state: 'flagged' })),
  ]
}

function sizeLines(words: Words, { marks, measured }: BearingCase): readonly DescriptionLine[] {
  const { described } = words
  return [
    plain(described.marks(marks)),
    ...(measured.bore === null ? [] : [plain(described.boreMeasured(sizesIn(words, measured.bore)))]),
    ...(measured.journal === null
      ? []
      : [plain(described.journalMeasured(sizesIn(words, measured.journal)))]),
  ]
}

function sizesIn(
  words: Words,
  { least, most }: Pick<NonNullable<BearingCase['measured']['bore']>, 'least' | 'most'>,
) {
  const shown = (length: Length) => words.amounts.amount(lengthAmount(length, 'mm'))
  return { least: shown(least), most: least === most ? null : shown(most) }
}

function fittedLine(
  { state, entries, words: { described } }: DescribedBuild,
  position: string,
  half: Half,
  chosen: ShellChoice | undefined,
): DescriptionLine {
  if (!state.fitted.has(halfKey(position, half)))
    return chosen === undefined ? plain(described.notInPlace) : { text: described.toBeFitted, state: 'open' }
  const entry = entries.findLast(
    ({ event }) => event.type === 'half-fitted' && event.position === position && event.half === half,
  )
  return { text: described.inPlace, state: 'done', ...(entry !== undefined && { by: stampOf(entry) }) }
}
