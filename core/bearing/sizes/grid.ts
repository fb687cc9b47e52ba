import type { Fit } from '../../engine/index.ts'
import { done, refused, type Outcome } from '../../problem/index.ts'
import type { LengthUnit } from '../../quantity/index.ts'
import type { Grid } from './measured.ts'
import { readSize, type ExpectedReading } from './reading.ts'

/** One cell of an entry grid: what was typed, kept as typed, and the unit of the gauge that it was read off. */
export interface TypedReading {
  readonly typed: string
  readonly unit: LengthUnit
}

/**
 * Reads an entry grid: planes along the axis, in each the directions across it, as many as the spec asks for.
 *
 * Refuses `readings-missing` for a grid of another shape, and what `readSize` refuses, with the cell as path: `1.0` is the
 * second plane's first direction.
 */
export function readGrid(
  cells: readonly (readonly TypedReading[])[],
  shape: Pick<NonNullable<Fit['measuring']>, 'planes' | 'directions'>,
  expected: ExpectedReading,
): Outcome<Grid> {
  const { planes, directions } = shape
  const { place, what } = expected
  if (cells.length !== planes || cells.some((plane) => plane.length !== directions))
    return refused('readings-missing', { place, what, planes, directions })
  const grid = []
  for (const [plane, typed] of cells.entries()) {
    const sizes = []
    for (const [direction, cell] of typed.entries()) {
      const size = readSize(cell.typed, cell.unit, expected)
      if (!size.ok) return { ok: false, problem: { ...size.problem, path: `${plane}.${direction}` } }
      sizes.push(size.value)
    }
    grid.push(sizes)
  }
  return done(grid)
}
