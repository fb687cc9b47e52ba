import { candidatesFor, clearanceWith, nearestToTarget, type JudgedClearance } from '../../bearing/index.ts'
import type { ChartCell, Fit } from '../../engine/index.ts'

/** Two grades for two marks. */
export type GrownCell = Pick<ChartCell, 'housing' | 'journal' | 'upper' | 'lower'>

/** A chart grown from bands and walls, and the marks for which they say nothing. */
export interface GrownChart {
  readonly cells: readonly GrownCell[]
  readonly unknown: readonly { readonly housing: string; readonly journal: string }[]
}

/**
 * The chart that bands, walls, mixing rule and target clearance make: for each two marks the pair whose nominal clearance is nearest
 * to the target, as it is proposed where no chart is.
 */
export function grownChart(fit: Fit): GrownChart {
  const bare = withoutChart(fit)
  const cells: GrownCell[] = []
  const unknown: { housing: string; journal: string }[] = []
  for (const { mark: housing } of fit.housing.marks)
    for (const { mark: journal } of fit.journal.marks) {
      const pair = pairBy(bare, housing, journal)
      if (pair === null) unknown.push({ housing, journal })
      else cells.push({ housing, journal, ...pair })
    }
  return { cells, unknown }
}

/** What a cell of an entered chart would give, beside what bands and walls give. */
export interface CheckedCell {
  /** Counted from 0, as the chart has it. */
  readonly index: number
  /** Null where a mark or a grade has no size. */
  readonly judged: JudgedClearance | null
  /** The pair that bands and walls give where it is another one; null where it is the same, or none is known. */
  readonly other: { readonly upper: string; readonly lower: string } | null
}

/** Each cell of an entered chart against bands, walls and target. Empty where there is no chart. */
export function checkedChart(fit: Fit): readonly CheckedCell[] {
  const bare = withoutChart(fit)
  return (fit.chart ?? []).map(({ housing, journal, upper, lower }, index) => {
    const judged = clearanceWith(fit, housing, journal, upper, lower)
    const pair = pairBy(bare, housing, journal)
    const isSame = pair === null || samePair(pair, { upper, lower })
    return { index, judged: judged.ok ? judged.value : null, other: isSame ? null : pair }
  })
}

function withoutChart(fit: Fit): Fit {
  const { chart: _, ...bare } = fit
  return bare
}

function pairBy(bare: Fit, housing: string, journal: string) {
  const chosen = nearestToTarget(bare, candidatesFor(bare, bare.positions[0]!, housing, journal))
  return chosen === null ? null : { upper: chosen.upper, lower: chosen.lower }
}

interface Pair {
  readonly upper: string
  readonly lower: string
}

/** Which half has the thicker wall is the mixing rule's to say. */
function samePair(one: Pair, other: Pair): boolean {
  return (
    (one.upper === other.upper && one.lower === other.lower) ||
    (one.upper === other.lower && one.lower === other.upper)
  )
}
