import type { z } from 'zod'
import { problem, type Problem } from '../problem/index.ts'
import { pathText, placeText, valueAt } from './place.ts'

type Issue = z.core.$ZodIssue
type RawIssue = z.core.$ZodRawIssue

/** What each kind of value is called, by the name that zod has for it. */
const kinds: Readonly<Record<string, string>> = {
  array: 'a list in [ ]',
  boolean: 'true or false',
  int: 'a whole number',
  number: 'a number without quotes',
  object: 'a group in { }',
  string: 'a text in quotes',
  tuple: 'a list in [ ]',
}

/** What to do about an issue, where the schema has no words of its own for it. One entry for each code that zod has. */
const advice: { readonly [Code in Issue['code']]: (issue: Extract<RawIssue, { code: Code }>) => string } = {
  invalid_type: ({ expected }) => `write ${kinds[expected] ?? expected}`,
  invalid_value: ({ values }) => `write ${oneOf(values)}`,
  invalid_union: ({ options }) =>
    Array.isArray(options)
      ? `write ${oneOf(options)}`
      : 'write it in one of the ways that the README beside the demo specs shows',
  invalid_format: ({ format }) =>
    format === 'date'
      ? 'write the date as year, month and day, for example 2026-03-31'
      : 'write it another way',
  too_small: ({ origin, minimum, inclusive }) => bound(origin, inclusive ? 'at least' : 'more than', minimum),
  too_big: ({ origin, maximum, inclusive }) => bound(origin, inclusive ? 'at most' : 'less than', maximum),
  not_multiple_of: ({ divisor }) => `write a multiple of ${divisor}`,
  unrecognized_keys: () => 'remove what is not known, or correct its spelling',
  invalid_key: () => 'write another name',
  invalid_element: () => 'write another value',
  custom: () => 'write another value',
}

function bound(origin: string, relation: string, limit: number | bigint): string {
  if (origin === 'array') return `give ${relation} ${limit} of them`
  if (origin === 'string') return `write ${relation} ${limit} characters`
  return `give ${relation} ${limit}`
}

function oneOf(values: readonly unknown[]): string {
  const listed = values.map((value) => (typeof value === 'string' ? `“${value}”` : String(value)))
  return listed.length === 1 ? listed.join() : `one of ${listed.join(', ')}`
}

/** The error map to parse a spec with: every issue then carries advice in plain words, its own or the schema's. */
export function adviceOn(issue: RawIssue): string {
  return (advice[issue.code] as (issue: RawIssue) => string)(issue)
}

/**
 * Where a part may be written in one of two ways, the issues of the way it was written in: of a text that is not read, what is wrong
 * with that text, not that it is no group.
 */
export function opened(issue: Issue): readonly Issue[] {
  if (issue.code !== 'invalid_union') return [issue]
  const meant = issue.errors.find((issues) =>
    issues.every(({ code, path }) => code !== 'invalid_type' || path.length > 0),
  )
  if (meant === undefined || meant.length === 0) return [issue]
  return meant.flatMap((each) => opened({ ...each, path: [...issue.path, ...each.path] }))
}

/** A fault of a spec's shape as a problem: what is missing, not known or wrong, where, and what to write instead. */
export function shapeProblem(input: unknown, issue: Issue): Problem {
  const path = pathText(issue.path)
  const place = placeText(input, issue.path)
  const should = issue.message
  if (issue.code === 'unrecognized_keys')
    return problem('spec-keys-unknown', { place, keys: issue.keys }, path)
  const value = valueAt(input, issue.path)
  if (value === undefined) return problem('spec-part-missing', { place, should }, path)
  return problem('spec-part-wrong', { place, found: foundWords(value), should }, path)
}

function foundWords(value: unknown): string {
  if (Array.isArray(value)) return `a list of ${value.length}`
  if (typeof value === 'object' && value !== null) return 'a group in { }'
  if (typeof value !== 'string') return JSON.stringify(value)
  const line = value.slice(0, 40).replace(/\s+/g, ' ')
  return value.length > 40 ? `“${line}…”` : `“${line}”`
}
