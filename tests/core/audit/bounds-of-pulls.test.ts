import { describe, expect, it } from 'vitest'
import { auditAfter, demoDraft, named, nth, type Draft } from '../engine/demo.ts'
import { found } from './found.ts'

describe('the bounds of pulls', () => {
  const rods = (spec: Draft) => named(spec.procedures, 'rods')

  it('limits to one side alone are measured from the target, to both sides by the nearer', () => {
    const limits = (least: string | undefined, most: string | undefined, target = '15 N·m') =>
      found('tolerance-too-fine', (spec) => {
        const pass = rods(spec).passes.find(({ kind }) => kind === 'torque')!
        for (const limit of ['least', 'most']) Reflect.deleteProperty(pass, limit)
        Object.assign(pass, { target, ...(least && { least }), ...(most && { most }) })
      }).length
    // A hundredth of 15 N·m is 0.15.
    expect(limits('14.85 N·m', undefined)).toBe(0)
    expect(limits('14.86 N·m', undefined)).toBe(1)
    expect(limits('14.9 N·m', '16 N·m')).toBe(1)
    expect(limits('14 N·m', '15.1 N·m')).toBe(1)
    expect(limits('14 N·m', '16 N·m')).toBe(0)
    // One of 100 to either side, exactly.
    expect(limits('99 N·m', '101 N·m', '100 N·m')).toBe(0)
    // All of the room on one side: 0.3 N·m is ± 0.15.
    expect(limits('15 N·m', '15.3 N·m')).toBe(0)
    expect(limits('15 N·m', '15.2 N·m')).toBe(1)
  })

  it('wrenches read from 1 to 1500 N·m', () => {
    const target = (torque: string) =>
      found('no-usual-wrench', (spec) => {
        const pass = rods(spec).passes.find(({ kind }) => kind === 'torque')!
        for (const limit of ['least', 'most']) Reflect.deleteProperty(pass, limit)
        Object.assign(pass, { target: torque })
      }).length
    expect(['1 N·m', '1500 N·m'].map(target)).toEqual([0, 0])
    expect(['0.99 N·m', '1501 N·m'].map(target)).toEqual([1, 1])
  })

  it('a turn is counted from the last torque, and begins again after loosening', () => {
    const order = rods(demoDraft('skerry-3')).orders[0]!.id
    const passes = (...kinds: readonly object[]) =>
      found('turn-leaves-elastic-line', (spec) => {
        rods(spec).passes = kinds.map((kind) => ({ order, ...kind })) as never
      })
    const torque = { kind: 'torque', target: '15 N·m' }
    const turn = { kind: 'angle', target: '95 °' }
    const loosen = { kind: 'loosen' }
    expect(passes(torque, turn)).toEqual([])
    expect(passes(torque, turn, turn)).toHaveLength(1)
    expect(passes(torque, turn, loosen, torque, turn)).toEqual([])
    expect(passes(torque, turn, torque, turn)).toEqual([])
    // From nothing a turn goes further than from a torque: not by 15 N·m's worth, but it is told by its pass.
    expect(passes(torque, turn, turn)[0]).toContain('pass=3,')
  })

  it('a turn without a torque before it, or after loosening, begins from no load at all', () => {
    const order = rods(demoDraft('skerry-3')).orders[0]!.id
    const preload = (...kinds: readonly object[]) => {
      const lines = found('turn-leaves-elastic-line', (spec) => {
        rods(spec).passes = kinds.map((kind) => ({ order, ...kind })) as never
      })
      return Number(/preload=([\d.]+) kN/.exec(lines[0] ?? '')?.[1])
    }
    const turn = (target: string) => ({ kind: 'angle', target })
    const loosened = [{ kind: 'torque', target: '15 N·m' }, { kind: 'loosen' }]
    // On an elastic line through nothing, twice the turn is twice the load; the loads are printed to 0.1 kN.
    expect(preload(turn('360 °')) - 2 * preload(turn('180 °'))).toBeCloseTo(0, 0)
    expect(Math.abs(preload(turn('360 °')) - 2 * preload(turn('180 °')))).toBeLessThan(0.16)
    expect(preload(...loosened, turn('180 °'))).toBe(preload(turn('180 °')))
    expect(preload({ kind: 'torque', target: '15 N·m' }, turn('180 °'))).toBeGreaterThan(
      preload(turn('180 °')) + 1,
    )
  })

  it('an angle is a full turn at most, and more than nothing', () => {
    const angle = (target: string) =>
      auditAfter('skerry-3', (spec) => {
        const pass = nth(rods(spec).passes, 2)
        for (const limit of ['least', 'most']) Reflect.deleteProperty(pass, limit)
        Object.assign(pass, { target })
      }).filter((line) => / angle-(beyond|missing)/.test(line)).length
    expect(['360 °', '1 °'].map(angle)).toEqual([0, 0])
    expect(['361 °', '0 °'].map(angle)).toEqual([1, 1])
  })
})
