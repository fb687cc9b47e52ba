/** What came from the shop, for windows that wait for it. */
export class News {
  readonly #waitMs: number
  readonly #builds: string[] = []
  readonly #waiting = new Set<() => void>()
  /** Never 0: a window that has seen nothing yet asks with 0, and gets the present number at once. */
  #number = 1

  /** @param waitMs How long a window waits before it asks again. */
  constructor(waitMs: number) {
    this.#waitMs = waitMs
  }

  /** `build` is '' for what is about the shop as a whole. */
  add(build: string): void {
    this.#number += 1
    this.#builds.push(build)
    if (this.#builds.length > mostKept) this.#builds.shift()
    this.wake()
  }

  /** Whoever waits is answered. */
  wake(): void {
    for (const each of [...this.#waiting]) each()
  }

  /** What came after the number; waits for it where nothing did. */
  async after(after: number): Promise<{ number: number; builds: string[] }> {
    if (after === this.#number)
      await new Promise<void>((resolve) => {
        const wake = () => {
          clearTimeout(timer)
          this.#waiting.delete(wake)
          resolve()
        }
        const timer = setTimeout(wake, this.#waitMs)
        timer.unref()
        this.#waiting.add(wake)
      })
    // A number of before this program was started: all that is kept may be news.
    const since = after > this.#number ? this.#builds.length : this.#number - after
    const builds = this.#builds.slice(Math.max(0, this.#builds.length - since))
    return { number: this.#number, builds: [...new Set(builds)].filter((build) => build !== '') }
  }
}

const mostKept = 500
