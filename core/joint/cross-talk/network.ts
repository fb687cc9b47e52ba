import type { Point } from '../../plane/index.ts'
import type { FlangeBeam, FlangeNode } from './flange.ts'
import type { Section } from './section.ts'

/** A line of beams: where it is at each of its own positions, and the positions that must be nodes. */
export interface Line {
  readonly pointAt: (position: number) => Point
  readonly stations: readonly number[]
  /** For a line that closes: the position that is the first once more. */
  readonly closesAt?: number
  readonly section: Section
  /** Whether something lies under the line there; over an opening nothing does. */
  readonly hasBed: (position: number) => boolean
}

/**
 * Nodes are no further apart than this along a line: fine against how far a bolt is felt, some centimetres.
 */
const meshMm = 3
/** Stations nearer than this are one. */
const alikeMm = 1e-3

/** Nodes and beams as they are laid, line by line; lines that meet in a point share a node there. */
export class Network {
  readonly nodes: FlangeNode[] = []
  readonly beams: FlangeBeam[] = []
  readonly #byPoint = new Map<string, number>()

  /** The node at a point, made where there is none yet. */
  nodeAt({ x, y }: Point): number {
    const key = `${Math.round(x / alikeMm)}/${Math.round(y / alikeMm)}`
    const known = this.#byPoint.get(key)
    if (known !== undefined) return known
    this.#byPoint.set(key, this.nodes.length)
    return this.nodes.push({ x, y }) - 1
  }

  lay({ pointAt, stations, closesAt, section, hasBed }: Line): void {
    const sorted = stations
      .toSorted((a, b) => a - b)
      .filter((station, index, all) => index === 0 || station - all[index - 1]! > alikeMm)
    if (closesAt !== undefined) sorted.push(sorted[0]! + closesAt)
    sorted.slice(1).forEach((end, index) => {
      const start = sorted[index]!
      const pieces = Math.max(1, Math.ceil((end - start) / meshMm - alikeMm))
      const position = (piece: number) => start + ((end - start) * piece) / pieces
      for (let piece = 0; piece < pieces; piece += 1) {
        const [from, to] = [position(piece), position(piece + 1)].map((at) => this.nodeAt(pointAt(at)))
        if (from === to) continue
        const bedMpa = hasBed(position(piece + 0.5)) ? section.bedMpa : 0
        this.beams.push({ ...section, from: from!, to: to!, bedMpa })
      }
    })
  }
}
