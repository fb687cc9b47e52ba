import { beamStiffness, bendingOf, freedoms } from './beam.ts'
import { eliminationOf } from './elimination.ts'
import type { Flange } from './flange.ts'

/**
 * A front in numbers: where its square matrix begins, how wide it is, and which freedoms of the network its
 * rows are.
 */
interface Block {
  readonly node: number
  readonly start: number
  readonly width: number
  readonly rows: Int32Array
  /**
   * The block that takes over what is left of this one, and where each of its rows is there; −1 for the last
   * of its network.
   */
  readonly parent: number
  readonly rowsInParent: Int32Array
}

/**
 * The stiffness of a network of beams, factorised (L·D·Lᵀ, node by node; Duff and Reid's multifrontal
 * method). When springs at a few nodes change, only the blocks between those nodes and the last one are
 * worked out again, from what is kept below them, and the result is the same to the last bit as if all had
 * been.
 */
export class CondensedNetwork {
  readonly #blocks: readonly Block[]
  readonly #blockOf: Int32Array
  readonly #children: readonly (readonly number[])[]
  /** The beams alone, and the factorised whole, block after block. */
  readonly #beams: Float64Array
  readonly #factors: Float64Array
  readonly #springs: Float64Array
  readonly #stale: Uint8Array

  constructor(flange: Flange) {
    const count = flange.nodes.length
    const fronts = eliminationOf(
      count,
      flange.beams.map(({ from, to }) => [from, to] as const),
    )
    const blockOf = new Int32Array(count)
    fronts.forEach(({ node }, place) => (blockOf[node] = place))
    const rowsOf = (nodes: readonly number[]) =>
      Int32Array.from(nodes.flatMap((node) => [0, 1, 2].map((freedom) => node * freedoms + freedom)))
    let start = 0
    this.#blocks = fronts.map(({ node, border }): Block => {
      const rows = rowsOf([node, ...border])
      const [next] = border
      const parent = next === undefined ? -1 : blockOf[next]!
      const parentRows = parent < 0 ? [] : [...rowsOf([fronts[parent]!.node, ...fronts[parent]!.border])]
      const rowsInParent = rows.slice(freedoms).map((row) => parentRows.indexOf(row))
      const block = { node, start, width: rows.length, rows, parent, rowsInParent }
      start += rows.length ** 2
      return block
    })
    this.#blockOf = blockOf
    const children: number[][] = fronts.map(() => [])
    this.#blocks.forEach(({ parent }, place) => children[parent]?.push(place))
    this.#children = children
    this.#beams = new Float64Array(start)
    this.#factors = new Float64Array(start)
    this.#springs = new Float64Array(freedoms ** 2 * count)
    this.#stale = new Uint8Array(count).fill(1)
    for (const beam of flange.beams) this.#addBeam(beam, beamStiffness(bendingOf(flange, beam)))
  }

  /** A beam belongs to the block of the end that is taken out first. */
  #addBeam({ from, to }: { readonly from: number; readonly to: number }, stiffness: Float64Array): void {
    const { start, width, rows } = this.#blocks[Math.min(this.#blockOf[from]!, this.#blockOf[to]!)]!
    const places = [from, to].flatMap((node) =>
      [0, 1, 2].map((freedom) => rows.indexOf(node * freedoms + freedom)),
    )
    places.forEach((row, i) =>
      places.forEach((column, j) => (this.#beams[start + row * width + column]! += stiffness[i * 6 + j]!)),
    )
  }

  /**
   * Changes the stiffness that holds a node, row by row in its three freedoms. The factors follow at the next
   * `solve`.
   */
  setSprings(node: number, stiffness: Float64Array): void {
    this.#springs.set(stiffness, freedoms ** 2 * node)
    for (let place = this.#blockOf[node]!; place >= 0; place = this.#blocks[place]!.parent) {
      if (this.#stale[place] === 1) return
      this.#stale[place] = 1
    }
  }

  /**
   * Replaces forces, by node and freedom, with the deflections they make. The springs must hold the network
   * in place.
   */
  solve(forces: Float64Array): void {
    this.#refresh()
    const factors = this.#factors
    for (const { start, width, rows } of this.#blocks)
      for (let pivot = 0; pivot < freedoms; pivot += 1) {
        const force = forces[rows[pivot]!]!
        for (let row = pivot + 1; row < width; row += 1)
          forces[rows[row]!]! -= factors[start + row * width + pivot]! * force
      }
    for (let place = this.#blocks.length - 1; place >= 0; place -= 1) {
      const { start, width, rows } = this.#blocks[place]!
      for (let pivot = freedoms - 1; pivot >= 0; pivot -= 1) {
        let deflection = forces[rows[pivot]!]! / factors[start + pivot * width + pivot]!
        for (let row = pivot + 1; row < width; row += 1)
          deflection -= factors[start + row * width + pivot]! * forces[rows[row]!]!
        forces[rows[pivot]!] = deflection
      }
    }
  }

  #refresh(): void {
    for (let place = 0; place < this.#blocks.length; place += 1) {
      if (this.#stale[place] === 0) continue
      this.#assemble(place)
      this.#factorise(this.#blocks[place]!)
      this.#stale[place] = 0
    }
  }

  /** Beams, springs, and what is left of the blocks below. */
  #assemble(place: number): void {
    const { node, start, width } = this.#blocks[place]!
    const factors = this.#factors
    factors.set(this.#beams.subarray(start, start + width ** 2), start)
    for (let row = 0; row < freedoms; row += 1)
      for (let column = 0; column < freedoms; column += 1)
        factors[start + row * width + column]! += this.#springs[(node * freedoms + row) * freedoms + column]!
    for (const child of this.#children[place]!) {
      const below = this.#blocks[child]!
      const rows = below.rowsInParent
      for (let i = 0; i < rows.length; i += 1) {
        const from = below.start + (i + freedoms) * below.width + freedoms
        const to = start + rows[i]! * width
        for (let j = 0; j < rows.length; j += 1) factors[to + rows[j]!]! += factors[from + j]!
      }
    }
  }

  /** Takes the block's own three freedoms out of the rest of it. */
  #factorise({ start, width }: Block): void {
    const factors = this.#factors
    for (let pivot = 0; pivot < freedoms; pivot += 1) {
      const top = start + pivot * width
      for (let row = pivot + 1; row < width; row += 1) {
        const share = factors[top + row]! / factors[top + pivot]!
        const line = start + row * width
        for (let column = pivot + 1; column < width; column += 1)
          factors[line + column]! -= share * factors[top + column]!
        factors[line + pivot] = share
      }
    }
  }
}
