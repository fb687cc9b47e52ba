import { describe, expect, it } from 'vitest'
import { buildSheet, descriptionOf, drawingFacts } from '../../../core/builds/index.ts'
import { sceneOf } from '../../../core/layout/index.ts'
import { en } from '../../../core/words/index.ts'
import { demoEngine, Workshop } from './workshop.ts'

/** A flat four whose case is split upright, along the crank; its rods have a cap each, as everywhere. */
const moor = demoEngine('moor-flat-4')

function shopAt(step: string): Workshop {
  const shop = new Workshop(moor)
  shop.worksUpTo(step)
  return shop
}

describe('the halves of a case that is split left and right', () => {
  it('are called so on the drawing, and the left one is next', () => {
    const shop = shopAt('fit-mains')
    const facts = drawingFacts(en, shop.spec, shop.state, shop.step('fit-mains'))
    const sheet = { widthPx: 880, heightPx: 560, capitalPx: 18 }
    const scene = sceneOf(en, shop.spec, facts, { from: 'above', turn: 0 }, sheet)
    const texts = scene.shapes.flatMap((shape) => (shape.kind === 'text' ? [shape.text] : []))
    expect(texts).toEqual(expect.arrayContaining(['left', 'right', 'M1 left']))
    expect(scene.rows.map(({ text }) => text)).toEqual(
      expect.arrayContaining([
        expect.stringContaining('Saddle M1 left: grade'),
        expect.stringContaining('Saddle M3 right: grade'),
      ]),
    )
    const all = [...texts, ...scene.rows.map(({ text }) => text)].join('\n')
    expect(all).not.toMatch(/\b(upper|lower)\b/)
  })

  it('are called so on the card of a half', () => {
    const shop = shopAt('fit-mains')
    const build = { words: en, spec: shop.spec, state: shop.state, entries: shop.entries }
    const units = { torque: 'N·m', length: 'mm' } as const
    expect(descriptionOf({ ...build, units }, 'half/M2/lower')?.title).toBe('Saddle M2, right half')
  })

  it('are called so where something is refused', () => {
    const shop = shopAt('fit-mains')
    const half = { step: 'fit-mains', position: 'M1', half: 'upper' } as const
    expect(shop.refusal({ type: 'take-out-half', ...half, reason: 'dirt' })).toMatchObject({
      code: 'half-not-in-place',
      facts: { position: 'M1', half: 'left' },
    })
    shop.does({ type: 'fit-half', ...half })
    expect(shop.refusal({ type: 'take-out-half', ...half, reason: '' })).toMatchObject({
      code: 'reason-missing',
      facts: { reasonFor: { what: 'half-taken-out', position: 'M1', half: 'left' } },
    })
    expect(shop.refusal({ type: 'fit-half', ...half, half: 'upper' })).toMatchObject({
      code: 'half-in-place',
      facts: { position: 'M1', half: 'left' },
    })
  })

  it('are called so on the build sheet', () => {
    const shop = shopAt('fit-mains')
    const half = { step: 'fit-mains', position: 'M1', half: 'lower' } as const
    shop.does({ type: 'fit-half', ...half })
    shop.does({ type: 'take-out-half', ...half, reason: 'dirt behind it' })
    const sheet = buildSheet(shop.spec, shop.entries)
    expect(sheet.fits.map(({ split }) => split)).toEqual(['left-right', 'upper-lower'])
    expect(sheet.corrections.at(-1)?.about).toEqual({
      code: 'halfAt',
      facts: { position: 'M1', half: 'right' },
    })
  })

  it('are upper and lower where the spec does not say it, as in every spec before', () => {
    const skerry = demoEngine('skerry-3')
    expect(skerry.fits.map(({ split }) => split)).toEqual(['upper-lower', 'upper-lower'])
  })
})
