import { Matrix, solve } from 'ml-matrix'
import type { Flange, FlangePull } from '../../../../core/joint/index.ts'
import { newtons } from '../../../../core/quantity/index.ts'
import type { Solver } from './from-scratch.ts'

/**
 * An aluminium bar 20 mm wide and 12 mm deep on a bed like itself: E·I, G·J by hand to two figures, k = 70
 * 000·20/12.
 */
const section = { bendingNmm2: 2e8, twistingNmm2: 2e8, bedMpa: 1.2e5, widthMm: 20 }

interface Shape {
  /** In which of the nodes there are bolts. */
  readonly bolts: readonly number[]
  readonly bedMpa?: number
  readonly weightN?: number
}

/** A straight bar with nodes 5 mm apart. Bolt `b0` is the first of those that are named. */
export function bar(nodes: number, shape: Shape): Flange {
  const points = Array.from({ length: nodes }, (_, node) => ({ x: 5 * node, y: 0 }))
  return joined(
    points,
    points.slice(1).map((_, from) => [from, from + 1]),
    shape,
  )
}

/** A ring round a rectangle of 4 by 2, nodes 5 mm apart. */
export function ring(sixth: number, shape: Shape): Flange {
  const along = (count: number, at: (step: number) => { x: number; y: number }) =>
    Array.from({ length: count }, (_, step) => at(5 * step))
  const [long, wide] = [10 * sixth, 5 * sixth]
  const points = [
    ...along(2 * sixth, (step) => ({ x: step, y: 0 })),
    ...along(sixth, (step) => ({ x: long, y: step })),
    ...along(2 * sixth, (step) => ({ x: long - step, y: wide })),
    ...along(sixth, (step) => ({ x: 0, y: wide - step })),
  ]
  return joined(
    points,
    points.map((_, from) => [from, (from + 1) % points.length]),
    shape,
  )
}

/** The ring with one bar across, from the middle of one long side to the middle of the other. */
export function ringWithWall(sixth: number, shape: Shape): Flange {
  const around = ring(sixth, shape)
  const [low, high] = [sixth, 4 * sixth]
  const wall = Array.from({ length: sixth - 1 }, (_, step) => ({
    x: around.nodes[low]!.x,
    y: 5 * (step + 1),
  }))
  const first = around.nodes.length
  const chain = [low, ...wall.map((_, step) => first + step), high]
  const links = chain.slice(1).map((to, index) => [chain[index]!, to] as const)
  const bedMpa = shape.bedMpa ?? section.bedMpa
  return {
    ...around,
    nodes: [...around.nodes, ...wall],
    beams: [...around.beams, ...links.map(([from, to]) => ({ ...section, bedMpa, from, to }))],
  }
}

function joined(
  points: readonly { x: number; y: number }[],
  links: readonly (readonly number[])[],
  { bolts, bedMpa = section.bedMpa, weightN = 0 }: Shape,
): Flange {
  return {
    nodes: points.map((point) => ({ ...point, weightN })),
    beams: links.map(([from, to]) => ({ ...section, bedMpa, from: from!, to: to! })),
    bolts: bolts.map((node, index) => ({ id: `b${index}`, node, stiffnessNPerMm: 1.5e5 })),
    assumptions: [],
  }
}

/** One pass that sets bolts to a load, in the order in which they are named. */
export function setTo(load: number, order: readonly number[], pass = 0): readonly FlangePull[] {
  return order.map((bolt) => ({ pass, bolt: `b${bolt}`, kind: 'set', to: newtons(load) }))
}

/** A general solver: the whole matrix by LU with pivots. */
export const dense: Solver = (size, entries, forces) => {
  const matrix = Matrix.zeros(size, size)
  for (const [key, value] of entries) matrix.set(Math.floor(key / size), key % size, value)
  return solve(matrix, Matrix.columnVector([...forces])).to1DArray()
}
