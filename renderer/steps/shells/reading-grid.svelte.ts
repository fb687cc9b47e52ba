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

  set(plane: number, direction: number, typed: string) {
    this.#cells = this.#cells.map((row, at) =>
      at === plane ? row.map((cell, other) => (other === direction ? typed : cell)) : row,
    )
  }

  /** As the command takes them. */
  get typed() {
    return this.#cells.map((plane) => plane.map((typed) => ({ typed, unit: this.#unit })))
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
