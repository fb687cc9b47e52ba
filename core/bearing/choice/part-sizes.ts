import type { Fit } from '../../engine/index.ts'
import { done, refused, type Outcome } from '../../problem/index.ts'
import { lengthAmount } from '../../quantity/index.ts'
import { exactly } from '../clearance.ts'
import { knownMark, sizeOf } from './marked.ts'
import type { MeasuredSize } from '../sizes/measured.ts'
import type { Sizes } from './pairs.ts'

/** What is known of one bearing's two parts: the mark, null where it is worn away, and the readings, null where none were taken. */
export interface KnownParts {
  readonly marks: { readonly housing: string | null; readonly journal: string | null }
  readonly measured: { readonly bore: MeasuredSize | null; readonly journal: MeasuredSize | null }
}

/**
 * Bore and journal of one bearing: of a part that was measured the size that counts, the smallest bore and the largest
 * journal; of any other the band of its mark.
 *
 * Refuses `mark-worn`, `mark-unknown`, `mark-without-band` for a part that was not measured, `bore-not-above-journal`.
 */
export function sizesFrom(fit: Fit, place: string, { marks, measured }: KnownParts): Outcome<Sizes> {
  const bore =
    measured.bore === null ? bandOf(fit, place, 'housing', marks.housing) : done(exactly(measured.bore.least))
  if (!bore.ok) return bore
  const journal =
    measured.journal === null
      ? bandOf(fit, place, 'journal', marks.journal)
      : done(exactly(measured.journal.most))
  if (!journal.ok) return journal
  if (bore.value.least > journal.value.most) return done({ bore: bore.value, journal: journal.value })
  return refused('bore-not-above-journal', {
    place,
    bore: lengthAmount(bore.value.least, 'mm'),
    journal: lengthAmount(journal.value.most, 'mm'),
  })
}

function bandOf(fit: Fit, place: string, part: 'housing' | 'journal', mark: string | null) {
  const known = knownMark(fit[part], place, mark)
  return known.ok ? sizeOf(fit[part], place, known.value) : known
}
