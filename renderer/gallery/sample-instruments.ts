import { usualSerial, type Instrument } from '../../core/instrument/index.ts'
import type { Ports } from '../instruments/serial-port.ts'
import type { Speech } from '../speech/speaker.svelte.ts'

/** A wrench and a gauge as a shop would write them down. */
export const sampleInstruments: Instrument[] = [
  {
    ...{ id: 'wrench', name: 'Click 100', number: 'W 12', unit: 'N·m', serial: usualSerial },
    ...{ deviation: 4, calibratedOn: '2026-03-02', feeds: ['torque'], usb: null },
  },
  {
    ...{ id: 'gauge', name: 'Depth gauge', number: '', unit: 'mm', deviation: 0.02, calibratedOn: null },
    serial: { baudRate: 4800, dataBits: 7, parity: 'even', stopBits: 2 },
    ...{ feeds: ['limits', 'checks'], usb: null },
  },
]

const ports: Ports = {
  getPorts: () => Promise.resolve([]),
  requestPort: () => Promise.reject(new DOMException('no line', 'NotFoundError')),
  addEventListener: () => undefined,
  removeEventListener: () => undefined,
}

const speech: Speech = {
  getVoices: () => [
    { name: 'Alba', lang: 'en-GB', default: true, localService: true },
    { name: 'Cloud', lang: 'en-US', default: false, localService: false },
  ],
  speak: () => undefined,
  cancel: () => undefined,
  addEventListener: () => undefined,
}

/** A machine with a voice, and with no instrument plugged in. */
export const playedMachine = { ports, speech }
