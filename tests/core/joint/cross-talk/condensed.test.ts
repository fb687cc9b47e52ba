import { Matrix, solve } from 'ml-matrix'
import { describe, expect, it } from 'vitest'
import { CondensedNetwork } from '../../../../core/joint/cross-talk/condensed.ts'
import { eliminationOf } from '../../../../core/joint/cross-talk/elimination.ts'
import type { Flange } from '../../../../core/joint/index.ts'
import { stiffnessEntries } from './from-scratch.ts'
import { bar, ring, ringWithWall } from './flanges.ts'

/** How many fronts have to be worked out again, at most, when one node changes. */
function longestPath(count: number, links: readonly (readonly [number, number])[]): number {
  const fronts = eliminationOf(count, links)
  const borders = new Map(fronts.map(({ node, border }) => [node, border]))
  const depth = (node: number): number => {
    const [next] = borders.get(node)!
    return next === undefined ? 1 : 1 + depth(next)
  }
  return Math.max(...Array.from({ length: count }, (_, node) => depth(node)))
}

const chain = (count: number) => Array.from({ length: count - 1 }, (_, node) => [node, node + 1] as const)

describe('taking a network apart', () => {
  it('takes out every node once, and hangs each on nodes that go later', () => {
    const links = [...chain(40), [0, 39] as const, [10, 30] as const]
    const fronts = eliminationOf(40, links)
    expect(fronts.map(({ node }) => node).toSorted((a, b) => a - b)).toEqual(chain(41).map(([node]) => node))
    const place = new Map(fronts.map(({ node }, index) => [node, index]))
    fronts.forEach(({ border }, index) => {
      const places = border.map((node) => place.get(node)!)
      expect(places).toEqual(places.toSorted((a, b) => a - b))
      for (const later of places) expect(later).toBeGreaterThan(index)
    })
  })

  it('never hangs a node of a chain on more than two others', () => {
    for (const { border } of eliminationOf(500, chain(500))) expect(border.length).toBeLessThanOrEqual(2)
  })

  it('is as deep as the logarithm: a chain of 1,000 has at most 12 fronts above each other', () => {
    expect(longestPath(1000, chain(1000))).toBeLessThanOrEqual(12)
    expect(longestPath(1000, [...chain(1000), [999, 0]])).toBeLessThanOrEqual(12)
  })
})

/** Springs of each node down and against both slopes, different ones at each. */
const holds = (node: number, factor = 1) =>
  Float64Array.from([2e5 * factor, 3e4, 0, 3e4, 8e6 + node, 0, 0, 0, 9e6])
const forces = (flange: Flange) =>
  Float64Array.from({ length: 3 * flange.nodes.length }, (_, freedom) => 100 * Math.sin(freedom))

function solved(network: CondensedNetwork, flange: Flange): Float64Array {
  const found = forces(flange)
  network.solve(found)
  return found
}

function networkOf(flange: Flange): CondensedNetwork {
  const network = new CondensedNetwork(flange)
  flange.nodes.forEach((_, node) => network.setSprings(node, holds(node)))
  return network
}

describe.each([
  ['a bar', bar(30, { bolts: [] })],
  ['a ring', ring(5, { bolts: [] })],
  ['a ring with a wall', ringWithWall(5, { bolts: [] })],
])('the factors of %s', (_, flange) => {
  it('solve as a general solver does', () => {
    const size = 3 * flange.nodes.length
    const matrix = Matrix.zeros(size, size)
    for (const [key, value] of stiffnessEntries(flange)) matrix.set(Math.floor(key / size), key % size, value)
    flange.nodes.forEach((_, node) =>
      holds(node).forEach((value, at) => {
        const [row, column] = [3 * node + Math.floor(at / 3), 3 * node + (at % 3)]
        matrix.set(row, column, matrix.get(row, column) + value)
      }),
    )
    const theirs = solve(matrix, Matrix.columnVector([...forces(flange)])).to1DArray()
    const ours = solved(networkOf(flange), flange)
    const most = Math.max(...theirs.map(Math.abs))
    theirs.forEach((value, freedom) => expect(Math.abs(value - ours[freedom]!) / most).toBeLessThan(1e-10))
  })

  it('are after a change the same to the last bit as if they had been made again', () => {
    const network = networkOf(flange)
    solved(network, flange)
    for (const node of [3, 17, 3]) network.setSprings(node, holds(node, node + 2))
    solved(network, flange)
    network.setSprings(8, holds(8, 5))

    const fresh = new CondensedNetwork(flange)
    flange.nodes.forEach((_, node) => {
      const factor = [3, 17].includes(node) ? node + 2 : node === 8 ? 5 : 1
      fresh.setSprings(node, holds(node, factor))
    })
    expect(solved(network, flange)).toEqual(solved(fresh, flange))
  })
})
