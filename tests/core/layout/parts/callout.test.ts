import { describe, expect, it } from 'vitest'
import { sceneOf, type Sheet, type TextShape } from '../../../../core/layout/index.ts'
import { readSpec } from '../../../../core/engine/index.ts'
import { en, loadWords } from '../../../../core/words/index.ts'
import { pseudo } from '../../words/pseudo.ts'
import { boxOf, overlap } from '../checks.ts'
import { demo, demos, factsAt } from '../demos.ts'
import { readFileSync } from 'node:fs'
import { join } from 'node:path'

const de = await loadWords('de')

/** The drawing's part of windows of 1024 × 768 and 1280 × 800 and of one at 200 % zoom, read from 1 m and from 2 m. */
const [sheet, ...more]: readonly [Sheet, ...Sheet[]] = [
  { widthPx: 574, heightPx: 430, capitalPx: 22 },
  { widthPx: 574, heightPx: 430, capitalPx: 44 },
  { widthPx: 842, heightPx: 480, capitalPx: 44 },
  { widthPx: 645, heightPx: 371, capitalPx: 44 },
]

/** Some on which the callout has a column beside the case. */
const besideTheCase: readonly Sheet[] = [
  { widthPx: 842, heightPx: 480, capitalPx: 22 },
  { widthPx: 1280, heightPx: 760, capitalPx: 44 },
]

function textsAt(
  spec: (typeof demos)[number],
  face: string,
  callout: string,
  on = sheet,
): readonly TextShape[] {
  const facts = { ...factsAt(spec, face, 'flag'), callout }
  return sceneOf(de, spec, facts, { from: 'below', turn: 0 }, on).shapes.filter(
    (shape): shape is TextShape => shape.kind === 'text',
  )
}

describe('what is written on a small sheet in German', () => {
  it('of a flag stands whole in the callout, on every face of every demo engine', () => {
    const text = 'abgelesen 68,8 N·m, 49,5 bis 60,5 N·m'
    const said = demos.flatMap((spec) =>
      spec.case.faces.flatMap((face) => {
        return [sheet, ...more].flatMap((on) => {
          const lines = textsAt(spec, face.id, text, on).filter(({ id }) => id.startsWith('callout/value'))
          return lines.length === 0 ? [] : [lines.map((line) => line.text).join(' ')]
        })
      }),
    )
    expect(said.length).toBeGreaterThan(20)
    expect([...new Set(said)]).toEqual([text])
  })

  it('of a half to fit stands whole beside a long name, and on no name of the case', () => {
    const words = pseudo(en)
    const [cut, covered]: [string[], string[]] = [[], []]
    let inTwoLines = 0
    for (const spec of demos)
      for (const { id } of spec.case.faces)
        for (const on of besideTheCase) {
          const facts = { ...factsAt(spec, id, 'fitting'), callout: '[fïţ K ~]' }
          const { shapes } = sceneOf(words, spec, facts, { from: 'above', turn: 0 }, on)
          const plate = shapes.find((shape) => shape.id === 'callout')
          const texts = shapes.filter((shape) => shape.kind === 'text')
          if (plate === undefined) continue
          for (const text of texts) {
            const where = `${spec.id}, ${id}, ${on.widthPx}: ${text.text}`
            if (!text.id.startsWith('callout/')) {
              if (overlap(boxOf(text), boxOf(plate))) covered.push(where)
            } else if (text.text.includes('…')) cut.push(where)
            else if (text.id === 'callout/value/2') inTwoLines += 1
          }
        }
    expect(inTwoLines).toBeGreaterThan(3)
    expect(cut).toEqual([])
    expect(covered).toEqual([])
  })

  it('of a side of the engine stands whole beside the case', () => {
    const { id } = demo('skerry-3')
    const read = readSpec(
      readFileSync(join(import.meta.dirname, `../../../../specs/${id}.json`), 'utf8'),
      'de',
    )
    if (!read.ok) throw new Error('the spec cannot be read')
    const names = textsAt(read.spec, 'joint', '24 N·m').map(({ text }) => text)
    expect(names).toContain('Getriebeseite')
  })
})
