import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { sampleFacts } from '../../../core/builds/index.ts'
import { readSpec } from '../../../core/engine/index.ts'
import { languages, loadWords, termIds } from '../../../core/words/index.ts'
import { demoDrawing } from '../../../renderer/help/demo-drawing.ts'
import { measureOf, pictures, placedOf, termPicture } from '../../../renderer/help/pictures.ts'
import { shippedFile } from '../../engine-files.ts'

const demo = readFileSync(shippedFile(sampleFacts['half-way'].engine), 'utf8')

describe.each(languages)('the pictures of the help in %s', (language) => {
  it('are drawn by the program, with the names of the demo engine in that language', async () => {
    const words = await loadWords(language)
    const read = readSpec(demo, language)
    if (!read.ok) throw new Error('the demo cannot be read')
    const { spec } = read
    const drawn = Object.values(pictures).flatMap((picture) => {
      if (picture.kind !== 'drawing') return []
      const svg = demoDrawing(words, spec, picture, { theme: 'light', unit: 'N·m' })
      return [{ step: spec.steps.find(({ id }) => id === picture.step)?.name, svg }]
    })
    expect(drawn.length).toBeGreaterThan(8)
    for (const { step, svg } of drawn) {
      expect(svg).toContain(step!)
      expect(svg!.replaceAll(/<[^>]*>/g, ' ')).toContain(words.drawing.nose)
    }
  })

  it('of a measurement, of a place and of a word say what they show', async () => {
    const words = await loadWords(language)
    const named = Object.values(pictures).flatMap((picture) => {
      if (picture.kind === 'measure') return [measureOf(words, picture.what)]
      return picture.kind === 'placed' ? [placedOf(words, picture.what)] : []
    })
    const ofTerms = termIds.flatMap((term) => termPicture(words, term) ?? [])
    expect(ofTerms.length).toBeGreaterThan(10)
    for (const { label } of [...named, ...ofTerms]) expect(label).toMatch(/\p{L}{3}/u)
  })
})
