import { describe, expect, it } from 'vitest'
import {
  orientationInWords,
  orientationsFor,
  sceneOf,
  viewInWords,
  viewOriented,
  viewWithNose,
  type BenchOrientation,
  type View,
} from '../../../core/layout/index.ts'
import type { Face } from '../../../core/engine/index.ts'
import { demo, demos, factsAt, sheets, views } from './demos.ts'
import { en } from '../../../core/words/index.ts'

const above: View = { from: 'above', turn: 0 }
const below: View = { from: 'below', turn: 0 }

function faceOf(engine: string, id: string): Face {
  const face = demo(engine).case.faces.find((each) => each.id === id)
  if (!face) throw new Error(`${engine} has no ${id}`)
  return face
}

/** What the shop calls the side that stands at the top of the sheet. */
function sideOnTop(engine: string, face: string, view: View): string {
  const spec = demo(engine)
  const { shapes } = sceneOf(en, spec, factsAt(spec, face, 'bare'), view, sheets[0]!)
  const drawn = shapes.flatMap((shape) =>
    shape.kind === 'text' && /^side\/\w+$/.test(shape.id) ? [shape] : [],
  )
  const [top] = drawn.sort((one, other) => one.y - other.y)
  return spec.case.sides[top!.id === 'side/plus' ? 'plus' : 'minus']
}

const seen = (engine: string, face: string, orientation: BenchOrientation, view: View): string =>
  viewInWords(
    en,
    demo(engine).case,
    faceOf(engine, face),
    viewOriented(faceOf(engine, face), orientation, view),
  )

describe('a case that is split horizontally', () => {
  it('is seen from above when it lies upright and from below when it lies upside down; the nose stays', () => {
    expect(seen('skerry-3', 'joint', 'upright', { from: 'below', turn: 1 })).toBe(
      'Case joint, seen from above, nose at the top',
    )
    expect(seen('skerry-3', 'joint', 'upside-down', above)).toBe(
      'Case joint, seen from below, nose at the left',
    )
  })

  it('has its other side up when it lies on one, from wherever it is seen', () => {
    const joint = faceOf('skerry-3', 'joint')
    for (const view of views) {
      expect(sideOnTop('skerry-3', 'joint', viewOriented(joint, 'on-minus', view))).toBe('pump side')
      expect(sideOnTop('skerry-3', 'joint', viewOriented(joint, 'on-plus', view))).toBe('gear side')
      expect(viewOriented(joint, 'on-plus', view).from).toBe(view.from)
    }
  })

  it('on its gear side points its nose to the left for somebody who sees it from above, to the right from below', () => {
    expect(seen('skerry-3', 'joint', 'on-minus', above)).toContain('nose at the left')
    expect(seen('skerry-3', 'joint', 'on-minus', below)).toContain('nose at the right')
  })

  it('is described in the shop’s own names of its sides', () => {
    const words = orientationsFor(faceOf('skerry-3', 'joint')).map((orientation) =>
      orientationInWords(en, demo('skerry-3').case, orientation),
    )
    expect(words).toEqual(['upright', 'upside down', 'on its gear side', 'on its pump side'])
  })
})

describe('a case that is split vertically', () => {
  it('lies flat to be put together, or stands on its foot', () => {
    const words = orientationsFor(faceOf('fen-1', 'joint')).map((orientation) =>
      orientationInWords(en, demo('fen-1').case, orientation),
    )
    expect(words).toEqual(['flat', 'flat, turned over', 'on its foot side', 'on its flywheel top'])
    const standing = viewOriented(faceOf('fen-1', 'joint'), 'on-minus', { from: 'above', turn: 3 })
    expect(sideOnTop('fen-1', 'joint', standing)).toBe('flywheel top')
  })
})

describe('a side of the case', () => {
  it('cannot be seen while it is down', () => {
    expect(orientationsFor(faceOf('firth-v8', 'starboard'))).toEqual(['upright', 'upside-down', 'on-minus'])
    expect(orientationsFor(faceOf('firth-v8', 'port'))).toEqual(['upright', 'upside-down', 'on-plus'])
  })

  it('stands as the engine does', () => {
    expect(seen('firth-v8', 'port', 'upright', { from: 'below', turn: 1 })).toContain('nose at the left')
    expect(seen('firth-v8', 'port', 'upside-down', above)).toContain('upside down, nose at the right')
  })

  it('that looks up is seen as it was, and no longer upside down', () => {
    expect(seen('firth-v8', 'port', 'on-plus', below)).not.toContain('upside down')
    expect(seen('firth-v8', 'port', 'on-plus', below)).toContain('nose at the right')
  })
})

describe('an end of the case', () => {
  it('is turned with the engine', () => {
    for (const end of ['nose', 'drive']) {
      expect(sideOnTop('quay-3', end, viewOriented(faceOf('quay-3', end), 'on-minus', below))).toBe(
        'rope side',
      )
      expect(sideOnTop('quay-3', end, viewOriented(faceOf('quay-3', end), 'on-plus', below))).toBe(
        'brake side',
      )
    }
  })

  it('has no nose to point with', () => {
    expect(viewWithNose(faceOf('quay-3', 'nose'), below, 'top')).toEqual(below)
  })
})

describe('the nose', () => {
  it('comes to the side that is asked for and the face is seen from where it was', () => {
    for (const { case: engineCase } of demos) {
      const lying = engineCase.faces.filter(({ plane }) => plane !== 'nose' && plane !== 'drive')
      for (const face of lying)
        for (const view of views)
          for (const side of ['left', 'top', 'right', 'bottom'] as const) {
            const turned = viewWithNose(face, view, side)
            expect(viewInWords(en, engineCase, face, turned)).toMatch(new RegExp(`nose at the ${side}$`))
            expect(turned.from).toBe(view.from)
          }
    }
  })
})
