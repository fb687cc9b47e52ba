import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { clampMap, flangeOf } from '../../../core/joint/index.ts'
import { clampScene, faceOutline, mostPressure, textBox } from '../../../core/layout/index.ts'
import { readSpec } from '../../../core/engine/index.ts'
import { pullsOf } from '../../../core/tightening/index.ts'
import { en } from '../../../core/words/index.ts'
import { engineFile } from '../../engine-files.ts'

const read = readSpec(readFileSync(engineFile('skerry-3'), 'utf8'))
if (!read.ok) throw new Error('the demo engine cannot be read')
const { spec } = read
const procedure = spec.procedures.find(({ name }) => name === 'Case bolts')!
const flange = flangeOf(spec, procedure.face, faceOutline(spec, procedure.face), 'metal')
const pulls = pullsOf(spec, procedure)
if (!flange.ok || !pulls.ok) throw new Error('the demo engine cannot be calculated')
const map = clampMap(flange.value, pulls.value)
const last = map.afterPasses.at(-1)!.state
const most = mostPressure(flange.value, last)
/** The eight bolts at the saddles; those round the edge of the case belong to a procedure of their own. */
const own = new Set(procedure.orders.flatMap(({ sequence }) => sequence))
const sheet = { widthPx: 760, heightPx: 430, capitalPx: 11 }
const scene = clampScene(en, spec, procedure.face, { from: 'below', turn: 0 }, sheet, {
  flange: flange.value,
  state: last,
  most,
  own,
  numbers: new Map([...own].map((id) => [id, '20.7'])),
  widest: '20.7',
  marked: new Set<string>(),
})

describe('the clamp map of a split case', () => {
  it('says in its disc what each fastener of the run holds, and nothing of any other', () => {
    const here = spec.fasteners.filter(({ face }) => face === procedure.face)
    expect(here.length).toBeGreaterThan(own.size)
    for (const { id } of here) {
      const drawn = scene.shapes.filter(({ about }) => about === `fastener/${id}`)
      const texts = drawn.flatMap((shape) => (shape.kind === 'text' ? [shape] : []))
      expect(
        texts.map(({ text }) => text),
        id,
      ).toEqual(own.has(id) ? ['20.7'] : [])
      const [disc] = drawn.flatMap((shape) => (shape.kind === 'circle' ? [shape] : []))
      for (const text of texts) expect(textBox(text).width, id).toBeLessThan(2 * disc!.radius)
      expect(disc!.role, id).toBe(own.has(id) ? 'waiting' : 'distant')
    }
  })

  it('leaves the disc of what was not pulled yet empty, and the same size', () => {
    const picture = { flange: flange.value, state: map.atRest, most, own, widest: '20.7' }
    const before = clampScene(en, spec, procedure.face, { from: 'below', turn: 0 }, sheet, {
      ...picture,
      numbers: new Map<string, string>(),
      marked: new Set<string>(),
    })
    const texts = before.shapes.filter(
      ({ kind, about }) => kind === 'text' && about?.startsWith('fastener/') === true,
    )
    expect(texts).toEqual([])
    const discs = (of: typeof scene) => of.shapes.filter(({ id }) => /^fastener\/.*\/disc$/.test(id))
    expect(discs(before)).toEqual(discs(scene))
  })

  it('shows no difference of a state from itself, and the most of one from the case at rest', () => {
    expect(mostPressure(flange.value, last, last)).toBe(0)
    expect(mostPressure(flange.value, last, map.atRest)).toBeGreaterThan(0.9 * most)
  })

  it('has its darkest colour where the pressure is greatest, and none beside the flange', () => {
    const colours = scene.shapes.flatMap((shape) => (shape.kind === 'swatch' ? [shape.colour] : []))
    expect(new Set(colours)).toContain('#693D08')
    const { left, top, width, height } = scene.frame
    for (const shape of scene.shapes)
      if (shape.kind === 'swatch') {
        expect(shape.x).toBeGreaterThanOrEqual(left)
        expect(shape.y).toBeGreaterThanOrEqual(top)
        expect(shape.x + shape.width).toBeLessThanOrEqual(left + width)
        expect(shape.y + shape.height).toBeLessThanOrEqual(top + height)
      }
  })

  it('has no pressure at all before the first pull but what the case weighs', () => {
    expect(mostPressure(flange.value, map.atRest)).toBeLessThan(most / 100)
  })
})
