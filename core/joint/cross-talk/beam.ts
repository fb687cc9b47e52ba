import { lineOf, type Flange, type FlangeBeam } from './flange.ts'

/**
 * Each node of the network has three freedoms: how far it is pressed down (w), and how it slopes along x and
 * along y (∂w/∂x, ∂w/∂y).
 */
export const freedoms = 3

/**
 * A beam as it bends and twists: Euler–Bernoulli and Saint-Venant, in every textbook on matrix structural
 * analysis. Its ends' freedoms begin at `from` and `to` in a list of all freedoms.
 */
export interface Bending {
  readonly from: number
  readonly to: number
  readonly lengthMm: number
  readonly cos: number
  readonly sin: number
  /** E·I/l and G·J/l, in N·mm. */
  readonly bend: number
  readonly twist: number
}

export function bendingOf(flange: Flange, beam: FlangeBeam): Bending {
  const line = lineOf(flange, beam)
  return {
    ...line,
    from: beam.from * freedoms,
    to: beam.to * freedoms,
    bend: beam.bendingNmm2 / line.lengthMm,
    twist: beam.twistingNmm2 / line.lengthMm,
  }
}

/** Adds to the forces on all nodes, by freedom, what it takes to hold a beam in its deflections. */
export function addBeamForces(beam: Bending, deflections: Float64Array, forces: Float64Array): void {
  const { from, to, lengthMm, cos, sin, bend, twist } = beam
  const [x1, y1] = [deflections[from + 1]!, deflections[from + 2]!]
  const [x2, y2] = [deflections[to + 1]!, deflections[to + 2]!]
  const chord = (deflections[to]! - deflections[from]!) / lengthMm
  // Slopes against the chord first: they are small, and multiplying before subtracting would lose them.
  const start = cos * x1 + sin * y1 - chord
  const end = cos * x2 + sin * y2 - chord
  const startMoment = bend * (4 * start + 2 * end)
  const endMoment = bend * (2 * start + 4 * end)
  const shear = (startMoment + endMoment) / lengthMm
  const torsion = twist * (cos * (y2 - y1) - sin * (x2 - x1))
  forces[from]! += shear
  forces[from + 1]! += cos * startMoment + sin * torsion
  forces[from + 2]! += sin * startMoment - cos * torsion
  forces[to]! -= shear
  forces[to + 1]! += cos * endMoment - sin * torsion
  forces[to + 2]! += sin * endMoment + cos * torsion
}

/**
 * The stiffness of a beam in the freedoms of its two ends, row by row (6 × 6): the forces of each deflection
 * by itself.
 */
export function beamStiffness(beam: Bending): Float64Array {
  const stiffness = new Float64Array(36)
  const ends = { ...beam, from: 0, to: freedoms }
  for (let freedom = 0; freedom < 6; freedom += 1) {
    const deflections = new Float64Array(6)
    deflections[freedom] = 1
    addBeamForces(ends, deflections, stiffness.subarray(6 * freedom, 6 * freedom + 6))
  }
  return stiffness
}
