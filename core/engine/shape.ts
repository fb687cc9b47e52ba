import type { z } from 'zod'
import { problem, type Facts, type Problem } from '../problem/index.ts'
import { adviceIn, advise } from './advice.ts'
import { pathText, placeInFile, valueAt } from './place.ts'

type Issue = z.core.$ZodIssue
type RawIssue = z.core.$ZodRawIssue

/** What to do about an issue, where the schema has no advice of its own for it. One entry for each code that zod has. */
const advice: { readonly [Code in Issue['code']]: (issue: Extract<RawIssue, { code: Code }>) => string } = {
  invalid_type: ({ expected }) => advise('write-kind', { kind: expected }),
  invalid_value: ({ values }) => oneOf(values),
  invalid_union: ({ options }) => (Array.isArray(options) ? oneOf(options) : advise('write-as-shown')),
  invalid_format: ({ format }) => advise(format === 'date' ? 'write-date' : 'write-another-way'),
  too_small: ({ origin, minimum, inclusive }) => within(origin, inclusive ? 'at-least' : 'above', minimum),
  too_big: ({ origin, maximum, inclusive }) => within(origin, inclusive ? 'at-most' : 'below', maximum),
  not_multiple_of: ({ divisor }) => advise('multiple-of', { divisor }),
  unrecognized_keys: () => advise('write-another-name'),
  invalid_key: () => advise('write-another-name'),
  invalid_element: () => advise('write-another-value'),
  custom: () => advise('write-another-value'),
}

function within(
  origin: string,
  relation: 'at-least' | 'above' | 'at-most' | 'below',
  bound: number | bigint,
): string {
  const facts = { relation, limit: Number(bound) }
  if (origin === 'array') return advise('entries-within', facts)
  return origin === 'string' ? advise('characters-within', facts) : advise('number-within', facts)
}

function oneOf(values: readonly unknown[]): string {
  return advise('write-one-of', {
    values: values.map((value) => (typeof value === 'number' ? value : String(value))),
  })
}

/** The error map to parse a spec with: every issue then carries advice as its message, its own or the schema's. */
export function adviceOn(issue: RawIssue): string {
  return (advice[issue.code] as (issue: RawIssue) => string)(issue)
}

/**
 * Where a part may be written in one of two ways, the issues of the way it was written in: of a text that is not read, what is wrong
 * with that text, not that it is no group; of a group, the way that knows most of its keys.
 */
export function issuesOfUnion(issue: Issue): readonly Issue[] {
  if (issue.code !== 'invalid_union') return [issue]
  const [bestFit] = issue.errors
    .filter((issues) => issues.every(({ code, path }) => code !== 'invalid_type' || path.length > 0))
    .toSorted((one, other) => unknownKeys(one) - unknownKeys(other))
  if (bestFit === undefined || bestFit.length === 0) return [issue]
  return bestFit.flatMap((each) => issuesOfUnion({ ...each, path: [...issue.path, ...each.path] }))
}

function unknownKeys(issues: readonly Issue[]): number {
  return issues.flatMap((issue) =>
    issue.code === 'unrecognized_keys' && issue.path.length === 0 ? issue.keys : [],
  ).length
}

/** A fault of a spec's shape as a problem: what is missing, not known or wrong, where, and what to write instead. */
export function shapeProblem(input: unknown, issue: Issue): Problem {
  const path = pathText(issue.path)
  const place = placeInFile(input, issue.path)
  if (issue.code === 'unrecognized_keys')
    return problem('spec-keys-unknown', { place, keys: issue.keys }, path)
  const should = adviceIn(issue.message)
  if (should === null) throw new Error(`no advice in “${issue.message}”`)
  const value = valueAt(input, issue.path)
  if (value === undefined) return problem('spec-part-missing', { place, should }, path)
  return problem('spec-part-wrong', { place, found: foundValue(value), should }, path)
}

function foundValue(value: unknown): Facts<'spec-part-wrong'>['found'] {
  if (Array.isArray(value)) return { kind: 'list', length: value.length }
  if (typeof value === 'object' && value !== null) return { kind: 'group' }
  if (typeof value !== 'string') return { kind: 'value', json: JSON.stringify(value) }
  return { kind: 'text', text: value.slice(0, 40).replace(/\s+/g, ' '), isCut: value.length > 40 }
}
