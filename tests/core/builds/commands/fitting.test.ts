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
    expect(shop.refuses({ type: 'fit-half', step: 'fit-mains', position: 'M1', half: 'upper' })).toBe(
      'M1: the upper half is in place already. If that was a mistake, take it out.',
    )
    expect(shop.refuses({ type: 'fit-half', step: 'fit-mains', position: 'B1', half: 'upper' })).toContain(
      '“B1” is not a bearing of',
    )
  })

  it('is undone half by half, with a reason', () => {
    const shop = shopAt('fit-mains')
    const half = { step: 'fit-mains', position: 'M1', half: 'upper' } as const
    expect(shop.refuses({ type: 'take-out-half', ...half, reason: 'dirt behind it' })).toBe(
      'M1: the upper half is not in place.',
    )
    shop.does({ type: 'fit-half', ...half })
    expect(shop.refuses({ type: 'take-out-half', ...half, reason: '' })).toBe(
      'Say why the upper half of M1 comes out, in a word at least.',
    )
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
    expect(shop.refuses(out)).toBe(
      '“Lay crank” was done on top of “Main shells”. Take it out first; then this can be changed.',
    )
    shop.does({ type: 'take-out-part', step: 'lay-crank', reason: 'Shell looks scored.' })
    shop.does(out)
  })
})

describe('fitting a part', () => {
  it('is done once', () => {
    const shop = shopAt('lay-crank')
    shop.does({ type: 'fit-part', step: 'lay-crank' })
    expect(shop.refuses({ type: 'fit-part', step: 'lay-crank' })).toBe(
      '“Lay crank” is done already. If that was a mistake, take it back.',
    )
  })

  it('is undone with a reason, when it was done', () => {
    const shop = shopAt('lay-crank')
    const out = { type: 'take-out-part', step: 'lay-crank' } as const
    expect(shop.refuses({ ...out, reason: 'wrong crank' })).toBe(
      '“Lay crank” is not done, so there is nothing to take back.',
    )
    shop.does({ type: 'fit-part', step: 'lay-crank' })
    expect(shop.refuses({ ...out, reason: '' })).toContain('Say why “Lay crank” is undone')
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
    expect(shop.refuses({ ...wipe, reason: '.' })).toBe('Say why the bead is wiped off, in a word at least.')
    shop.does(wipe)
    shop.does({ type: 'lay-bead', step: 'bead-plus' })
    expect(shop.state.beads).toEqual({
      plus: { seq: shop.state.seq, at: shop.entries.at(-1)!.at, overTime: null },
    })
  })

  it('cannot be undone in a joint that is closed', () => {
    const shop = shopAt('case-run')
    expect(shop.refuses({ type: 'wipe-off-bead', step: 'bead-plus', reason: 'skinned over' })).toBe(
      '“Close case” was done on top of “Bead pump side”. Take it out first; then this can be changed.',
    )
  })
})
