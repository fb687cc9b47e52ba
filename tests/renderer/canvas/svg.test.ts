import { describe, expect, it } from 'vitest'
import { sceneOf } from '../../../core/layout/index.ts'
import { looks } from '../../../renderer/canvas/look.ts'
import { marksOf } from '../../../renderer/canvas/marks.ts'
import { svgOf } from '../../../renderer/canvas/svg.ts'
import { demo, factsAt, sheets, stages } from '../../core/layout/demos.ts'
import { en } from '../../../core/words/index.ts'

const sheet = sheets[0]!
const view = { from: 'below', turn: 0 } as const

function sceneAt(stage: (typeof stages)[number]) {
  const spec = demo('skerry-3')
  return sceneOf(en, spec, factsAt(spec, 'joint', stage), view, sheet)
}

function svgAt(stage: (typeof stages)[number]): string {
  return svgOf(sceneAt(stage), { theme: 'print', widthPx: sheet.widthPx, title: 'Case joint' })
}

/** Everything between two tags of a kind, entities resolved. */
function texts(svg: string): readonly string[] {
  return [...svg.matchAll(/<text[^>]*>([^<]*)<\/text>/g)].map(([, text = '']) =>
    text.replaceAll('&amp;', '&'),
  )
}

describe.each(stages)('the SVG of a scene at the stage “%s”', (stage) => {
  const scene = sceneAt(stage)
  const svg = svgAt(stage)

  it('holds every shape once, layer by layer in the order of the scene', () => {
    const ids = [...svg.matchAll(/data-id="([^"]*)"/g)].map(([, id]) => id)
    const layers = ['ground', 'parts', 'overlay'] as const
    const expected = layers.flatMap((layer) => scene.shapes.filter((shape) => shape.layer === layer))
    expect(ids).toEqual(expected.map(({ id }) => id))
  })

  it('draws the very marks that the canvas draws, one element for each', () => {
    const px = scene.frame.width / sheet.widthPx
    const marks = scene.shapes.flatMap((shape) => marksOf(shape, looks('print'), px))
    const drawn = marks.filter((mark) => mark.kind !== 'sector' || mark.share > 0)
    const elements = [...svg.matchAll(/<(path|circle|text)[ >]/g)].map(([, name]) => name)
    expect(elements).toHaveLength(drawn.length)
    expect(elements.filter((name) => name === 'circle')).toHaveLength(
      drawn.filter(({ kind }) => kind === 'circle').length,
    )
  })

  it('says the same words', () => {
    const inScene = scene.shapes.flatMap((shape) => (shape.kind === 'text' ? [shape.text] : []))
    expect([...texts(svg)].sort()).toEqual([...inScene].sort())
  })

  it('needs no inline style, no script and nothing from elsewhere', () => {
    expect(svg).not.toMatch(/style=|<style|<script|href=|url\(/)
    expect(svg.replace('xmlns="http://www.w3.org/2000/svg"', '')).not.toContain('http')
  })

  it('has only numbers in it', () => {
    expect(svg).not.toMatch(/NaN|Infinity|undefined|null/)
  })
})

describe('the SVG', () => {
  it('has the frame of the scene as its view box, so that it is the engine in mm', () => {
    const [, box = ''] = /viewBox="([^"]*)"/.exec(svgAt('bare')) ?? []
    const { left, top, width, height } = sceneAt('bare').frame
    const drawn = box.split(' ').map(Number)
    ;[left, top, width, height].forEach((value, index) => expect(drawn[index]).toBeCloseTo(value, 3))
  })

  it('escapes what a spec may call things', () => {
    const scene = sceneAt('bare')
    const [text] = scene.shapes.filter(({ kind }) => kind === 'text')
    const odd = { ...scene, shapes: [{ ...text!, text: 'A <b> & "c"' } as typeof text & object] }
    const svg = svgOf(odd, { theme: 'light', widthPx: 940, title: '<script>' })
    expect(svg).toContain('A &lt;b&gt; &amp; &quot;c&quot;')
    expect(svg).toContain('<title>&lt;script&gt;</title>')
  })

  it('draws half a ring as one arc and a full one as two, since an arc cannot end where it began', () => {
    const ring = {
      ...({ kind: 'ring', id: 'r', layer: 'parts', role: 'partly-done' } as const),
      ...{ x: 0, y: 0, inner: 8, outer: 10 },
    }
    const path = (share: number): string => {
      const scene = {
        frame: { left: -10, top: -10, width: 20, height: 20 },
        shapes: [{ ...ring, share }],
        rows: [],
      }
      return /<path d="([^"]*)"/.exec(svgOf(scene, { theme: 'print', widthPx: 20, title: '' }))?.[1] ?? ''
    }
    expect(path(0.5)).toBe('M0 -9A9 9 0 0 1 0 9')
    expect(path(0.25)).toBe('M0 -9A9 9 0 0 1 9 0')
    expect(path(0.75)).toBe('M0 -9A9 9 0 1 1 -9 0')
    expect(path(1).match(/A/g)).toHaveLength(2)
    expect(path(0)).toBe('')
  })
})
