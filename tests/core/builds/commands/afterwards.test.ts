import { describe, expect, it } from 'vitest'
import { buildSheet } from '../../../../core/builds/index.ts'
import { demoEngine, Workshop } from '../workshop.ts'

const skerry = demoEngine('skerry-3')

function finished(): Workshop {
  const shop = new Workshop(skerry)
  while (!shop.state.finished) shop.goesOn()
  return shop
}

const amendment = {
  type: 'amend-build',
  text: 'Cap bolt 4 was pulled to 25 N·m a second time',
  reason: 'Found slack at the first oil change',
} as const

describe('amending a build', () => {
  it('adds to a finished build, and leaves what was there', () => {
    const shop = finished()
    const before = shop.entries.length
    shop.does(amendment)
    expect(shop.entries).toHaveLength(before + 1)
    expect(shop.state.finished).toBe(true)
    expect(buildSheet(skerry, shop.entries).amendments).toMatchObject([
      { text: amendment.text, reason: amendment.reason, person: 'Ada' },
    ])
  })

  it('can be done more than once, and all of it is printed in order', () => {
    const shop = finished()
    shop.does(amendment)
    shop.does({ ...amendment, text: 'Sump plug changed' })
    const texts = buildSheet(skerry, shop.entries).amendments.map(({ text }) => text)
    expect(texts).toEqual([amendment.text, 'Sump plug changed'])
  })

  it('is refused while the build is not finished: there things are taken back', () => {
    expect(new Workshop(skerry).refuses(amendment)).toContain('not finished')
  })

  it.each(['', '  ', '.', 'ab'])('is refused with the reason “%s”', (reason) => {
    expect(finished().refuses({ ...amendment, reason })).toMatch(/why/i)
  })

  it('does not open the work of the build again', () => {
    const shop = finished()
    shop.does(amendment)
    expect(shop.refuses({ type: 'finish-build' })).toContain('finished')
  })
})

describe('making a build void', () => {
  const voiding = { type: 'void-build', reason: 'Wrong engine on the stand' } as const

  it('is possible at any time, with a reason that is printed', () => {
    const shop = new Workshop(skerry)
    shop.does(voiding)
    expect(shop.state.voided).toBe(true)
    expect(buildSheet(skerry, shop.entries).voided).toMatchObject({ reason: voiding.reason, person: 'Ada' })
  })

  it('is possible after it was finished', () => {
    const shop = finished()
    shop.does(voiding)
    expect(shop.state).toMatchObject({ finished: true, voided: true })
  })

  it('wants a reason', () => {
    expect(new Workshop(skerry).refuses({ type: 'void-build', reason: ' ' })).toMatch(/why/i)
  })

  it('is the last word: nothing is added any more', () => {
    const shop = finished()
    shop.does(voiding)
    expect(shop.refuses(amendment)).toContain('is void')
    expect(shop.refuses(voiding)).toContain('is void')
  })
})
