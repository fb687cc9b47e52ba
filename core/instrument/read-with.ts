import { z } from 'zod'
import { instrument, type Instrument } from './instrument.ts'

/**
 * What a reading was taken with, as it was known at that time: it stays with the reading, whatever becomes of the instrument. Absent
 * in a record of when nobody asked.
 */
export const readWith = z.discriminatedUnion('came', [
  z.strictObject({ came: z.literal('by-hand') }),
  /** All at once, by an instrument that types like a keyboard: which one, it does not say. */
  z.strictObject({ came: z.literal('typed') }),
  z.strictObject({
    came: z.literal('by-line'),
    ...instrument.pick({ name: true, number: true, unit: true, deviation: true, calibratedOn: true }).shape,
  }),
])

export type ReadWith = z.output<typeof readWith>

/** What is kept with a reading that came over the line of an instrument. */
export function byLine({ name, number, unit, deviation, calibratedOn }: Instrument): ReadWith {
  return { came: 'by-line', name, number, unit, deviation, calibratedOn }
}
