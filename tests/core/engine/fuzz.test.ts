import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { sentenceOf, type Problem } from '../../../core/problem/index.ts'
import { readSpec } from '../../../core/engine/index.ts'
import { audit } from '../../../core/audit/index.ts'
import { demoDraft, demoText } from './demo.ts'
import { checkProperty } from '../../property.ts'

type Json = null | boolean | number | string | Json[] | { [key: string]: Json }

/** Every place in a JSON value, as the keys that lead to it. */
function placesIn(value: Json, path: readonly (string | number)[] = []): (readonly (string | number)[])[] {
  if (typeof value !== 'object' || value === null) return [path]
  const entries = Array.isArray(value) ? [...value.entries()] : Object.entries(value)
  return [path, ...entries.flatMap(([key, inner]) => placesIn(inner, [...path, key]))]
}

function changed(value: Json, path: readonly (string | number)[], to: Json | undefined): Json {
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
const damaged = fc.constantFrom('skerry-3', 'tarn-4').chain((id) => {
  const draft = demoDraft(id) as unknown as Json
  const change = fc.tuple(fc.constantFrom(...placesIn(draft)), fc.option(hostile, { nil: undefined }))
  return fc
    .array(change, { minLength: 1, maxLength: 3 })
    .map((changes) => changes.reduce((spec, [path, to]) => changed(spec, path, to), draft))
})

/** A real spec with one to four of its values made larger or smaller: a slip of the pen that no schema sees. */
const misprinted = fc.constantFrom('skerry-3', 'tarn-4').chain((id) => {
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

function valueAt(value: Json, path: readonly (string | number)[]): Json | undefined {
  return path.reduce<Json | undefined>((at, key) => (at as { [key: string]: Json } | undefined)?.[key], value)
}

function tellsAll(problem: Problem): void {
  const sentence = sentenceOf(problem)
  expect(sentence).toMatch(/^\S[\s\S]+[.!]$/)
  expect(sentence).not.toMatch(/undefined|\[object|NaN(?!”)/)
  expect(typeof problem.path).toBe('string')
}

describe('a damaged spec', () => {
  it('is read or refused in sentences, never with a crash; what is read can be audited', () => {
    const seen = { read: 0, refused: 0 }
    checkProperty(
      fc.property(fc.oneof(damaged, misprinted), (spec) => {
        const reading = readSpec(JSON.stringify(spec))
        seen[reading.ok ? 'read' : 'refused'] += 1
        if (reading.ok) for (const { problem } of audit(reading.spec)) tellsAll(problem)
        else {
          expect(reading.problems.length).toBeGreaterThan(0)
          for (const problem of reading.problems) tellsAll(problem)
        }
      }),
      { numRuns: 400 },
    )
    expect(seen.read).toBeGreaterThan(50)
    expect(seen.refused).toBeGreaterThan(50)
  })

  it('that is read has each of its faults told at a path that is there', () => {
    checkProperty(
      fc.property(misprinted, (spec) => {
        const reading = readSpec(JSON.stringify(spec))
        if (!reading.ok) return
        for (const { problem } of audit(reading.spec)) {
          const keys = problem.path.match(/[^.[\]]+/g) ?? []
          const parent = keys
            .slice(0, -1)
            .reduce<unknown>((value, key) => (value as Record<string, unknown>)[key], spec)
          expect(parent, problem.path).toBeDefined()
        }
      }),
      { numRuns: 200, leastShare: 0.5 },
    )
  })

  it('is told where its text was cut or where a character was changed', () => {
    const text = demoText('skerry-3').trimEnd()
    checkProperty(
      fc.property(
        fc.nat(text.length - 1),
        fc.option(fc.constantFrom('{', '}', '[', ']', '"', ',', ':', '\\', 'x'), { nil: '' }),
        (at, put) => {
          const reading = readSpec(
            put === '' ? text.slice(0, at) : text.slice(0, at) + put + text.slice(at + 1),
          )
          if (put === '') expect(reading.ok).toBe(false)
          if (!reading.ok) for (const problem of reading.problems) tellsAll(problem)
        },
      ),
      { numRuns: 300 },
    )
  })

  it('of anything at all is refused in sentences', () => {
    checkProperty(
      fc.property(fc.oneof(fc.string(), fc.json(), fc.string({ unit: 'binary' })), (text) => {
        const reading = readSpec(text)
        if (reading.ok) throw new Error('no random text is a spec')
        for (const problem of reading.problems) tellsAll(problem)
      }),
      { numRuns: 300 },
    )
  })
})

describe('where JSON breaks off', () => {
  it('is found for every text that JSON.parse refuses, and for none that it takes', () => {
    const nearlyJson = fc
      .tuple(fc.json(), fc.nat(), fc.constantFrom('', ',', '}', '"', '1', 'e', '\\', '\n', ' ', '[]'))
      .map(
        ([json, at, put]) =>
          json.slice(0, at % (json.length + 1)) + put + json.slice((at % (json.length + 1)) + (at % 2)),
      )
    checkProperty(
      fc.property(nearlyJson, (text) => {
        const reading = readSpec(text)
        const codes = reading.ok ? [] : reading.problems.map(({ code }) => code)
        let parses = true
        try {
          JSON.parse(text)
        } catch {
          parses = false
        }
        const more: readonly string[] = ['spec-key-twice', 'spec-too-deep']
        if (!codes.some((code) => more.includes(code))) expect(codes.includes('spec-not-json')).toBe(!parses)
      }),
      { numRuns: 1000 },
    )
  })
})
