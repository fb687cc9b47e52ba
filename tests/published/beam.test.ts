import { describe, expect, it } from 'vitest'
import { clampMap, type Flange, type FlangePull } from '../../core/joint/index.ts'
import { newtons } from '../../core/quantity/index.ts'

// M. Hetényi, Beams on Elastic Foundation (1946): constants remembered and checked against the formulas
// there. All with λ = (k/4EI)^¼ = 0.05/mm, k = 3000 N/mm per mm, P = 10 kN. ±0.5 % for deflections, ±1 % for
// moments: the mesh has λh = 0.01.
const lambda = 0.05
const bed = 3000
const load = newtons(10_000)
const bending = bed / (4 * lambda ** 4)
const mesh = 0.01 / lambda
const deflectionUnit = (load * lambda) / bed
const momentUnit = load / lambda

/**
 * A straight beam of a length in units of 1/λ, pulled down at one of its nodes. It is loaded evenly so that
 * it rests a tenth of a millimetre deep and lifts nowhere: on a bed that only pushes, that is what makes the
 * formulas for one that also pulls hold.
 */
function pulledBeam(beam: { readonly length: number; readonly at: number; readonly restsMm: number }) {
  const pieces = Math.round(beam.length / (mesh * lambda))
  const nodes = Array.from({ length: pieces + 1 }, (_, node) => {
    const share = node === 0 || node === pieces ? 0.5 : 1
    return { x: node * mesh, y: 0, weightN: share * bed * mesh * beam.restsMm }
  })
  const section = { bendingNmm2: bending, twistingNmm2: bending, bedMpa: bed, widthMm: 20 }
  const beams = nodes.slice(1).map((_, from) => ({ ...section, from, to: from + 1 }))
  const at = Math.round(beam.at / (mesh * lambda))
  const flange: Flange = {
    nodes,
    beams,
    bolts: [{ id: 'P', node: at, stiffnessNPerMm: 1e5 }],
    assumptions: [],
  }
  const pull: FlangePull = { pass: 0, bolt: 'P', kind: 'set', to: load }
  const sink = clampMap(flange, [pull]).afterPulls[0]!.sinkMm.map((mm) => mm - beam.restsMm)
  const moment = (node: number) =>
    (-bending * (sink[node - 1]! - 2 * sink[node]! + sink[node + 1]!)) / mesh ** 2
  const nodeAt = (position: number) => Math.round(position / (mesh * lambda))
  return { sink, moment, at, nodeAt }
}

function share(value: number, published: number): number {
  return Math.abs(value / published - 1)
}

describe('an infinite beam on an elastic bed, loaded at one place', () => {
  const { sink, moment, at, nodeAt } = pulledBeam({ length: 24, at: 12, restsMm: 0.1 })

  it('goes down by P·λ/2k there', () => {
    expect(share(sink[at]!, deflectionUnit / 2)).toBeLessThan(0.005)
  })

  it('bears the moment P/4λ there', () => {
    expect(share(moment(at), momentUnit / 4)).toBeLessThan(0.01)
  })

  it('is back at its level at λx = 3π/4, and rises beyond by 0.0432 of the greatest sink, at λx = π', () => {
    expect(Math.abs(sink[nodeAt(12 + (3 * Math.PI) / 4)]! / sink[at]!)).toBeLessThan(0.005)
    expect(share(sink[nodeAt(12 + Math.PI)]! / sink[at]!, -Math.exp(-Math.PI))).toBeLessThan(0.01)
  })

  it('is the same on both sides', () => {
    sink.slice(0, at).forEach((mm, node) => expect(mm).toBeCloseTo(sink[2 * at - node]!, 12))
  })
})

describe('a beam that begins where it is loaded', () => {
  const { sink, moment, nodeAt } = pulledBeam({ length: 14, at: 0, restsMm: 0.2 })

  it('goes down by 2·P·λ/k at its end', () => {
    // Half a bed lies under the last node: the mesh shows more here.
    expect(share(sink[0]!, 2 * deflectionUnit)).toBeLessThan(0.01)
  })

  it('bears the most, 0.322397·P/λ, at λx = π/4', () => {
    const most = nodeAt(Math.PI / 4)
    expect(share(-moment(most), 0.322397 * momentUnit)).toBeLessThan(0.01)
    expect(-moment(most)).toBeGreaterThan(-moment(nodeAt(0.5)))
    expect(-moment(most)).toBeGreaterThan(-moment(nodeAt(1.1)))
  })
})

describe('a beam of λl = π, loaded in the middle', () => {
  const { sink, moment, at } = pulledBeam({ length: Math.PI, at: Math.PI / 2, restsMm: 0.1 })

  it('goes down by 0.54517·P·λ/k in the middle, and not at all at its ends', () => {
    expect(share(sink[at]!, 0.54517 * deflectionUnit)).toBeLessThan(0.005)
    expect(Math.abs(sink[0]! / sink[at]!)).toBeLessThan(0.005)
  })

  it('bears 0.27258·P/λ in the middle', () => {
    expect(share(moment(at), 0.27258 * momentUnit)).toBeLessThan(0.01)
  })
})

// The beam of λl = π just keeps its ends down. A longer one without weight therefore lies on that length
// alone, whatever the load, and what is beyond stands off straight: derived from the case above.
describe('a long beam without weight, on a bed that only pushes', () => {
  const { sink, at, nodeAt } = pulledBeam({ length: 10, at: 5, restsMm: 0 })

  it('goes down by 0.54517·P·λ/k, not by half', () => {
    expect(share(sink[at]!, 0.54517 * deflectionUnit)).toBeLessThan(0.005)
  })

  it('leaves the bed at λx = π/2', () => {
    expect(sink[nodeAt(5 + Math.PI / 2 - 0.03)]).toBeGreaterThan(0)
    expect(sink[nodeAt(5 + Math.PI / 2 + 0.03)]).toBeLessThan(0)
  })

  it('stands off straight beyond', () => {
    const slope = (from: number, to: number) => (sink[nodeAt(to)]! - sink[nodeAt(from)]!) / (to - from)
    expect(share(slope(7, 8), slope(9, 10))).toBeLessThan(1e-6)
  })
})
