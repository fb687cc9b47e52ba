import { describe, expect, it } from 'vitest'
import { engineSpec } from '../../../../core/engine/index.ts'
import { pullsOf } from '../../../../core/tightening/index.ts'
import { valueOf } from '../../joint/workshop.ts'
import { demoDraft, demoSpec, named } from '../../engine/demo.ts'

/** The rods of Skerry 3 pulled by passes of our own: oiled M8×1, 12.9, 11 mm across flats. */
function pulled(passes: readonly object[]) {
  const draft = structuredClone(demoDraft('skerry-3'))
  const procedure = named(draft.procedures, 'rods')
  const order = { id: 'pair', sequence: ['rod-1', 'rod-2'] }
  const spec = engineSpec.parse({ ...draft, procedures: [{ ...procedure, orders: [order], passes }] })
  return valueOf(pullsOf(spec, spec.procedures[0]!))
}

describe('a procedure as pulls of a flange', () => {
  it('makes a torque a load, by the usual friction of oiled threads', () => {
    // By hand: 0.16·1 + 0.58·7.3505·0.12 + (9.9 + 8.8)/4·0.12 = 1.2326 mm; 15 N·m / 1.2326 mm = 12.17 kN.
    const pulls = pulled([{ kind: 'torque', order: 'pair', target: '15 N·m' }])
    expect(pulls).toMatchObject([
      { pass: 0, bolt: 'rod-1', kind: 'raise' },
      { pass: 0, bolt: 'rod-2', kind: 'raise' },
    ])
    expect(pulls[0]!.kind === 'raise' && pulls[0]!.to / 12_170).toBeCloseTo(1, 3)
  })

  it('goes cap by cap where the procedure does: all passes of one cap before the next', () => {
    const firth = demoSpec('firth-v8')
    const procedure = firth.procedures.find(({ capByCap }) => capByCap === true)!
    const pulls = valueOf(pullsOf(firth, procedure))
    const caps = procedure.caps!.map(({ fasteners }) => fasteners)
    const capOf = ({ bolt }: { readonly bolt: string }) => caps.findIndex((cap) => cap.includes(bolt))
    const inTurn = pulls.map(capOf).filter((cap, at, all) => cap !== all[at - 1])
    expect(inTurn).toEqual(caps.map((_, cap) => cap))
    expect(caps.length).toBeGreaterThan(2)
    const passesOfFirst = pulls.filter((pull) => capOf(pull) === 0).map(({ pass }) => pass)
    expect(passesOfFirst).toEqual(passesOfFirst.toSorted((a, b) => a - b))
    expect(new Set(passesOfFirst).size).toBeGreaterThan(1)
  })

  it('takes the values that differ for some', () => {
    const others = [{ fasteners: ['rod-2'], target: '30 N·m' }]
    const pulls = pulled([{ kind: 'torque', order: 'pair', target: '15 N·m', others }])
    const loads = pulls.map((pull) => (pull.kind === 'raise' ? pull.to : 0))
    expect(loads[1]! / loads[0]!).toBeCloseTo(2, 12)
  })

  it('makes a turn a share of the pitch: 90° of 1 mm is 0.25 mm', () => {
    expect(pulled([{ kind: 'angle', order: 'pair', target: '90 °' }])[0]).toEqual({
      pass: 0,
      bolt: 'rod-1',
      kind: 'turn',
      byMm: 0.25,
    })
  })

  it('makes a stretch the load of the bolt as a spring, at the middle of its limits', () => {
    const toStretch = (least: string, most: string) => {
      const torque = { least: '10 N·m', most: '60 N·m' }
      const [first] = pulled([{ kind: 'tighten-to-stretch', order: 'pair', least, most, torque }])
      return first?.kind === 'raise' ? first.to : 0
    }
    const load = toStretch('0.04 mm', '0.06 mm')
    // A bar of its 39.2 mm² stress area and 40 mm alone: 0.05 mm · 205 kN/mm² · 39.2 mm² / 40 mm = 10.0 kN. Head and engaged
    // thread give way as well, by some third.
    expect(load / 10_000).toBeGreaterThan(0.7)
    expect(load / 10_000).toBeLessThan(1)
    expect(toStretch('0.03 mm', '0.07 mm')).toBeCloseTo(load, 6)
    expect(toStretch('0.08 mm', '0.12 mm')).toBeCloseTo(2 * load, 6)
  })

  it('takes nuts off where they are loosened, touches by hand, and counts passes that move no load', () => {
    const pulls = pulled([
      { kind: 'action', instruction: 'Oil the threads.' },
      { kind: 'seat', order: 'pair' },
      { kind: 'loosen', order: 'pair' },
      { kind: 'recheck', order: 'pair', target: '15 N·m' },
    ])
    expect(pulls.map(({ pass, kind }) => `${pass} ${kind}`)).toEqual([
      '1 raise',
      '1 raise',
      '2 release',
      '2 release',
      '3 raise',
      '3 raise',
    ])
    expect(pulls[0]).toMatchObject({ to: 0 })
  })

  it('leaves out fasteners of another face', () => {
    const spec = demoSpec('skerry-3')
    const procedure = { ...named(spec.procedures, 'rods'), face: 'sump' }
    expect(valueOf(pullsOf(spec, procedure))).toEqual([])
  })
})
