import { describe, expect, it } from 'vitest'
import { buildSheet, passResults, type SheetPull } from '../../../../core/builds/index.ts'
import { degrees, nanometres, newtonMetres } from '../../../../core/quantity/index.ts'
import { demoEngine, Workshop } from '../workshop.ts'

const stamp = { seq: 1, at: '2026-03-14T09:00:00.000Z', person: 'I. Brandvold' }
const torque = {
  kind: 'torque',
  target: newtonMetres(24),
  least: newtonMetres(22.8),
  most: newtonMetres(25.2),
  tolerance: 'spec',
} as const

/** Bolt 1 at 24 N·m in the second pass, not read, unless said otherwise. */
function pulled(more: Partial<SheetPull> = {}): SheetPull {
  return {
    ...{ ...stamp, number: 1, pass: 2, kind: 'torque', instruction: null, fastener: '1', where: null },
    ...{
      window: torque,
      reading: null,
      readWith: null,
      from: degrees(0),
      readBefore: [],
      held: null,
      running: null,
      verdict: 'unread',
    },
    ...{ outOfOrder: null, takenBack: null, stretch: null, setAside: null },
    ...{ cap: null, turning: null, step: null, torque: null, waited: null, sure: false },
    ...more,
  }
}
const read = (fastener: string, typed: string, more: Partial<SheetPull> = {}) =>
  pulled({
    ...{ fastener, verdict: 'within', reading: { typed, value: Number(typed), unit: 'N·m' } },
    ...more,
  })

describe('what a pass came to', () => {
  it('is one row: how many, the least and the most that was read, and how many were not read', () => {
    const [row, ...others] = passResults({
      pulls: [read('1', '23.5'), read('2', '24.6'), pulled({ fastener: '3' })],
    })
    expect(others).toEqual([])
    expect(row).toMatchObject({ pass: 2, count: 3, unread: 1, outside: [] })
    expect(row!.read).toEqual({ count: 2, least: 23.5, most: 24.6 })
  })

  it('is what the fasteners had, not what a scale with an adapter showed', () => {
    const reading = { typed: '18', value: 18, unit: 'N·m', atFastener: 24 } as const
    const [row] = passResults({ pulls: [pulled({ reading, verdict: 'within' })] })
    expect(row!.read).toEqual({ count: 1, least: 24, most: 24 })
  })

  it('is the whole of a turn that was turned on: 40° and 50° more are 90°, of one bolt', () => {
    const limits = { target: degrees(90), least: degrees(85), most: degrees(95) }
    const window = { kind: 'angle', ...limits, tolerance: 'spec' } as const
    const turn = (typed: string, from: number) =>
      read('1', typed, {
        ...{ kind: 'angle', window, from: degrees(from) },
        reading: { typed, value: Number(typed), unit: '°' },
      })
    const [row] = passResults({ pulls: [turn('40', 0), turn('50', 40)] })
    expect(row).toMatchObject({ count: 1, read: { count: 1, least: 90, most: 90 } })
  })

  it('has the torques at which bolts were stretched beside the stretch', () => {
    const window = {
      kind: 'length',
      of: 'stretch',
      least: nanometres(20_000),
      most: nanometres(40_000),
      torque: { ...torque, least: newtonMetres(5), most: newtonMetres(12) },
    } as const
    const stretched = (fastener: string, stretch: number, typed: string) =>
      pulled({
        ...{ fastener, kind: 'tighten-to-stretch', window, verdict: 'within', stretch: nanometres(stretch) },
        reading: { typed: '80.03', value: 80.03, unit: 'mm' },
        torque: { typed, value: Number(typed), unit: 'N·m' },
      })
    const [row] = passResults({ pulls: [stretched('S1', 24_000, '7.1'), stretched('S2', 31_000, '9.4')] })
    expect(row).toMatchObject({
      read: { count: 2, least: 24_000, most: 31_000 },
      torque: { count: 2, least: 7.1, most: 9.4 },
    })
  })

  it('says how long was waited, and why not longer', () => {
    const waited = { seconds: 95, shortened: 'The shop closes' }
    const wait = pulled({ ...{ kind: 'action', window: null, fastener: null, waited } })
    const [first, second] = passResults({ pulls: [wait, read('1', '24', { pass: 3 })] })
    expect(first).toMatchObject({ count: 1, read: null, torque: null, unread: 0, waited })
    expect(second?.waited).toBeNull()
  })

  it('leaves out what was taken back and what no longer counts, and names what is outside', () => {
    const takenBack = { ...stamp, reason: 'Let go too early.' }
    const rows = passResults({
      pulls: [
        read('1', '11', { takenBack }),
        read('2', '12', { setAside: 'loosened' }),
        read('3', '27', { verdict: 'over' }),
      ],
    })
    expect(rows).toHaveLength(1)
    expect(rows[0]).toMatchObject({ count: 1, outside: ['3'], read: { least: 27, most: 27 } })
  })

  it('has a row for each target, and each wrench once with its number and its calibration', () => {
    const wrenchUsed = { wrench: 'Click 20–100', number: '4711', calibrated: '2026-03-31' }
    const other = {
      ...torque,
      target: newtonMetres(30),
      least: newtonMetres(28),
      most: newtonMetres(32),
    } as const
    const rows = passResults({
      pulls: [
        read('1', '24', { held: wrenchUsed }),
        read('2', '30', { window: other, held: wrenchUsed }),
        read('3', '24', { held: { ...wrenchUsed } }),
      ],
    })
    expect(rows.map(({ count, wrenches }) => [count, wrenches])).toEqual([
      [2, [wrenchUsed]],
      [1, [wrenchUsed]],
    ])
  })
})

describe('the sealant on the sheet', () => {
  const shop = new Workshop(demoEngine('skerry-3'))
  const beadsNow = () => buildSheet(shop.spec, shop.entries).beads
  it('has no time before a bead is laid, and none before the last bolt of its joint', () => {
    expect(beadsNow().every(({ laid, took_s }) => laid === null && took_s === null)).toBe(true)
    shop.worksUpTo('case-run')
    const [bead] = beadsNow().filter(({ laid }) => laid !== null)
    expect(bead).toMatchObject({ closed: null, took_s: null, over: false })
  })

  it('takes from laying the bead to the last bolt of its joint, by the clock of the entries', () => {
    while (!shop.state.finished) shop.goesOn()
    const laid = beadsNow().filter(({ laid }) => laid !== null)
    expect(laid.length).toBeGreaterThan(0)
    for (const bead of laid) {
      const at = (seq: number) => Date.parse(shop.entries.find((entry) => entry.seq === seq)!.at)
      expect(bead.closed!.seq, bead.name).toBeGreaterThan(bead.laid!.seq)
      expect(bead.took_s! * 1000, bead.name).toBe(at(bead.closed!.seq) - at(bead.laid!.seq))
      expect(bead.over, bead.name).toBe(bead.took_s! > bead.openTimeMinutes * 60)
    }
  })
})
