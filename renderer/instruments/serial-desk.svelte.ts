import { SvelteMap, SvelteSet } from 'svelte/reactivity'
import { byLine, mayFeed, typedAs, type ReceivedLines, type Instrument } from '../../core/instrument/index.ts'
import type { ReadingField } from './reading-field.svelte.ts'
import { SerialLine } from './serial-line.ts'
import type { Port, Ports } from './serial-port.ts'

export type LineStanding =
  | 'closed'
  | 'opening'
  | 'open'
  | 'unplugged'
  | 'busy'
  | 'garbled'
  | 'streams'
  | 'not-chosen'
  | 'refused'

/** What a person must hear of an instrument while they work. */
export type InstrumentNews =
  | {
      readonly kind: 'unplugged' | 'unpluggedMidLine' | 'pluggedIn' | 'streams' | 'garbled'
      readonly name: string
    }
  | { readonly kind: 'unitUnknown'; readonly name: string; readonly unit: string }
  | { readonly kind: 'otherField'; readonly name: string; readonly sent: string }

interface Line {
  readonly port: Port
  readonly line: SerialLine
}

interface StoredInstruments {
  /** The instruments that this bench knows. */
  readonly list: () => readonly Instrument[]
  keep(list: readonly Instrument[]): Promise<void>
}

/** The instruments on serial lines: which are connected, and what they send. */
export class SerialDesk {
  readonly ports: Ports | null
  readonly #kept: StoredInstruments
  #standing = $state<Record<string, LineStanding>>({})
  #lastSent = $state<Record<string, string>>({})
  #news = $state.raw<InstrumentNews | null>(null)
  readonly #lines = new SvelteMap<string, Line>()
  /** What was open when it was unplugged: it is read again once it is back. */
  readonly #awaited = new SvelteSet<string>()
  #field: ReadingField | null = null

  constructor(ports: Ports | null, kept: StoredInstruments) {
    this.ports = ports
    this.#kept = kept
  }

  get list(): readonly Instrument[] {
    return this.#kept.list()
  }
  get news(): InstrumentNews | null {
    return this.#news
  }
  forgetNews() {
    this.#news = null
  }
  standingOf(id: string): LineStanding {
    return this.#standing[id] ?? 'closed'
  }
  /** As it went, or would have gone, into a field; null before the first reading. */
  lastSentBy(id: string): string | null {
    return this.#lastSent[id] ?? null
  }

  /** What instruments send goes to this field, until the function given back is called. */
  feed(field: ReadingField): () => void {
    this.#field = field
    return () => {
      if (this.#field === field) this.#field = null
    }
  }

  /** Opens what this page was let have before, asking nobody, and follows plugs; until the function given back is called. */
  follow(): () => void {
    const { ports } = this
    if (ports === null) return () => undefined
    const back = ({ target }: Event): void => void this.#pluggedIn(target as unknown as Port)
    ports.addEventListener('connect', back)
    void ports
      .getPorts()
      .then((known) => Promise.all(known.map((port) => this.#openKnown(port))))
      .catch(() => undefined)
    return () => {
      ports.removeEventListener('connect', back)
      for (const { line } of this.#lines.values()) void line.close()
    }
  }

  /** Asks the person for the line of an instrument, and reads it. To be called in answer to a press. */
  async connect(id: string): Promise<void> {
    const instrument = this.list.find((each) => each.id === id)
    if (this.ports === null || instrument === undefined) return
    let port: Port
    try {
      port = await this.ports.requestPort()
    } catch (error) {
      const wasRefused = error instanceof DOMException && error.name === 'SecurityError'
      this.#standing[id] = wasRefused ? 'refused' : 'not-chosen'
      return
    }
    await this.disconnect(id)
    await this.#open(instrument, port)
    const { usbVendorId: vendor, usbProductId: product } = port.getInfo()
    const usb = vendor === undefined || product === undefined ? null : { vendor, product }
    await this.#kept.keep(this.list.map((each) => (each.id === id ? { ...each, usb } : each)))
  }

  async disconnect(id: string): Promise<void> {
    this.#awaited.delete(id)
    await this.#lines.get(id)?.line.close()
  }

  /** Writes an instrument down, or down again. One that is connected is read as it was until it is connected again. */
  async write(instrument: Instrument): Promise<void> {
    const others = this.list.filter(({ id }) => id !== instrument.id)
    const at = this.list.findIndex(({ id }) => id === instrument.id)
    await this.#kept.keep(at < 0 ? [...others, instrument] : this.list.with(at, instrument))
  }

  async remove(id: string): Promise<void> {
    await this.disconnect(id)
    await this.#kept.keep(this.list.filter((each) => each.id !== id))
  }

  async #open(instrument: Instrument, port: Port): Promise<boolean> {
    const { id } = instrument
    this.#standing[id] = 'opening'
    try {
      await port.open(instrument.serial)
    } catch {
      this.#standing[id] = 'busy'
      return false
    }
    this.#standing[id] = 'open'
    const line = new SerialLine(port, {
      heard: (heard) => this.#heard(id, heard),
      ended: (why, isMidLine) => this.#ended(id, why, isMidLine),
    })
    this.#lines.set(id, { port, line })
    return true
  }

  async #openKnown(port: Port): Promise<Instrument | null> {
    const taken = [...this.#lines.values()].some((line) => line.port === port)
    const its = this.list.filter((instrument) => isOn(port, instrument) && !this.#lines.has(instrument.id))
    // Two of a kind cannot be told apart by their plugs: a person says which is which.
    const instrument = its.length === 1 ? its[0]! : null
    if (taken || instrument === null) return null
    return (await this.#open(instrument, port)) ? instrument : null
  }

  async #pluggedIn(port: Port): Promise<void> {
    const instrument = await this.#openKnown(port)
    if (instrument === null) return
    if (this.#awaited.delete(instrument.id)) this.#news = { kind: 'pluggedIn', name: instrument.name }
  }

  #heard(id: string, { sent, unknownUnit, state }: ReceivedLines): void {
    const instrument = this.list.find((each) => each.id === id)
    if (instrument === undefined) return
    const { name } = instrument
    if (state !== 'good' && this.#standing[id] !== state) this.#news = { kind: state, name }
    this.#standing[id] = state === 'good' ? 'open' : state
    if (unknownUnit !== null) this.#news = { kind: 'unitUnknown', name, unit: unknownUnit }
    for (const value of sent) {
      const text = typedAs(value, instrument.unit)
      this.#lastSent[id] = text
      if (unknownUnit === null) this.#news = null
      const may = this.#field?.arrived(text, byLine(instrument), (field) =>
        mayFeed(instrument, value.unit ?? instrument.unit, field),
      )
      if (may === false) this.#news = { kind: 'otherField', name, sent: text }
    }
  }

  #ended(id: string, why: 'closed' | 'unplugged' | 'garbled', isMidLine: boolean): void {
    this.#lines.delete(id)
    const instrument = this.list.find((each) => each.id === id)
    this.#standing[id] = why
    if (instrument === undefined || why === 'closed') return
    const { name } = instrument
    if (why === 'garbled') {
      this.#news = { kind: 'garbled', name }
      return
    }
    this.#awaited.add(id)
    this.#news = { kind: isMidLine ? 'unpluggedMidLine' : 'unplugged', name }
  }
}

function isOn(port: Port, { usb }: Instrument): boolean {
  const { usbVendorId, usbProductId } = port.getInfo()
  return usb !== null && usb.vendor === usbVendorId && usb.product === usbProductId
}
