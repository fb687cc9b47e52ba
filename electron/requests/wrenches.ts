import { writtenWrench, type WrittenWrench } from '../../core/contract/index.ts'
import { done } from '../../core/problem/index.ts'
import type { Store } from '../store/index.ts'
import type { HandlersOf } from './handlers.ts'

/** The shop's wrenches, kept beside the preferences. One that can no longer be read is left out of the list. */
export function wrenchRequests(store: Store): HandlersOf<'wrenches'> {
  const list = (): WrittenWrench[] => {
    const kept = store.preferences()['wrenches']
    return (Array.isArray(kept) ? kept : []).flatMap((each) => {
      const read = writtenWrench.safeParse(each)
      return read.success ? [read.data] : []
    })
  }
  return {
    'wrenches.list': () => done(list()),
    'wrenches.keep': ({ wrenches }) => {
      const kept = store.keepPreferences({ wrenches })
      return kept.ok ? done(list()) : kept
    },
  }
}
