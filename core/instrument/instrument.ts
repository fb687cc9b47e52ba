import { z } from 'zod'
import { lengthUnits, torqueUnits, type ReadingUnit } from '../quantity/index.ts'

/** The fields of the build window that ask for a reading, by what is read. */
export const readingFields = ['torque', 'angle', 'length', 'sizes', 'limits', 'checks'] as const
export type ReadingFieldName = (typeof readingFields)[number]

export const baudRates = [1200, 2400, 4800, 9600, 19_200, 38_400, 57_600, 115_200] as const
export const parities = ['none', 'even', 'odd'] as const

/** How the line is set, as its manual says. */
const serialSettings = z.strictObject({
  baudRate: z.literal(baudRates),
  dataBits: z.literal([7, 8]),
  parity: z.enum(parities),
  stopBits: z.literal([1, 2]),
})

/** An instrument that sends its readings over a serial line, as its owner writes it down. */
export const instrument = z.strictObject({
  id: z.string().min(1).max(40),
  name: z.string().trim().min(1).max(80),
  /** As it is marked; empty where it has none. */
  number: z.string().trim().max(40),
  serial: serialSettings,
  /** What a reading is in that names no unit; it says what is measured too. */
  unit: z.enum([...torqueUnits, ...lengthUnits, '°']),
  /** How far a reading may be off, either way: in % of it for a torque or an angle, in its unit for a length; null where nobody knows. */
  deviation: z.number().min(0).max(100).nullable(),
  /** When it was calibrated last; null where that is not noted. */
  calibratedOn: z.iso.date().nullable(),
  /** The fields that it may feed; the others keep what it sends until a person says what becomes of it. */
  feeds: z.array(z.enum(readingFields)).max(readingFields.length),
  /** What its plug says it is, so that it is known again; null while it was never plugged in, or the plug does not say. */
  usb: z.strictObject({ vendor: z.int().min(0).max(65_535), product: z.int().min(0).max(65_535) }).nullable(),
})

export const instruments = z.array(instrument).max(20)

export type Instrument = z.output<typeof instrument>
export type SerialSettings = z.output<typeof serialSettings>

/** The fields in which a reading in a unit can stand. */
export function fieldsFor(unit: ReadingUnit): readonly ReadingFieldName[] {
  if (unit === '°') return ['angle']
  return lengthUnits.some((each) => each === unit) ? ['length', 'sizes', 'limits', 'checks'] : ['torque']
}

/** Whether what an instrument sent may go into a field: it measures such things, and its owner lets it. */
export function mayFeed({ feeds }: Instrument, sentIn: ReadingUnit, field: ReadingFieldName): boolean {
  return feeds.includes(field) && fieldsFor(sentIn).includes(field)
}

/** What most instruments are set to when they come. */
export const usualSerial: SerialSettings = { baudRate: 9600, dataBits: 8, parity: 'none', stopBits: 1 }

/** Whether its deviation is a share of what it reads, as that of a torque or an angle is. */
export function isShare(unit: ReadingUnit): boolean {
  return !fieldsFor(unit).includes('length')
}

/** How its calibration stands on a day (`2026-03-31`): good for twelve months, the last day included. */
export function calibrationStanding(
  { calibratedOn }: Instrument,
  today: string,
): 'calibrated' | 'calibrationOld' | 'calibrationToCome' | 'calibrationUnknown' {
  if (calibratedOn === null) return 'calibrationUnknown'
  if (calibratedOn > today) return 'calibrationToCome'
  const aYearOn = `${String(Number(calibratedOn.slice(0, 4)) + 1).padStart(4, '0')}${calibratedOn.slice(4)}`
  return today > aYearOn ? 'calibrationOld' : 'calibrated'
}
