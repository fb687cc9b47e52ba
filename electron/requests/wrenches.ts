import { writtenWrench, type WrittenWrench } from '../../core/contract/index.ts'
import { done } from '../../core/problem/index.ts'
import type { Store } from '../store/index.ts'
import type { HandlersOf } from './handlers.ts'

/**
 * The shop's wrenches, kept beside the preferences. One that this program cannot read, as a newer one may have written it,
 * is not in the list, but stays kept whatever becomes of the others.
 */
export function wrenchRequests(store: Store): HandlersOf<'wrenches'> {
  const all = (): readonly unknown[] => {
    const kept = store.preferences()['wrenches']
    return Array.isArray(kept) ? (kept as unknown[]) : []
  }
  const isIt = (id: string) => (each: unknown) => writtenWrench.safeParse(each).data?.id === id
  const list = (): WrittenWrench[] =>
    all().flatMap((each) => {
      const read = writtenWrench.safeParse(each)
      return read.success ? [read.data] : []
    })
  const keep = (wrenches: readonly unknown[]) => {
    const kept = store.keepPreferences({ wrenches })
    return kept.ok ? done(list()) : kept
  }
  return {
    'wrenches.list': () => done(list()),
    'wrenches.keep': ({ wrench }) => {
      const at = all().findIndex(isIt(wrench.id))
      return keep(at < 0 ? [...all(), wrench] : all().with(at, wrench))
    },
    'wrenches.remove': ({ id }) => {
      const isThis = isIt(id)
      return keep(all().filter((each) => !isThis(each)))
    },
  }
}
