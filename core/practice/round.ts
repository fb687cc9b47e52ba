/** The kinds of drill, in the order in which they are learned. */
export const drillKinds = ['order', 'chart', 'values', 'angle', 'mirror', 'measure', 'fault'] as const
export type DrillKind = (typeof drillKinds)[number]

/** What a round can be of: a drill, or a whole build done as practice. */
export const roundKinds = [...drillKinds, 'dry-run'] as const
export type RoundKind = (typeof roundKinds)[number]

/** What was asked for in a round, and how many wrong answers came before the right one. `about` is as the scene names it. */
export type Tally = readonly { readonly about: string; readonly errors: number }[]

/** One drill, or a dry run, gone through to its end. */
export interface Round {
  readonly engine: string
  readonly drill: RoundKind
  readonly tally: Tally
  readonly seconds: number
  /** By the clock of the bench, as ISO 8601 in UTC. */
  readonly at: string
}

export function errorsIn(tally: Tally): number {
  return tally.reduce((sum, { errors }) => sum + errors, 0)
}

export type Grade = 'again' | 'hard' | 'good'

/** One error in ten that were asked is remembered with effort; more is forgotten. */
const shareForgiven = 0.1

/** How well a round was remembered. An empty one counts as forgotten. */
export function gradeOf(tally: Tally): Grade {
  const errors = errorsIn(tally)
  if (tally.length === 0) return 'again'
  if (errors === 0) return 'good'
  return errors <= tally.length * shareForgiven ? 'hard' : 'again'
}
