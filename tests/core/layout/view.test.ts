import { describe, expect, it } from 'vitest'
import { sceneOf, viewInWords, type Shape, type View } from '../../../core/layout/index.ts'
import { projectionOf } from '../../../core/layout/view.ts'
import { demo, demos, factsAt, sheets } from './demos.ts'
import { en } from '../../../core/words/index.ts'

const [sheet] = sheets
const above: View = { from: 'above', turn: 0 }
const below: View = { from: 'below', turn: 0 }

describe('a face in plan, seen from above', () => {
  const place = projectionOf('plan', above)

  it('has the nose at the left and the plus side at the top', () => {
    expect(place(0, 0)).toEqual({ x: 0, y: 0 })
    expect(place(340, 46)).toEqual({ x: 340, y: -46 })
  })

  it('turns clockwise: after a quarter the nose is at the top and the plus side at the right', () => {
    const turned = projectionOf('plan', { from: 'above', turn: 1 })
    expect(turned(340, 0)).toEqual({ x: 0, y: 340 })
    expect(turned(0, 46)).toEqual({ x: 46, y: 0 })
  })
})

describe('a face in plan, seen from below', () => {
  it('is the engine rolled about its crank axis: the nose stays, the sides change places', () => {
    expect(projectionOf('plan', below)(340, 46)).toEqual({ x: 340, y: 46 })
  })
})

describe('a side of the case', () => {
  it('has the nose at the left from the minus side and at the right from the plus side, height upwards', () => {
    expect(projectionOf('minus-side', above)(340, 30)).toEqual({ x: 340, y: -30 })
    expect(projectionOf('plus-side', above)(340, 30)).toEqual({ x: -340, y: -30 })
  })

  it('is turned by half a turn, never mirrored, when the engine lies upside down', () => {
    for (const plane of ['plus-side', 'minus-side', 'nose', 'drive'] as const) {
      const upright = projectionOf(plane, { from: 'above', turn: 2 })
      expect(projectionOf(plane, below)(340, 30)).toEqual(upright(340, 30))
    }
  })
})

describe('an end of the case', () => {
  it('shows the plus side at the left from the nose and at the right from the drive end', () => {
    expect(projectionOf('nose', above)(50, 20)).toEqual({ x: -50, y: -20 })
    expect(projectionOf('drive', above)(50, 20)).toEqual({ x: 50, y: -20 })
  })
})

describe('the words for a view', () => {
  const words = (id: string, faceId: string, view: View): string => {
    const spec = demo(id)
    return viewInWords(
      en,
      spec.case,
      spec.case.faces.find((face) => face.id === faceId)!,
      view,
    )
  }

  it('say which face is towards you and where the nose is', () => {
    expect(words('skerry-3', 'joint', below)).toBe('Case joint, seen from below, nose at the left')
    expect(words('skerry-3', 'joint', { from: 'above', turn: 1 })).toBe(
      'Case joint, seen from above, nose at the top',
    )
  })

  it('call the sides by their names in this engine', () => {
    expect(words('firth-v8', 'port', below)).toBe(
      'Port side, seen from the port bank, upside down, nose at the right',
    )
    expect(words('fen-1', 'cover', above)).toBe('Oil pump cover, seen from the nose')
  })
})

/** What has a place on the engine: everything but labels, which stand upright wherever there is room. */
function ofTheEngine(shapes: readonly Shape[], drawn: RegExp): ReadonlyMap<string, Shape> {
  const marks = /\/(name|tick|start|way|landmark)$|\/way\/|\/centre\//
  return new Map(
    shapes
      .filter(({ id, kind }) => kind !== 'text' && drawn.test(id) && !marks.test(id))
      .map((shape) => [shape.id, shape]),
  )
}

/** The corners or the middle of a shape, sorted, so that it does not matter where the drawing of it begins. */
function places(shape: Shape, flip: 1 | -1): readonly string[] {
  const text = (x: number, y: number): string => `${(x + 0).toFixed(6)} ${(y * flip + 0).toFixed(6)}`
  if (shape.kind === 'line')
    return shape.points
      .flatMap((x, index) => (index % 2 === 0 ? [text(x, shape.points[index + 1] ?? 0)] : []))
      .map((each) => each.replace('-0.000000', '0.000000'))
      .sort()
  if (shape.kind === 'swatch')
    return [shape.y, shape.y + shape.height]
      .flatMap((y) => [text(shape.x, y), text(shape.x + shape.width, y)])
      .sort()
  return [text(shape.x, shape.y).replace('-0.000000', '0.000000')]
}

describe('flipping the view of a face in plan', () => {
  const faces = demos.flatMap((spec) =>
    spec.case.faces
      .filter(({ plane }) => plane === 'plan')
      .map((face) => ({ spec, face, name: `${spec.id}, ${face.name}` })),
  )

  it.each(faces)('mirrors $name exactly: each x stays, each y is negated', ({ spec, face }) => {
    // Too low to be stretched: names in lanes take other room on the two sides of the sheet.
    const low = { ...sheet!, heightPx: 240 }
    for (const [stage, on, drawn] of [
      ['mid run', sheet!, /^(face|opening|half)\/|^fastener\/.*\/disc$/],
      ['under way', low, /^(opening|bore|dowel|oil-passage|crank|cap|keep-out|bead)\//],
    ] as const) {
      const facts = factsAt(spec, face.id, stage)
      const one = ofTheEngine(sceneOf(en, spec, facts, above, on).shapes, drawn)
      const other = ofTheEngine(sceneOf(en, spec, facts, below, on).shapes, drawn)
      expect([...other.keys()].sort()).toEqual([...one.keys()].sort())
      if (stage === 'mid run') expect(one.size).toBeGreaterThan(0)
      for (const [id, shape] of one) expect(places(other.get(id)!, -1), id).toEqual(places(shape, 1))
    }
  })
})
