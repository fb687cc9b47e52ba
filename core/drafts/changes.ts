import { isList, pointerOf, type Json, type Patch } from './patch.ts'

type Keys = readonly (string | number)[]

/**
 * The patches that make one document of another, none for two that are alike. Of lists, what is alike at the beginning and at the
 * end is left alone, so that an entry more or less is one patch.
 */
export function changesBetween(before: Json, after: Json, at: Keys = []): readonly Patch[] {
  if (before === after) return []
  if (typeof before === 'object' && before !== null && typeof after === 'object' && after !== null) {
    if (isList(before) && isList(after)) return ofLists(before, after, at)
    if (!isList(before) && !isList(after)) return ofGroups(before, after, at)
  }
  return [{ op: 'replace', path: pointerOf(at), value: after }]
}

type Group = { readonly [key: string]: Json | undefined }

function ofGroups(before: Group, after: Group, at: Keys): readonly Patch[] {
  const gone = Object.keys(before).filter(
    (key) => before[key] !== undefined && (!Object.hasOwn(after, key) || after[key] === undefined),
  )
  return [
    ...gone.map((key): Patch => ({ op: 'remove', path: pointerOf([...at, key]) })),
    ...Object.entries(after).flatMap(([key, value]): readonly Patch[] => {
      if (value === undefined) return []
      const old = Object.hasOwn(before, key) ? before[key] : undefined
      return old === undefined
        ? [{ op: 'add', path: pointerOf([...at, key]), value }]
        : changesBetween(old, value, [...at, key])
    }),
  ]
}

function ofLists(before: readonly Json[], after: readonly Json[], at: Keys): readonly Patch[] {
  const shorter = Math.min(before.length, after.length)
  let head = 0
  while (head < shorter && isSame(before[head], after[head])) head += 1
  let tail = 0
  while (tail < shorter - head && isSame(before.at(-1 - tail), after.at(-1 - tail))) tail += 1
  const old = before.slice(head, before.length - tail)
  const fresh = after.slice(head, after.length - tail)
  const both = Math.min(old.length, fresh.length)
  return [
    ...fresh.slice(0, both).flatMap((value, i) => changesBetween(old[i]!, value, [...at, head + i])),
    // From the last on, so that those before keep their places.
    ...old
      .slice(both)
      .map((_, i): Patch => ({ op: 'remove', path: pointerOf([...at, head + old.length - 1 - i]) })),
    ...fresh
      .slice(both)
      .map((value, i): Patch => ({ op: 'add', path: pointerOf([...at, head + both + i]), value })),
  ]
}

export function isSame(one: Json | undefined, other: Json | undefined): boolean {
  if (one === other) return true
  if (typeof one !== 'object' || one === null || typeof other !== 'object' || other === null) return false
  if (isList(one))
    return (
      isList(other) && one.length === other.length && one.every((each, place) => isSame(each, other[place]))
    )
  if (isList(other)) return false
  const keys = Object.keys(one).filter((key) => one[key] !== undefined)
  const count = Object.values(other).filter((value) => value !== undefined).length
  return (
    keys.length === count && keys.every((key) => Object.hasOwn(other, key) && isSame(one[key], other[key]))
  )
}
