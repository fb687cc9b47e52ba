import type { ReadWith } from '../../../core/instrument/index.ts'
import { readSize, type ExpectedReading } from '../../../core/bearing/index.ts'
import type { LengthUnit } from '../../../core/quantity/index.ts'
import type { NotedReadings } from '../../../core/builds/index.ts'

interface Shape {
  readonly planes: number
  readonly directions: number
}

/** The entry grid of one part: what is typed into each cell, the unit of bare numbers, and what was said of the gauge. */
export class ReadingGrid {
  readonly shape: Shape
  readonly #expected: ExpectedReading
  #cells = $state.raw<readonly (readonly string[])[]>([])
  /** With what each was taken; by hand as soon as a person changes it. */
  #readWith: readonly (readonly (ReadWith | undefined)[])[] = []
  #unit = $state<LengthUnit>('mm')
  /** The cell that is being read; counted from 0. Null while none is. */
  at = $state.raw<{ readonly plane: number; readonly direction: number } | null>(null)
  partTemperature = $state('')
  gaugeTemperature = $state('')
  uncertainty = $state('')

  /** The first cell that cannot be taken as it stands, with the question that it raises; null while all can. */
  readonly fault = $derived.by(() => this.#firstFault())
  readonly isFull = $derived.by(() => this.#cells.every((plane) => plane.every((cell) => cell.trim() !== '')))

  constructor(shape: Shape, expected: ExpectedReading, unit: LengthUnit, noted: NotedReadings | null) {
    this.shape = shape
    this.#expected = expected
    this.#unit = noted?.cells[0]?.[0]?.unit ?? unit
    this.#cells = Array.from({ length: shape.planes }, (_, plane) =>
      Array.from(
        { length: shape.directions },
        (_, direction) => noted?.cells[plane]?.[direction]?.typed ?? '',
      ),
    )
    this.#readWith = this.#cells.map((row, plane) =>
      row.map((_, direction) => noted?.cells[plane]?.[direction]?.readWith),
    )
    this.partTemperature = noted?.partTemperature.typed ?? ''
    this.gaugeTemperature = noted?.gaugeTemperature?.typed ?? ''
    this.uncertainty = noted?.uncertainty?.typed ?? ''
  }

  get unit() {
    return this.#unit
  }
  set unit(unit: LengthUnit) {
    this.#unit = unit
  }
  get cells() {
    return this.#cells
  }

  set(plane: number, direction: number, typed: string, readWith: ReadWith = { came: 'by-hand' }) {
    this.#cells = put(this.#cells, plane, direction, typed)
    this.#readWith = put(this.#readWith, plane, direction, readWith)
  }

  /** What stands there was typed all at once. */
  wasSent(plane: number, direction: number) {
    this.#readWith = put(this.#readWith, plane, direction, { came: 'typed' })
  }

  /** As the command takes them. */
  get typed() {
    return this.#cells.map((row, plane) =>
      row.map((typed, direction) => {
        const readWith = this.#readWith[plane]?.[direction]
        return { typed, unit: this.#unit, ...(readWith !== undefined && { readWith }) }
      }),
    )
  }

  #firstFault() {
    for (const [plane, row] of this.#cells.entries())
      for (const [direction, cell] of row.entries()) {
        if (cell.trim() === '') continue
        const read = readSize(cell, this.#unit, this.#expected)
        if (!read.ok) return { plane, direction, problem: read.problem }
      }
    return null
  }
}

/** The rows with something else in one cell. */
function put<Cell>(
  rows: readonly (readonly Cell[])[],
  plane: number,
  direction: number,
  cell: Cell,
): readonly (readonly Cell[])[] {
  return rows.map((row, at) =>
    at === plane ? row.map((each, other) => (other === direction ? cell : each)) : row,
  )
}
