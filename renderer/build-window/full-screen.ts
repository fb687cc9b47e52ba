/**
 * The whole screen for this window, where the browser gives it: it may refuse, and everything works without. `onleft` is
 * told when a person leaves it by the browser's own key.
 */
export class FullScreen {
  readonly #onleft: () => void

  constructor(onleft: () => void) {
    this.#onleft = onleft
  }

  /** Gives a function that stops watching. */
  watch(): () => void {
    const left = () => {
      if (!document.fullscreenElement) this.#onleft()
    }
    document.addEventListener('fullscreenchange', left)
    return () => {
      document.removeEventListener('fullscreenchange', left)
      this.leave()
    }
  }

  take(): void {
    if (!document.fullscreenElement)
      void document.documentElement.requestFullscreen?.().catch(() => undefined)
  }

  leave(): void {
    if (document.fullscreenElement) void document.exitFullscreen().catch(() => undefined)
  }
}
