import { z } from 'zod'
import type { Outcome } from '../../../core/problem/index.ts'
import type { Store } from '../../store/index.ts'

const kept = z.record(z.string(), z.int().min(1))
const name = 'importedUnderEarlierRules'

/**
 * Builds that came from elsewhere with an entry that only an earlier version allowed, with the number of that entry. Kept
 * beside the preferences: one made here is not among them, and can be finished.
 */
function builds(store: Store): Readonly<Record<string, number>> {
  const read = kept.safeParse(store.preferences()[name])
  return read.success ? read.data : {}
}

/** The entry of an imported build that the rules of today would not allow; null for none. */
export function underEarlierRules(store: Store, build: string): number | null {
  return builds(store)[build] ?? null
}

export function keepUnderEarlierRules(store: Store, build: string, entry: number): Outcome<null> {
  return store.keepPreferences({ [name]: { ...builds(store), [build]: entry } })
}
