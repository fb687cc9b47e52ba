import type { Measure } from '../../engine/index.ts'
import { lengthOf, type Length } from '../../quantity/index.ts'

/** What is to be done about a ring gap outside its limits. All lengths are above zero. */
export type RingGapAdvice =
  /** So much at least is filed off the ends together, and so much at most; null where no most is known. Then it is measured again. */
  | { readonly what: 'file'; readonly least: Length; readonly most: Length | null }
  /** So much too wide, and by how much wider than its size the bore would have to be for that alone. */
  | { readonly what: 'replace'; readonly by: Length; readonly boreWiderBy: Length }

/**
 * What a gap outside its limits asks for; null where it is inside, or there are no limits on that side. A ring closes around its bore:
 * the gap opens by π times what the bore is wider (circumference over diameter).
 */
export function ringGapAdvice(measure: Pick<Measure, 'new' | 'service'>, gap: Length): RingGapAdvice | null {
  const { least, most } = measure.new
  const used = { ...measure.new, ...measure.service }
  if (used.least !== undefined && gap < used.least) {
    const from = least ?? used.least
    return { what: 'file', least: apart(gap, from), most: most === undefined ? null : apart(gap, most) }
  }
  if (used.most === undefined || gap <= used.most) return null
  const right = most ?? used.most
  return {
    what: 'replace',
    by: apart(right, gap),
    boreWiderBy: lengthOf((gap - right) / Math.PI / 1e6, 'mm'),
  }
}

function apart(from: Length, to: Length): Length {
  return lengthOf((to - from) / 1e6, 'mm')
}
