import type { Point } from './point.ts'

/** A place on the edge: how far along it, from its first corner on, in mm. */
export interface PlaceOnPerimeter {
  readonly at: number
  /** How far the point that was asked for lies from there. */
  readonly apartMm: number
}

/** The edge of a face, in mm: a closed polygon, its length counted from the first corner. */
export class Perimeter {
  readonly #sides: readonly {
    readonly start: Point
    readonly end: Point
    readonly from: number
    readonly length: number
  }[]
  readonly length: number

  constructor(corners: readonly Point[]) {
    let from = 0
    this.#sides = corners.map((start, index) => {
      const end = corners[(index + 1) % corners.length]!
      const side = { start, end, from, length: Math.hypot(end.x - start.x, end.y - start.y) }
      from += side.length
      return side
    })
    this.length = from
  }

  /** The point so far along the edge; once round is 0 again. */
  pointAt(at: number): Point {
    const along = ((at % this.length) + this.length) % this.length
    const side = this.#sides.findLast(({ from, length }) => from <= along && length > 0) ?? this.#sides[0]!
    const share = (along - side.from) / side.length
    return {
      x: side.start.x + share * (side.end.x - side.start.x),
      y: side.start.y + share * (side.end.y - side.start.y),
    }
  }

  nearestTo({ x, y }: Point): PlaceOnPerimeter {
    const places = this.#sides.map(({ start, end, from, length }): PlaceOnPerimeter => {
      const [dx, dy] = [end.x - start.x, end.y - start.y]
      const along = length === 0 ? 0 : ((x - start.x) * dx + (y - start.y) * dy) / length
      const within = Math.min(Math.max(along, 0), length)
      const share = length === 0 ? 0 : within / length
      const apartMm = Math.hypot(start.x + share * dx - x, start.y + share * dy - y)
      return { at: (from + within) % this.length, apartMm }
    })
    return places.reduce((best, each) => (each.apartMm < best.apartMm ? each : best))
  }

  /** The lowest and the highest place at which a line across at x meets the edge; null where it passes by. */
  across(x: number): { readonly low: number; readonly high: number } | null {
    const met = this.#sides.flatMap(({ start, end, from, length }) => {
      if (start.x === end.x || (start.x - x) * (end.x - x) > 0) return []
      const at = from + ((x - start.x) / (end.x - start.x)) * length
      return [{ at, y: this.pointAt(at).y }]
    })
    if (met.length < 2) return null
    const sorted = met.toSorted((a, b) => a.y - b.y)
    return { low: sorted[0]!.at, high: sorted.at(-1)!.at }
  }
}
