import type { SpecDocument, ValueCheck } from '../../engine/index.ts'
import { nameKey } from '../../person/index.ts'
import { done, refused, type Outcome } from '../../problem/index.ts'
import { parseAngle, parseTorque, readBoth } from '../../quantity/index.ts'
import { inUnitOf, printedValue } from '../forms/index.ts'
import { valuesToCheck, type CheckedValue } from './values.ts'

/** What a second person found: the same as in the spec, the same typed unseen, or something else. */
export type Answer = { readonly how: 'same' | 'typed' } | { readonly how: 'other'; readonly found: string }

export interface Checker {
  readonly by: string
  /** ISO 8601, the day. */
  readonly on: string
}

export function checkOf(
  { checks = [] }: SpecDocument,
  { path }: Pick<CheckedValue, 'path'>,
): ValueCheck | null {
  return checks.find((check) => check.path === path) ?? null
}

/**
 * Whether what was typed unseen is the value: the same amount in whatever unit, the same numbers in the same order. A limit may be
 * typed as the manual prints it, `30 ± 3 lbf·ft`.
 */
export function isTheSame({ kind, shown, keys }: CheckedValue, typed: string): Outcome<boolean> {
  if (kind === 'order') return done(numbersIn(typed).join(' ') === numbersIn(shown).join(' '))
  const parse = kind === 'torque' ? (text: string) => parseTorque(text) : parseAngle
  const printed = printedValue(typed)
  const key = keys.at(-1)
  const part = key === 'least' || key === 'most' ? printed[key] : printed.target
  const read = readBoth<number>(inUnitOf(part ?? typed, shown), parse)
  if (!read.ok) return read
  const value = readBoth<number>(shown, parse)
  return done(value.ok && Math.abs(read.value - value.value) <= 1e-9 * Math.abs(value.value))
}

/** `3, 1, 4`, `3 1 4` and `3-1-4` are one order. */
function numbersIn(order: string): readonly string[] {
  return order
    .toUpperCase()
    .split(/[^A-Z\d]+/)
    .filter((number) => number !== '')
}

/** Whether a person may compare a value: nobody who typed it last sees their own slip. `typists` are those of `typistsOf`. */
export function mayCheck(
  { source }: SpecDocument,
  { path }: Pick<CheckedValue, 'path'>,
  person: string,
  typists: ReadonlyMap<string, string>,
): boolean {
  if (source.kind === 'demo') return false
  return nameKey(typists.get(path) ?? source.enteredBy) !== nameKey(person)
}

/** Whether a check in `after` is new, and `person` may not make it. */
export function hasOwnCheck(
  before: SpecDocument,
  after: SpecDocument,
  person: string,
  typists: ReadonlyMap<string, string>,
): boolean {
  const known = new Set(before.checks?.map((check) => JSON.stringify(check)))
  const made = (after.checks ?? []).filter((check) => !known.has(JSON.stringify(check)))
  return made.some((check) => !mayCheck(after, check, person, typists))
}

/**
 * The document with what a second person found of a value. Once all are found the same, the spec is checked by who found them so.
 * Refuses `check-of-a-demo`, and `check-by-who-entered` for who typed it last.
 */
export function withChecked(
  document: SpecDocument,
  { path }: Pick<CheckedValue, 'path'>,
  answer: Answer,
  { by, on }: Checker,
  typists: ReadonlyMap<string, string>,
): Outcome<SpecDocument> {
  if (document.source.kind === 'demo') return refused('check-of-a-demo', {})
  if (!mayCheck(document, { path }, by, typists)) return refused('check-by-who-entered', { person: by })
  const others = (document.checks ?? []).filter((check) => check.path !== path)
  return done(withCheckedBy({ ...document, checks: [...others, { path, by, on, ...answer }] }))
}

/** Those who found all values the same, once there is none left; nobody before. */
function withCheckedBy(document: SpecDocument): SpecDocument {
  const { source } = document
  if (source.kind === 'demo') return document
  const { checkedBy: _, ...unchecked } = source
  const { left, people } = checkState(document)
  if (left.length > 0) return source.checkedBy === undefined ? document : { ...document, source: unchecked }
  return { ...document, source: { ...unchecked, checkedBy: people.join(', ').slice(0, 80) } }
}

export interface CheckState {
  readonly values: readonly CheckedValue[]
  /** Those that nobody found the same yet, or somebody found to be something else. */
  readonly left: readonly CheckedValue[]
  readonly people: readonly string[]
}

export function checkState(document: SpecDocument): CheckState {
  const values = valuesToCheck(document)
  const checks = new Map((document.checks ?? []).map((check) => [check.path, check]))
  const left = values.filter(({ path }) => (checks.get(path)?.how ?? 'other') === 'other')
  return { values, left, people: [...new Set([...checks.values()].map(({ by }) => by))] }
}

/** A spec that was checked value by value is not any more once a value is changed, or there is one more. */
export function checkedAfter(document: SpecDocument): SpecDocument {
  const { source, checks } = document
  if (source.kind === 'demo' || source.checkedBy === undefined || checks === undefined) return document
  if (checkState(document).left.length === 0) return document
  const { checkedBy: _, ...unchecked } = source
  return { ...document, source: unchecked }
}
