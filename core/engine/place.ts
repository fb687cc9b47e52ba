import type { Phrase } from '../problem/index.ts'
import { anyText } from './translations.ts'

type PlaceInFile = Extract<Phrase, { readonly code: 'placeInFile' }>

/** A path as programs write it: `procedures[0].passes[2].target`. */
export function pathText(path: readonly PropertyKey[]): string {
  return path.reduce<string>((text, part) => {
    if (typeof part === 'number') return `${text}[${part}]`
    return text === '' ? String(part) : `${text}.${String(part)}`
  }, '')
}

/** The same path as people say it, by the ids in the file: `procedure “case”, pass 3, “target”`. */
export function placeInFile(input: unknown, path: readonly PropertyKey[]): PlaceInFile {
  const parts: PlaceInFile['facts']['parts'][number][] = []
  let value = input
  path.forEach((part, depth) => {
    value = inside(value, part)
    if (typeof part === 'number') {
      parts.push({ list: String(path[depth - 1]), name: nameOf(value), number: part + 1 })
      return
    }
    if (typeof path[depth + 1] !== 'number') parts.push({ list: null, name: String(part), number: 0 })
  })
  return { code: 'placeInFile', facts: { parts } }
}

/** The value at a path; undefined where there is none. */
export function valueAt(input: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce(inside, input)
}

function inside(value: unknown, part: PropertyKey): unknown {
  if (typeof value !== 'object' || value === null || !Object.hasOwn(value, part)) return undefined
  return (value as Record<PropertyKey, unknown>)[part]
}

function nameOf(entry: unknown): string | null {
  for (const key of ['id', 'mark', 'grade', 'name']) {
    const name = anyText(inside(entry, key))
    if (name !== null && name !== '' && name.length <= 40) return name
  }
  return null
}
