import { keptFor, withKept, type UnfinishedWork } from './kept-by-build.ts'

/** What is begun in builds and not confirmed yet, kept with the preferences of the bench. */
export class UnfinishedWork {
  readonly #kept: () => readonly UnfinishedWork[]
  readonly #keep: (all: UnfinishedWork[]) => Promise<unknown>
  #next: UnfinishedWork | null = null

  constructor(kept: () => readonly UnfinishedWork[], keep: (all: UnfinishedWork[]) => Promise<unknown>) {
    this.#kept = kept
    this.#keep = keep
  }

  /** As it was kept last; null where nothing was begun. */
  in(build: string): UnfinishedWork | null {
    return keptFor(this.#kept(), build) ?? null
  }

  /** What changes while it is being kept is kept next, the newest of it. */
  async keep(now: UnfinishedWork): Promise<void> {
    const isKeeping = this.#next !== null
    this.#next = now
    if (isKeeping) return
    for (let next: UnfinishedWork | null = now; next !== null; next = this.#next === next ? null : this.#next)
      await this.#keep(withKept(this.#kept(), next))
    this.#next = null
  }
}
