import { inMillimetres, type Length } from '../quantity/index.ts'
import type { EngineSpec } from '../engine/index.ts'
import { boxAround, boxBetween, type Point } from './box.ts'
import { minimalBoxes } from './bearing-size.ts'
import { discsOf, type Disc } from './discs.ts'
import { endNames } from './end-names.ts'
import type { DrawingFacts, Sheet, View } from './facts.ts'
import { labelSize } from './lettering.ts'
import { areaOf, onFace, type OnFace } from './on-face.ts'
import { openingsOf } from './openings.ts'
import { bossesOf, caseFaceOf, outlineOf, type Boss } from './outline.ts'
import { roomIn, type Room } from './room.ts'
import type { Box } from './scene.ts'
import { fitted, sizesOn, writable, type Sizes } from './sizes.ts'
import { projectionOf, type Projection } from './view.ts'

/** One face being drawn: the spec's part in it, the way it lies on the sheet, and what room is left for labels. */
export interface Drawing {
  readonly spec: EngineSpec
  readonly here: OnFace
  readonly facts: DrawingFacts
  readonly view: View
  readonly place: Projection
  /** Unit steps on the sheet for growing x and for growing y. */
  readonly along: Point
  readonly across: Point
  /** In mm of the engine's own frame. */
  readonly outline: readonly Point[]
  readonly openings: readonly Box[]
  readonly bosses: readonly Boss[]
  /** What the face takes on the sheet. */
  readonly body: Box
  readonly frame: Box
  readonly sizes: Sizes
  readonly discs: readonly Disc[]
  readonly room: Room
}

export function drawingOf(spec: EngineSpec, facts: DrawingFacts, view: View, sheet: Sheet): Drawing {
  const here = onFace(spec, facts.face)
  const place = projectionOf(here.face.plane, view)
  const along = place(1, 0)
  const across = place(0, 1)
  const bosses = bossesOf(spec, here)
  const caseFace = caseFaceOf(spec, here)
  const caseBosses = caseFace === here ? bosses : bossesOf(spec, caseFace)
  const outline = outlineOf(spec, caseFace, [...caseBosses, ...bosses])
  const openings = openingsOf(caseFace, outline, caseBosses)
  const body = boxAround([...outline, ...bosses].map(({ x, y }) => place(x, y)))
  const ends = endNames(spec, here.face, sizesOn(sheet, 1)).map(labelSize)
  const { frame, sizes } = fitted(body, sheet, along.x !== 0, {
    width: Math.max(...ends.map(({ width }) => width)),
    height: Math.max(...ends.map(({ height }) => height)),
  })
  const bearings = minimalBoxes(here, place, sizes)
  const onTheSheet = (part: Parameters<typeof areaOf>[0]): Box => {
    const { left, top, width, height } = areaOf(part)
    return boxBetween(place(left, top), place(left + width, top + height))
  }
  const dowels = here.dowels.map(({ at, diameter }) => ({
    at,
    size: [diameter, diameter] as [Length, Length],
  }))
  const zones = [...dowels, ...here.oilPassages, ...here.beads.flatMap(({ keepOut }) => keepOut)].map(
    onTheSheet,
  )
  const edge = outline.map(({ x, y }) => place(x, y))
  const discs = discsOf(here, facts, place, sizes, { bearings, zones, edge })
  return {
    ...{
      spec,
      here,
      facts,
      view,
      place,
      along,
      across,
      outline,
      openings,
      bosses,
      body,
      frame,
      sizes,
      discs,
    },
    room: roomIn(writable(frame, sizes)),
  }
}

/** The spec's place on the sheet. */
export function placeOf({ place }: Drawing, [x, y]: OnFace['fasteners'][number]['at']): Point {
  return place(inMillimetres(x), inMillimetres(y))
}

export function onSheet({ place }: Drawing, points: readonly Point[]): readonly Point[] {
  return points.map(({ x, y }) => place(x, y))
}

/** The corners of a box of the engine's own frame, on the sheet. */
export function cornersOnSheet({ place }: Drawing, { left, top, width, height }: Box): readonly Point[] {
  return [
    place(left, top),
    place(left + width, top),
    place(left + width, top + height),
    place(left, top + height),
  ]
}

export function flat(points: readonly Point[]): readonly number[] {
  return points.flatMap(({ x, y }) => [x, y])
}

/** A point some way along and across the engine from another, both as seen on the sheet. */
export function moved({ along, across }: Drawing, { x, y }: Point, byAlong: number, byAcross: number): Point {
  return {
    x: x + along.x * byAlong + across.x * byAcross,
    y: y + along.y * byAlong + across.y * byAcross,
  }
}
