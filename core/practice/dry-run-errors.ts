import { chartPair, hasChartAt } from '../bearing/index.ts'
import type { BuildCommand, BuildEvent } from '../builds/index.ts'
import { faceOfStep } from '../builds/index.ts'
import type { EngineSpec } from '../engine/index.ts'
import type { Tally } from './round.ts'

/** Whatever was taken back, sent back or flagged. */
const slips: ReadonlySet<BuildEvent['type']> = new Set([
  'half-taken-out',
  'part-taken-out',
  'bead-wiped-off',
  'pull-taken-back',
  'pull-read-again',
  'run-restarted',
  'pass-repeated',
])

/**
 * How a whole build went, by place: each thing that was worked on, with how often a command about it was refused, a reading of
 * it was out of its limits, or it was taken back or begun again, and each half for which somebody chose another shell than the
 * chart has for the marks. In the order of the work.
 */
export function dryRunErrors(
  spec: EngineSpec,
  events: readonly BuildEvent[],
  refused: readonly BuildCommand[],
): Tally {
  const errors = new Map<string, number>()
  const add = (about: string | null, count: number) => {
    if (about !== null) errors.set(about, (errors.get(about) ?? 0) + count)
  }
  for (const event of events) {
    add(placeOf(spec, event), isSlip(event) ? 1 : 0)
    if (event.type === 'shells-chosen') for (const half of againstChart(spec, events, event)) add(half, 1)
  }
  for (const command of refused) add(placeOf(spec, command), 1)
  return [...errors].map(([about, count]) => ({ about, errors: count }))
}

function isSlip(event: BuildEvent): boolean {
  if (event.type === 'fastener-pulled') return event.verdict !== 'within' && event.verdict !== 'unread'
  if (event.type === 'check-answered') return event.verdict === 'not-good'
  return slips.has(event.type)
}

type ShellsChosen = Extract<BuildEvent, { type: 'shells-chosen' }>

/** The halves with a person's own shell where the chart has another one for the marks as they were noted before. */
function againstChart(
  spec: EngineSpec,
  events: readonly BuildEvent[],
  chosen: ShellsChosen,
): readonly string[] {
  const fit = spec.fits.find(({ id }) => id === chosen.fit)
  if (fit === undefined) return []
  const before = events.slice(0, events.indexOf(chosen))
  const marksOf = (part: 'housing' | 'journal') =>
    before.findLast((each) => each.type === 'marks-noted' && each.fit === fit.id && each.part === part)
  const markAt = (part: 'housing' | 'journal', position: string) => {
    const noted = marksOf(part)
    return noted?.type === 'marks-noted' ? noted.marks[fit.positions.indexOf(position)] : undefined
  }
  return chosen.choices.flatMap(({ position, half, grade, by, undersize }) => {
    const [housing, journal] = [markAt('housing', position), markAt('journal', position)]
    if (by !== 'person' || undersize !== undefined || !housing || !journal) return []
    const key = hasChartAt(fit, position) ? chartPair(fit, position, { housing, journal }) : null
    return key === null || key[half] === grade ? [] : [`half/${position}/${half}`]
  })
}

/** The thing that it is about, as the scene names it; null for what is about the build as a whole. */
function placeOf(spec: EngineSpec, record: BuildEvent | BuildCommand): string | null {
  if ('fastener' in record && typeof record.fastener === 'string') return `fastener/${record.fastener}`
  if ('position' in record && 'half' in record) return `half/${record.position}/${record.half}`
  const procedure =
    'procedure' in record ? spec.procedures.find(({ id }) => id === record.procedure) : undefined
  if (procedure !== undefined) return `face/${procedure.face}`
  const step = 'step' in record ? spec.steps.find(({ id }) => id === record.step) : undefined
  return step === undefined ? null : `face/${faceOfStep(spec, step)}`
}
