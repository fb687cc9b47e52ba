import type { Phrase } from '../problem/index.ts'
import type { Language } from '../words/index.ts'
import { anyText } from './translations.ts'

type PlaceInFile = Extract<Phrase, { readonly code: 'placeInFile' }>
type PlaceInSpec = Extract<Phrase, { readonly code: 'placeInSpec' }>
type NameInSpec = Extract<Phrase, { readonly code: 'nameInSpec' }>
type PlaceParts = PlaceInFile['facts']['parts']

/** A path as programs write it: `procedures[0].passes[2].target`. */
export function pathText(path: readonly PropertyKey[]): string {
  return path.reduce<string>((text, part) => {
    if (typeof part === 'number') return `${text}[${part}]`
    return text === '' ? String(part) : `${text}.${String(part)}`
  }, '')
}

/** The same path by the keys and ids that stand in the file: `procedure “case”, pass 3, “target”`. */
export function placeInFile(input: unknown, path: readonly PropertyKey[]): PlaceInFile {
  return { code: 'placeInFile', facts: { parts: partsOf(input, path, ['id', 'mark', 'grade', 'name']) } }
}

/** The same path as people say it, by what things are called on the screen, in the language where they have it: `procedure “Case joint”, pass 3, value`. */
export function placeInSpec(input: unknown, path: readonly PropertyKey[], language?: Language): PlaceInSpec {
  return {
    code: 'placeInSpec',
    facts: { parts: partsOf(input, path, ['name', 'mark', 'grade', 'number', 'id'], language) },
  }
}

/** What something is called in a spec, for a sentence in any language; without a name it is called `otherwise`. */
export function nameInSpec(written: unknown, otherwise = ''): NameInSpec {
  const name = (language: Language) => anyText(written, language) ?? otherwise
  return { code: 'nameInSpec', facts: { en: name('en'), de: name('de'), es: name('es') } }
}

/** The keys of a path that `pathText` wrote. */
export function keysOfPath(path: string): readonly (string | number)[] {
  return path
    .split(/[.[\]]+/)
    .filter((key) => key !== '')
    .map((key) => (/^\d+$/.test(key) ? Number(key) : key))
}

function partsOf(
  input: unknown,
  path: readonly PropertyKey[],
  names: readonly string[],
  language?: Language,
): PlaceParts {
  const parts: PlaceParts[number][] = []
  let value = input
  path.forEach((part, depth) => {
    value = inside(value, part)
    if (typeof part === 'number') {
      parts.push({ list: String(path[depth - 1]), name: nameOf(value, names, language), number: part + 1 })
      return
    }
    if (typeof path[depth + 1] !== 'number') parts.push({ list: null, name: String(part), number: 0 })
  })
  return parts
}

/** The value at a path; undefined where there is none. */
export function valueAt(input: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce(inside, input)
}

function inside(value: unknown, part: PropertyKey): unknown {
  if (typeof value !== 'object' || value === null || !Object.hasOwn(value, part)) return undefined
  return (value as Record<PropertyKey, unknown>)[part]
}

function nameOf(entry: unknown, names: readonly string[], language?: Language): string | null {
  for (const key of names) {
    const name = anyText(inside(entry, key), language)
    if (name !== null && name !== '' && name.length <= 40) return name
  }
  return null
}
