import type { SerialSettings } from '../../core/instrument/index.ts'

/** What its plug says a port is (Web Serial, `SerialPortInfo`); nothing where it is not on USB. */
export interface PortInfo {
  readonly usbVendorId?: number
  readonly usbProductId?: number
}

/** One serial line, as far as it is used here: `SerialPort` of Web Serial, or one that plays it in a test. */
export interface Port {
  /** Null while it is not open, and for ever once it was unplugged. */
  readonly readable: ReadableStream<Uint8Array> | null
  open(settings: SerialSettings): Promise<void>
  close(): Promise<void>
  getInfo(): PortInfo
}

/** The lines of this machine: `navigator.serial`, or one that plays it. */
export interface Ports {
  /** Those that this page was let have before; asks nobody. */
  getPorts(): Promise<readonly Port[]>
  /** Asks the person which one; only in answer to a press. Rejects with `NotFoundError` where none is chosen. */
  requestPort(): Promise<Port>
  /** The port is the event's target. */
  addEventListener(event: 'connect' | 'disconnect', heard: (event: Event) => void): void
  removeEventListener(event: 'connect' | 'disconnect', heard: (event: Event) => void): void
}

/** Null in a browser without Web Serial. */
export function portsOfThisMachine(): Ports | null {
  return typeof navigator === 'object' && 'serial' in navigator ? (navigator.serial as Ports) : null
}
