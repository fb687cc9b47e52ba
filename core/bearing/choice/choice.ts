import type { Fit } from '../../engine/index.ts'
import { problem } from '../../problem/index.ts'
import { chartPair, hasChartAt } from './chart.ts'
import { knownMarks, sizesOf, type MarkPair } from './marked.ts'
import type { Marks } from './marks.ts'
import { judgePair, wallOf } from './pairs.ts'
import { nearestInside, withoutShells, withShells, type Proposal } from './proposal.ts'

/**
 * The shells for every position of a fit from the marks of both parts, given in the order of `fit.positions`.
 *
 * A chart decides where the spec has one for the position, and only it: a pair of marks that is not in it is not
 * guessed at. Elsewhere the bands of the marks decide: of the allowed pairs whose clearance stays inside the limits at
 * worst, the one nearest to the target. A worn mark gives no proposal.
 */
export function proposeShells(fit: Fit, housing: Marks, journal: Marks): readonly Proposal[] {
  return fit.positions.map((position, index) => {
    const marks = knownMarks(fit, position, housing[index] ?? null, journal[index] ?? null)
    if (!marks.ok) return withoutShells(position, marks.problem)
    return hasChartAt(fit, position)
      ? fromChart(fit, position, marks.value)
      : fromBands(fit, position, marks.value)
  })
}

function fromChart(fit: Fit, position: string, marks: MarkPair): Proposal {
  const pair = chartPair(fit, position, marks)
  if (pair === null)
    return withoutShells(position, problem('chart-cell-missing', { place: position, ...marks }))
  for (const grade of [pair.upper, pair.lower]) {
    const wall = wallOf(fit, position, grade)
    if (!wall.ok && wall.problem.code === 'grade-unknown') return withoutShells(position, wall.problem)
  }
  const sizes = sizesOf(fit, position, marks)
  const judged = sizes.ok ? judgePair(fit, position, pair, sizes.value) : sizes
  const reason = { code: 'by-chart', facts: marks } as const
  return withShells(fit, position, pair, 'chart', reason, judged.ok ? judged.value : null)
}

function fromBands(fit: Fit, position: string, marks: MarkPair): Proposal {
  const sizes = sizesOf(fit, position, marks)
  if (!sizes.ok) return withoutShells(position, sizes.problem)
  const chosen = nearestInside(fit, position, sizes.value)
  if (!chosen.ok) return withoutShells(position, chosen.problem)
  const reason = { code: 'by-bands', facts: { of: chosen.value.of, ...marks } } as const
  return withShells(fit, position, chosen.value, 'bands', reason, chosen.value.judged)
}
