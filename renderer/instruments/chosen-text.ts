/** The text that a person chose to write in, by a click or by Tab: a reading never goes into another one unasked. */
export class ChosenText {
  #chosen: EventTarget | null = null

  choose(element: EventTarget | null) {
    this.#chosen = element
  }
  byTab() {
    setTimeout(() => (this.#chosen = document.activeElement))
  }
  byPointer(target: EventTarget | null) {
    this.#chosen = (target instanceof Element && target.closest('label')?.control) || target
  }
  isChosen(element: Element | null): boolean {
    return element === this.#chosen
  }
}

/** Whether keys that are pressed there are written into it. */
export function isText(element: EventTarget | null): element is HTMLInputElement | HTMLTextAreaElement {
  return element instanceof HTMLInputElement || element instanceof HTMLTextAreaElement
}
