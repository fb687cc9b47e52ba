import { describe, expect, it } from 'vitest'
import { drawingAfter, sceneOf, sceneOn, type Drawing } from '../../../core/layout/index.ts'
import { demos, factsAt, sheets, stages, views } from './demos.ts'
import { en, liveWords, loadWords, type Words } from '../../../core/words/index.ts'

describe('the drawing after another one', () => {
  it.each(demos)('of $id is the same as if it had been laid out again, whatever was drawn before', (spec) => {
    let last: Drawing | null = null
    let stayed = 0
    let looked = 0
    spec.case.faces.forEach((face, index) => {
      const view = views[(index + demos.indexOf(spec)) % views.length]!
      const sheet = sheets[index % sheets.length]!
      for (const stage of stages)
        for (const onlyNext of [false, true]) {
          const facts = factsAt(spec, face.id, stage)
          const before: Drawing | null = last
          last = drawingAfter(before, en, spec, facts, view, { ...sheet, onlyNext })
          if (before?.discs === last.discs) stayed += 1
          looked += 1
          expect(sceneOn(last)).toEqual(sceneOf(en, spec, facts, view, { ...sheet, onlyNext }))
        }
    })
    expect(stayed).toBeGreaterThan(looked / 4)
    expect(stayed).toBeLessThan(looked)
  })

  it('stays where it was from pull to pull, and is laid out again for another number in a disc', () => {
    const spec = demos[0]!
    const [face] = spec.case.faces
    const [view] = views
    const [sheet] = sheets
    const facts = factsAt(spec, face!.id, 'first pull')
    const first = drawingAfter(null, en, spec, facts, view!, sheet!)
    const pulled = factsAt(spec, face!.id, 'mid run')
    expect(drawingAfter(first, en, spec, pulled, view!, sheet!).discs).toBe(first.discs)
    const [id, fact] = Object.entries(facts.fasteners)[0]!
    const renamed = { ...facts, fasteners: { ...facts.fasteners, [id]: { ...fact, number: '100' } } }
    const again = drawingAfter(first, en, spec, renamed, view!, sheet!)
    expect(again.discs.find((disc) => disc.id === id)?.number).toBe('100')
  })

  it('is written again when the language is another, though live words are the same object', async () => {
    const de = await loadWords('de')
    let now: Words = en
    const words = liveWords(() => now)
    const spec = demos[0]!
    const facts = factsAt(spec, spec.case.faces[0]!.id, 'first pull')
    const first = drawingAfter(null, words, spec, facts, views[0]!, sheets[0]!)
    const noses = (drawing: Drawing) =>
      sceneOn(drawing).shapes.flatMap((shape) =>
        shape.kind === 'text' && [en.drawing.nose, de.drawing.nose].includes(shape.text) ? [shape.text] : [],
      )
    expect(noses(first)).toEqual([en.drawing.nose])
    now = de
    expect(noses(drawingAfter(first, words, spec, facts, views[0]!, sheets[0]!))).toEqual([de.drawing.nose])
  })
})
