import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { buildSheet, passResults, replay } from '../../../../core/builds/index.ts'
import {
  facesWorkedOn,
  faultDrill,
  faultKindsOf,
  faultTally,
  finishedFacts,
  gradeOf,
  partsAtFault,
} from '../../../../core/practice/index.ts'
import { en } from '../../../../core/words/index.ts'
import { checkProperty } from '../../../property.ts'
import { demo, demos } from '../../layout/demos.ts'
import { seatedEngine } from '../seated-engine.ts'
import { person, buildOf, differences, arrowsOf } from './found-faults.ts'

const seeds = fc.integer({ min: 0, max: 10_000 }).map((round) => `round ${round}`)

describe('a finished build with one thing wrong', () => {
  it('differs from the spec in one thing, which is the key', () => {
    const met = new Map<string, number>()
    checkProperty(
      fc.property(fc.constantFrom(...demos.map(({ id }) => id)), seeds, (id, seed) => {
        const spec = demo(id)
        for (const build of faultDrill(spec, seed, person)!.builds) {
          const found = differences(spec, build)
          expect(found).toHaveLength(1)
          expect(partsAtFault(build.fault)).toEqual(expect.arrayContaining([...found[0]!]))
          met.set(build.fault.kind, (met.get(build.fault.kind) ?? 0) + 1)
        }
      }),
      // These two have every kind between them; chance may leave one out.
      {
        numRuns: 30,
        examples: [
          ['tarn-4', 'round 1'],
          ['tarn-4', 'round 3'],
          ...['a', 'b', 'c', 'd', 'e'].map((seed): [string, string] => ['moor-flat-4', seed]),
        ],
      },
    )
    expect([...met.keys()].toSorted()).toEqual([
      'bead-over-passage',
      'cap-turned',
      'gaps-in-line',
      'missed-pull',
      'shells-swapped',
    ])
  })

  it('is of every kind that the engine can have, whatever the engine', () => {
    for (const spec of demos) expect(faultKindsOf(spec)).toContain('missed-pull')
    expect(faultKindsOf(demo('tarn-4'))).toEqual([
      'missed-pull',
      'shells-swapped',
      'bead-over-passage',
      'cap-turned',
      'gaps-in-line',
    ])
    expect(faultKindsOf(demo('fen-1'))).not.toContain('gaps-in-line')
    // A tunnel case has no caps, and its one bead runs where no oil way is.
    expect(faultKindsOf(demo('holm-2'))).toContain('gaps-in-line')
    expect(faultKindsOf(demo('quay-3'))).toEqual(['missed-pull', 'shells-swapped', 'gaps-in-line'])
  })

  it('has a missed pull, and a turned cap where there are caps, on an engine without a chart or a bead', () => {
    let reached = 0
    checkProperty(
      fc.property(seatedEngine, seeds, (spec, seed) => {
        const { builds } = faultDrill(spec, seed, person)!
        const kinds = spec.case.family === 'caps' ? ['cap-turned', 'missed-pull'] : ['missed-pull']
        expect(builds.map(({ fault }) => fault.kind).toSorted()).toEqual(kinds)
        for (const build of builds) {
          const found = differences(spec, build)
          expect(found).toHaveLength(1)
          expect(partsAtFault(build.fault)).toEqual(expect.arrayContaining([...found[0]!]))
        }
        reached += 1
      }),
      { numRuns: 15 },
    )
    expect(reached).toBeGreaterThan(0)
  })

  it('is drawn again from the same seed', () => {
    const spec = demo('holm-2')
    expect(faultDrill(spec, 'a', person)).toEqual(faultDrill(spec, 'a', person))
    expect(faultDrill(spec, 'b', person)).not.toEqual(faultDrill(spec, 'a', person))
  })

  it('shows nothing that is next, and a ring that is not full where a pull is missing', () => {
    let missed = 0
    for (const spec of demos)
      for (let round = 0; round < 2; round += 1)
        for (const { spec: shown, entries, fault } of faultDrill(spec, `round ${round}`, person)!.builds) {
          const state = replay(entries)
          const facts = facesWorkedOn(spec).map((face) => finishedFacts(en, shown, state, face))
          const fasteners = facts.flatMap((each) => Object.entries(each.fasteners))
          const open = fasteners.filter(([, fact]) => fact.state !== 'done').map(([id]) => id)
          expect(open).toEqual(fault.kind === 'missed-pull' ? [fault.fastener] : [])
          if (fault.kind === 'missed-pull') missed += 1
        }
    expect(missed).toBeGreaterThan(0)
  })

  it('has one fastener less in a pass on the sheet where a pull is missing', () => {
    const { entries, fault } = buildOf(demo('skerry-3'), 'missed-pull')
    if (fault.kind !== 'missed-pull') throw new Error('another fault')
    const spec = demo('skerry-3')
    const place = spec.procedures.findIndex(({ id }) => id === fault.procedure)
    const { orders, passes } = spec.procedures[place]!
    const pass = passes[fault.pass]!
    const order = 'order' in pass ? orders.find(({ id }) => id === pass.order)! : orders[0]!
    const wanted = (pass.kind === 'recheck' ? pass.only : undefined) ?? order.sequence
    const rows = passResults(buildSheet(spec, entries).runs[place]!).filter(
      (row) => row.pass === fault.pass + 1,
    )
    expect(rows.reduce((sum, { count }) => sum + count, 0)).toBe(wanted.length - 1)
  })

  it('has its joints closed within the open time of the sealant, and no flag', () => {
    for (const spec of demos)
      for (const { entries } of faultDrill(spec, 'round 1', person)!.builds) {
        const sheet = buildSheet(spec, entries)
        expect(sheet.beads.filter(({ over }) => over)).toEqual([])
        expect(sheet.runs.flatMap(({ flags }) => flags)).toEqual([])
      }
  })

  it('has the arrow of each cap towards the nose, but for one that is turned round', () => {
    const spec = demo('tarn-4')
    const { fault } = buildOf(spec, 'cap-turned')
    if (fault.kind !== 'cap-turned') throw new Error('another fault')
    for (const from of ['above', 'below'] as const) {
      const ways = arrowsOf(spec, fault.bearing, from)
      // The nose is at the left.
      expect(ways.filter(({ way }) => way > 0)).toEqual([{ id: fault.bearing, way: 1 }])
      expect(ways.filter(({ way }) => way < 0)).toHaveLength(spec.case.saddles.length - 1)
    }
  })

  it('counts wrong parts and wrong names of the fault at the part', () => {
    const { fault } = buildOf(demo('skerry-3'), 'missed-pull')
    const [about] = partsAtFault(fault)
    expect(faultTally(fault, 2, 1)).toEqual([
      { about, errors: 2 },
      { about, errors: 1 },
    ])
    expect(gradeOf(faultTally(fault, 0, 0))).toBe('good')
  })
})
