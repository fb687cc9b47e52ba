/** Chance that comes from a text: the same text always draws the same. It is for making drills, and keeps nothing secret. */
export class Chance {
  #state: number

  constructor(seed: string) {
    // FNV-1a over UTF-16 units: neighbouring seeds begin far from each other.
    let hash = 0x811c9dc5
    for (let at = 0; at < seed.length; at += 1) hash = Math.imul(hash ^ seed.charCodeAt(at), 0x01000193)
    this.#state = hash >>> 0
  }

  /** A whole number from 0 up to, not including, `count`, which is at least 1. */
  below(count: number): number {
    this.#state = (this.#state + 0x6d2b79f5) >>> 0
    let mixed = this.#state
    mixed = Math.imul(mixed ^ (mixed >>> 15), mixed | 1)
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61)
    return Math.floor((((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32) * count)
  }

  /** One of a list that is not empty. */
  one<Value>(list: readonly Value[]): Value {
    return list[this.below(list.length)]!
  }

  /** The same list in another order. */
  shuffled<Value>(list: readonly Value[]): readonly Value[] {
    const left = [...list]
    return list.map(() => left.splice(this.below(left.length), 1)[0]!)
  }
}
