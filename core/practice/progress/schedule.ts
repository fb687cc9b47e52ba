import { createEmptyCard, fsrs, Rating, type Grade as FsrsGrade } from 'ts-fsrs'
import type { Grade } from '../round.ts'

/** When a drill is to be done again, and from which round that follows. */
export interface Schedule {
  /** ISO 8601 in UTC. */
  readonly dueAt: string
  /** Days after which nine of ten would still know it. */
  readonly stabilityDays: number
}

const ratings: Readonly<Record<Grade, FsrsGrade>> = {
  again: Rating.Again,
  hard: Rating.Hard,
  good: Rating.Good,
}

/**
 * Whole days between rounds, with nobody's luck in them; half a year at most, because hands forget what they do not do and a
 * manual is printed again. `ts-fsrs` puts a day between one grade and the next one, past its own limit too: 179 for `hard` is
 * 180 for `good`.
 */
const parameters = { enable_fuzz: false, enable_short_term: false, maximum_interval: 179 }

/**
 * The schedule after rounds in the order in which they were done, by FSRS as `ts-fsrs` has it; null without a round. A round
 * that the clock puts before the one it followed counts as done at the same time.
 */
export function scheduleOf(
  rounds: readonly { readonly grade: Grade; readonly at: string }[],
): Schedule | null {
  const [first] = rounds
  if (first === undefined) return null
  const scheduler = fsrs(parameters)
  let last = Date.parse(first.at)
  let card = createEmptyCard(new Date(last))
  for (const { grade, at } of rounds) {
    last = Math.max(last, Date.parse(at))
    card = scheduler.next(card, new Date(last), ratings[grade]).card
  }
  return { dueAt: card.due.toISOString(), stabilityDays: card.stability }
}
