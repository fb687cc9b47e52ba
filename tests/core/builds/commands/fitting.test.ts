import { describe, expect, it } from 'vitest'
import { isStepDone } from '../../../../core/builds/index.ts'
import { demoEngine, Workshop } from '../workshop.ts'

const skerry = demoEngine('skerry-3')

function shopAt(step: string): Workshop {
  const shop = new Workshop(skerry)
  shop.worksUpTo(step)
  return shop
}

describe('fitting shells', () => {
  it('is done when both halves of every saddle are in, in whatever order', () => {
    const shop = shopAt('fit-mains')
    for (const half of ['lower', 'upper'] as const)
      for (const position of ['M4', 'M2', 'M1', 'M3']) {
        expect(isStepDone(shop.spec, shop.state, shop.step('fit-mains'))).toBe(false)
        shop.does({ type: 'fit-half', step: 'fit-mains', position, half })
      }
    expect(isStepDone(shop.spec, shop.state, shop.step('fit-mains'))).toBe(true)
  })

  it('refuses a half that is in already, and a saddle of another fit', () => {
    const shop = shopAt('fit-mains')
    shop.does({ type: 'fit-half', step: 'fit-mains', position: 'M1', half: 'upper' })
    expect(
      shop.refusal({ type: 'fit-half', step: 'fit-mains', position: 'M1', half: 'upper' }),
    ).toMatchObject({ code: 'half-in-place', facts: { position: 'M1', half: 'upper' } })
    expect(
      shop.refusal({ type: 'fit-half', step: 'fit-mains', position: 'B1', half: 'upper' }),
    ).toMatchObject({ code: 'position-not-in-fit', facts: { position: 'B1', fit: 'Main bearings' } })
  })

  it('is undone half by half, with a reason', () => {
    const shop = shopAt('fit-mains')
    const half = { step: 'fit-mains', position: 'M1', half: 'upper' } as const
    expect(shop.refusal({ type: 'take-out-half', ...half, reason: 'dirt behind it' })).toMatchObject({
      code: 'half-not-in-place',
      facts: { position: 'M1', half: 'upper' },
    })
    shop.does({ type: 'fit-half', ...half })
    expect(shop.refusal({ type: 'take-out-half', ...half, reason: '' })).toMatchObject({
      code: 'reason-missing',
      facts: { reasonFor: { what: 'half-taken-out', position: 'M1', half: 'upper' } },
    })
    shop.does({ type: 'take-out-half', ...half, reason: 'Dirt behind it.' })
    expect(shop.state.fitted.size).toBe(0)
    shop.does({ type: 'fit-half', ...half })
  })

  it('cannot be undone under a part that lies on it, until that comes out', () => {
    const shop = shopAt('end-float')
    const out = {
      type: 'take-out-half',
      step: 'fit-mains',
      position: 'M1',
      half: 'upper',
      reason: 'scored',
    } as const
    expect(shop.refusal(out)).toMatchObject({
      code: 'step-on-top',
      facts: { step: 'Main shells', top: 'Lay crank', kind: 'fit-part' },
    })
    shop.does({ type: 'take-out-part', step: 'lay-crank', reason: 'Shell looks scored.' })
    shop.does(out)
  })
})

describe('fitting a part', () => {
  it('is done once', () => {
    const shop = shopAt('lay-crank')
    shop.does({ type: 'fit-part', step: 'lay-crank' })
    expect(shop.refusal({ type: 'fit-part', step: 'lay-crank' })).toMatchObject({
      code: 'step-done-already',
      facts: { step: 'Lay crank' },
    })
  })

  it('is undone with a reason, when it was done', () => {
    const shop = shopAt('lay-crank')
    const out = { type: 'take-out-part', step: 'lay-crank' } as const
    expect(shop.refusal({ ...out, reason: 'wrong crank' })).toMatchObject({
      code: 'step-not-done',
      facts: { step: 'Lay crank' },
    })
    shop.does({ type: 'fit-part', step: 'lay-crank' })
    expect(shop.refusal({ ...out, reason: '' })).toMatchObject({
      code: 'reason-missing',
      facts: { reasonFor: { what: 'part-taken-out', step: 'Lay crank' } },
    })
    shop.does({ ...out, reason: 'wrong crank' })
    expect(shop.state.partsFitted.size).toBe(0)
  })
})

describe('laying a bead', () => {
  it('keeps the entry by which it was laid, from which the open time runs', () => {
    const shop = shopAt('bead-plus')
    shop.does({ type: 'lay-bead', step: 'bead-plus' })
    expect(shop.state.beads).toEqual({
      plus: { seq: shop.state.seq, at: shop.entries.at(-1)!.at, overTime: null },
    })
  })

  it('is done again after the old bead is wiped off', () => {
    const shop = shopAt('bead-plus')
    const wipe = { type: 'wipe-off-bead', step: 'bead-plus', reason: 'It skinned over.' } as const
    expect(shop.refuses(wipe)).toContain('is not done')
    shop.does({ type: 'lay-bead', step: 'bead-plus' })
    expect(shop.refuses({ type: 'lay-bead', step: 'bead-plus' })).toContain('is done already')
    expect(shop.refusal({ ...wipe, reason: '.' })).toMatchObject({
      code: 'reason-missing',
      facts: { reasonFor: { what: 'bead-wiped-off' } },
    })
    shop.does(wipe)
    shop.does({ type: 'lay-bead', step: 'bead-plus' })
    expect(shop.state.beads).toEqual({
      plus: { seq: shop.state.seq, at: shop.entries.at(-1)!.at, overTime: null },
    })
  })

  it('cannot be undone in a joint that is closed', () => {
    const shop = shopAt('case-run')
    expect(shop.refusal({ type: 'wipe-off-bead', step: 'bead-plus', reason: 'skinned over' })).toMatchObject({
      code: 'step-on-top',
      facts: { step: 'Bead pump side', top: 'Close case', kind: 'fit-part' },
    })
  })
})
