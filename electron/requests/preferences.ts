import { firstPreferences, preferences, type Preferences } from '../../core/contract/index.ts'
import { done } from '../../core/problem/index.ts'
import type { Store } from '../store/index.ts'
import type { HandlersOf } from './handlers.ts'

/** What the bench keeps about how things are shown. A kept value that no longer fits gives way to the first one. */
export function preferenceRequests(store: Store): HandlersOf<'preferences'> {
  const read = (): Preferences => {
    const kept = store.preferences()
    const entries = Object.entries(preferences.shape).map(([name, schema]) => {
      const value = schema.safeParse(kept[name])
      return [name, value.success ? value.data : firstPreferences[name as keyof Preferences]]
    })
    return preferences.parse(Object.fromEntries(entries))
  }
  return {
    'preferences.read': () => done(read()),
    'preferences.keep': (change) => {
      const kept = store.keepPreferences(change)
      return kept.ok ? done(read()) : kept
    },
  }
}
