import type { Assignment, AssignmentProblem } from './assignment-problem.ts'
import { pricesOf } from './lagrangian-bound.ts'
import { search, type Demand } from './search.ts'

/** How many rounds the prices are sharpened before a search, and how many options it may then weigh. */
const searches = [
  { rounds: 0, weighings: 2_000 },
  { rounds: 30, weighings: 6_000 },
  { rounds: 400, weighings: 200_000 },
  { rounds: 4000, weighings: 2_000_000 },
] as const

/** Each round weighs every option once: of very many options, so many in all. Together with the searches it bounds the wait. */
const mostInRounds = 10_000_000

/**
 * One option for every place so that no kind is taken more often than there are pieces of it, but for what may be ordered,
 * at the least sum of costs; null where that cannot be. `wants` are those of the problem; a known
 * assignment is bettered or kept.
 *
 * `proved` is false where the last search was cut off: then a cheaper assignment may exist. That takes some forty shells
 * measured one by one; what is weighed, and so the wait, is bounded whatever lies in the tray.
 */
export function assign(
  problem: AssignmentProblem,
  wants: Demand,
  known: Assignment | null = null,
): { readonly best: Assignment | null; readonly proved: boolean } {
  const options = problem.places.reduce((total, each) => total + each.length, 0)
  const mostRounds = Math.ceil(mostInRounds / options)
  let bestAssignment = known
  for (const { rounds, weighings } of searches) {
    // A search that cannot weigh every option once finds nothing.
    if (weighings < options && rounds < searches.at(-1)!.rounds) continue
    const prices = pricesOf(problem, Math.min(rounds, mostRounds))
    const found = search(problem, wants, prices, weighings, bestAssignment)
    bestAssignment = found.best
    if (found.finished) return { best: bestAssignment, proved: true }
  }
  return { best: bestAssignment, proved: false }
}
