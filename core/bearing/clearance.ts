import type { Band } from '../engine/index.ts'
import type { Span } from '../words/index.ts'
import {
  difference,
  fixedAmount,
  inMicrometres,
  nanometres,
  shortAmount,
  sum,
  type Length,
} from '../quantity/index.ts'

/** Sizes from `least` to `most`, both included. */
export interface Range {
  readonly least: Length
  readonly most: Length
}

/** An oil clearance on the diameter. Below zero the journal is larger than the room for it. */
export interface Clearance extends Range {
  /** The middle of the range. */
  readonly nominal: Length
  /** Where most bearings will lie: see `oilClearance`. */
  readonly likely: Range
}

/** A band as the range that the worst case is taken from: its open lower edge is counted in. */
export function rangeOf(band: Band): Range {
  return { least: band.over, most: band.upTo }
}

/** A size that is known, as a range without width. */
export function exactly(size: Length): Range {
  return { least: size, most: size }
}

/**
 * C = B − J − w_upper − w_lower: the housing bore with its cap tight, less the journal, less the wall at the crown of
 * each half.
 *
 * `least` and `most` are the worst case: every size at the end of its range that hurts. `likely` is the middle plus and
 * minus the root of the sum of the squares of the four half ranges (the statistical tolerance stack of the handbooks),
 * the sizes taken as independent. Where a half range is k = 3 standard deviations of a part, so is the spread of
 * the clearance (997 bearings of 1 000, normal distribution); where the parts fill their ranges evenly, as parts sorted
 * into classes do, k is √3 and about 9 of 10 lie inside.
 */
export function oilClearance(bore: Range, journal: Range, upperWall: Range, lowerWall: Range): Clearance {
  const { least, most } = worstCase(bore, journal, upperWall, lowerWall)
  const nominal = nanometres(Math.round((least + most) / 2))
  const halfRanges = [bore, journal, upperWall, lowerWall].map((range) => (range.most - range.least) / 2)
  const spread = nanometres(Math.round(Math.hypot(...halfRanges)))
  return { least, most, nominal, likely: { least: difference(nominal, spread), most: sum(nominal, spread) } }
}

/** The worst case of `oilClearance` alone. */
export function worstCase(bore: Range, journal: Range, upperWall: Range, lowerWall: Range): Range {
  return {
    least: difference(bore.least, sum(journal.most, upperWall.most, lowerWall.most)),
    most: difference(bore.most, sum(journal.least, upperWall.least, lowerWall.least)),
  }
}

/** `24 to 48 µm`, or `23.96 to 48 µm`: to the nanometre, so that a range never looks inside a limit that it leaves. */
export function rangeSpan({ least, most }: Range): Span {
  return { from: shortAmount(inMicrometres(least), '', 3), upTo: shortAmount(inMicrometres(most), 'µm', 3) }
}

/** `30 to 40 µm`: rounded, for what is only likely. */
export function wholeSpan({ least, most }: Range): Span {
  return { from: fixedAmount(inMicrometres(least), '', 0), upTo: fixedAmount(inMicrometres(most), 'µm', 0) }
}
