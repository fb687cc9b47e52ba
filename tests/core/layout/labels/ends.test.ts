import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { readSpec } from '../../../../core/engine/index.ts'
import { sceneOf } from '../../../../core/layout/index.ts'
import { lineWidth } from '../../../../core/layout/labels/label.ts'
import { en, loadWords } from '../../../../core/words/index.ts'
import { shippedFile } from '../../../engine-files.ts'
import { factsAt, views } from '../demos.ts'

/** The drawing in half of a tall window. */
const sheet = { widthPx: 680, heightPx: 380, capitalPx: 18 }

describe('the names at the ends of a face in German, which are long', () => {
  it('are on the sheet and whole where the engine is turned by a quarter', async () => {
    const words = await loadWords('de')
    const read = readSpec(readFileSync(shippedFile('firth-v8'), 'utf8'), 'de')
    if (!read.ok) throw new Error('the spec cannot be read')
    const { spec } = read
    const cut: string[] = []
    let names = 0
    for (const { id } of spec.case.faces)
      for (const view of views.filter(({ turn }) => turn === 1)) {
        const { shapes, frame } = sceneOf(words, spec, factsAt(spec, id, 'bare'), view, sheet)
        const px = frame.width / sheet.widthPx
        for (const shape of shapes) {
          if (shape.kind !== 'text' || !/^(nose|drive|side|half-name)\//.test(shape.id)) continue
          names += 1
          const line = { ...shape, capital: shape.capital / px, role: 'label' } as const
          const half = (lineWidth(line) * px) / 2
          const middle = shape.x + { start: half, middle: 0, end: -half }[shape.anchor]
          const isInside = middle - half >= frame.left - px && middle + half <= frame.left + frame.width + px
          if (!isInside || shape.text.endsWith('…'))
            cut.push(`${id}, ${view.from} ${view.turn}: ${shape.text}`)
        }
      }
    expect(names).toBeGreaterThan(15)
    expect(cut).toEqual([])
  })
})

describe('the name of a side in two lines', () => {
  it('keeps a number with the word that it counts', () => {
    const read = readSpec(readFileSync(shippedFile('carr-v2'), 'utf8'))
    if (!read.ok) throw new Error('the spec cannot be read')
    const wide = { widthPx: 842, heightPx: 510, capitalPx: 12 }
    const face = read.spec.case.faces[0]!.id
    const { shapes } = sceneOf(en, read.spec, factsAt(read.spec, face, 'bare'), views[0]!, wide)
    const lines = shapes.flatMap((each) =>
      each.kind === 'text' && /^side\//.test(each.id) ? [each.text] : [],
    )
    expect(lines.toSorted()).toEqual(['cylinder 1', 'cylinder 2', 'side', 'side'])
  })
})
