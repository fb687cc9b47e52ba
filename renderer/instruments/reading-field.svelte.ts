import type { ReadingFieldName, ReadWith } from '../../core/instrument/index.ts'
import type { Reading } from '../../core/tightening/index.ts'
import { ChosenText, isText } from './chosen-text.ts'
import { GaugeKeys } from './gauge-burst.ts'
import { ofNumber, StrayKeys } from './stray-keys.ts'

const noSign = { key: '', at: -Infinity }
/** Characters that come as close together as this belong to one reading, even from a slow gauge. In milliseconds. */
const sameReadingMs = 250
/** A second instrument that types so soon after the first one's Enter typed at the same time. */
const crossedWithinMs = 60

/** A reading that came with what it was taken with. */
export interface SentReading {
  readonly text: string
  readonly readWith: ReadWith
}

const byHand: ReadWith = { came: 'by-hand' }
const typedBySome: ReadWith = { came: 'typed' }

/**
 * What is typed as a reading, by hand or by a gauge or a wrench that types, wherever the focus is. It goes to the field that
 * asks for one; it is never part of an answer or a reason, unless a person chose that text by a click or by Tab; with no
 * place to go it is kept and said.
 */
export class ReadingField {
  readonly #begun: () => void
  #typed = $state('')
  /** What stands in the field was taken with; by hand as soon as a person changes it. */
  #readWith: ReadWith = byHand
  #dropped = $state<'broken-off' | 'crossed' | null>(null)
  #unasked = $state.raw<SentReading | null>(null)
  #rivals = $state.raw<readonly [SentReading, SentReading] | null>(null)
  #input = $state.raw<{
    readonly element: HTMLInputElement
    readonly name: ReadingFieldName
    readonly isRight: (typed: string) => boolean
  } | null>(null)
  /** Takes readings in the place of one field, as a table of them does; `name` is null where it takes no sizes. */
  #table = $state.raw<{
    readonly name: ReadingFieldName | null
    readonly take: (sent: string, readWith: ReadWith) => void
  } | null>(null)
  #press: (() => void) | null = null
  readonly #chosen = new ChosenText()
  #before = ''
  #beforeWith: ReadWith = byHand
  #lastAt = -Infinity
  #sign = noSign
  #settles: ReturnType<typeof setTimeout> | undefined
  #deafUntil = -Infinity
  readonly #strays = new StrayKeys((sent) => this.keep(sent, byHand))
  readonly #gauge = new GaugeKeys({
    whole: (sent) => this.#whole(sent),
    half: () => this.#half(),
  })

  /** `begun` is called whenever something is typed or sent into the field. */
  constructor(begun: () => void = () => undefined) {
    this.#begun = begun
  }

  get typed() {
    return this.#typed
  }
  set typed(text: string) {
    this.#put({ text, readWith: byHand })
  }
  /** With what the reading that stands in the field was taken; undefined where none stands there. */
  get readWith(): ReadWith | undefined {
    return this.#typed.trim() === '' ? undefined : this.#readWith
  }
  /** Why the last that came from an instrument was dropped: half a reading, or two instruments that typed at once. */
  get dropped() {
    return this.#dropped
  }
  /** What was sent or typed while nothing asked for a reading; kept until it is used or dropped. */
  get unasked() {
    return this.#unasked?.text ?? null
  }
  /** Two readings for one place, the earlier one first, until a person says which counts. */
  get rivals(): readonly [string, string] | null {
    return this.#rivals && [this.#rivals[0].text, this.#rivals[1].text]
  }
  /** Whether a reading is asked for now. */
  get isOpen() {
    return this.#input !== null || this.#table !== null
  }

  /** Takes what was kept for the reading that is asked for now. */
  useUnasked() {
    const kept = this.#unasked
    this.#unasked = null
    if (kept === null) return
    if (this.#table === null) this.#put(kept)
    else this.#table.take(kept.text, kept.readWith)
  }
  dropUnasked() {
    this.#unasked = null
  }
  /** Keeps what has no place to go. */
  keep(sent: string, readWith: ReadWith = typedBySome) {
    this.#unasked = { text: sent, readWith }
    this.#strays.forget()
  }
  /** Says which of two readings counts. */
  settle(which: string) {
    const chosen = this.#rivals?.find(({ text }) => text === which) ?? { text: which, readWith: byHand }
    this.#rivals = null
    this.#put(chosen)
  }

  /** The field that asks for a reading; `isRight` says whether a text is the very reading that is asked for. */
  attach(name: ReadingFieldName, isRight: (typed: string) => boolean) {
    return (element: HTMLInputElement) => {
      this.#input = { element, name, isRight }
      return () => {
        if (this.#input?.element === element) this.#input = null
      }
    }
  }
  /** A table of readings hears keys by itself, and is given what was kept; until the function given back is called. */
  giveWay(
    take: (sent: string, readWith: ReadWith) => void,
    name: ReadingFieldName | null = null,
  ): () => void {
    this.#table = { name, take }
    return () => {
      if (this.#table?.take === take) this.#table = null
    }
  }
  /**
   * A whole reading that came over a serial line: it goes where one that was typed goes, or is kept. False where a field is
   * open that it may not go into.
   */
  arrived(sent: string, readWith: ReadWith, may: (field: ReadingFieldName) => boolean): boolean {
    const table = this.#table
    const name = table === null ? (this.#input?.name ?? null) : table.name
    if (!this.isOpen || name === null || !may(name)) {
      this.keep(sent, readWith)
      return !this.isOpen
    }
    if (table === null) {
      this.#before = this.#typed
      this.#beforeWith = this.#readWith
      this.#dropped = null
      this.#place(sent, readWith)
    } else table.take(sent, readWith)
    return true
  }
  /** A gauge's own Enter presses this, where its value is the reading asked for; until the function given back is called. */
  confirmBy(press: () => void): () => void {
    this.#press = press
    return () => {
      if (this.#press === press) this.#press = null
    }
  }
  stop() {
    this.#gauge.stop()
    this.#strays.stop()
    clearTimeout(this.#settles)
  }

  /** To be given every key press of the window before anybody else. What is held down does not type. */
  hear = (event: KeyboardEvent) => {
    if (event.key === 'Tab') this.#chosen.byTab()
    if (event.repeat && event.key.length === 1 && this.owns(event.target)) event.preventDefault()
    if (event.repeat || event.ctrlKey || event.altKey || event.metaKey) return
    const isEnter = event.key === 'Enter'
    if (!isEnter && event.key.length !== 1) return
    if (this.#isCrossed(event)) return
    if (this.#table !== null) return
    if (!isEnter) this.#character(event)
    if (!this.#gauge.take(event) && isEnter) this.#strays.end(event)
  }

  /** To be given every pointer press of the window before anybody else. */
  point = ({ target }: PointerEvent) => this.#chosen.byPointer(target)

  owns(target: EventTarget | null): boolean {
    return target !== null && target === this.#input?.element
  }

  /** What is typed next goes in the place of what stands there: a second try does not add to the first. */
  focus() {
    this.#input?.element.focus()
    this.#input?.element.select()
  }

  /** Once a reading is recorded: what came meanwhile is kept for the next one. */
  clear(recorded: string) {
    const meanwhile = this.#rivals?.find(({ text }) => text !== recorded) ?? null
    if (meanwhile !== null) this.#unasked = meanwhile
    this.#rivals = null
    if (this.#typed === recorded) this.typed = ''
    this.#input?.element.blur()
  }

  /** What was typed with the unit it is in; null when nothing was, and the click is all there is. */
  take(unit: Reading['unit']): { typed: string; unit: Reading['unit'] } | null {
    return this.#typed.trim() ? { typed: this.#typed, unit } : null
  }

  #character(event: KeyboardEvent) {
    const { key, timeStamp } = event
    const active = document.activeElement
    const goesOn = timeStamp - this.#lastAt <= sameReadingMs
    this.#lastAt = timeStamp
    if (!goesOn) {
      this.#before = this.#typed
      this.#beforeWith = this.#readWith
      this.#dropped = null
    }
    const isUnchosen = isText(active) && !this.#chosen.isChosen(active) && !this.owns(active)
    if (this.owns(active) || (isText(active) && !isUnchosen)) return
    if (this.isOpen) return this.#toField(event, isUnchosen)
    if (ofNumber.test(key) || (this.#strays.isBegun && goesOn)) this.#strays.add(event, isUnchosen)
    else if (isUnchosen) this.#chosen.choose(active)
  }

  /** A sign alone may be the drawing's: it stands before the digit that follows soon. */
  #toField(event: KeyboardEvent, isUnchosen: boolean) {
    const { key, timeStamp } = event
    if (!ofNumber.test(key)) {
      if (isUnchosen) this.#chosen.choose(document.activeElement)
      return
    }
    if (key === '+' || key === '-') {
      this.#sign = { key, at: timeStamp }
      if (isUnchosen) event.preventDefault()
      return
    }
    const sign = timeStamp - this.#sign.at <= sameReadingMs ? this.#sign.key : ''
    this.#sign = noSign
    if (sign === '') return this.focus()
    event.preventDefault()
    this.#input?.element.focus()
    this.typed = sign + key
  }

  #whole(sent: string) {
    const active = document.activeElement
    this.#lastAt = -Infinity
    if (isText(active) && this.#chosen.isChosen(active) && !this.owns(active)) return
    this.#place(sent, typedBySome)
  }

  #put({ text, readWith }: SentReading) {
    this.#typed = text
    this.#readWith = readWith
    if (text !== '') this.#begun()
  }

  /** Into the field, beside a reading that waits there to be confirmed. */
  #place(sent: string, readWith: ReadWith) {
    if (this.#input === null) return this.keep(sent, readWith)
    const { element, isRight } = this.#input
    const before = this.#before.trim()
    element.blur()
    if (before !== '' || this.#rivals !== null) {
      const first = this.#rivals?.[0] ?? { text: before, readWith: this.#beforeWith }
      this.#rivals = [first, { text: sent, readWith }]
      this.typed = ''
      return
    }
    // The burst may lack its beginning where the machine faltered between two characters: the field has all of it.
    this.#put({ text: this.#typed.endsWith(sent) ? this.#typed : sent, readWith })
    const whole = this.#typed
    this.#settles = setTimeout(() => {
      this.#settles = undefined
      if (this.#typed === whole && isRight(whole)) this.#press?.()
    }, crossedWithinMs)
  }

  /** Two that type at once make one text that neither of them sent: nothing of it is taken. */
  #isCrossed(event: KeyboardEvent): boolean {
    if (this.#settles === undefined && event.timeStamp > this.#deafUntil) return false
    clearTimeout(this.#settles)
    this.#settles = undefined
    this.#gauge.forget()
    this.#deafUntil = event.timeStamp + sameReadingMs
    this.typed = ''
    this.#dropped = 'crossed'
    event.preventDefault()
    event.stopPropagation()
    return true
  }

  #half() {
    this.#dropped = 'broken-off'
    this.#strays.forget()
    if (!this.owns(document.activeElement)) return
    this.typed = ''
    this.#input?.element.blur()
  }
}
