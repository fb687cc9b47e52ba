import type { Fit } from '../../engine/index.ts'
import type { BuildState } from '../events/state.ts'

type Work<Result> = (state: BuildState, fit: Fit, about: string) => Result

/**
 * Remembers what follows from the marks and readings of a build and from nothing else: they stay the same objects over any
 * number of pulls, and every view of every pull asks again.
 */
export function memoized<Result>(work: Work<Result>): Work<Result> {
  const known = new WeakMap<object, WeakMap<object, WeakMap<Fit, Map<string, Result>>>>()
  return (state, fit, about) => {
    const byMarks = entry(known, state.bearings, () => new WeakMap())
    const byFit = entry(byMarks, state.marks, () => new WeakMap())
    return entry(
      entry(byFit, fit, () => new Map<string, Result>()),
      about,
      () => work(state, fit, about),
    )
  }
}

function entry<Key, Value>(
  map: { get(key: Key): Value | undefined; set(key: Key, value: Value): unknown },
  key: Key,
  make: () => Value,
): Value {
  const found = map.get(key)
  if (found !== undefined) return found
  const made = make()
  map.set(key, made)
  return made
}
