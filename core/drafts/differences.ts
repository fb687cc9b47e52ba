import { anyText, placeInSpec, type SpecDocument } from '../engine/index.ts'
import type { Phrase } from '../problem/index.ts'
import type { Language, Words } from '../words/index.ts'
import { isSame } from './changes.ts'
import { choiceTextAt } from './choice-text-at.ts'
import { isList, type Json } from './patch.ts'

/** One thing that differs between two specs, with what stands there in each; null where nothing does. */
export interface Difference {
  readonly place: Phrase
  readonly before: string | null
  readonly after: string | null
}

type Path = readonly (string | number)[]
type Group = { readonly [key: string]: Json | undefined }

/** Kept beside the values, and not values themselves. */
const notCompared: ReadonlySet<string> = new Set(['checks', 'pages', 'typedBy'])

/**
 * What differs between two revisions, value by value. Entries of a list are known again by their id, mark or grade, else by their
 * place; where the same entries stand in another order, that is one difference. Choices are called what their forms call them.
 */
export function differencesBetween(
  words: Words,
  before: SpecDocument,
  after: SpecDocument,
  language: Language,
): readonly Difference[] {
  const found: Difference[] = []
  const addDifference = (of: SpecDocument, path: Path, old: Json | undefined, fresh: Json | undefined) =>
    void found.push({
      place: placeInSpec(of, path, language),
      before: shownValue(path, numbered(before, path, old)),
      after: shownValue(path, numbered(after, path, fresh)),
    })

  function shownValue(path: Path, value: Json | undefined): string | null {
    return value === undefined ? null : shortened(leaves(value, path).join(', '))
  }

  /** A value in texts: of a group what stands in it. */
  function leaves(value: Json, path: Path): readonly string[] {
    if (typeof value !== 'object' || value === null)
      return [choiceTextAt(words, path, value) ?? String(value)]
    if (isList(value)) return value.flatMap((each, at) => leaves(each, [...path, at]))
    const translated = isTranslated(value) ? anyText(value, language) : null
    if (translated !== null) return [translated]
    return Object.entries(value).flatMap(([key, each]) =>
      each === undefined ? [] : leaves(each, [...path, key]),
    )
  }

  function compare(old: Json | undefined, fresh: Json | undefined, oldPath: Path, path: Path): void {
    if (isSame(old, fresh)) return
    if (old === undefined || fresh === undefined)
      addDifference(fresh === undefined ? before : after, fresh === undefined ? oldPath : path, old, fresh)
    else if (isList(old) && isList(fresh) && [...old, ...fresh].every((each) => keyOf(each) !== null))
      compareEntries(old, fresh, oldPath, path)
    else if (isGroup(old) && isGroup(fresh) && !isTranslated(old) && !isTranslated(fresh))
      for (const key of new Set([...Object.keys(old), ...Object.keys(fresh)])) {
        if (path.length === 0 && notCompared.has(key)) continue
        compare(ownValue(old, key), ownValue(fresh, key), [...oldPath, key], [...path, key])
      }
    else if (isList(old) && isList(fresh) && old.length === fresh.length && old.every(isGroup))
      for (const [at, each] of old.entries()) compare(each, fresh[at], [...oldPath, at], [...path, at])
    else addDifference(after, path, old, fresh)
  }

  function compareEntries(old: readonly Json[], fresh: readonly Json[], oldPath: Path, path: Path): void {
    const places = new Map(old.map((each, at) => [keyOf(each), at]))
    const kept = fresh.flatMap((each) => places.get(keyOf(each)) ?? [])
    if (kept.some((place, at) => at > 0 && place < kept[at - 1]!))
      addDifference(after, path, old.map(keyOf), fresh.map(keyOf))
    for (const [at, each] of fresh.entries()) {
      const place = places.get(keyOf(each))
      compare(place === undefined ? undefined : old[place], each, [...oldPath, place ?? at], [...path, at])
    }
    const keys = new Set(fresh.map(keyOf))
    for (const [at, each] of old.entries())
      if (!keys.has(keyOf(each))) compare(each, undefined, [...oldPath, at], path)
  }

  compare(before, after, [], [])
  return found
}

/** An order by the numbers that stand on the drawing, and not by what the file calls its fasteners. */
function numbered({ fasteners }: SpecDocument, path: Path, value: Json | undefined): Json | undefined {
  if (path.at(-1) !== 'sequence' || value === undefined || !isList(value)) return value
  const numbers = new Map<Json, string>(fasteners.map(({ id, number }) => [id, number]))
  return value.map((each) => numbers.get(each) ?? each)
}

function isGroup(value: Json): value is Group {
  return typeof value === 'object' && value !== null && !isList(value)
}

function isTranslated(value: Group): boolean {
  return 'en' in value || 'de' in value || 'es' in value
}

function ownValue(group: Group, key: string): Json | undefined {
  return Object.hasOwn(group, key) ? group[key] : undefined
}

/** What an entry of a list is known by; null where it has no name of its own. */
function keyOf(entry: Json): string | null {
  if (!isGroup(entry)) return null
  for (const key of ['id', 'mark', 'grade']) {
    const name = ownValue(entry, key)
    if (typeof name === 'string') return name
  }
  return null
}

const mostCharacters = 140

/** As far as there is room in a table. */
function shortened(whole: string): string {
  return whole.length > mostCharacters ? `${whole.slice(0, mostCharacters)}…` : whole
}
