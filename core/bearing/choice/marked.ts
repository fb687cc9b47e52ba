import type { Fit, MarkedPart } from '../../engine/index.ts'
import { done, refused, type Outcome } from '../../problem/index.ts'
import { rangeOf, type Range } from '../clearance.ts'
import type { Sizes } from './pairs.ts'

/** The marks of both parts of one bearing, both readable and both in the spec. */
export interface MarkPair {
  readonly housing: string
  readonly journal: string
}

/** Refuses `mark-worn`, `mark-unknown`. `place` is named in the problem. */
export function knownMarks(
  fit: Fit,
  place: string,
  housing: string | null,
  journal: string | null,
): Outcome<MarkPair> {
  const housingMark = knownMark(fit.housing, place, housing)
  if (!housingMark.ok) return housingMark
  const journalMark = knownMark(fit.journal, place, journal)
  return journalMark.ok ? done({ housing: housingMark.value, journal: journalMark.value }) : journalMark
}

/** The bands of both marks. Refuses `mark-without-band`. */
export function sizesOf(fit: Fit, place: string, marks: MarkPair): Outcome<Sizes> {
  const bore = sizeOf(fit.housing, place, marks.housing)
  if (!bore.ok) return bore
  const journal = sizeOf(fit.journal, place, marks.journal)
  return journal.ok ? done({ bore: bore.value, journal: journal.value }) : journal
}

/** Refuses `mark-worn`, `mark-unknown`. */
export function knownMark(part: MarkedPart, place: string, mark: string | null): Outcome<string> {
  if (mark === null) return refused('mark-worn', { place, part: part.name })
  const known = part.marks.map((each) => each.mark)
  if (known.includes(mark)) return done(mark)
  return refused('mark-unknown', { position: place, part: part.name, mark, known })
}

/** The band of a mark. Refuses `mark-without-band`. */
export function sizeOf(part: MarkedPart, place: string, mark: string): Outcome<Range> {
  const band = part.marks.find((each) => each.mark === mark)?.band
  return band === undefined
    ? refused('mark-without-band', { place, part: part.name, mark })
    : done(rangeOf(band))
}
