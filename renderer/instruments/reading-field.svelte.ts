import type { Reading } from '../../core/tightening/index.ts'
import { closestMs, GaugeKeys } from './gauge-burst.ts'

const noSign = { key: '', at: -Infinity }
const sameBurstMs = 250

/** The one field that takes a reading: typed by hand, or by a gauge or a wrench that types. */
export class ReadingField {
  #typed = $state('')
  #brokenOff = $state(false)
  #unasked = $state<string | null>(null)
  /** A text that somebody clicked into: what is typed there is meant for it, by a gauge too. */
  #clicked: EventTarget | null = null
  /** What stood in the field of another question before what may be a burst. */
  #before: { readonly field: HTMLInputElement | HTMLTextAreaElement; readonly text: string } | null = null
  #lastKeyAt = -Infinity
  #element: HTMLInputElement | null = null
  #sign = noSign
  readonly #gauge = new GaugeKeys({
    whole: (sent) => this.#whole(sent),
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

  /** What a gauge sent while nothing asked for a reading; kept until it is used or dropped. */
  get unasked() {
    return this.#unasked
  }
  /** Takes what was kept for the reading that is asked for now. */
  useUnasked() {
    this.#typed = this.#unasked ?? this.#typed
    this.#unasked = null
  }
  dropUnasked() {
    this.#unasked = null
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
    if (event.key.length === 1) this.#noteBefore(event)
    this.#gauge.take(event)
  }

  /** To be given every pointer press of the window before anybody else. */
  point = ({ target }: PointerEvent) => {
    this.#clicked = target
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
  #whole(sent: string) {
    if (!this.owns(document.activeElement)) return this.#keepUnasked(sent)
    if (!this.#typed.startsWith(this.#sign.key)) this.#typed = this.#sign.key + this.#typed
    this.#sign = noSign
    this.#element?.blur()
  }

  /**
   * A burst is no answer to a question of another kind: what stood there comes back, and the burst is kept. A field for
   * decimals takes readings too, as where one is read again.
   */
  #keepUnasked(sent: string) {
    const active = document.activeElement
    if (isText(active)) {
      if (active === this.#clicked || active.inputMode === 'decimal') return
      if (this.#before?.field === active) setText(active, this.#before.text)
    }
    this.#unasked = sent
  }

  #noteBefore({ timeStamp }: KeyboardEvent) {
    const active = document.activeElement
    if (timeStamp - this.#lastKeyAt > closestMs)
      this.#before = isText(active) && !this.owns(active) ? { field: active, text: active.value } : null
    this.#lastKeyAt = timeStamp
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

/** Whether keys that are pressed there are written into it. */
export function isText(element: EventTarget | null): element is HTMLInputElement | HTMLTextAreaElement {
  return element instanceof HTMLInputElement || element instanceof HTMLTextAreaElement
}

/** As if it had been typed, so that the component that holds the text hears of it. */
function setText(field: HTMLInputElement | HTMLTextAreaElement, text: string) {
  field.value = text
  field.dispatchEvent(new Event('input', { bubbles: true }))
}
