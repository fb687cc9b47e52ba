/** An Enter that comes so soon after digits with no place to go ends them: it is no press of the main button. In milliseconds. */
const endsWithinMs = 1000

/** A key that a reading is typed with. */
export const ofNumber = /^[\d.,+-]$/

interface StrayKey {
  readonly text: string
  readonly at: number
  /** Whether it was kept out of a text that has the focus without anybody having chosen it. */
  readonly wasDiverted: boolean
}
const nothing: StrayKey = { text: '', at: -Infinity, wasDiverted: false }

/** What is typed while no reading is asked for, put together until it ends; `keep` is given what is worth keeping. */
export class StrayKeys {
  readonly #keep: (sent: string) => void
  #stray = nothing
  #ends: ReturnType<typeof setTimeout> | undefined

  constructor(keep: (sent: string) => void) {
    this.#keep = keep
  }

  get isBegun(): boolean {
    return this.#stray.text !== ''
  }
  forget() {
    this.#stray = nothing
  }
  stop() {
    clearTimeout(this.#ends)
  }

  /** One more; `isUnchosen` where it would be written into a text that nobody chose. */
  add(event: KeyboardEvent, isUnchosen: boolean) {
    const wasDiverted = this.#stray.wasDiverted || isUnchosen
    if (isUnchosen) event.preventDefault()
    this.#stray = { text: this.#stray.text + event.key, at: event.timeStamp, wasDiverted }
    clearTimeout(this.#ends)
    this.#ends = setTimeout(() => {
      if (this.#stray.wasDiverted) this.#keep(this.#stray.text)
      this.#stray = nothing
    }, endsWithinMs)
  }

  /** An Enter. One digit alone, with a press of the pedal after it, is no reading. */
  end(event: KeyboardEvent) {
    const { text, at, wasDiverted } = this.#stray
    this.#stray = nothing
    if (text.length < (wasDiverted ? 1 : 2) || event.timeStamp - at > endsWithinMs) return
    event.preventDefault()
    event.stopPropagation()
    this.#keep(text)
  }
}
