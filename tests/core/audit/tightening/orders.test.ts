import { describe, expect, it } from 'vitest'
import { auditAfter, named, nth, type Draft } from '../../engine/demo.ts'

function sequence(spec: Draft, procedure: string, order: string): string[] {
  return named(named(spec.procedures, procedure).orders, order).sequence
}

describe('an order of a full pass', () => {
  it('that leaves a fastener out is a fault, with its number and its group', () => {
    expect(
      auditAfter('skerry-3', (spec) => {
        const order = sequence(spec, 'case', 'from-the-middle')
        order.splice(order.indexOf('case-5'), 1)
      }),
    ).toEqual([
      'fault order-misses procedures[1].orders[0].sequence: procedure=Case bolts, order=from-the-middle, group=Case bolts, numbers=5',
    ])
  })

  it('may leave some to another order of the procedure, so long as all go through the same kinds of pass', () => {
    const split = (change: (passes: object[]) => object[]) =>
      auditAfter('skerry-3', (spec) => {
        const rods = named(spec.procedures, 'rods')
        const all = nth(rods.orders, 0).sequence
        rods.orders = [
          { id: 'first', sequence: all.slice(0, 2) },
          { id: 'rest', sequence: all.slice(2) },
        ]
        const passes = rods.passes.map((pass) => ({ ...pass, order: 'first' }))
        rods.passes = change([...passes, ...passes.map((pass) => ({ ...pass, order: 'rest' }))]) as never
      })
    expect(split((passes) => passes)).toEqual([])
    // Without the last turn of the rest.
    expect(split((passes) => passes.slice(0, -1))).toEqual([
      expect.stringContaining('fault order-misses procedures[0].orders[0].sequence'),
      expect.stringContaining('fault order-misses procedures[0].orders[1].sequence'),
    ])
  })

  it('that has all is right, where another of the procedure leaves one out', () => {
    expect(
      auditAfter('skerry-3', (spec) => {
        const rods = named(spec.procedures, 'rods')
        const all = nth(rods.orders, 0).sequence
        rods.orders.push({ id: 'all-but-one', sequence: all.slice(0, -1) })
        rods.passes.splice(1, 0, { kind: 'torque', order: 'all-but-one', target: '10 N·m' })
      }),
    ).toEqual([expect.stringContaining('fault order-misses procedures[0].orders[1].sequence')])
  })

  it('that has a fastener twice is a fault', () => {
    expect(
      auditAfter('skerry-3', (spec) => sequence(spec, 'case', 'from-the-middle').push('case-5', 'case-7')),
    ).toEqual([
      'fault order-repeats procedures[1].orders[0].sequence: procedure=Case bolts, order=from-the-middle, numbers=5 7',
    ])
  })

  it('that has one twice in the place of another is reported with both', () => {
    const lines = auditAfter('skerry-3', (spec) => {
      sequence(spec, 'case', 'from-the-middle')[4] = 'case-6'
    })
    expect(lines).toEqual([
      expect.stringContaining('fault order-repeats procedures[1].orders[0].sequence'),
      expect.stringContaining(
        'fault order-misses procedures[1].orders[0].sequence: procedure=Case bolts, order=from-the-middle, group=Case bolts, numbers=5',
      ),
    ])
  })

  it('that reaches to another face is a fault', () => {
    expect(auditAfter('skerry-3', (spec) => sequence(spec, 'sump', 'all').push('case-1'))).toContain(
      'fault order-of-other-face procedures[3].orders[0].sequence: procedure=Sump screws, order=all, numbers=1, face=Sump face',
    )
  })

  it('names eight of many and counts the rest', () => {
    expect(
      auditAfter('skerry-3', (spec) => {
        sequence(spec, 'sump', 'all').splice(4)
      }),
    ).toEqual([
      expect.stringContaining(
        'order-misses procedures[3].orders[0].sequence: procedure=Sump screws, order=all, group=Sump screws, numbers=S5 S6 S7 S8 S9 S10 S11 S12 S13 S14 S15 S16',
      ),
    ])
  })
})

describe('the order of a recheck', () => {
  it('may be of some: the demo rechecks the first four of sixteen', () => {
    expect(auditAfter('skerry-3', (spec) => sequence(spec, 'sump', 'first-four').pop())).toEqual([])
  })

  it('is a fault all the same when it has one twice', () => {
    expect(auditAfter('skerry-3', (spec) => sequence(spec, 'sump', 'first-four').push('sump-1'))).toEqual([
      expect.stringContaining('fault order-repeats procedures[3].orders[1].sequence'),
    ])
  })
})

describe('fasteners that are forgotten', () => {
  it('as a whole group are a fault', () => {
    const lines = auditAfter('skerry-3', (spec) => {
      const flange = named(spec.procedures, 'flange')
      flange.orders = flange.orders.filter(({ id }) => id !== 'ends')
      flange.passes = flange.passes.filter((pass) => pass.kind !== 'torque' || pass.order !== 'ends')
    })
    expect(lines).toEqual([
      'fault group-never-tightened fasteners[18]: group=End screws, face=Case joint, count=4',
    ])
  })

  it('because no pass follows their order are a doubt about the order', () => {
    expect(
      auditAfter('skerry-3', (spec) => {
        const sump = named(spec.procedures, 'sump')
        sump.passes = sump.passes.filter(({ kind }) => kind !== 'recheck')
      }),
    ).toEqual([
      expect.stringContaining(
        'doubt order-unused procedures[3].orders[1]: procedure=Sump screws, order=first-four',
      ),
    ])
  })
})

it('two fasteners of one face may not have one number', () => {
  expect(auditAfter('skerry-3', (spec) => (named(spec.fasteners, 'flange-12').number = '4'))).toEqual([
    'fault number-twice fasteners[11].number: number=4, face=Case joint',
  ])
})

describe('values of their own for some fasteners of a pass', () => {
  const others = (spec: Draft, lists: readonly (readonly string[])[]) =>
    Object.assign(nth(named(spec.procedures, 'case').passes, 2), {
      others: lists.map((fasteners) => ({ fasteners, target: '34 N·m' })),
    })

  it('are allowed', () => {
    expect(auditAfter('skerry-3', (spec) => others(spec, [['case-1', 'case-2']]))).toEqual([])
  })

  it('may not be for fasteners that the pass does not touch', () => {
    expect(auditAfter('skerry-3', (spec) => others(spec, [['case-1', 'flange-9']]))).toEqual([
      'fault value-outside-order procedures[1].passes[2].others: procedure=Case bolts, pass=3, numbers=9',
    ])
  })

  it('may not be two for one fastener', () => {
    expect(auditAfter('skerry-3', (spec) => others(spec, [['case-1', 'case-2'], ['case-2']]))).toEqual([
      expect.stringContaining(
        'fault value-given-twice procedures[1].passes[2].others: procedure=Case bolts, pass=3, numbers=2',
      ),
    ])
  })
})
