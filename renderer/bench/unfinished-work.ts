import { keptFor, withKept, type UnfinishedEntry } from './kept-by-build.ts'

/** What is begun in builds and not confirmed yet, kept with the preferences of the bench. */
export class UnfinishedWork {
  readonly #kept: () => readonly UnfinishedEntry[]
  readonly #keep: (all: UnfinishedEntry[]) => Promise<unknown>
  #next: UnfinishedEntry | null = null

  constructor(kept: () => readonly UnfinishedEntry[], keep: (all: UnfinishedEntry[]) => Promise<unknown>) {
    this.#kept = kept
    this.#keep = keep
  }

  /** As it was kept last; null where nothing was begun. */
  in(build: string): UnfinishedEntry | null {
    return keptFor(this.#kept(), build) ?? null
  }

  /** What changes while it is being kept is kept next, the newest of it. */
  async keep(now: UnfinishedEntry): Promise<void> {
    const isKeeping = this.#next !== null
    this.#next = now
    if (isKeeping) return
    for (
      let next: UnfinishedEntry | null = now;
      next !== null;
      next = this.#next === next ? null : this.#next
    )
      await this.#keep(withKept(this.#kept(), next))
    this.#next = null
  }
}
