import {
  aboutOf,
  subjectOf,
  thingNamed,
  type PlacedThing,
  type SnapLine,
} from '../../../core/drafts/index.ts'
import type { EngineSpec } from '../../../core/engine/index.ts'
import { boxAbout, type Drawing, type Scene, type Shape } from '../../../core/layout/index.ts'
import type { Point } from '../../../core/plane/index.ts'
import type { Words } from '../../../core/words/index.ts'

const overlay = { layer: 'overlay' } as const

function onSheet({ place }: Drawing, { x, y }: Point): Point {
  return place(x / 1e6, y / 1e6)
}

/** Round what is chosen. */
export function chosenMarks(
  drawing: Drawing,
  scene: Scene,
  chosen: readonly PlacedThing[],
): readonly Shape[] {
  const { px } = drawing
  return chosen.flatMap((thing): readonly Shape[] => {
    const about = aboutOf(thing)
    const id = `chosen/${about}`
    const common = { ...overlay, id, kind: 'circle', role: 'checked' } as const
    if (subjectOf(thing.kind) !== 'parts')
      return [{ ...common, ...onSheet(drawing, thing.at), radius: 12 * px }]
    // A number that stands beside its hole is ringed by itself: a ring round both would lie over its neighbours.
    const apart = scene.shapes.find((shape) => shape.id === `${about}/lane-disc`)
    if (apart?.kind === 'circle') {
      const hole = { ...onSheet(drawing, thing.at), radius: 7 * px }
      const number = { x: apart.x, y: apart.y, radius: apart.radius + 3 * px }
      return [
        { ...common, ...hole },
        { ...common, ...number, id: `${id}/number` },
      ]
    }
    const box = boxAbout(scene, about)
    if (box === null) return []
    const middle = { x: box.left + box.width / 2, y: box.top + box.height / 2 }
    return [{ ...common, ...middle, radius: Math.max(box.width, box.height) / 2 + 4 * px }]
  })
}

/** Where what is held would come to lie. */
export function ghosts(drawing: Drawing, places: readonly Point[]): readonly Shape[] {
  return places.map((at, index) => ({
    ...{ ...overlay, id: `held/${index}`, kind: 'circle', role: 'next' },
    ...{ ...onSheet(drawing, at), radius: 7 * drawing.px },
  }))
}

/** The lines onto which something is drawn, each with what it is of. */
export function guides(
  words: Words,
  spec: EngineSpec,
  drawing: Drawing,
  lines: readonly SnapLine[],
): readonly Shape[] {
  const { place, frame, px } = drawing
  const [right, bottom] = [frame.left + frame.width, frame.top + frame.height]
  return lines.flatMap((line): readonly Shape[] => {
    const { axis, at } = line
    const through = onSheet(drawing, axis === 'x' ? { x: at, y: 0 } : { x: 0, y: at })
    const isUpright = (axis === 'x') === (place(1, 0).x !== place(0, 0).x)
    const points = isUpright
      ? [through.x, frame.top, through.x, bottom]
      : [frame.left, through.y, right, through.y]
    const label = isUpright
      ? { x: through.x + 6 * px, y: bottom - 12 * px, anchor: 'start' as const }
      : { x: right - 8 * px, y: through.y - 10 * px, anchor: 'end' as const }
    const text = snappedText(words, spec, line)
    return [
      { ...overlay, id: `line/${axis}`, kind: 'line', role: 'crosshair', closed: false, points },
      {
        ...{ ...overlay, id: `line/${axis}/of`, kind: 'text', role: 'label', ...label },
        ...{ text, capital: 11 * px, weight: 'bold' },
      },
    ]
  })
}

function snappedText(words: Words, spec: EngineSpec, { of, name }: SnapLine): string {
  const { snapped } = words.editor.drawn
  if (of === 'axis' || of === 'edge') return snapped[of]
  const thing = name === null ? null : thingNamed(name)
  const number = spec.fasteners.find(({ id }) => id === thing?.id)?.number
  return snapped[of]({ name: thing?.kind === 'fastener' && number ? number : (thing?.id ?? name ?? '') })
}

/** What is drawn point by point, as far as it has come. */
export function sketch(drawing: Drawing, path: readonly Point[]): readonly Shape[] {
  const places = path.map((at) => onSheet(drawing, at))
  const [first] = places
  if (first === undefined) return []
  const points = places.flatMap(({ x, y }) => [x, y])
  return [
    { ...overlay, id: 'sketch', kind: 'line', role: 'path', closed: false, points },
    ...places.map((at, index): Shape => ({
      ...{ ...overlay, id: `sketch/${index}`, kind: 'circle', role: index === 0 ? 'bead-start' : 'handle' },
      ...{ ...at, radius: 6 * drawing.px },
    })),
  ]
}
