import type { EngineSpec } from '../engine/index.ts'
import type { Words } from '../words/index.ts'
import { textBox } from './scene/about-at.ts'
import { axisShapes } from './case/axis.ts'
import { beadShapes } from './parts/beads.ts'
import { bearingShapes, drawnBearings } from './parts/bearings.ts'
import { overlap, type Point } from '../plane/index.ts'
import { crankLaidIn } from './crank/crank-shapes.ts'
import { drawingOf, type Drawing } from './drawing.ts'
import { titleInset, titleShapes } from './labels/face-title.ts'
import type { DrawingFacts, Sheet, View } from './facts.ts'
import { facePartShapes } from './parts/face-parts.ts'
import { gasketShapes } from './parts/gasket.ts'
import { fastenerShapes } from './parts/fasteners.ts'
import { footnoteShapes } from './footnotes.ts'
import { gridShapes } from './grid.ts'
import type { Bore } from './case/bores.ts'
import { boresOf, groundShapes } from './case/ground.ts'
import { lineWidth } from './labels/label.ts'
import { laneShapes, type LanePlace } from './labels/lane.ts'
import { actedOn, calloutShapes, crosshairShapes, pathShapes } from './parts/next.ts'
import { spanAt } from './case/polygon.ts'
import { rowsOf } from './rows.ts'
import type { Scene, Shape } from './scene/scene.ts'

/**
 * One joint face of an engine as a drawing: pure, the same for the same input. The frame has the sheet's proportions and the
 * case fills what is left between its furniture, each piece of which has one fixed place: the title and the callout in the
 * upper left corner, names in lanes along the long edges, nose and drive end at the ends of the axis. What is shown follows
 * from what the drawing is about. Throws a RangeError when the engine has no face of that name.
 */
export function sceneOf(
  words: Words,
  spec: EngineSpec,
  facts: DrawingFacts,
  view: View,
  sheet: Sheet,
): Scene {
  return sceneOn(drawingOf(words, spec, facts, view, sheet))
}

/** The scene of a face whose place on the sheet is known already. */
export function sceneOn(drawing: Drawing): Scene {
  const bores = boresOf(drawing)
  const shapes = shapesAround(drawing, bores)
  const drawn = new Set(shapes.map(({ about }) => about))
  return {
    frame: drawing.frame,
    shapes,
    rows: rowsOf(drawing, bores).filter(({ about }) => drawn.has(about)),
  }
}

/** What is drawn of it, without what is said of each thing in words. */
export function shapesOn(drawing: Drawing): readonly Shape[] {
  return shapesAround(drawing, boresOf(drawing))
}

function shapesAround(drawing: Drawing, bores: readonly Bore[]): readonly Shape[] {
  const bearings = drawnBearings(drawing)
  const acted = actedOn(drawing, bearings)
  const { frame, px, title, here } = drawing
  const callout = calloutShapes(drawing, acted)
  const ends = clearOf(callout, drawing.endShapes)
  const names = [...namesInLanes(drawing), ...titleShapes(here.face, title, frame, px)]
  const texts = [...ends, ...names].flatMap((shape) => (shape.kind === 'text' ? [textBox(shape)] : []))
  return [
    ...gridShapes(drawing),
    ...groundShapes(drawing, bores),
    ...gasketShapes(drawing),
    ...axisShapes(drawing),
    ...ends,
    ...crosshairShapes(drawing, acted, texts),
    ...beadShapes(drawing),
    ...pathShapes(drawing),
    ...bearings.flatMap((drawn) => bearingShapes(drawing, drawn)),
    ...crankLaidIn(drawing),
    ...facePartShapes(drawing),
    ...names,
    ...fastenerShapes(drawing),
    ...footnoteShapes(drawing, bearings, endOfTitle(drawing)),
    ...callout,
  ]
}

/** What stands at the ends of the axis. On a sheet too small for all of it the names of the halves give way to what is next. */
function clearOf(callout: readonly Shape[], ends: readonly Shape[]): readonly Shape[] {
  const plate = callout.find((shape) => shape.kind === 'line' && shape.id === 'callout')
  if (plate?.kind !== 'line') return ends
  const [left = 0, top = 0, right = 0, , , bottom = 0] = plate.points
  const box = { left, top, width: right - left, height: bottom - top }
  const isCovered = (shape: Shape): boolean =>
    shape.kind === 'text' && shape.id.startsWith('half-name/') && overlap(textBox(shape), box)
  return ends.some(isCovered) ? ends.filter(({ id }) => !id.startsWith('half-name/')) : ends
}

function endOfTitle({ frame, px, title }: Drawing): Point {
  const [last] = title.slice(-1)
  const height = title.reduce((sum, { capital }, index) => sum + capital * (index === 0 ? 1 : 1.62), 0)
  const capital = last?.capital ?? 0
  return {
    // A screen that sets each letter on a whole pixel writes a line up to this much longer.
    x: frame.left + (titleInset.left + (last === undefined ? 0 : 1.02 * lineWidth(last))) * px,
    y: frame.top + (titleInset.top + height - capital / 2) * px,
  }
}

/** The names along both long edges, each with its tick to the case, or to the thing itself. */
function namesInLanes(drawing: Drawing): readonly Shape[] {
  const { lanes, body, frame, px, along, edge, names, laneDepths, place } = drawing
  const lying = along.x !== 0
  const outline = lying ? edge : edge.map(({ x, y }) => ({ x: y, y: x }))
  const origin = lying ? frame.left : frame.top
  return (['before', 'after'] as const).flatMap((which) => {
    const outwards = which === 'before' ? -1 : 1
    const [from, length] = lying ? [body.top, body.height] : [body.left, body.width]
    const off = laneDepths[which] * px
    const edgeAt = (which === 'before' ? from : from + length) + outwards * off
    const tickFrom: LanePlace['tickFrom'] = (label) => {
      const named = names.find(({ id }) => id === label.id)
      if (named?.fromThing === true) {
        const { x, y } = place(named.at.x, named.at.y)
        return lying ? y : x
      }
      if (off > 0) return edgeAt
      const span = spanAt(outline, origin + label.at * px)
      return span === null ? edgeAt : which === 'before' ? span.least : span.most
    }
    const side = lying ? (which === 'before' ? 'top' : 'bottom') : which === 'before' ? 'left' : 'right'
    return laneShapes(lanes[which], { side, edge: edgeAt, origin, tickFrom, px })
  })
}
