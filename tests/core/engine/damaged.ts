import fc from 'fast-check'
import { demoDraft } from './demo.ts'

export type Json = null | boolean | number | string | Json[] | { [key: string]: Json }

/** Every place in a JSON value, as the keys that lead to it. */
export function placesIn(
  value: Json,
  path: readonly (string | number)[] = [],
): (readonly (string | number)[])[] {
  if (typeof value !== 'object' || value === null) return [path]
  const entries = Array.isArray(value) ? [...value.entries()] : Object.entries(value)
  return [path, ...entries.flatMap(([key, inner]) => placesIn(inner, [...path, key]))]
}

/** With another value at a place; without what stands there where none is given. */
export function changed(value: Json, path: readonly (string | number)[], to: Json | undefined): Json {
  const [key, ...rest] = path
  if (key === undefined || typeof value !== 'object' || value === null) return to ?? null
  if (Array.isArray(value)) {
    const copy = [...value]
    if (rest.length === 0 && to === undefined) copy.splice(Number(key), 1)
    else copy[Number(key)] = changed(copy[Number(key)] ?? null, rest, to)
    return copy
  }
  const entries = Object.entries(value).filter(
    ([name]) => rest.length > 0 || to !== undefined || name !== key,
  )
  return Object.fromEntries(
    entries.map(([name, inner]) => [name, name === key ? changed(inner, rest, to) : inner]),
  )
}

const hostile = fc.oneof(
  fc.constantFrom<Json[]>(
    null,
    true,
    0,
    -1,
    1e308,
    '',
    '0 mm',
    '-1 mm',
    '1e999 mm',
    'nan', // no number either, and told apart from one that the program made
    '99999 mm',
    '0.000001 mm',
    '0.0001 µm',
    '1 N·m',
    '99999 N·m',
    '4000 °',
    '-5 °',
    '0 °',
    'constructor',
    '__proto__',
    'toString',
    '\ud800',
    '\u0000',
    '“',
    [],
    {},
    [[]],
    [null, null],
    'M2',
    'case-1',
    'mains',
  ),
  fc.string({ maxLength: 60 }),
  fc.jsonValue({ maxDepth: 3 }) as fc.Arbitrary<Json>,
)

/** A real spec with up to three places in it changed, or taken away. */
export const damaged = fc.constantFrom('skerry-3', 'tarn-4').chain((id) => {
  const draft = demoDraft(id) as unknown as Json
  const change = fc.tuple(fc.constantFrom(...placesIn(draft)), fc.option(hostile, { nil: undefined }))
  return fc
    .array(change, { minLength: 1, maxLength: 3 })
    .map((changes) => changes.reduce((spec, [path, to]) => changed(spec, path, to), draft))
})

/** A real spec with one to four of its values made larger or smaller: a slip of the pen that no schema sees. */
export const misprinted = fc.constantFrom('skerry-3', 'tarn-4').chain((id) => {
  const draft = demoDraft(id) as unknown as Json
  const values = placesIn(draft).filter((path) => /^\d[\d.]* \S+$/.test(textAt(draft, path)))
  const change = fc.tuple(fc.constantFrom(...values), fc.constantFrom(0.1, 0.5, 0.98, 1.02, 2, 10))
  return fc.array(change, { minLength: 1, maxLength: 4 }).map((changes) =>
    changes.reduce((spec, [path, factor]) => {
      const [number, unit] = textAt(spec, path).split(' ')
      return changed(spec, path, `${Number((Number(number) * factor).toPrecision(6))} ${unit}`)
    }, draft),
  )
})
/** Empty where another kind of value stands there. */
function textAt(value: Json, path: readonly (string | number)[]): string {
  const found = valueAt(value, path)
  return typeof found === 'string' ? found : ''
}

export function valueAt(value: Json, path: readonly (string | number)[]): Json | undefined {
  return path.reduce<Json | undefined>((at, key) => (at as { [key: string]: Json } | undefined)?.[key], value)
}
