import type { SaveOutcome } from './save-file.ts'

/** One file at a time on its way to a place, and what became of the last one. */
export class Saving {
  #outcome = $state.raw<SaveOutcome | null>(null)
  #isBusy = false

  get outcome() {
    return this.#outcome
  }

  /** Does nothing while another file waits for its place: a second press means the same file. */
  async run(save: () => Promise<SaveOutcome | null>): Promise<void> {
    if (this.#isBusy) return
    this.#isBusy = true
    this.#outcome = null
    try {
      this.#outcome = await save()
    } finally {
      this.#isBusy = false
    }
  }

  close(): void {
    this.#outcome = null
  }
}
