import { closestMs, GaugeBurst } from './gauge-burst.ts'

/** Longer than from one character of a burst to the next: a letter that stands alone so long is a key by hand. */
const aloneMs = closestMs + 20

/** A number, with a unit behind it or none. */
const reading = /^[+-]?[\d.,]+\s*[^\d\s]{0,6}$/

/** Whether what a badge types could be a reading too: where one can be typed, it is one. */
export function couldBeReading(sent: string): boolean {
  return reading.test(sent.trim())
}

export interface BadgeListener {
  /** Whether a badge can mean anything now. While it cannot, no key is touched. */
  readonly knowsBadges: boolean
  /** Whether one was asked for: then a number is one too, wherever it is typed. */
  readonly asksForBadge: boolean
  /** True where it was taken for a badge: what it typed into a field must not stay there. */
  presented(badge: string, ofAField: boolean): Promise<boolean>
}

type Field = HTMLInputElement | HTMLTextAreaElement

/**
 * Hears a badge that types, anywhere in the window, and keeps its characters from meaning anything else: a letter waits a
 * moment to see whether it stands alone, what went into a field is taken out again, and its Enter presses no button.
 * To be given every key press before anybody else.
 */
export class BadgeReader {
  readonly #hearer: BadgeListener
  readonly #burst = new GaugeBurst()
  #last = -Infinity
  #hasLetter = false
  #before = new Map<Field, string>()
  #waiting: ReturnType<typeof setTimeout> | undefined
  /** Set while a key by hand is sent on its way again. */
  #passing = false

  constructor(hearer: BadgeListener) {
    this.#hearer = hearer
  }

  hear = (event: KeyboardEvent) => {
    if (this.#passing || !this.#hearer.knowsBadges) return
    if (event.ctrlKey || event.altKey || event.metaKey || event.repeat) return
    if (event.key === 'Enter') this.#ended(event)
    else if (event.key.length === 1) this.#character(event)
  }

  stop() {
    clearTimeout(this.#waiting)
  }

  #character(event: KeyboardEvent) {
    clearTimeout(this.#waiting)
    const goesOn = event.timeStamp - this.#last <= closestMs
    if (!goesOn) {
      this.#hasLetter = false
      this.#before = new Map(fields().map((field) => [field, field.value]))
    }
    this.#last = event.timeStamp
    this.#burst.key(event.key, event.timeStamp)
    const isLetter = /[^\d.,+-]/.test(event.key)
    this.#hasLetter ||= isLetter
    if (!this.#hasLetter || isField(event.target)) return
    if (goesOn) {
      event.preventDefault()
      event.stopPropagation()
    } else if (event.key !== ' ') this.#hold(event)
  }

  /** A letter may be the first of a badge. */
  #hold(event: KeyboardEvent) {
    const { key, code, shiftKey, target } = event
    event.stopPropagation()
    this.#waiting = setTimeout(() => {
      this.#passing = true
      // What had the key may be gone by now, as a dialog that closed meanwhile is, or is about to go with it.
      const isThere = target instanceof Element && target.isConnected && !target.closest('dialog:not([open])')
      const to = isThere ? target : document.body
      to.dispatchEvent(new KeyboardEvent('keydown', { key, code, shiftKey, bubbles: true, cancelable: true }))
      this.#passing = false
    }, aloneMs)
  }

  #ended(event: KeyboardEvent) {
    clearTimeout(this.#waiting)
    const sent = this.#burst.endedAt(event.timeStamp)
    if (sent === null) return
    const ofAField = isField(document.activeElement)
    if (ofAField && couldBeReading(sent) && !this.#hearer.asksForBadge) return
    event.preventDefault()
    event.stopPropagation()
    const before = this.#before
    void this.#hearer.presented(sent, ofAField).then((isTaken) => {
      if (isTaken) putBack(before)
    })
  }
}

function isField(target: EventTarget | null): target is Field {
  return target instanceof HTMLElement && target.matches('input, textarea, select')
}

function fields(): readonly Field[] {
  return [...document.querySelectorAll<Field>('input, textarea')]
}

function putBack(before: ReadonlyMap<Field, string>) {
  for (const [field, value] of before) {
    if (field.value === value) continue
    field.value = value
    field.dispatchEvent(new InputEvent('input', { bubbles: true }))
  }
}
