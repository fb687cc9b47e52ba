import { describe, expect, it } from 'vitest'
import { auditAfter, named, type Draft } from '../../engine/demo.ts'

type DraftPass = Draft['procedures'][number]['passes'][number]

function withPasses(change: (passes: readonly DraftPass[]) => readonly DraftPass[]) {
  return auditAfter('skerry-3', (spec) => {
    const rods = named(spec.procedures, 'rods')
    rods.passes = [...change(rods.passes)]
  })
}

const torque = (target: string): DraftPass => ({ kind: 'torque', order: 'by-rod', target })
const angle = (target: string): DraftPass => ({ kind: 'angle', order: 'by-rod', target })
const loosen: DraftPass = { kind: 'loosen', order: 'by-rod' }

describe('an angle pass', () => {
  it('needs something before it that brings the faces together', () => {
    expect(withPasses(() => [angle('60 °')])).toContainEqual(
      'fault angle-without-torque procedures[0].passes[0]: procedure=Rod bolts, pass=1, numbers=R1 R2 R3 R4 R5 R6',
    )
  })

  it('may follow a seat pass, or another angle', () => {
    expect(withPasses(([seat]) => (seat === undefined ? [] : [seat, angle('30 °'), angle('30 °')]))).toEqual(
      [],
    )
  })

  it('after loosening begins again', () => {
    expect(withPasses((passes) => [...passes, loosen, angle('60 °')])).toEqual([
      expect.stringContaining(
        'fault angle-without-torque procedures[0].passes[4]: procedure=Rod bolts, pass=5, numbers=R1 R2 R3 R4 R5 R6',
      ),
    ])
    expect(withPasses((passes) => [...passes, loosen, torque('15 N·m'), angle('60 °')])).toEqual([])
  })

  it('of 4 000° is a fault', () => {
    expect(withPasses(() => [torque('15 N·m'), angle('4000 °')])).toContainEqual(
      'fault angle-beyond-a-turn procedures[0].passes[1].target: procedure=Rod bolts, pass=2, angle=4000 °',
    )
  })

  it('of 0° is a fault', () => {
    expect(withPasses(() => [torque('15 N·m'), angle('0 °')])).toContainEqual(
      expect.stringContaining('fault angle-missing procedures[0].passes[1].target'),
    )
  })
})

describe('a torque pass', () => {
  it('below the one before it is doubted: the wrench clicks at once', () => {
    expect(withPasses(() => [torque('20 N·m'), torque('15 N·m')])).toEqual([
      'doubt torque-below-last procedures[0].passes[1].target: procedure=Rod bolts, pass=2, numbers=R1 R2 R3 R4 R5 R6, target=15 N·m, last=20 N·m',
    ])
  })

  it('may be repeated, and may be lower after loosening', () => {
    expect(withPasses(() => [torque('20 N·m'), torque('20 N·m')])).toEqual([])
    expect(withPasses(() => [torque('20 N·m'), loosen, torque('15 N·m')])).toEqual([])
  })
})

describe('a recheck', () => {
  const recheck = (target: string): DraftPass => ({ kind: 'recheck', order: 'by-rod', target })

  it('before any torque is a fault', () => {
    expect(
      withPasses(([seat]) => (seat === undefined ? [] : [seat, recheck('15 N·m'), torque('15 N·m')])),
    ).toEqual([
      expect.stringContaining(
        'fault recheck-before-torque procedures[0].passes[1]: procedure=Rod bolts, pass=2, numbers=R1 R2 R3 R4 R5 R6',
      ),
    ])
  })

  it('above what was pulled is doubted: it would move what it only checks', () => {
    expect(withPasses(() => [torque('15 N·m'), recheck('18 N·m')])).toEqual([
      expect.stringContaining(
        'doubt recheck-above-last procedures[0].passes[1].target: procedure=Rod bolts, pass=2, numbers=R1 R2 R3 R4 R5 R6, target=18 N·m, last=15 N·m',
      ),
    ])
  })
})

describe('the end of a procedure', () => {
  it('may not leave fasteners loose', () => {
    expect(withPasses((passes) => [...passes, loosen])).toEqual([
      expect.stringContaining(
        'fault left-loose procedures[0]: procedure=Rod bolts, numbers=R1 R2 R3 R4 R5 R6',
      ),
    ])
  })

  it('is doubted when they are only seated by hand', () => {
    expect(withPasses(([seat]) => (seat === undefined ? [] : [seat]))).toEqual([
      expect.stringContaining(
        'doubt only-seated procedures[0]: procedure=Rod bolts, numbers=R1 R2 R3 R4 R5 R6',
      ),
    ])
  })
})
