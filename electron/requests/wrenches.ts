import { writtenWrench, type WrittenWrench } from '../../core/contract/index.ts'
import { done } from '../../core/problem/index.ts'
import type { Store } from '../store/index.ts'
import type { HandlersOf } from './handlers.ts'

/**
 * The shop's wrenches, kept beside the preferences. One that this program cannot read, as a newer one may have written it,
 * is not in the list, but stays kept whatever becomes of the others.
 */
export function wrenchRequests(store: Store): HandlersOf<'wrenches'> {
  const kept = (): { readable: WrittenWrench[]; unreadable: unknown[] } => {
    const all = store.preferences()['wrenches']
    const readable: WrittenWrench[] = []
    const unreadable: unknown[] = []
    for (const each of Array.isArray(all) ? (all as unknown[]) : []) {
      const read = writtenWrench.safeParse(each)
      if (read.success) readable.push(read.data)
      else unreadable.push(each)
    }
    return { readable, unreadable }
  }
  return {
    'wrenches.list': () => done(kept().readable),
    'wrenches.keep': ({ wrenches }) => {
      const written = store.keepPreferences({ wrenches: [...wrenches, ...kept().unreadable] })
      return written.ok ? done(kept().readable) : written
    },
  }
}
