import type { Reading } from './events.ts'

/** One fastener in one pass, as carried out. Taken-back pulls stay, marked so: the record is never edited. */
export interface Pull {
  /** 1, 2, 3 … in the run. */
  readonly number: number
  readonly pass: number
  /** Null for an action between passes. */
  readonly fastener: string | null
  readonly reading: Reading | null
  readonly verdict: 'unread' | 'within' | 'under' | 'over' | 'moved'
  readonly outOfOrder: string | null
  readonly takenBack: string | null
}

/**
 * Something that must be answered before the run is done: a reading outside its limits, a moved fastener, a
 * noted problem.
 */
export interface Flag {
  /** 1, 2, 3 … in the run. */
  readonly number: number
  readonly about: 'under' | 'over' | 'moved' | 'problem'
  readonly pull: number | null
  readonly fastener: string | null
  readonly text: string | null
  readonly answer: string | null
}

/**
 * A procedure being carried out on a build. Everything else about it (what is next, how much is done) is
 * derived.
 */
export interface Run {
  readonly procedure: string
  readonly declaredNew: readonly string[]
  readonly pulls: readonly Pull[]
  readonly flags: readonly Flag[]
  /** The reason given, or '' for none; null while it goes on. */
  readonly paused: string | null
}
