/** A pedal or a gloved hand bounces: what comes this soon after a confirmation is the same press. */
const bounceMs = 400

/** Lets a confirmation through only when the last one is long enough ago. Times in milliseconds of one clock. */
export class Pause {
  #last = -Infinity

  passes(now: number): boolean {
    if (now - this.#last < bounceMs) return false
    this.#last = now
    return true
  }
}
