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
      'fault angle-without-torque procedures[0].passes[0]: Rod bolts, pass 1: R1, R2, R3, R4, R5 and R6 would be ' +
        'turned by an angle without having been seated or torqued before. Put a torque pass in front.',
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
        'fault angle-without-torque procedures[0].passes[4]: Rod bolts, pass 5: R1, R2',
      ),
    ])
    expect(withPasses((passes) => [...passes, loosen, torque('15 N·m'), angle('60 °')])).toEqual([])
  })

  it('of 4 000° is a fault', () => {
    expect(withPasses(() => [torque('15 N·m'), angle('4000 °')])).toContainEqual(
      'fault angle-beyond-a-turn procedures[0].passes[1].target: Rod bolts, pass 2: 4000° is more than a full turn; a ' +
        'bolt breaks on the way. Correct the angle.',
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
      'doubt torque-below-last procedures[0].passes[1].target: Rod bolts, pass 2: 15 N·m on R1, R2, R3, R4, R5 and R6 is ' +
        'below the 20 N·m they already have, so the wrench clicks at once. Check both values.',
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
        'fault recheck-before-torque procedures[0].passes[1]: Rod bolts, pass 2: R1, R2',
      ),
    ])
  })

  it('above what was pulled is doubted: it would move what it only checks', () => {
    expect(withPasses(() => [torque('15 N·m'), recheck('18 N·m')])).toEqual([
      expect.stringContaining('doubt recheck-above-last procedures[0].passes[1].target: Rod bolts, pass 2'),
    ])
  })
})

describe('the end of a procedure', () => {
  it('may not leave fasteners loose', () => {
    expect(withPasses((passes) => [...passes, loosen])).toEqual([
      expect.stringContaining(
        'fault left-loose procedures[0]: Rod bolts: R1, R2, R3, R4, R5 and R6 end up loosened.',
      ),
    ])
  })

  it('is doubted when they are only seated by hand', () => {
    expect(withPasses(([seat]) => (seat === undefined ? [] : [seat]))).toEqual([
      expect.stringContaining(
        'doubt only-seated procedures[0]: Rod bolts: R1, R2, R3, R4, R5 and R6 are only seated',
      ),
    ])
  })
})
