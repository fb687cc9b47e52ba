import type { Words } from '../words/index.ts'
import { isShare } from './instrument.ts'
import type { ReadWith } from './read-with.ts'

/**
 * What a reading was taken with, for the sheet: the instrument, how far it may have been off and when it was calibrated. Empty where it
 * was typed by hand, or nobody asked.
 */
export function readWithText({ instruments }: Words, readWith: ReadWith | null | undefined): string {
  if (readWith?.came === 'typed') return instruments.sentTyped
  if (readWith?.came !== 'by-line') return ''
  const { name, number, unit, deviation, calibratedOn } = readWith
  return [
    instruments.readWith({ name, number }),
    deviation === null
      ? instruments.deviationUnknown
      : instruments.offBy({ deviation, unit, isShare: isShare(unit) }),
    calibratedOn === null ? instruments.calibrationUnknown : instruments.calibrated({ on: calibratedOn }),
  ].join(', ')
}
