import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { clampMap, type ClampState, type Flange, type FlangePull } from '../../../../core/joint/index.ts'
import { newtons } from '../../../../core/quantity/index.ts'
import { bar, ring, ringWithWall, setTo } from './flanges.ts'
import { checkProperty } from '../../../property.ts'

const soft = { bedMpa: 6000 }

function last(flange: Flange, pulls: readonly FlangePull[]): ClampState {
  return clampMap(flange, pulls).afterPulls.at(-1)!
}

/** The largest difference between two lists, as a share of the largest load. */
function apart(one: readonly number[], other: readonly number[]): number {
  return Math.max(...one.map((load, index) => Math.abs(load - other[index]!))) / Math.max(...one)
}

describe('a clamp map', () => {
  const three = bar(41, { ...soft, bolts: [10, 20, 30] })

  it('begins with every bolt touching and none pulling', () => {
    const { atRest } = clampMap(three, [])
    expect(atRest).toMatchObject({ loads: [0, 0, 0], openShare: 0 })
    expect(Math.max(...atRest.sinkMm)).toBe(0)
  })

  it('leaves a bolt that is pulled alone with what it was pulled to', () => {
    expect(last(bar(21, { bolts: [10] }), setTo(8000, [0])).loads[0]).toBeCloseTo(8000, 6)
  })

  // λ of this bar is (6000/4·2e8)^¼ = 0.052/mm: a bolt presses in what is within 3π/4λ = 45 mm, and lifts
  // what is beyond.
  it('takes load from bolts near the one that is pulled, and gives some to those further off', () => {
    const four = bar(61, { ...soft, bolts: [10, 15, 20, 30] })
    const map = clampMap(four, setTo(8000, [0, 3, 2, 1]))
    const [before, after] = map.afterPulls.slice(-2).map(({ loads }) => loads)
    expect(after![1]).toBeCloseTo(8000, 6)
    const gained = (bolt: number) => after![bolt]! - before![bolt]!
    expect(gained(0)).toBeLessThan(-200) // 25 mm off
    expect(gained(2)).toBeLessThan(-200) // 25 mm off
    expect(gained(3)).toBeGreaterThan(20) // 75 mm off
  })

  it('keeps what is true after each pull and after each pass', () => {
    const pulls = [...setTo(4000, [0, 1, 2], 1), ...setTo(8000, [0, 1, 2], 3)]
    const { afterPulls, afterPasses } = clampMap(three, pulls)
    expect(afterPulls).toHaveLength(6)
    expect(afterPasses.map(({ pass }) => pass)).toEqual([1, 3])
    expect(afterPasses[0]!.state).toBe(afterPulls[2])
    expect(afterPasses[1]!.state).toBe(afterPulls[5])
  })

  it('presses in under the bolts, and opens between bolts far apart', () => {
    const ends = bar(41, { bolts: [2, 38], bedMpa: 1.2e5 })
    const { sinkMm, openShare } = last(ends, setTo(20_000, [0, 1]))
    expect(sinkMm[2]).toBeGreaterThan(0.001)
    expect(Math.min(...sinkMm)).toBeLessThan(-0.001)
    expect(openShare).toBeGreaterThan(0)
    expect(openShare).toBeLessThan(1)
  })

  it('opens nowhere when it lies on a bed softer than itself', () => {
    expect(last(bar(11, { bolts: [5], bedMpa: 100 }), setTo(2000, [0])).openShare).toBe(0)
  })

  it('makes a bolt pull that is only touching when its end of the flange would lift', () => {
    const lifted = last(bar(41, { bolts: [10, 24] }), setTo(8000, [0])).loads
    expect(lifted[1]).toBeGreaterThan(0)
  })
})

describe('what is done to a bolt', () => {
  const pair = bar(31, { ...soft, bolts: [10, 20] })
  const pull = (bolt: number, what: object) => ({ pass: 0, bolt: `b${bolt}`, ...what }) as FlangePull
  const raise = (bolt: number, load: number) => pull(bolt, { kind: 'raise', to: newtons(load) })

  it('raises it as a wrench does, and leaves one alone that holds more', () => {
    const raised = last(pair, [raise(0, 8000)])
    expect(raised.loads[0]).toBeCloseTo(8000, 6)
    expect(last(pair, [raise(0, 8000), raise(0, 5000)])).toEqual(raised)
  })

  it('sets it back where it is told to set', () => {
    const { loads } = last(pair, [raise(0, 8000), ...setTo(5000, [0])])
    expect(loads[0]).toBeCloseTo(5000, 6)
  })

  it('turns its nut down, which adds less load the softer the bed is', () => {
    const turned = [{ ...bar(31, { bolts: [10] }) }, { ...bar(31, { ...soft, bolts: [10] }) }].map(
      (flange) => last(flange, [pull(0, { kind: 'turn', byMm: 0.04 })]).loads[0]!,
    )
    // On a rigid bed 0.04 mm of a bolt with 150 kN/mm are 6 kN.
    expect(turned[0]).toBeLessThan(6000)
    expect(turned[1]).toBeLessThan(turned[0]!)
  })

  it('takes it off: the flange lies as if it had never been pulled', () => {
    const { loads, sinkMm } = last(pair, [raise(0, 8000), pull(0, { kind: 'release' })])
    expect(Math.max(...loads)).toBeLessThan(1e-9)
    expect(Math.max(...sinkMm)).toBeLessThan(1e-12)
  })

  it('runs one down that is off until it touches, and then turns it', () => {
    const turn = pull(0, { kind: 'turn', byMm: 0.04 })
    const again = last(pair, [raise(0, 8000), pull(0, { kind: 'release' }), turn])
    expect(again.loads[0]).toBeCloseTo(last(pair, [turn]).loads[0]!, 6)
  })

  it('raises one that is off to nothing: it touches, and pulls with whatever then lifts it', () => {
    const seated = [pull(1, { kind: 'release' }), raise(1, 0), raise(0, 8000)]
    expect(last(pair, seated).loads[1]).toBeCloseTo(last(pair, [raise(0, 8000)]).loads[1]!, 6)
  })

  it('is a mistake of the program for a bolt that is not there', () => {
    expect(() => clampMap(pair, [raise(7, 1)])).toThrow('no bolt b7')
  })
})

describe('a flange that is hard to bring to rest', () => {
  /** A thin ring on a narrow bed, which rolls off it when one bolt alone holds it. */
  const round = (nodes: number, bolts: readonly number[]): Flange => {
    const section = { bendingNmm2: 5e9, twistingNmm2: 8e7, bedMpa: 6e5, widthMm: 1.3 }
    return {
      nodes: Array.from({ length: nodes }, (_, node) => {
        const angle = (2 * Math.PI * node) / nodes
        return { x: 800 * Math.cos(angle), y: 800 * Math.sin(angle) }
      }),
      beams: Array.from({ length: nodes }, (_, from) => ({ ...section, from, to: (from + 1) % nodes })),
      bolts: bolts.map((node, index) => ({ id: `b${index}`, node, stiffnessNPerMm: 1e4 })),
      assumptions: [],
    }
  }

  it('holds what its one bolt is set to, and lies only near it', () => {
    const { loads, sinkMm } = last(round(180, [45]), setTo(9000, [0]))
    expect(loads[0]).toBeCloseTo(9000, 4)
    expect(sinkMm[45]).toBeGreaterThan(0)
    expect(sinkMm[135]).toBeLessThan(0)
  })

  it('is let go again, and then pulled again with the same result', () => {
    const flange = round(60, [0, 20, 40])
    const off = flange.bolts.map(({ id }): FlangePull => ({ pass: 0, bolt: id, kind: 'release' }))
    const pulls = setTo(9000, [0, 1, 2])
    const once = last(flange, [...off, ...pulls]).loads
    expect(apart(once, last(flange, [...off, ...pulls, ...off, ...pulls]).loads)).toBeLessThan(1e-6)
  })

  it('is not one when a bolt pulls beyond all that bears: then it tips, and that is a mistake of the program', () => {
    const overhung = bar(20, { bolts: [19] })
    const beams = overhung.beams.map((beam) => (beam.from < 12 ? beam : { ...beam, bedMpa: 0 }))
    expect(() => clampMap({ ...overhung, beams }, setTo(9000, [0]))).toThrow('does not come to rest')
  })
})

const flanges = [
  ['a bar', bar(41, { ...soft, bolts: [5, 15, 25, 35] })],
  ['a ring', ring(6, { ...soft, bolts: [3, 9, 15, 21, 27, 33] })],
  ['a ring with a wall', ringWithWall(6, { ...soft, bolts: [0, 6, 12, 18, 24, 38] })],
] as const

describe.each(flanges)('%s', (_, flange) => {
  const all = flange.bolts.map((_, bolt) => bolt)

  it('comes to one target when all bolts are set to it again and again', () => {
    const passes = Array.from({ length: 40 }, (_, pass) => setTo(10_000, all, pass)).flat()
    const errors = clampMap(flange, passes).afterPasses.map(({ state }) =>
      Math.max(...state.loads.map((load) => Math.abs(load / 10_000 - 1))),
    )
    expect(errors[0]).toBeGreaterThan(0.01)
    expect(errors[5]).toBeLessThan(errors[0]!)
    expect(errors.at(-1)).toBeLessThan(1e-6)
  })

  it('holds the same loads after equal turns of all nuts, whatever the order', () => {
    const turns = (order: readonly number[]) =>
      order.map((bolt): FlangePull => ({ pass: 0, bolt: `b${bolt}`, kind: 'turn', byMm: 0.05 }))
    const inLine = last(flange, turns(all)).loads
    checkProperty(
      fc.property(fc.shuffledSubarray(all, { minLength: all.length }), (order) => {
        expect(apart(inLine, last(flange, turns(order)).loads)).toBeLessThan(1e-9)
      }),
      { numRuns: 20 },
    )
  })

  it.each([
    ['across', (x: number, y: number) => [x, -y]],
    ['end to end', (x: number, y: number) => [-x, y]],
    ['turned by a right angle', (x: number, y: number) => [-y, x]],
  ] as const)('mirrored %s has the mirrored map', (_, mirror) => {
    const nodes = flange.nodes.map(({ x, y, ...node }) => {
      const [mirroredX, mirroredY] = mirror(x, y)
      return { ...node, x: mirroredX!, y: mirroredY! }
    })
    const pulls = [...setTo(5000, all), ...setTo(10_000, all.toReversed())]
    const here = last(flange, pulls)
    const there = last({ ...flange, nodes }, pulls)
    expect(apart(here.loads, there.loads)).toBeLessThan(1e-9)
    expect(apart(here.sinkMm, there.sinkMm)).toBeLessThan(1e-6)
  })

  it('is the same whichever way its beams are counted', () => {
    const beams = flange.beams.map(({ from, to, ...beam }) => ({ ...beam, from: to, to: from })).toReversed()
    const pulls = setTo(5000, all)
    expect(apart(last(flange, pulls).loads, last({ ...flange, beams }, pulls).loads)).toBeLessThan(1e-9)
  })
})
