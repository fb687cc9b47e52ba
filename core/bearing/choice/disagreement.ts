import type { Band, Fit, MarkedPart } from '../../engine/index.ts'
import { problem, type Problem } from '../../problem/index.ts'
import { lengthAmount, nanometres, type Length } from '../../quantity/index.ts'
import type { MeasuredSize } from '../sizes/measured.ts'

/**
 * The mark in whose band a size falls: over its lower edge, up to and including its upper one; the least of all bands
 * also takes its own lower edge. Null for a size in no band.
 */
export function markOf(part: MarkedPart, size: Length): string | null {
  const bands = part.marks.flatMap(({ mark, band }) => (band === undefined ? [] : [{ mark, ...band }]))
  const lowestSize = Math.min(...bands.map(({ over }) => over))
  const holds = (over: number) => size > over || (size === over && over === lowestSize)
  return bands.find(({ over, upTo }) => holds(over) && size <= upTo)?.mark ?? null
}

/** The sizes that a mark stands for; null for a mark that is worn away, or to which the spec gives none. */
export function bandOfMark(part: MarkedPart, mark: string | null): Band | null {
  return part.marks.find((each) => each.mark === mark)?.band ?? null
}

/**
 * Which of a bearing's marks its readings speak against: the mean size, which is what a mark stands for, lies outside the
 * mark's band by more than the readings are sure to. A person decides which of them counts; nothing is chosen here.
 */
export function disagreements(
  fit: Fit,
  place: string,
  marks: { readonly housing: string | null; readonly journal: string | null },
  measured: { readonly bore: MeasuredSize; readonly journal: MeasuredSize },
  uncertainty: Length,
): readonly Problem[] {
  return [
    ...disagreement(fit.housing, place, marks.housing, measured.bore.mean, uncertainty),
    ...disagreement(fit.journal, place, marks.journal, measured.journal.mean, uncertainty),
  ]
}

/** As `disagreements`, of one part. */
export function disagreement(
  part: MarkedPart,
  place: string,
  mark: string | null,
  size: Length,
  uncertainty: Length,
): readonly Problem[] {
  const band = bandOfMark(part, mark)
  if (mark === null || band === null) return []
  const wouldBe = markOf(part, size)
  if (wouldBe === mark || (size + uncertainty > band.over && size - uncertainty <= band.upTo)) return []
  const text = (length: number) => lengthAmount(nanometres(length), 'mm', 4)
  return [
    problem('mark-against-size', {
      place,
      part: part.name,
      mark,
      least: text(band.over),
      most: text(band.upTo),
      size: text(size),
      wouldBe,
    }),
  ]
}
