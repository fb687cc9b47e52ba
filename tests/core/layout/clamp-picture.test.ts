import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { clampMap, flangeOf } from '../../../core/joint/index.ts'
import { clampScene, faceOutline, mostPressure } from '../../../core/layout/index.ts'
import { readSpec } from '../../../core/engine/index.ts'
import { pullsOf } from '../../../core/tightening/index.ts'
import { en } from '../../../core/words/index.ts'

const read = readSpec(readFileSync('specs/skerry-3.json', 'utf8'))
if (!read.ok) throw new Error('the demo engine cannot be read')
const { spec } = read
const procedure = spec.procedures.find(({ name }) => name === 'Case bolts')!
const flange = flangeOf(spec, procedure.face, faceOutline(spec, procedure.face), 'metal')
const pulls = pullsOf(spec, procedure)
if (!flange.ok || !pulls.ok) throw new Error('the demo engine cannot be calculated')
const map = clampMap(flange.value, pulls.value)
const last = map.afterPasses.at(-1)!.state
const most = mostPressure(flange.value, last)
const sheet = { widthPx: 760, heightPx: 430, capitalPx: 11 }
const scene = clampScene(en, spec, procedure.face, { from: 'below', turn: 0 }, sheet, {
  flange: flange.value,
  state: last,
  most,
})

describe('the clamp map of a split case', () => {
  it('says of every fastener of the face what it holds, in words and on the drawing', () => {
    const here = spec.fasteners.filter(({ face }) => face === procedure.face)
    expect(scene.rows).toHaveLength(1 + here.length)
    for (const { id } of here)
      expect(scene.shapes.some((shape) => shape.id === `fastener/${id}/load`)).toBe(true)
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
