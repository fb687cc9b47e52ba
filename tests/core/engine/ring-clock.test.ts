import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { clockFaults, gapsBySpec, neighbours, type RingSet } from '../../../core/engine/index.ts'
import { degrees } from '../../../core/quantity/index.ts'
import { checkProperty } from '../../property.ts'
import { demoSpec, readAfter } from './demo.ts'

const set = demoSpec('moor-flat-4').ringSets[0]!
const at = (angles: readonly number[]) =>
  set.rings.map(({ id }, index) => ({ ring: id, degrees: angles[index]! }))
const found = (angles: readonly number[], of: RingSet = set) =>
  clockFaults(of, at(angles)).map((fault) =>
    fault.kind === 'in-line'
      ? `${fault.rings.map(({ id }) => id).join('+')} ${fault.apart}`
      : `${fault.kind} ${fault.ring.id} ${fault.apart}`,
  )

/** Top ring, second ring, upper rail, expander, lower rail; neighbours 60° apart, 30° off pin and thrust sides. */
describe('ring gaps on the clock of a piston', () => {
  it('are right as the demo has them', () => {
    expect(clockFaults(set, gapsBySpec(set))).toEqual([])
  })

  it('are neighbours as the rings lie, and across the expander, through which gas goes', () => {
    expect(neighbours(set).map((pair) => pair.map(({ id }) => id).join('+'))).toEqual([
      'top+second',
      'second+upper-rail',
      'upper-rail+expander',
      'expander+lower-rail',
      'upper-rail+lower-rail',
    ])
  })

  it('in line are found, counted the short way round over the nose', () => {
    // 350° and 10° are 20° apart.
    const free = { ...set, clock: { apart: degrees(60) } }
    expect(found([350, 10, 130, 250, 310], free)).toEqual(['top+second 20'])
    expect(found([45, 45, 135, 225, 315])).toEqual(['top+second 0'])
    // Exactly at the least is right.
    expect(found([45, 105, 225, 315, 45], free)).toEqual([])
  })

  it('over either end of the pin, and on either thrust side, are found', () => {
    expect(found([0, 120, 240, 330, 60])).toEqual(['over-pin top 0'])
    expect(found([45, 155, 305, 45, 135])).toEqual(['over-pin second 25'])
    expect(found([45, 225, 315, 225, 100])).toEqual(['on-thrust lower-rail 10'])
  })

  it('are asked of the spec only as far as its rule goes', () => {
    const free = { ...set, clock: { apart: degrees(60) } }
    expect(found([0, 90, 180, 270, 0], free)).toEqual([])
  })

  it('are found exactly where a walk around the circle, degree by degree, finds another one too near', () => {
    let inLine = 0
    let clear = 0
    checkProperty(
      fc.property(
        fc.array(fc.integer({ min: 0, max: 359 }), { minLength: 5, maxLength: 5 }),
        fc.integer({ min: 1, max: 180 }),
        (angles, apart) => {
          const of = { ...set, clock: { apart: degrees(apart) } }
          const pairs = [
            [0, 1],
            [1, 2],
            [2, 3],
            [3, 4],
            [2, 4],
          ] as const
          // From one gap, step by step to either side, short of the least: is the other one met?
          const near = pairs.filter(([one, other]) => {
            for (let step = 0; step < apart; step += 1)
              for (const way of [step, -step])
                if ((angles[one]! + way + 720) % 360 === angles[other]!) return true
            return false
          })
          const faults = clockFaults(of, at(angles)).map((fault) =>
            fault.kind === 'in-line' ? fault.rings.map((ring) => set.rings.indexOf(ring)) : [],
          )
          expect(faults.toSorted()).toEqual(near.map((pair) => [...pair]).toSorted())
          if (near.length > 0) inLine += 1
          else clear += 1
        },
      ),
      { numRuns: 400 },
    )
    expect(inLine).toBeGreaterThan(20)
    expect(clear).toBeGreaterThan(20)
  })
})

describe('rings in a spec', () => {
  const read = (change: Parameters<typeof readAfter>[1]) => readAfter('moor-flat-4', change)

  it('are a set that is there, with an angle on the clock and one rule for each gap', () => {
    expect(
      read((spec) =>
        Object.assign(
          spec.steps.find(({ id }) => id === 'rings-on')!,
          { rings: 'none' },
        ),
      ),
    ).toEqual([expect.stringContaining('spec-reference-dangling steps[9].rings: what=ring-set, id=none')])
    expect(read((spec) => (spec.ringSets = []))).toHaveLength(2)
    expect(read((spec) => (spec.ringSets![0]!.rings[0]!.gapAt = '360 °'))).toEqual([
      expect.stringContaining(
        'spec-part-wrong ringSets[0].rings[0].gapAt: kind=text, text=360 °, should=angle-on-the-clock',
      ),
    ])
    expect(read((spec) => (spec.ringSets![0]!.rings[0]!.gapAt = '45 mm'))).toHaveLength(1)
    expect(read((spec) => (spec.ringSets![0]!.pistons = []))).toEqual([
      expect.stringContaining(
        'spec-part-wrong ringSets[0].pistons: kind=list, length=0, should=pistons-none',
      ),
    ])
    expect(read((spec) => (spec.ringSets![0]!.rings[1]!.id = 'top'))).toEqual([
      expect.stringContaining('spec-id-twice ringSets[0].rings: what=ring, what=ring-set, id=rings, id=top'),
    ])
  })
})
