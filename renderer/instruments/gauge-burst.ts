/** What types by itself sends its characters this close together, in milliseconds; hands do not. */
export const closestMs = 40
/** So many of them make a burst: two keys struck at once are not one. */
const leastKeys = 3
/** Longer than it takes from the last character to the Enter; after it, what came is half of something. */
const brokenOffAfterMs = 250

/**
 * Tells what a gauge, a wrench or a badge reader types from what is typed by hand: a burst of characters ended by
 * Enter. Times are those of the key presses, in milliseconds of one clock.
 */
export class GaugeBurst {
  #last = -Infinity
  #typed = ''

  /** One more character. */
  key(character: string, at: number) {
    this.#typed = at - this.#last <= closestMs ? this.#typed + character : character
    this.#last = at
  }

  /** All that was sent, where an Enter at this time ends a burst, else null; either way the next character begins again. */
  endedAt(at: number): string | null {
    const sent = this.isBurst && at - this.#last <= brokenOffAfterMs ? this.#typed : null
    this.forget()
    return sent
  }

  /** Whether the last characters came as from a gauge: without an Enter after them, half a reading. */
  get isBurst(): boolean {
    return this.#typed.length >= leastKeys
  }

  forget() {
    this.#typed = ''
  }
}

/** What is asked of a key press. */
export type KeyPress = Pick<
  KeyboardEvent,
  'key' | 'timeStamp' | 'repeat' | 'ctrlKey' | 'altKey' | 'metaKey' | 'preventDefault' | 'stopPropagation'
>

export interface BurstListener {
  /**
   * A burst, without its Enter. Its characters went to whatever had the focus: that is the whole of it. `sent` may lack
   * its beginning where the machine faltered between two characters.
   */
  whole(sent: string): void
  /** The burst that began broke off: what came of it must not stay, for it may look like a whole one. */
  half(): void
}

/**
 * Listens for bursts in the key presses of the window. It must be given them before anybody else
 * (`onkeydowncapture`): the Enter of a burst is for nobody but the listener.
 */
export class GaugeKeys {
  readonly #burst = new GaugeBurst()
  readonly #listener: BurstListener
  #waiting: ReturnType<typeof setTimeout> | undefined

  constructor(listener: BurstListener) {
    this.#listener = listener
  }

  /** True where this press ended a burst, and is done with. A key held down is not typed. */
  take(event: KeyPress): boolean {
    if (event.ctrlKey || event.altKey || event.metaKey || event.repeat) return false
    if (event.key !== 'Enter' && event.key.length !== 1) return false
    clearTimeout(this.#waiting)
    if (event.key === 'Enter') {
      const sent = this.#burst.endedAt(event.timeStamp)
      if (sent === null) return false
      event.preventDefault()
      event.stopPropagation()
      this.#listener.whole(sent)
      return true
    }
    this.#burst.key(event.key, event.timeStamp)
    this.#waiting = setTimeout(() => this.#brokeOff(), brokenOffAfterMs)
    return false
  }

  /** What came so far is no part of what comes next. */
  forget() {
    clearTimeout(this.#waiting)
    this.#burst.forget()
  }

  stop() {
    clearTimeout(this.#waiting)
  }

  #brokeOff() {
    if (!this.#burst.isBurst) return
    this.#burst.forget()
    this.#listener.half()
  }
}
