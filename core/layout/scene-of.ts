import type { EngineSpec } from '../engine/index.ts'
import { axisShapes } from './axis.ts'
import { beadShapes } from './beads.ts'
import { bearingShapes, drawnBearings } from './bearings.ts'
import { drawingOf, type Drawing } from './drawing.ts'
import type { DrawingFacts, Sheet, View } from './facts.ts'
import { fastenerShapes } from './fasteners.ts'
import { gridShapes } from './grid.ts'
import { boresOf, groundShapes } from './ground.ts'
import { labelShapes, takeRoom } from './labels.ts'
import { letterAll } from './lettering.ts'
import { numbersBeside } from './numbers.ts'
import { calloutShapes, wayShapes } from './pointing.ts'
import { noteShapes } from './notes.ts'
import { rowsOf } from './rows.ts'
import { signLabels } from './signs.ts'
import type { Scene } from './scene.ts'

/**
 * One joint face of an engine as a drawing: pure, the same for the same input. The frame has the sheet's proportions and
 * the engine stands in its middle at its true size; only the symbols and the texts, whose sizes come from the sheet's
 * pixels, are larger or smaller on it. Labels stand where they cover nothing; a small one that finds no room is left
 * out, the rows say it all the same. Throws a RangeError when the engine has no face of that name.
 */
export function sceneOf(spec: EngineSpec, facts: DrawingFacts, view: View, sheet: Sheet): Scene {
  const drawn = (calloutFirst: boolean) => laidOut(drawingOf(spec, facts, view, sheet), calloutFirst)
  const { scene, complete } = drawn(false)
  // What is next must be read: where the labels leave no room for it at its full size, they make way for it.
  return complete ? scene : drawn(true).scene
}

/** `complete` unless the labels, which have their places first, leave none for the callout at its full size. */
function laidOut(
  drawing: Drawing,
  calloutFirst: boolean,
): { readonly scene: Scene; readonly complete: boolean } {
  const bores = boresOf(drawing)
  const bearings = drawnBearings(drawing)
  takeRoom(drawing, bearings, bores)
  const signs = letterAll(signLabels(drawing), drawing.room)
  const early = calloutFirst
    ? (calloutShapes(drawing, bearings, [1, 0.8, 0.64], 'past everything') ??
      calloutShapes(drawing, bearings, [1, 0.8, 0.64, 0.5], 'anyhow'))
    : null
  const numbers = numbersBeside(drawing)
  const labels = labelShapes(drawing, bearings, bores)
  const way = wayShapes(drawing)
  const axis = axisShapes(drawing)
  const callout = calloutFirst ? early : calloutShapes(drawing, bearings, [1], 'past everything')
  const notes = noteShapes(drawing, bearings, [
    ...signs,
    ...labels,
    ...way,
    ...axis.filter(({ id }) => id === 'nose'),
  ])
  const scene = {
    frame: drawing.frame,
    shapes: [
      ...gridShapes(drawing),
      ...groundShapes(drawing, bores),
      ...axis,
      ...beadShapes(drawing),
      ...way,
      ...bearings.flatMap((drawn) => bearingShapes(drawing, drawn)),
      ...signs,
      ...labels,
      ...fastenerShapes(drawing, numbers),
      ...notes,
      ...(callout ?? []),
    ],
    rows: rowsOf(drawing, bores),
  }
  return { scene, complete: callout !== null }
}
