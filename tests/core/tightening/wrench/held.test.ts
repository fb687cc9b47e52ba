import { describe, expect, it } from 'vitest'
import {
  flagInShort,
  flagProblem,
  heldAs,
  heldWrench,
  runEvent,
  type HeldWrench,
} from '../../../../core/tightening/index.ts'
import { Bench, pull } from '../bench.ts'
import { winchEngine } from '../winch-engine.ts'
import { setupOf, medium } from '../wrench-rack.ts'
import { en } from '../../../../core/words/index.ts'

/** A 12 in wrench with a 4 in adapter straight on: the fastener has 4/3 of what the scale shows (TM 9-2350-277-40&P). */
const long: HeldWrench = heldAs(setupOf(medium({ length: '12 in' }), { offset: '4 in', angle: '0 °' }))

/** The cap bolts at 38 to 42 N·m: their last torque, with limits of a published kind. */
const caps = {
  ...winchEngine,
  procedures: winchEngine.procedures.map((procedure) => ({
    ...procedure,
    passes: procedure.passes.map((pass) =>
      pass.kind === 'torque' ? { ...pass, least: undefined, most: undefined, others: [] } : pass,
    ),
  })),
}

function atFirstTorque(): Bench {
  const bench = Bench.started('caps', caps)
  bench.pullsNext(4)
  return bench
}

describe('a reading off a wrench with an adapter', () => {
  it('is brought to the fastener before it is judged: 18 on the scale is the 24 that was asked for', () => {
    const bench = atFirstTorque()
    const [event] = bench.does({ ...pull(bench.next!, ['18', 'N·m']), held: long })
    expect(event).toMatchObject({
      verdict: 'within',
      reading: { typed: '18', value: 18, unit: 'N·m', atFastener: 24 },
      held: { wrench: 'Medium click wrench', adapter: { name: 'Crow foot', angle_deg: 0 } },
    })
    expect(bench.run!.flags).toEqual([])
  })

  it('is too much where the scale shows the target itself: 24 on the scale is 32 at the fastener', () => {
    const bench = atFirstTorque()
    bench.does({ ...pull(bench.next!, ['24', 'N·m']), held: long })
    const flag = bench.run!.flags[0]!
    expect(flag.about).toBe('over')
    expect(flagProblem(caps, bench.procedure, bench.run!, flag)).toMatchObject({
      code: 'reading-over-begin-again',
      facts: {
        fastener: '1',
        read: {
          code: 'reading',
          facts: {
            onScale: { amount: 24, decimals: 6, isShort: true, unit: 'N·m' },
            atFastener: { amount: 32, decimals: 1, isShort: true, unit: 'N·m' },
            clamping: null,
          },
        },
        limits: {
          from: { amount: 23.1, decimals: 6, isShort: true, unit: '' },
          upTo: { amount: 24.9, decimals: 6, isShort: true, unit: '' },
        },
        otherUnit: null,
      },
    })
    expect(flagInShort(en, bench.procedure, bench.run!, flag)).toContain('32 N·m at the fastener')
  })

  it('is what the scale shows with a bare wrench, with an adapter square to the handle, and with none named', () => {
    const bare = heldAs(setupOf(medium({ length: '12 in' })))
    const square = heldAs(setupOf(medium({}), { offset: '4 in', angle: '90 °' }))
    for (const wrench of [bare, square, null]) {
      const bench = atFirstTorque()
      const [event] = bench.does({ ...pull(bench.next!, ['24', 'N·m']), ...(wrench && { held: wrench }) })
      expect(event).toMatchObject({ verdict: 'within', reading: { value: 24 } })
      expect(event).not.toHaveProperty('reading.atFastener')
    }
  })

  it('keeps which wrench it was where the click is all there is', () => {
    const bench = atFirstTorque()
    const [event] = bench.does({ ...pull(bench.next!), held: long })
    expect(event).toMatchObject({ reading: null, verdict: 'unread', held: long })
  })

  it('has no wrench where there is no torque: seating by hand and turning by an angle', () => {
    const seated = Bench.started('caps', caps)
    expect(seated.does({ ...pull(seated.next!), held: long })[0]).not.toHaveProperty('held')
    const rods = Bench.started('rods')
    rods.pullsNext(2)
    expect(rods.does({ ...pull(rods.next!, ['60', '°']), held: long })[0]).not.toHaveProperty('held')
  })

  it('is refused where the length of the wrench is not known: no torque follows from it', () => {
    const bench = atFirstTorque()
    const unknown = heldAs(setupOf(medium({}), { offset: '4 in', angle: '0 °' }))
    expect(bench.refuses({ ...pull(bench.next!, ['18', 'N·m']), held: unknown })).toContain('length')
  })

  it('is read by its own scale’s unit, or by the one that was typed along', () => {
    const bench = atFirstTorque()
    const [event] = bench.does({ ...pull(bench.next!, ['13.276 lbf ft', 'N·m']), held: long })
    expect(event).toMatchObject({ verdict: 'within', reading: { unit: 'lbf·ft' } })
  })
})

describe('the record of a wrench', () => {
  it('has what is known of it, and nothing of what is not', () => {
    expect(heldAs(setupOf(medium({ calibration: undefined })))).toEqual({ wrench: 'Medium click wrench' })
    expect(
      heldAs(setupOf(medium({ number: 'W 12', length: '12 in' }), { offset: '4 in', angle: '45 °' })),
    ).toEqual({
      wrench: 'Medium click wrench',
      number: 'W 12',
      calibrated: '2026-03-02',
      length_nm: 304_800_000,
      adapter: { name: 'Crow foot', offset_nm: 101_600_000, angle_deg: 45 },
    })
  })

  it('is left out of entries that were made before it was kept, and they still read', () => {
    const old = {
      type: 'fastener-pulled',
      version: 1,
      procedure: 'caps',
      pull: 1,
      pass: 1,
      fastener: 'cap-1',
      reading: { typed: '24', value: 24, unit: 'N·m' },
      verdict: 'within',
      outOfOrder: null,
    }
    expect(runEvent.parse(old)).toEqual(old)
  })

  it('has neither a negative offset nor an angle past straight back', () => {
    const { adapter } = long
    expect(heldWrench.safeParse({ ...long, adapter: { ...adapter, offset_nm: -1 } }).success).toBe(false)
    expect(heldWrench.safeParse({ ...long, adapter: { ...adapter, angle_deg: 181 } }).success).toBe(false)
  })
})
