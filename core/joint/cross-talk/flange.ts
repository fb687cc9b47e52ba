import type { Words } from '../../words/index.ts'

/** Something that the model assumes. */
export type FlangeAssumption = keyof Words['flangeAssumptions']

/**
 * A flange as a network of beams on an elastic bed that only pushes, with bolts that only pull. A teaching
 * model: small deflections, no friction between the faces, no yielding.
 */
export interface Flange {
  readonly nodes: readonly FlangeNode[]
  readonly beams: readonly FlangeBeam[]
  readonly bolts: readonly FlangeBolt[]
  /** What was assumed to come from an engine to this model. */
  readonly assumptions: readonly FlangeAssumption[]
}

/** A point of the network, in mm in the plane of the face. */
export interface FlangeNode {
  readonly x: number
  readonly y: number
  /** What presses on it of itself, in N; 0 when absent. */
  readonly weightN?: number
}

/**
 * A straight beam between two nodes, by their places in the list. All sizes are above zero, save the bed's,
 * which may be zero.
 */
export interface FlangeBeam {
  readonly from: number
  readonly to: number
  /** E·I. */
  readonly bendingNmm2: number
  /** G·J. */
  readonly twistingNmm2: number
  /**
   * k: by how many newtons each millimetre of length pushes for each millimetre it is pressed in. 0 over an
   * opening.
   */
  readonly bedMpa: number
  /** Width of the bed: what keeps the beam from rolling over. */
  readonly widthMm: number
}

/** A bolt at a node, by its place in the list. */
export interface FlangeBolt {
  readonly id: string
  readonly node: number
  /** By how many newtons it pulls for each millimetre it is stretched. */
  readonly stiffnessNPerMm: number
}

/** Length of a beam in mm, and its direction as cosine and sine. */
export function lineOf(flange: Flange, { from, to }: FlangeBeam) {
  const [start, end] = [flange.nodes[from]!, flange.nodes[to]!]
  const [dx, dy] = [end.x - start.x, end.y - start.y]
  const lengthMm = Math.hypot(dx, dy)
  return { lengthMm, cos: dx / lengthMm, sin: dy / lengthMm }
}
