/** A gauge that types sends its characters this close together, in milliseconds; hands do not. */
const closestMs = 40
/** So many of them make a burst: two keys struck at once are not one. */
const leastKeys = 3

/**
 * Tells a reading that a gauge types from one that is typed by hand: a burst of characters ended by Enter. Times are
 * those of the key presses, in milliseconds of one clock.
 */
export class GaugeBurst {
  #last = -Infinity
  #keys = 0

  /** One more character. */
  key(at: number) {
    this.#keys = at - this.#last <= closestMs ? this.#keys + 1 : 1
    this.#last = at
  }

  /** Whether an Enter at this time ends a burst; either way the next character begins anew. */
  endsAt(at: number): boolean {
    const ends = this.isBurst && at - this.#last <= closestMs
    this.#keys = 0
    return ends
  }

  /** Whether the last characters came as from a gauge: without an Enter after them, half a reading. */
  get isBurst(): boolean {
    return this.#keys >= leastKeys
  }

  forget() {
    this.#keys = 0
  }
}

/** Longer than a gauge takes from one character to the next; after it, what came is half a reading. */
export const brokenOffAfterMs = 250
