import type { Instrument } from '../../../core/instrument/index.ts'
import type { Port, PortInfo, Ports } from '../../../renderer/instruments/serial-port.ts'

const usbOfGauge: PortInfo = { usbVendorId: 0x1234, usbProductId: 0x42 }

/** A serial line that a test sends on, breaks, and unplugs. */
export class PlayedPort implements Port {
  readable: ReadableStream<Uint8Array> | null = null
  isTaken = false
  opened: unknown = null
  #controller: ReadableStreamDefaultController<Uint8Array> | null = null
  readonly #info: PortInfo

  constructor(info: PortInfo = usbOfGauge) {
    this.#info = info
  }

  getInfo(): PortInfo {
    return this.#info
  }
  open(settings: unknown): Promise<void> {
    if (this.isTaken) return Promise.reject(new DOMException('Failed to open', 'NetworkError'))
    this.opened = settings
    this.#newStream()
    return Promise.resolve()
  }
  close(): Promise<void> {
    this.readable = null
    this.opened = null
    return Promise.resolve()
  }
  send(text: string): void {
    this.#controller?.enqueue(new TextEncoder().encode(text))
  }
  /** A wrong bit: the stream ends with an error, and the port has another one. */
  garble(): void {
    const broken = this.#controller
    this.#newStream()
    broken?.error(new DOMException('A framing error', 'FramingError'))
  }
  unplug(): void {
    this.readable = null
    this.#controller?.error(new DOMException('The device has been lost.', 'NetworkError'))
  }

  #newStream(): void {
    this.readable = new ReadableStream<Uint8Array>({
      start: (controller) => void (this.#controller = controller),
    })
  }
}

/** The lines of a machine; `chosen` is what the person chooses, null for none. */
export class PlayedPorts implements Ports {
  known: Port[] = []
  chosen: Port | null = null
  refusal = 'NotFoundError'
  readonly #heard = new Set<(event: Event) => void>()

  getPorts(): Promise<readonly Port[]> {
    return Promise.resolve(this.known)
  }
  requestPort(): Promise<Port> {
    if (this.chosen === null) return Promise.reject(new DOMException('No port', this.refusal))
    return Promise.resolve(this.chosen)
  }
  addEventListener(event: 'connect' | 'disconnect', heard: (event: Event) => void): void {
    if (event === 'connect') this.#heard.add(heard)
  }
  removeEventListener(_: 'connect' | 'disconnect', heard: (event: Event) => void): void {
    this.#heard.delete(heard)
  }
  plugIn(port: Port): void {
    for (const heard of this.#heard) heard({ target: port } as unknown as Event)
  }
}

export const depthGauge: Instrument = {
  ...{ id: 'g', name: 'Depth gauge', number: '', unit: 'mm', deviation: null, calibratedOn: null },
  ...{ serial: { baudRate: 9600, dataBits: 8, parity: 'none', stopBits: 1 } },
  ...{ feeds: ['limits'], usb: null },
}
