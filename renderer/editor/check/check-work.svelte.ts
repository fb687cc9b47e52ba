import {
  checkOf,
  checkState,
  isBlind,
  mayCheck,
  withChecked,
  type Answer,
  type CheckedValue,
} from '../../../core/drafts/index.ts'
import type { Problem } from '../../../core/problem/index.ts'
import type { EditorDesk } from '../editor-desk.svelte.ts'

/** Who compares, and on which day. */
interface AtCheck {
  readonly person: () => string
  /** ISO 8601. */
  readonly today: () => string
}

/** The second-person check as it goes on: which value is compared now, and what became of it. */
export class CheckWork {
  readonly #desk: EditorDesk
  readonly #at: AtCheck
  /** Those that were left for later, by path; they come again when there is no other. */
  #later = $state.raw<readonly string[]>([])
  #asked = $state<string | null>(null)

  readonly state = $derived.by(() => checkState(this.#desk.document))
  /** All that is left to compare was typed by who is at the bench. */
  readonly isAllOwn = $derived.by(
    () => this.state.left.length > 0 && this.state.left.every((value) => this.isOwn(value)),
  )
  /** The value that is compared now; null where nothing is left for who is at the bench. */
  readonly now: CheckedValue | null = $derived.by(() => {
    const { values, left } = this.state
    const open = left.filter((value) => checkOf(this.#desk.document, value) === null && !this.isOwn(value))
    return (
      values.find(({ path }) => path === this.#asked) ??
      open.find(({ path }) => !this.#later.includes(path)) ??
      open[0] ??
      null
    )
  })

  constructor(desk: EditorDesk, at: AtCheck) {
    this.#desk = desk
    this.#at = at
  }

  /** Nobody compares what they typed last: a slip is seen by another. */
  isOwn(value: CheckedValue): boolean {
    const { document, draft } = this.#desk
    return !mayCheck(document, value, this.#at.person(), draft.typists)
  }
  /** What is typed unseen stays unseen until it was found the same: it is compared again once it is corrected. */
  isUnseen(value: CheckedValue): boolean {
    return isBlind(value) && (checkOf(this.#desk.document, value)?.how ?? 'other') === 'other'
  }

  /** That value is compared next, also once it was. */
  ask({ path }: CheckedValue) {
    this.#asked = path
  }
  leave({ path }: CheckedValue) {
    this.#asked = null
    this.#later = [...this.#later.filter((each) => each !== path), path]
  }

  /** Gives why it cannot be answered so; null once it is in the draft. */
  async answer(value: CheckedValue, given: Answer): Promise<Problem | null> {
    const checker = { by: this.#at.person(), on: this.#at.today() }
    const { draft } = this.#desk
    const problem = await draft.change({ code: 'valueChecked', facts: {} }, (before) =>
      withChecked(before, value, given, checker, draft.typists),
    )
    if (problem !== null) return problem
    this.#asked = null
    this.#later = this.#later.filter((path) => path !== value.path)
    return null
  }
}
