import { clearanceText, verdictText, wholeRange } from '../../bearing/index.ts'
import { sentenceOf } from '../../problem/index.ts'
import { formatLength } from '../../quantity/index.ts'
import type { EngineSpec, Fit } from '../../engine/index.ts'
import { bearingAt, type BearingCase } from '../shells/bearing-at.ts'
import { clearanceAt } from '../shells/clearance-at.ts'
import type { Half, ShellChoice } from '../events/events.ts'
import type { ProposedHalf } from '../shells/proposal-at.ts'
import { proposalsFor } from '../shells/proposals.ts'
import { stampOf } from '../events/stamp.ts'
import { halfKey } from '../events/state.ts'
import { plain, type Description, type DescriptionLine, type DescribedBuild } from './description.ts'

const kindWords: Readonly<Record<Fit['kind'], string>> = {
  main: 'Saddle',
  'big-end': 'Big end',
  balance: 'Balance bearing',
}

/** A half of a bearing: its shell and why that one, the clearance, how it lies, and who put it in. */
export function describeHalf(build: DescribedBuild, position: string, half: Half): Description | null {
  const { spec, state } = build
  const fit = fitAt(spec, position)
  if (fit === null) return null
  const bearing = bearingAt(state, fit, position)
  const chosen = state.shells[fit.id]?.find((each) => each.position === position && each.half === half)
  const proposed =
    proposalsFor(spec, state, fit.id).find((each) => each.position === position)?.[half] ?? null
  const shell = chosen ?? proposed
  const grade = fit.grades.find((each) => each.grade === shell?.grade)
  return {
    title: `${kindWords[fit.kind]} ${position}, ${half} half`,
    lines: [
      ...shellLines(chosen, proposed, grade?.pattern, bearing.undersize),
      ...clearanceLines(build, fit, position),
      ...faultLines(bearing),
      ...sizeLines(bearing),
      fittedLine(build, position, half, chosen),
      ...(fit.seating === undefined ? [] : [plain(fit.seating[half])]),
    ],
    ...(grade !== undefined && { grade }),
  }
}

/** A main journal of the crank between the rods. */
export function describeJournal({ spec, state }: DescribedBuild, position: string): Description | null {
  const fit = fitAt(spec, position)
  if (fit === null) return null
  const bearing = bearingAt(state, fit, position)
  const { undersize, measured, marks } = bearing
  return {
    title: `Main journal ${position}`,
    lines: [
      plain(`Mark ${marks.journal ?? 'not noted'}`),
      ...(undersize === null ? [] : [plain(`Ground to ${undersize}`)]),
      ...(measured.journal === null ? [] : [plain(measuredText('Measured', measured.journal))]),
    ],
  }
}

function fitAt(spec: EngineSpec, position: string): Fit | null {
  return spec.fits.find(({ positions }) => positions.includes(position)) ?? null
}

function shellLines(
  chosen: ShellChoice | undefined,
  proposed: ProposedHalf | null,
  pattern: string | undefined,
  undersize: string | null,
): readonly DescriptionLine[] {
  const shell = chosen ?? proposed
  if (shell === null) return [plain('Shell not chosen yet')]
  const size = undersize === null ? '' : `, ${undersize}`
  const what = `${chosen === undefined ? 'Proposed: grade' : 'Grade'} ${shell.grade}${size}, pattern ${pattern ?? 'not known'}`
  const why = chosen?.reason ?? (proposed?.grade === shell.grade ? proposed.reason : null)
  const from =
    shell.label === undefined
      ? null
      : shell.label === null
        ? 'To be ordered'
        : `From the tray: ${shell.label}`
  return [plain(what), ...[why, from].filter((each) => each !== null).map(plain)]
}

function clearanceLines({ state }: DescribedBuild, fit: Fit, position: string): readonly DescriptionLine[] {
  const allowed = `${wholeRange(fit.clearance)} allowed`
  const known = clearanceAt(state, fit, position)
  if (known === null) return [plain(`Oil clearance: ${allowed}`)]
  const text = `Oil clearance ${clearanceText(known.clearance)}, ${verdictText[known.within]}; ${allowed}`
  return [{ text, state: known.within === 'inside' ? 'plain' : 'flagged' }]
}

/** What speaks against the bearing, and what a person decided about it. */
function faultLines(bearing: BearingCase): readonly DescriptionLine[] {
  const { basis, sizeDispute, disagreements, shapeFaults, decision } = bearing
  const isOpen = basis === 'undecided'
  const declared = sizeDispute?.declared ?? 'standard'
  return [
    ...(sizeDispute === null
      ? []
      : [
          { text: sentenceOf(sizeDispute.problem), state: isOpen ? 'flagged' : 'plain' } as const,
          ...(sizeDispute.reason === null ? [] : [plain(`It counts as ${declared}: ${sizeDispute.reason}`)]),
        ]),
    ...disagreements.map((each): DescriptionLine => ({
      text: sentenceOf(each),
      state: isOpen ? 'flagged' : 'plain',
    })),
    ...(decision === null
      ? []
      : [plain(`${decision.by === 'marks' ? 'The marks count' : 'The readings count'}: ${decision.reason}`)]),
    ...shapeFaults.map((each): DescriptionLine => ({ text: sentenceOf(each), state: 'flagged' })),
  ]
}

function sizeLines({ marks, measured }: BearingCase): readonly DescriptionLine[] {
  return [
    plain(`Marks: housing ${marks.housing ?? 'not noted'}, journal ${marks.journal ?? 'not noted'}`),
    ...(measured.bore === null ? [] : [plain(measuredText('Bore measured', measured.bore))]),
    ...(measured.journal === null ? [] : [plain(measuredText('Journal measured', measured.journal))]),
  ]
}

function measuredText(
  what: string,
  { least, most }: Pick<NonNullable<BearingCase['measured']['bore']>, 'least' | 'most'>,
) {
  const from = formatLength(least, 'mm')
  return least === most ? `${what}: ${from}` : `${what}: ${from} to ${formatLength(most, 'mm')}`
}

function fittedLine(
  { state, entries }: DescribedBuild,
  position: string,
  half: Half,
  chosen: ShellChoice | undefined,
): DescriptionLine {
  if (!state.fitted.has(halfKey(position, half)))
    return chosen === undefined ? plain('Not in place') : { text: 'To be fitted', state: 'open' }
  const entry = entries.findLast(
    ({ event }) => event.type === 'half-fitted' && event.position === position && event.half === half,
  )
  return { text: 'In place', state: 'done', ...(entry !== undefined && { by: stampOf(entry) }) }
}
