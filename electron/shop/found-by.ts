import { searchWords, type Mention } from '../../core/builds/index.ts'
import { numberWord } from '../store/index.ts'
import type { Consignment } from './archive.ts'

/** The words that a build is found by after a consignment: those of its entries, and its number where it begins with it. */
export function foundBy({
  entries,
  listed,
  mentions,
}: Pick<Consignment, 'entries' | 'listed' | 'mentions'>): readonly {
  readonly kind: Mention['kind'] | 'number'
  readonly word: string
}[] {
  if (entries[0]?.seq !== 1) return mentions
  const number = searchWords(`${listed.year}-${numberWord(listed.ordinal)}`)
  return [...mentions, ...number.map((word) => ({ kind: 'number' as const, word }))]
}
