import { unitOf, type UsableWrench } from '../../../core/tightening/index.ts'
import type { ReadingField } from '../../instruments/reading-field.svelte.ts'
import type { RunDesk } from './run-desk.svelte.ts'

/** What was answered about a pull; one question may follow another before it is recorded. */
interface Answers {
  /** The fastener turned at the recheck. */
  readonly moved?: boolean
  /** A length that does not go with the others is right. */
  readonly sure?: boolean
  /** Why the wait before it is shortened. */
  readonly shortened?: string
  /** Why it is pulled although the open time of the sealant is over. */
  readonly overTime?: string
}

interface PullInput {
  readonly units: Parameters<typeof unitOf>[1]
  /** The reading as typed, or as it was reached on the drawing; empty without one. */
  readonly typed: string
  readonly heldWrench: UsableWrench | null
  /** How long was waited, in seconds; null where the procedure does not wait. */
  readonly waited: number | null
}

/** Confirms the next pull, with all that was answered about it. */
export class PullConfirmation {
  readonly #desk: RunDesk
  readonly #field: ReadingField
  readonly #input: () => PullInput
  #answers: Answers = {}

  constructor(desk: RunDesk, field: ReadingField, input: () => PullInput) {
    this.#desk = desk
    this.#field = field
    this.#input = input
  }

  /** Opens the first question about a pull. */
  ask(question: 'over-time' | 'shorten-wait', known: Answers = {}): void {
    this.#answers = known
    this.#desk.ask(question)
  }

  confirm(known: Answers = {}): Promise<void> {
    this.#answers = known
    return this.#pull()
  }

  answer(more: Answers): Promise<void> {
    this.#answers = { ...this.#answers, ...more }
    return this.#pull()
  }

  async #pull(): Promise<void> {
    const { task } = this.#desk
    if (task.kind !== 'pull') return
    const { moved = false, sure = false, shortened = null, overTime } = this.#answers
    const { units, typed, heldWrench, waited } = this.#input()
    const unit = task.window && unitOf(task.window, units)
    const reading = unit && typed ? { typed, unit } : null
    const recorded = this.#field.typed
    const torque = task.pass.kind === 'tighten-to-stretch' ? this.#desk.torqueTyped.trim() : ''
    const isConfirmed = await this.#desk.pull(task.next, reading, moved, null, heldWrench, {
      ...this.#desk.running.typedFor(task.next, units.torque),
      ...(torque !== '' && { torque: { typed: torque, unit: units.torque } }),
      ...(waited !== null && { waited: { seconds: waited, shortened } }),
      ...(overTime !== undefined && { overTime }),
      ...(sure && { sure: true as const }),
      readWith: this.#field.readWith,
    })
    if (!isConfirmed) return
    this.#answers = {}
    this.#field.clear(recorded)
    this.#desk.torqueTyped = ''
    this.#desk.running.typed = ''
  }
}
