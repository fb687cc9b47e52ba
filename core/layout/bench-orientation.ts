import type { EngineCase, Face } from '../engine/index.ts'
import type { Words } from '../words/index.ts'
import type { View } from './facts.ts'
import { acrossAnEnd, noseSide, projectionOf, type SheetSide } from './view.ts'

/** How the engine lies on the bench: right way up, or on one of its sides, which is then down. */
export type BenchOrientation = 'upright' | 'upside-down' | 'on-plus' | 'on-minus'

const orientations: readonly BenchOrientation[] = ['upright', 'upside-down', 'on-minus', 'on-plus']
const turns = [0, 1, 2, 3] as const

/** The ways of lying in which a face can be seen; a side of the case that is down cannot. */
export function orientationsFor(face: Face): readonly BenchOrientation[] {
  const hidden: BenchOrientation | null =
    face.plane === 'plus-side' ? 'on-plus' : face.plane === 'minus-side' ? 'on-minus' : null
  return orientations.filter((orientation) => orientation !== hidden)
}

/**
 * A way of lying in the words of the shop: `upside down`, `on its gear side`. A case that is split vertically is put
 * together lying flat and may stand on what the shop calls its sides.
 */
export function orientationInWords(
  words: Words,
  { family, sides }: EngineCase,
  orientation: BenchOrientation,
): string {
  const { orientations, onItsSide } = words.drawing
  const flat = family === 'split-vertical'
  switch (orientation) {
    case 'upright':
      return flat ? orientations.flat : orientations.upright
    case 'upside-down':
      return flat ? orientations['turned-over'] : orientations['upside-down']
    case 'on-plus':
      return onItsSide({ side: sides.plus })
    case 'on-minus':
      return onItsSide({ side: sides.minus })
    default:
      return orientation satisfies never
  }
}

/**
 * The drawing of a face as it lies before a person then. What is not said by the way of lying stays as it is: the side
 * a plan is looked at from, and, where the face lies flat, which way the nose points.
 */
export function viewOriented(face: Face, orientation: BenchOrientation, view: View): View {
  const { plane } = face
  if (plane === 'plan') {
    if (orientation === 'upright') return { ...view, from: 'above' }
    if (orientation === 'upside-down') return { ...view, from: 'below' }
    return turnedSo(view, (turned) => projectionOf(plane, turned)(0, upOf(orientation)).y < 0)
  }
  if (orientation === 'upright') return { from: 'above', turn: 0 }
  if (orientation === 'upside-down') return { from: 'below', turn: 0 }
  const upright: View = { ...view, from: 'above' }
  if (acrossAnEnd(face))
    return turnedSo(upright, (turned) => projectionOf(plane, turned)(upOf(orientation), 0).y < 0)
  // The face looks up from the bench and is seen as it was.
  const before = projectionOf(plane, view)(1, 0)
  return turnedSo(upright, (turned) => {
    const now = projectionOf(plane, turned)(1, 0)
    return now.x === before.x && now.y === before.y
  })
}

/** The same face with the sheet turned until the nose points to a side of it; unchanged for one across an end. */
export function viewWithNose(face: Face, view: View, side: SheetSide): View {
  return acrossAnEnd(face) ? view : turnedSo(view, (turned) => noseSide(face, turned) === side)
}

/** Which of the sides is up, as the sign of the place across the engine. */
function upOf(orientation: 'on-plus' | 'on-minus'): 1 | -1 {
  return orientation === 'on-minus' ? 1 : -1
}

function turnedSo(view: View, isSo: (view: View) => boolean): View {
  return turns.map((turn): View => ({ ...view, turn })).find(isSo) ?? view
}
