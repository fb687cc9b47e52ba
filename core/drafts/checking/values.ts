import type { SpecDocument } from '../../engine/index.ts'
import {
  parseAngle,
  parseForce,
  parseLength,
  parseTemperature,
  parseTorque,
  readBoth,
  type Length,
} from '../../quantity/index.ts'
import type { Outcome } from '../../problem/index.ts'
import type { Words } from '../../words/index.ts'
import { choiceTextAt } from '../choice-text-at.ts'
import { pathOf, unitOfValue, type ValuePath } from '../forms/index.ts'
import { isList, type Json } from '../patch.ts'

export type CheckedKind = 'torque' | 'angle' | 'order' | 'other'

/** A value that a second person compares with its source. */
export interface CheckedValue {
  readonly keys: ValuePath
  /** The same as findings have it. */
  readonly path: string
  readonly kind: CheckedKind
  /** As it was typed; of an order the numbers of its fasteners, of a list what stands in it, of a choice its code. */
  readonly shown: string
}

/** Torques, angles and orders are typed again without being seen: a reader who sees a number reads that number. */
export function isBlind({ kind }: Pick<CheckedValue, 'kind'>): boolean {
  return kind !== 'other'
}

const parts = ['fastenerGroups', 'fits', 'endFloat', 'rodSideClearance', 'procedures', 'beads'] as const
const lists = ['ringSets', 'parts', 'steps'] as const
/** Numbers without a unit that a manual gives. */
const plainNumbers: ReadonlySet<string> = new Set([
  'openTimeMinutes',
  'waitMinutes',
  'againAfterTurns',
  'uses',
])
/** Values that are a code or a choice. */
const codes: ReadonlySet<string> = new Set(['thread', 'propertyClass', 'threadState', 'reuse', 'sealant'])
/** Drawn, and compared on the drawing: where a thing lies. */
const drawn: ReadonlySet<string> = new Set(['at', 'path', 'keepOut', 'outline'])

/** What is shown of a value: choices, and the kinds of passes, are called what their forms call them. */
export function checkedText(words: Words, { keys, kind, shown }: CheckedValue): string {
  if (kind !== 'other') return shown
  if (keys.at(-1) !== 'passes') return choiceTextAt(words, keys, shown) ?? shown
  const texts = shown.split(', ').map((pass) => choiceTextAt(words, [...keys, 0, 'kind'], pass) ?? pass)
  return texts.join(', ')
}

/** Everything that a manual prints and the program works with, in the order of the document; where things lie is not among it. */
export function valuesToCheck(document: SpecDocument): readonly CheckedValue[] {
  const numbers = new Map(document.fasteners.map(({ id, number }) => [id, number]))
  const numberOf = (id: Json) => (typeof id === 'string' ? (numbers.get(id) ?? id) : '')
  const found: CheckedValue[] = []
  const addValue = (keys: ValuePath, kind: CheckedKind, shown: string) =>
    void found.push({ keys, path: pathOf(keys), kind, shown })

  function collect(value: Json | undefined, keys: ValuePath): void {
    const key = String(keys.at(-1))
    if (value === undefined || value === null || drawn.has(key)) return
    if (key === 'sequence' && isList(value))
      return addValue(keys, 'order', value.map((id) => numberOf(id)).join(' '))
    if (key === 'chart' && isList(value)) return addValue(keys, 'other', value.map(cellText).join('; '))
    if (key === 'passes' && isList(value)) addValue(keys, 'other', value.map(passText).join(', '))
    if (isList(value)) for (const [at, each] of value.entries()) collect(each, [...keys, at])
    else if (typeof value === 'object')
      for (const [name, each] of Object.entries(value)) collect(each, [...keys, name])
    else if (typeof value === 'number') {
      if (plainNumbers.has(key)) addValue(keys, 'other', String(value))
    } else if (typeof value === 'string') {
      const kind = codes.has(key) ? 'other' : kindOf(value)
      if (kind !== null) addValue(keys, kind, value)
    }
  }

  collect(document.case.bore, ['case', 'bore'])
  collect(document.case.pitch, ['case', 'pitch'])
  for (const part of [...parts, ...lists]) collect(document[part], [part])
  return found
}

/** What a text is, as far as it is a value with a unit; null for words, and for a number that is a name: a mark, an undersize. */
function kindOf(text: string): CheckedKind | null {
  if (!/\d/.test(text) || unitOfValue(text) === '') return null
  if (readBoth(text, (typed) => parseTorque(typed)).ok) return 'torque'
  if (readBoth(text, parseAngle).ok) return 'angle'
  const isOther = ([lengthOf, parseForce, parseTemperature] as const).some(
    (parse) => readBoth(text, parse as (typed: string) => Outcome<number>).ok,
  )
  return isOther || /^[\d.,]+\s*\S+\s+[A-Za-z]{1,2}\d{1,2}$/.test(text) ? 'other' : null
}
const lengthOf = (typed: string): Outcome<Length> => parseLength(typed)

function cellText(cell: Json): string {
  const { housing, journal, upper, lower, positions } = cell as Readonly<Record<string, string>>
  const of = positions === undefined ? '' : ` (${String(positions)})`
  return `${housing}/${journal}: ${upper === lower ? upper : `${upper}/${lower}`}${of}`
}

/** Which passes there are, one after another: one that was left out is seen by nothing else. */
function passText(pass: Json): string {
  return (pass as Readonly<Record<'kind', string>>).kind
}
