import { describe, expect, it } from 'vitest'
import { sceneOf, type Scene, type Shape } from '../../../core/layout/index.ts'
import { demo, factsAt, sheets } from './demos.ts'
import { en } from '../../../core/words/index.ts'

/** A shape in one line, its places to a tenth of a millimetre. */
function line(shape: Shape): string {
  const tenth = (value: number): string => (Math.round(value * 10) / 10 + 0).toString()
  const at = 'x' in shape ? `${tenth(shape.x)} ${tenth(shape.y)}` : ''
  const own = {
    line: () => (shape.kind === 'line' ? shape.points.slice(0, 8).map(tenth).join(' ') : ''),
    circle: () => (shape.kind === 'circle' ? `r ${tenth(shape.radius)}` : ''),
    ring: () => (shape.kind === 'ring' ? `share ${shape.share}` : ''),
    swatch: () =>
      shape.kind === 'swatch' ? `${tenth(shape.width)} × ${tenth(shape.height)} ${shape.pattern}` : '',
    text: () => (shape.kind === 'text' ? `“${shape.text}” ${tenth(shape.capital)} ${shape.anchor}` : ''),
  }
  return [shape.layer, shape.role, shape.id, shape.kind, at, own[shape.kind]()]
    .filter((each) => each !== '')
    .join(' ')
}

function linesOf({ frame, shapes }: Scene): readonly string[] {
  const { left, top, width, height } = frame
  const edges = [left, top, width, height].map((value) => value.toFixed(1)).join(' ')
  return [`frame ${edges}`, ...shapes.filter(({ role }) => role !== 'grid').map(line)]
}

/* Kept so that a change of the drawing is seen and looked at. Renew with `vitest -u` after looking at the new drawing. */
describe('the drawing stays as it was', () => {
  it('of a small cover seen from the nose', () => {
    const spec = demo('fen-1')
    const scene = sceneOf(
      en,
      spec,
      factsAt(spec, 'cover', 'first pull'),
      { from: 'above', turn: 0 },
      sheets[0]!,
    )
    expect(linesOf(scene)).toMatchSnapshot()
  })

  it('of the case joint of an inline three in mid run, seen from below', () => {
    const spec = demo('skerry-3')
    const scene = sceneOf(
      en,
      spec,
      factsAt(spec, 'joint', 'under way'),
      { from: 'below', turn: 0 },
      sheets[0]!,
    )
    expect(linesOf(scene)).toMatchSnapshot()
  })
})
