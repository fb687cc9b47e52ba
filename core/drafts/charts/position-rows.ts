import type { SpecDocument } from '../../engine/index.ts'
import { done, problem, refused, type Outcome } from '../../problem/index.ts'
import { parseLength, type LengthUnit } from '../../quantity/index.ts'
import type { Point } from '../../plane/index.ts'
import { movedTo, placed, type FastenerPlace } from '../placing/index.ts'
import { formulaIn, trimmed, type Rows } from './table.ts'

/** A place from a table, with what else its row says. */
export interface PositionRow {
  readonly at: Point
  /** Empty where it is not said. */
  readonly number: string
  readonly group: string
}

type Column = 'x' | 'y' | 'number' | 'group'

const names: Readonly<Record<Column, RegExp>> = {
  x: /^x\b/i,
  y: /^y\b/i,
  number: /^(?:name|number|no\.?|nr\.?|nummer|número|nombre|#)/i,
  group: /^(?:group|gruppe|grupo)/i,
}
const unitInHead = /\b(mm|in|inch)\b|["″]/i
const mostRows = 2000

/**
 * Places from the rows of a table: a head with x, y and perhaps number and group in any order, with the unit in the head where it is
 * written there; without a head x and y come first. Numbers without a unit are in `unit`.
 *
 * Refuses `table-empty`, `table-cell-formula`, `table-too-long`, `positions-columns-missing`, `table-cell-unread`.
 */
export function positionsFromRows(
  rows: Rows,
  unit: Extract<LengthUnit, 'mm' | 'in'>,
): Outcome<readonly PositionRow[]> {
  const table = trimmed(rows)
  const [first] = table
  if (first === undefined) return refused('table-empty', {})
  if (table.length > mostRows + 1) return refused('table-too-long', { rows: table.length, most: mostRows })
  const withFormula = formulaIn(table)
  if (withFormula !== null) return withFormula
  const hasHead = !parseLength(first[0] ?? '', unit).ok
  const body = hasHead ? table.slice(1) : table
  if (body.length === 0) return refused('table-empty', {})
  const columnOf = (column: Column): number =>
    hasHead
      ? first.findIndex((name) => names[column].test(name))
      : ['x', 'y', 'number', 'group'].indexOf(column)
  const columns = { x: columnOf('x'), y: columnOf('y'), number: columnOf('number'), group: columnOf('group') }
  const missing = (['x', 'y'] as const).filter((column) => columns[column] < 0)
  if (missing.length > 0) return refused('positions-columns-missing', { missing, found: first.slice(0, 12) })

  const found: PositionRow[] = []
  for (const [index, row] of body.entries()) {
    const length = (column: 'x' | 'y'): Outcome<number> => {
      const text = row[columns[column]] ?? ''
      const read = parseLength(text, hasHead ? headUnit(first[columns[column]] ?? '', unit) : unit)
      if (read.ok) return read
      const facts = { row: index + (hasHead ? 2 : 1), column: columns[column] + 1 }
      return { ok: false, problem: problem('table-cell-unread', { ...facts, why: read.problem }) }
    }
    const [x, y] = [length('x'), length('y')]
    if (!x.ok) return x
    if (!y.ok) return y
    const text = (column: 'number' | 'group') => row[columns[column]] ?? ''
    found.push({ at: { x: x.value, y: y.value }, number: text('number'), group: text('group') })
  }
  return done(found)
}

function headUnit(head: string, unit: 'mm' | 'in'): 'mm' | 'in' {
  const written = unitInHead.exec(head)?.[0]?.toLowerCase()
  return written === undefined ? unit : written === 'mm' ? 'mm' : 'in'
}

/**
 * Puts fasteners where a table has them: one whose number is there already is moved, any other is new. A group is named by its id or
 * its name; one that is not named is `usualGroup`.
 *
 * Refuses `positions-group-unknown`, `positions-number-unread`, `draft-off-face`: then nothing is changed.
 */
export function withPositions(
  document: SpecDocument,
  face: string,
  rows: readonly PositionRow[],
  { usualGroup, where }: { readonly usualGroup: string; readonly where: (at: Point) => FastenerPlace },
): Outcome<SpecDocument> {
  let changed = document
  for (const { at, number, group } of rows) {
    const named = group === '' ? usualGroup : groupNamed(document, group)
    if (named === null) return refused('positions-group-unknown', { group })
    const sign = number.toUpperCase()
    if (number !== '' && !/^[A-Z]?[0-9]{1,3}$/.test(sign))
      return refused('positions-number-unread', { number })
    const there = changed.fasteners.find((each) => each.face === face && each.number === sign)
    const after: Outcome<SpecDocument> =
      there === undefined
        ? withFastener(changed, face, at, sign, { group: named, where: where(at) })
        : movedTo(changed, { kind: 'fastener', id: there.id }, at)
    if (!after.ok) return after
    changed =
      there === undefined || group === ''
        ? after.value
        : {
            ...after.value,
            fasteners: after.value.fasteners.map((each) =>
              each.id === there.id ? { ...each, group: named } : each,
            ),
          }
  }
  return done(changed)
}

function withFastener(
  document: SpecDocument,
  face: string,
  at: Point,
  number: string,
  thing: { readonly group: string; readonly where: FastenerPlace },
): Outcome<SpecDocument> {
  const outcome = placed(document, face, at, { kind: 'fastener', ...thing })
  if (!outcome.ok || number === '') return outcome.ok ? done(outcome.value.document) : outcome
  const { document: after, thing: made } = outcome.value
  return done({
    ...after,
    fasteners: after.fasteners.map((each) => (each.id === made.id ? { ...each, number } : each)),
  })
}

function groupNamed({ fastenerGroups }: SpecDocument, name: string): string | null {
  const isIt = ({ id, name: own }: SpecDocument['fastenerGroups'][number]) =>
    [id, ...(typeof own === 'string' ? [own] : Object.values(own))].some(
      (each) => each?.toLowerCase() === name.toLowerCase(),
    )
  return fastenerGroups.find(isIt)?.id ?? null
}
