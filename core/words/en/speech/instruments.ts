import { day, fixed, plain } from '../formats.ts'

export interface OfInstrument {
  readonly name: string
}

/** Instruments that send their readings over a serial line. */
export const instruments = {
  title: 'Instruments and voice',
  onCable: 'Instruments on a serial line',
  about:
    'A gauge or a wrench with a serial line (USB or RS-232) sends its reading into the field that asks for one, as one does that types. An instrument that types like a keyboard needs no entry here.',
  cannot:
    'This browser has no Web Serial, so instruments on a serial line cannot be read here. Use Chromium, Chrome, Edge or the desktop program, or an instrument that types like a keyboard.',
  add: 'Add an instrument',
  none: 'No instrument is written down yet.',
  connect: 'Connect …',
  disconnect: 'Disconnect',
  remove: 'Remove',
  keep: 'Keep it',
  cancel: 'Cancel',
  change: 'Change',

  // What is written down of one
  name: 'Name',
  number: 'Number on it (optional)',
  unit: 'Measures in',
  feeds: 'May feed',
  fields: {
    torque: 'torque of a pull',
    angle: 'angle of a pull',
    length: 'length of a bolt, gap of a joint',
    sizes: 'sizes of bores and journals',
    limits: 'measurements against limits',
    checks: 'checks',
  },
  baudRate: 'Speed in baud',
  dataBits: 'Data bits',
  parity: 'Parity',
  parities: { none: 'none', even: 'even', odd: 'odd' },
  stopBits: 'Stop bits',
  deviation: ({ unit, isShare }: { readonly unit: string; readonly isShare: boolean }) =>
    isShare ? 'May be off by, in % of the reading (optional)' : `May be off by, in ${unit} (optional)`,
  calibratedOn: 'Calibrated on (optional)',
  nameMissing: 'Give it a name, so that it can be told from the others.',
  deviationWrong: 'The deviation is a number from 0 to 100.',
  inShort: (facts: {
    readonly unit: string
    readonly baudRate: number
    readonly dataBits: number
    readonly parity: 'none' | 'even' | 'odd'
    readonly stopBits: number
  }) =>
    `${facts.unit} · ${facts.baudRate} ${facts.dataBits}${facts.parity[0]!.toUpperCase()}${facts.stopBits}`,
  offBy: ({
    deviation,
    unit,
    isShare,
  }: {
    readonly deviation: number
    readonly unit: string
    readonly isShare: boolean
  }) => (isShare ? `may be off by ±${fixed(deviation, 1)} %` : `may be off by ±${plain(deviation)} ${unit}`),
  deviationUnknown: 'nobody has noted how far it may be off',
  calibrated: ({ on }: { readonly on: string }) => `calibrated on ${day(on)}`,
  calibrationOld: ({ on }: { readonly on: string }) =>
    `calibrated on ${day(on)}, more than a year ago: have it calibrated`,
  calibrationToCome: ({ on }: { readonly on: string }) =>
    `calibrated on ${day(on)}, which is still to come: correct the date, or the clock of this computer`,
  calibrationUnknown: 'no calibration is noted',

  // Beside a reading on the sheet
  readWith: ({ name, number }: OfInstrument & { readonly number: string }) =>
    `read with ${name}${number === '' ? '' : ` ${number}`}`,
  sentTyped: 'sent by an instrument that types',

  // How its line stands
  states: {
    closed: 'Not connected.',
    opening: 'Connecting …',
    open: '✓ Connected.',
    unplugged: '! Unplugged. It is read again as soon as it is plugged in.',
    busy: '! The line cannot be opened. Another program may use it, or the settings may not be possible: close the other program, then connect again.',
    garbled:
      '! What comes is no reading. Compare speed, data bits, parity and stop bits with the manual of the instrument, then connect again.',
    streams:
      '! It sends all the time, so nothing says which reading is meant. Set it to send at the press of its button.',
    'not-chosen': 'No line was chosen.',
    refused: '! The system does not let the program read serial lines.',
  },
  lastSent: ({ sent }: { readonly sent: string }) => `Last reading: ${sent}`,

  // In the panel of a build
  unplugged: ({ name }: OfInstrument) =>
    `${name} was unplugged. What it measures can be typed, or plug it in again.`,
  unpluggedMidLine: ({ name }: OfInstrument) =>
    `${name} was unplugged in the middle of a reading. What came of it was dropped: plug it in and send it again.`,
  pluggedIn: ({ name }: OfInstrument) => `✓ ${name} is connected again.`,
  unitUnknown: ({ name, unit }: OfInstrument & { readonly unit: string }) =>
    `${name} sent a number in “${unit}”, which is no unit of a reading here. It was dropped: set the instrument to another unit.`,
  otherField: ({ name, sent }: OfInstrument & { readonly sent: string }) =>
    `${name} sent ${sent}, which does not go into this field. It is kept.`,
  streams: ({ name }: OfInstrument) =>
    `${name} sends all the time: nothing of it is taken. Set it to send at the press of its button.`,
  garbled: ({ name }: OfInstrument) =>
    `What ${name} sends is no reading. Compare its settings under “Instruments and voice”.`,
  seen: 'Seen',
}
