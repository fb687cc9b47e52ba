import type { Reading } from '../../../core/tightening/index.ts'

/** The one field that takes a reading: typed by hand, or by a gauge that types. */
export class ReadingField {
  #typed = $state('')
  #element: HTMLInputElement | null = null

  get typed() {
    return this.#typed
  }
  set typed(text: string) {
    this.#typed = text
  }

  attach = (element: HTMLInputElement) => {
    this.#element = element
    return () => (this.#element = null)
  }

  owns(target: EventTarget | null): boolean {
    return target !== null && target === this.#element
  }

  focus() {
    this.#element?.focus()
  }

  clear() {
    this.#typed = ''
    this.#element?.blur()
  }

  /** What was typed with the unit it is in; null when nothing was, and the click is all there is. */
  take(unit: Reading['unit']): { typed: string; unit: Reading['unit'] } | null {
    return this.#typed.trim() ? { typed: this.#typed, unit } : null
  }
}
