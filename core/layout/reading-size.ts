import { capitalShare } from './labels/text-width.ts'

/** From where a drawing can be read, in metres. */
export const readingDistances = [0.5, 1, 2] as const
export type ReadingDistance = (typeof readingDistances)[number]

/** How a screen is read: from how far, and how many of its pixels go to a millimetre. */
export interface Reader {
  readonly distance: ReadingDistance
  readonly pxPerMm: number
}

/** What CSS takes a screen to have, 96 px to the inch; right for a screen that was never measured only by luck. */
export const usualPxPerMm = 96 / 25.4

/** What a screen may be measured to have: coarser and finer ones do not stand on a bench. Both bounds included. */
export const pxPerMmBounds = { least: 2, most: 16 } as const

/** Capitals of what is next: 20 to 22 arc minutes are the common guidance for reading without effort (ISO 9241-303). */
const readAtEase = 20

/**
 * Capitals of the numbers on the drawing, in arc minutes. Near by there is room for more than the eye needs; at 1 m a
 * full drawing may go down to the 16 that ISO 9241-303 has as the least; at 2 m all that counts is to be read.
 */
const numbers: Readonly<Record<ReadingDistance, { readonly least: number; readonly most: number }>> = {
  0.5: { least: 21, most: 36 },
  1: { least: 16, most: 20 },
  2: { least: 20, most: 20 },
}

/** One capital to this share of the sheet's width, between the bounds. */
const shareOfSheet: Readonly<Record<ReadingDistance, number>> = { 0.5: 1 / 75, 1: 1 / 50, 2: 1 / 50 }

/** The height, in mm, that fills an angle of arc minutes at a distance in metres. */
export function heightSeenAt(arcMinutes: number, distance: number): number {
  return 2 * distance * 1000 * Math.tan(((arcMinutes / 60 / 2) * Math.PI) / 180)
}

/** Height of a fastener's number on a sheet of a width, in whole px rounded up; `Sheet.capitalPx` is meant to be this. */
export function numberCapital(reader: Reader, widthPx: number): number {
  const { least, most } = numbers[reader.distance]
  const wanted = widthPx * shareOfSheet[reader.distance]
  return Math.ceil(Math.min(Math.max(wanted, inPx(reader, least)), inPx(reader, most)))
}

/** Size in px, rounded up, of the program's type whose capitals are 20 arc minutes high. */
export function readingFontSize(reader: Reader): number {
  return Math.ceil(inPx(reader, readAtEase) / capitalShare)
}

function inPx({ distance, pxPerMm }: Reader, arcMinutes: number): number {
  return heightSeenAt(arcMinutes, distance) * pxPerMm
}
