import type { Angle, Length, Torque } from '../../quantity/index.ts'
import type { FlagAnswer } from './answers.ts'
import type { OwnOrder, Reading } from './events.ts'
import type { HeldWrench } from '../wrench/held.ts'

/** One fastener in one pass, as carried out. Pulls that were taken back or set aside stay, marked so: the record is never edited. */
export interface Pull {
  /** 1, 2, 3 … in the run. */
  readonly number: number
  readonly pass: number
  /** Null for an action between passes. */
  readonly fastener: string | null
  /** The cap that an action is about; null for a fastener, and where the procedure does not go cap by cap. */
  readonly cap: string | null
  readonly reading: Reading | null
  /** Where the crank was turned: by how much its torque rose since the reading before; null where it was not, or there was none. */
  readonly turning: { readonly rise: Torque | null } | null
  /** How far it had been turned in this pass before, in degrees; 0 for all that is not turned on. */
  readonly from: Angle
  /** The wrench it was pulled with; null where none of the shop was chosen. */
  readonly held: HeldWrench | null
  /** What it took to run down, where that goes on top of the spec's torque; null once it was loosened to begin again, and else. */
  readonly running: Reading | null
  readonly verdict: 'unread' | 'within' | 'under' | 'over' | 'moved'
  readonly outOfOrder: string | null
  readonly takenBack: string | null
  /** By how much the fastener is longer than it was; null where that is not measured. */
  readonly stretch: Length | null
  /** At which it was so much longer; null where it is not tightened until it is. */
  readonly torque: Reading | null
  /** Why it no longer counts although it was not taken back; null while it counts. */
  readonly setAside: 'loosened' | 'pass-repeated' | 'run-restarted' | null
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
  readonly answer: FlagAnswer | null
}

/**
 * A procedure being carried out on a build. Everything else about it (what is next, how much is done) is
 * derived.
 */
export interface Run {
  readonly procedure: string
  /** Where it goes through another order than the spec's: ask `asRun` for the procedure. */
  readonly ownOrder: OwnOrder | null
  readonly declaredNew: readonly string[]
  readonly pulls: readonly Pull[]
  readonly flags: readonly Flag[]
  /** Fasteners that were loosened to begin again and have not been replaced or pulled since. */
  readonly loosened: readonly string[]
  /** The reason given, or '' for none; null while it is not paused. */
  readonly paused: string | null
}
