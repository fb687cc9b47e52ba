import { describe, expect, it } from 'vitest'
import { footnotesOf, sceneOf, type DrawingFacts } from '../../../core/layout/index.ts'
import { boxOf } from './checks.ts'
import { demo, factsAt, sheets } from './demos.ts'
import { en } from '../../../core/words/index.ts'

const spec = demo('skerry-3')
const view = { from: 'below', turn: 0 } as const

/** While shells are fitted: a rough thread, a shell that is too loose, and the end float that was measured. */
const facts: DrawingFacts = (() => {
  const bare = factsAt(spec, 'joint', 'fitting')
  const loose = { ...bare.bearings['M2']!, withinLimits: false, judged: 'too loose, 20 to 47 µm allowed' }
  return {
    ...bare,
    bearings: { ...bare.bearings, M2: loose },
    notes: [
      { about: 'thrust/M3', kind: 'measured', texts: ['End float: 0.14 mm'] },
      { about: 'fastener/case-1', kind: 'open', texts: ['Thread feels rough', 'Oil in the hole'] },
    ],
  }
})()

describe('the notes of a face', () => {
  it('are numbered: what is open on fasteners, then bearings, then what was measured', () => {
    expect(footnotesOf(en, spec, facts).map(({ number, about, texts }) => [number, about, ...texts])).toEqual(
      [
        [1, 'fastener/case-1', 'Thread feels rough', 'Oil in the hole'],
        [2, 'half/M2/upper', 'too loose, 20 to 47 µm allowed'],
        [3, 'thrust/M3', 'End float: 0.14 mm'],
      ],
    )
  })

  it('have each a sign with their number at their thing, and no words on the drawing', () => {
    const { shapes } = sceneOf(en, spec, facts, view, sheets[0]!)
    const signs = shapes.filter(({ kind, id }) => kind === 'circle' && id.startsWith('note/'))
    expect(signs.map(({ about, role }) => [about, role])).toEqual([
      ['fastener/case-1', 'open-note'],
      ['half/M2/upper', 'open-note'],
      ['thrust/M3', 'measured-note'],
    ])
    const texts = shapes.flatMap((shape) =>
      shape.id.endsWith('/text') && shape.kind === 'text' ? [shape.text] : [],
    )
    expect(texts).toEqual(['1', '2', '3'])
  })

  it('have their signs right beside their things: less than 30 px off', () => {
    const scene = sceneOf(en, spec, facts, view, sheets[0]!)
    const px = scene.frame.width / sheets[0]!.widthPx
    const sign = boxOf(scene.shapes.find(({ id }) => id === 'note/fastener/case-1')!)
    const disc = boxOf(scene.shapes.find(({ id }) => id === 'fastener/case-1/disc')!)
    expect(Math.hypot(sign.left - disc.left, sign.top - disc.top) / px).toBeLessThan(30)
  })

  it('of the face itself have their signs after its title', () => {
    const { shapes, frame } = sceneOf(
      en,
      spec,
      { ...facts, notes: [{ about: 'face/joint', kind: 'open', texts: ['Joint face scratched'] }] },
      view,
      sheets[0]!,
    )
    const sign = boxOf(shapes.find(({ id }) => id === 'note/face/joint')!)
    const title = boxOf(shapes.find(({ id }) => id === 'title')!)
    expect(sign.left).toBeGreaterThan(title.left + title.width)
    expect(sign.top - frame.top).toBeLessThan(frame.height / 10)
  })

  it('are none while bolts are tightened: there is only what is next', () => {
    const pulling: DrawingFacts = { ...facts, subject: 'tightening' }
    expect(footnotesOf(en, spec, pulling)).toEqual([])
    expect(
      sceneOf(en, spec, pulling, view, sheets[0]!).shapes.filter(({ id }) => id.startsWith('note/')),
    ).toEqual([])
  })

  it('are in the rows word for word', () => {
    const { rows } = sceneOf(en, spec, facts, view, sheets[0]!)
    expect(rows.find(({ about }) => about === 'fastener/case-1')?.text).toBe(
      'Fastener 1, saddle 2, pump side; Thread feels rough; Oil in the hole',
    )
  })
})
