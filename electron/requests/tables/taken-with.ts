import { isShare, type ReadWith } from '../../../core/instrument/index.ts'

/** Columns of a table of readings. */
export const takenWithFields = [
  'read_with',
  'instrument',
  'instrument_number',
  'deviation',
  'deviation_unit',
  'instrument_calibrated',
] as const

/** With what a reading was taken, as it was known then. */
export function takenWith(
  readWith: ReadWith | null | undefined,
): Readonly<Record<(typeof takenWithFields)[number], string | number | null>> {
  const line = readWith?.came === 'by-line' ? readWith : null
  return {
    read_with: readWith?.came ?? null,
    instrument: line && line.name,
    instrument_number: line && line.number,
    deviation: line && line.deviation,
    deviation_unit: line === null || line.deviation === null ? null : isShare(line.unit) ? '%' : line.unit,
    instrument_calibrated: line && line.calibratedOn,
  }
}
