import type { Reading } from '../../core/tightening/index.ts'
import { GaugeKeys } from './gauge-burst.ts'

const noSign = { key: '', at: -Infinity }
const sameBurstMs = 250

/** The one field that takes a reading: typed by hand, or by a gauge or a wrench that types. */
export class ReadingField {
  #typed = $state('')
  #brokenOff = $state(false)
  #element: HTMLInputElement | null = null
  #sign = noSign
  readonly #gauge = new GaugeKeys({
    whole: () => this.#whole(),
    half: () => this.#half(),
  })

  get typed() {
    return this.#typed
  }
  set typed(text: string) {
    this.#typed = text
  }
  /** Whether the last that came from a gauge was half a reading, and dropped. */
  get brokenOff() {
    return this.#brokenOff
  }

  attach = (element: HTMLInputElement) => {
    this.#element = element
    return () => {
      this.#gauge.stop()
      this.#element = null
    }
  }

  /** To be given every key press of the window before anybody else. What is held down does not type. */
  hear = (event: KeyboardEvent) => {
    if (event.key.length === 1) this.#brokenOff = false
    if (event.repeat && event.key.length === 1 && this.owns(event.target)) event.preventDefault()
    if (!this.owns(event.target)) this.#noteSign(event)
    this.#gauge.take(event)
  }

  owns(target: EventTarget | null): boolean {
    return target !== null && target === this.#element
  }

  /** What is typed next goes in the place of what stands there: a second try does not add to the first. */
  focus() {
    this.#element?.focus()
    this.#element?.select()
  }

  clear() {
    this.#typed = ''
    this.#element?.blur()
  }

  /** What was typed with the unit it is in; null when nothing was, and the click is all there is. */
  take(unit: Reading['unit']): { typed: string; unit: Reading['unit'] } | null {
    return this.#typed.trim() ? { typed: this.#typed, unit } : null
  }

  /** A sign ahead of the first digit came before the field had the focus. After it the pedal is free to confirm. */
  #whole() {
    if (!this.owns(document.activeElement)) return
    if (!this.#typed.startsWith(this.#sign.key)) this.#typed = this.#sign.key + this.#typed
    this.#sign = noSign
    this.#element?.blur()
  }

  /** A sign stays noted while what comes next comes sooner than by hand. */
  #noteSign({ key, timeStamp }: KeyboardEvent) {
    if (key === '+' || key === '-') this.#sign = { key, at: timeStamp }
    else if (timeStamp - this.#sign.at > sameBurstMs) this.#sign = noSign
  }

  #half() {
    this.#brokenOff = true
    if (this.owns(document.activeElement)) this.clear()
  }
}
