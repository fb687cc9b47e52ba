/** The part of a document that full screen needs. */
export interface ScreenPage extends EventTarget {
  readonly fullscreenElement: Element | null
  readonly documentElement: Partial<Pick<Element, 'requestFullscreen'>>
  exitFullscreen(): Promise<void>
}

/**
 * The whole screen for this window, where the browser gives it: it may refuse, and everything works without. The browser
 * answers later, when the window may already want the other thing; what is wanted last holds. `onleft` is called only when
 * a person leaves it by the browser's own key.
 */
export class FullScreen {
  readonly #onleft: () => void
  readonly #page: ScreenPage
  #isWanted = false
  #isLeaving = false

  constructor(onleft: () => void, page: ScreenPage = document) {
    this.#onleft = onleft
    this.#page = page
  }

  /** Gives a function that stops watching. */
  watch(): () => void {
    this.#page.addEventListener('fullscreenchange', this.#changed)
    return () => {
      this.#page.removeEventListener('fullscreenchange', this.#changed)
      this.leave()
    }
  }

  take(): void {
    this.#isWanted = true
    if (!this.#page.fullscreenElement && !this.#isLeaving)
      void this.#page.documentElement.requestFullscreen?.().catch(() => undefined)
  }

  leave(): void {
    this.#isWanted = false
    if (!this.#page.fullscreenElement || this.#isLeaving) return
    this.#isLeaving = true
    void this.#page.exitFullscreen().catch(() => (this.#isLeaving = false))
  }

  readonly #changed = () => {
    if (this.#page.fullscreenElement) {
      if (!this.#isWanted) this.leave()
      return
    }
    const wasAsked = this.#isLeaving
    this.#isLeaving = false
    if (!this.#isWanted) return
    if (wasAsked) this.take()
    else {
      this.#isWanted = false
      this.#onleft()
    }
  }
}
