import { anyText, placeInSpec, type SpecDocument } from '../engine/index.ts'
import type { Phrase } from '../problem/index.ts'
import type { Language } from '../words/index.ts'
import { isSame } from './changes.ts'
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
const notCompared: ReadonlySet<string> = new Set(['checks', 'pages'])

/**
 * What differs between two revisions, value by value. Entries of a list are known again by their id, mark or grade, else by their
 * place; where the same entries stand in another order, that is one difference.
 */
export function differencesBetween(
  before: SpecDocument,
  after: SpecDocument,
  language: Language,
): readonly Difference[] {
  const found: Difference[] = []
  const tell = (of: SpecDocument, path: Path, old: Json | undefined, fresh: Json | undefined) =>
    void found.push({
      place: placeInSpec(of, path),
      before: shown(numbered(before, path, old)),
      after: shown(numbered(after, path, fresh)),
    })

  function shown(value: Json | undefined): string | null {
    return value === undefined ? null : textOf(value, language)
  }

  function compare(old: Json | undefined, fresh: Json | undefined, oldPath: Path, path: Path): void {
    if (isSame(old, fresh)) return
    if (old === undefined || fresh === undefined)
      tell(fresh === undefined ? before : after, fresh === undefined ? oldPath : path, old, fresh)
    else if (isList(old) && isList(fresh) && [...old, ...fresh].every((each) => keyOf(each) !== null))
      compareEntries(old, fresh, oldPath, path)
    else if (isGroup(old) && isGroup(fresh) && !isTranslated(old) && !isTranslated(fresh))
      for (const key of new Set([...Object.keys(old), ...Object.keys(fresh)])) {
        if (path.length === 0 && notCompared.has(key)) continue
        compare(own(old, key), own(fresh, key), [...oldPath, key], [...path, key])
      }
    else if (isList(old) && isList(fresh) && old.length === fresh.length && old.every(isGroup))
      for (const [at, each] of old.entries()) compare(each, fresh[at], [...oldPath, at], [...path, at])
    else tell(after, path, old, fresh)
  }

  function compareEntries(old: readonly Json[], fresh: readonly Json[], oldPath: Path, path: Path): void {
    const places = new Map(old.map((each, at) => [keyOf(each), at]))
    const kept = fresh.flatMap((each) => places.get(keyOf(each)) ?? [])
    if (kept.some((place, at) => at > 0 && place < kept[at - 1]!))
      tell(after, path, old.map(keyOf), fresh.map(keyOf))
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

function own(group: Group, key: string): Json | undefined {
  return Object.hasOwn(group, key) ? group[key] : undefined
}

/** What an entry of a list is known by; null where it has no name of its own. */
function keyOf(entry: Json): string | null {
  if (!isGroup(entry)) return null
  for (const key of ['id', 'mark', 'grade']) {
    const name = own(entry, key)
    if (typeof name === 'string') return name
  }
  return null
}

const mostCharacters = 140

/** A value as it is shown in a table: a text as it is, of a group what stands in it, as far as there is room. */
function textOf(value: Json, language: Language): string {
  const whole = leaves(value, language).join(', ')
  return whole.length > mostCharacters ? `${whole.slice(0, mostCharacters)}…` : whole
}

function leaves(value: Json, language: Language): readonly string[] {
  if (typeof value !== 'object' || value === null) return [String(value)]
  if (isList(value)) return value.flatMap((each) => leaves(each, language))
  const translated = isTranslated(value) ? (own(value, language) ?? anyText(value)) : null
  if (typeof translated === 'string') return [translated]
  return Object.values(value).flatMap((each) => (each === undefined ? [] : leaves(each, language)))
}
