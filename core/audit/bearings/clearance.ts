import type { Span } from '../../words/index.ts'
import {
  candidatesFor,
  clearanceWith,
  rangeSpan,
  targetOf,
  type Candidate,
  type JudgedClearance,
} from '../../bearing/index.ts'
import type { EngineSpec, Fit } from '../../engine/index.ts'
import { doubt, fault, type Finding } from '../finding.ts'

/**
 * The clearance that the bands promise, worst case, against the limits: cell by cell of a chart, and for the best allowed
 * pair of each two marks where bands decide. Nowhere inside is a fault; inside for most parts but not for all, a doubt.
 */
export function auditClearance({ fits }: EngineSpec): readonly Finding[] {
  return fits.flatMap((fit, index) => {
    const path = `fits[${index}]`
    return [...auditCells(fit, `${path}.chart`), ...auditPairs(fit, path)]
  })
}

function auditCells(fit: Fit, path: string): readonly Finding[] {
  return (fit.chart ?? []).flatMap(({ housing, journal, upper, lower }, index) => {
    const judged = clearanceWith(fit, housing, journal, upper, lower)
    // A mark or grade that is unknown or has no band is reported elsewhere.
    if (!judged.ok) return []
    const facts = { ...factsOf(fit, judged.value), housing, journal, split: fit.split, upper, lower }
    return byVerdict(judged.value, 'chart-misses-limits', 'chart-leaves-limits', facts, `${path}[${index}]`)
  })
}

function auditPairs(fit: Fit, path: string): readonly Finding[] {
  const position = fit.positions.find((each) => !isCharted(fit, each))
  if (position === undefined) return []
  return fit.housing.marks.flatMap(({ mark: housing }) =>
    fit.journal.marks.flatMap(({ mark: journal }) => {
      const bestPair = bestOf(fit, candidatesFor(fit, position, housing, journal))
      if (bestPair === null) return []
      const { upper, lower } = bestPair
      const facts = { ...factsOf(fit, bestPair.judged), housing, journal, split: fit.split, upper, lower }
      return byVerdict(bestPair.judged, 'bands-miss-limits', 'bands-leave-limits', facts, path)
    }),
  )
}

/** Whether the chart says anything about a position; where it does, bands decide nothing. */
export function isCharted(fit: Fit, position: string): boolean {
  return (fit.chart ?? []).some(({ positions }) => positions === undefined || positions.includes(position))
}

function bestOf(
  fit: Fit,
  candidates: readonly Candidate[],
): (Candidate & { readonly judged: JudgedClearance }) | null {
  const judged = candidates.flatMap(({ judged, ...pair }) => (judged === null ? [] : [{ ...pair, judged }]))
  const off = ({ judged: { clearance } }: { readonly judged: JudgedClearance }): number =>
    Math.abs(clearance.nominal - targetOf(fit))
  const inside = judged.filter(({ judged: { within } }) => within === 'inside')
  return (inside.length > 0 ? inside : judged).toSorted((a, b) => off(a) - off(b))[0] ?? null
}

type MarkFacts = {
  readonly fit: string
  readonly clearance: Span
  readonly limits: Span
  readonly housing: string
  readonly journal: string
  readonly split: Fit['split']
  readonly upper: string
  readonly lower: string
}

function factsOf(fit: Fit, { clearance }: JudgedClearance): Pick<MarkFacts, 'fit' | 'clearance' | 'limits'> {
  return { fit: fit.name, clearance: rangeSpan(clearance), limits: rangeSpan(fit.clearance) }
}

function byVerdict(
  { within }: JudgedClearance,
  missing: 'chart-misses-limits' | 'bands-miss-limits',
  leaving: 'chart-leaves-limits' | 'bands-leave-limits',
  facts: MarkFacts,
  path: string,
): readonly Finding[] {
  switch (within) {
    case 'inside':
      return []
    case 'tight':
    case 'loose':
      return [fault(missing, facts, path)]
    case 'may-be-tight':
    case 'may-be-loose':
    case 'may-be-either':
      return [doubt(leaving, facts, path)]
    default:
      return within satisfies never
  }
}
