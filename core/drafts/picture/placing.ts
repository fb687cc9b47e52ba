import { z } from 'zod'
import type { Point } from '../../plane/index.ts'
import { done, refused, type Outcome } from '../../problem/index.ts'

/** Farther than any engine reaches, in nanometres: 10 m. */
const farthest = 10_000_000_000

/** A point of a picture, in its own pixels from its upper left corner, and the place in the engine's frame where it lies, in nanometres. */
const pin = z.strictObject({
  px: z.strictObject({ x: z.number().min(-1e5).max(1e5), y: z.number().min(-1e5).max(1e5) }),
  at: z.strictObject({
    x: z.int().min(-farthest).max(farthest),
    y: z.int().min(-farthest).max(farthest),
  }),
})
type Pin = z.output<typeof pin>

/** A picture is held by two of its points: scale, turn and place follow from them. */
export type Pins = readonly [Pin, Pin]

/** How the picture of a face lies under its drawing. */
export const pictureLook = z.strictObject({
  pins: z.tuple([pin, pin]).readonly(),
  /** In percent: 100 covers the paper. */
  opacity: z.int().min(10).max(100),
  shown: z.boolean(),
})
export type PictureLook = Readonly<z.output<typeof pictureLook>>

/**
 * Where the points of a picture lie in the engine's frame: x = a·px.x + c·px.y + e and y = b·px.x + d·px.y + f, in nanometres, in the
 * order of a canvas.
 */
export interface PicturePlacement {
  readonly a: number
  readonly b: number
  readonly c: number
  readonly d: number
  readonly e: number
  readonly f: number
}

/** Which way a line through two points of a picture runs: as the picture lies now, or along or across the engine. */
export const lineRuns = ['as-it-lies', 'along', 'across'] as const
export type LineRuns = (typeof lineRuns)[number]

/** Two points of a picture that are nearer to each other than this, in px, place nothing: a hand is not steadier. */
const leastApartPx = 8

/**
 * How a picture lies: the similarity that takes its two pins to their places. `mirrored` where the drawing shows the engine's frame
 * reversed, so that the picture itself is never seen so. A similarity is fixed by two points, in complex numbers w = αz + β.
 */
export function lyingBy([one, other]: Pins, mirrored: boolean): PicturePlacement {
  const side = mirrored ? -1 : 1
  const from = { x: other.px.x - one.px.x, y: (other.px.y - one.px.y) * side }
  const to = { x: other.at.x - one.at.x, y: other.at.y - one.at.y }
  const square = from.x ** 2 + from.y ** 2
  const re = (to.x * from.x + to.y * from.y) / square
  const im = (to.y * from.x - to.x * from.y) / square
  const turn = { a: re, b: im, c: -im * side, d: re * side }
  return {
    ...turn,
    e: one.at.x - turn.a * one.px.x - turn.c * one.px.y,
    f: one.at.y - turn.b * one.px.x - turn.d * one.px.y,
  }
}

export function placeOf({ a, b, c, d, e, f }: PicturePlacement, { x, y }: Point): Point {
  return { x: a * x + c * y + e, y: b * x + d * y + f }
}

/** The point of the picture, in its pixels, that lies at a place. */
export function pixelAt({ a, b, c, d, e, f }: PicturePlacement, { x, y }: Point): Point {
  const [dx, dy, area] = [x - e, y - f, a * d - b * c]
  return { x: (d * dx - c * dy) / area, y: (a * dy - b * dx) / area }
}

/** Refuses `picture-points-near` for two points that are one, `picture-places-same` for places that are. */
export function pinnedToPlaces(
  points: readonly [Point, Point],
  places: readonly [Point, Point],
): Outcome<Pins> {
  const near = refusedWhereNear(points)
  if (near !== null) return near
  const [one, other] = places
  if (one.x === other.x && one.y === other.y) return refused('picture-places-same', {})
  return done([pinned(points[0], one), pinned(points[1], other)])
}

/**
 * By how far two points of the picture are from each other in truth, in nanometres: the first stays where it lies. Refuses
 * `picture-points-near`, and `picture-distance-none` for a distance of nothing.
 */
export function pinnedByDistance(
  lying: PicturePlacement,
  points: readonly [Point, Point],
  distance: number,
  runs: LineRuns,
): Outcome<Pins> {
  const near = refusedWhereNear(points)
  if (near !== null) return near
  if (distance <= 0) return refused('picture-distance-none', {})
  const [one, other] = [placeOf(lying, points[0]), placeOf(lying, points[1])]
  const way = wayOf({ x: other.x - one.x, y: other.y - one.y }, runs)
  const to = { x: one.x + way.x * distance, y: one.y + way.y * distance }
  return done([pinned(points[0], one), pinned(points[1], to)])
}

export function shifted(pins: Pins, by: Point): Pins {
  return mapped(pins, ({ x, y }) => ({ x: x + by.x, y: y + by.y }))
}

/** Turned about a place and made larger by a factor: positive degrees turn x towards y. */
export function turnedAbout(pins: Pins, about: Point, degrees: number, factor = 1): Pins {
  const angle = (degrees * Math.PI) / 180
  const [cos, sin] = [Math.cos(angle) * factor, Math.sin(angle) * factor]
  return mapped(pins, ({ x, y }) => {
    const [dx, dy] = [x - about.x, y - about.y]
    return { x: about.x + cos * dx - sin * dy, y: about.y + sin * dx + cos * dy }
  })
}

function refusedWhereNear([one, other]: readonly [Point, Point]) {
  return Math.hypot(other.x - one.x, other.y - one.y) < leastApartPx
    ? refused('picture-points-near', {})
    : null
}

/** A way of length 1; along and across, the nearer of the two directions. */
function wayOf({ x, y }: Point, runs: LineRuns): Point {
  if (runs === 'along') return { x: x < 0 ? -1 : 1, y: 0 }
  if (runs === 'across') return { x: 0, y: y < 0 ? -1 : 1 }
  const length = Math.hypot(x, y)
  return { x: x / length, y: y / length }
}

function mapped([one, other]: Pins, to: (at: Point) => Point): Pins {
  return [pinned(one.px, to(one.at)), pinned(other.px, to(other.at))]
}

function pinned({ x, y }: Point, at: Point): Pin {
  return { px: { x, y }, at: { x: Math.round(at.x) + 0, y: Math.round(at.y) + 0 } }
}
