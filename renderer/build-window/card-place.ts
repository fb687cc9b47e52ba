import { boxAbout, boxesOfNext, type Box, type Scene } from '../../core/layout/index.ts'
import type { SheetPoint } from '../canvas/board.ts'
import { inWindow, type Camera } from '../canvas/camera.ts'

/** What a card is about. */
export interface PickedThing {
  /** As the scene names it. */
  readonly about: string
  /** Where the board was tapped, in px; null where it was asked for by keys. */
  readonly at: SheetPoint | null
  /** The last entry of the build by then: what it says is out of date with the next. */
  readonly seq: number
}

interface Size {
  readonly width: number
  readonly height: number
}

/** Of what is wider than this share of the board, the card stands beside the place that was tapped. */
const wide = 0.5
/** Half the side of that place, in px. */
const finger = 20

/** Where on the board the thing is that was asked about, in px; null where it is not drawn. */
export function thingAsked(
  { about, at }: PickedThing,
  scene: Scene,
  camera: Camera,
  board: Size,
): Box | null {
  const box = boxAbout(scene, about)
  const thing = box && inWindow(camera, box)
  const isWide = thing === null || thing.width > board.width * wide || thing.height > board.height * wide
  return at !== null && isWide
    ? { left: at.x - finger, top: at.y - finger, width: 2 * finger, height: 2 * finger }
    : thing
}

/** Where in the window it is said what is next, in px: no card is laid over it. */
export function nextInWindow(scene: Scene, camera: Camera): readonly Box[] {
  return boxesOfNext(scene).map((box) => inWindow(camera, box))
}

/** Between the card and the thing, and between it and the edge of its window, in px. */
const gap = 14
const margin = 8
/** Less than this of a card, in px, is not worth reading: one that finds no room is as high as this and scrolls. */
const leastHeight = 120

export interface CardPlace {
  readonly left: number
  readonly top: number
  /** What is longer scrolls within the card. */
  readonly height: number
}

/**
 * Where a card stands in a window, in px: right of the thing it is about, left of it, below or above, whichever is the first
 * to have room and covers none of `next`. Where none has, as near to the thing as it can without covering either; a card too
 * high for that is cut and scrolls. Where no place is free, it covers as little as can be of `next` and then of the thing.
 */
export function cardPlace(thing: Box, card: Size, window: Size, next: readonly Box[]): CardPlace {
  const largestHeight = Math.min(card.height, window.height - 2 * margin)
  const beside = placeBeside(thing, { ...card, height: largestHeight }, window, next)
  if (beside !== null) return { ...beside, height: largestHeight }
  let best: CardPlace | null = null
  let least: readonly number[] = []
  for (const height of heightsFrom(largestHeight)) {
    const size = { width: card.width, height }
    for (const place of placesFor(size, window, [thing, ...next])) {
      const box = { ...place, ...size }
      const overNext = next.reduce((sum, each) => sum + shared(box, each), 0)
      const costs = [overNext, shared(box, thing), distance(box, thing)]
      if (best !== null && !isLess(costs, least)) continue
      best = { ...place, height }
      least = costs
    }
    if (least[0] === 0 && (least[1] === 0 || next.length === 0)) break
  }
  return best ?? { left: margin, top: margin, height: largestHeight }
}

/** The full height, then less and less of it. */
function heightsFrom(highest: number): readonly number[] {
  const shares = [1, 0.8, 0.65, 0.5, 0.4, 0.3].map((share) => share * highest)
  return [
    highest,
    ...shares.filter((height) => height < highest && height > leastHeight),
    leastHeight,
  ].filter((height) => height <= highest)
}

interface Corner {
  readonly left: number
  readonly top: number
}

function placeBeside(thing: Box, card: Size, window: Size, next: readonly Box[]): Corner | null {
  const left = kept(thing.left + thing.width / 2 - card.width / 2, card.width, window.width)
  const top = kept(thing.top + thing.height / 2 - card.height / 2, card.height, window.height)
  const places = [
    { left: thing.left + thing.width + gap, top },
    { left: thing.left - gap - card.width, top },
    { left, top: thing.top + thing.height + gap },
    { left, top: thing.top - gap - card.height },
  ]
  const free = places.find((place) => {
    const box = { ...place, ...card }
    const isInside =
      place.left >= margin &&
      place.top >= margin &&
      place.left + card.width <= window.width - margin &&
      place.top + card.height <= window.height - margin
    return isInside && next.every((each) => shared(box, each) === 0)
  })
  return free ?? null
}

/**
 * Every place at which a card touches an edge of the window or of a box, or keeps the gap to it. A card that lies free
 * anywhere can be pushed left and up until it touches: so where there is a free place, one of these is.
 */
function placesFor(card: Size, window: Size, boxes: readonly Box[]): readonly Corner[] {
  const stops = (from: number, to: number, size: number): readonly number[] => [
    ...[from - gap - size, from - size, to + gap, to],
    (from + to - size) / 2,
  ]
  const lefts = boxes.flatMap(({ left, width }) => stops(left, left + width, card.width))
  const tops = boxes.flatMap(({ top, height }) => stops(top, top + height, card.height))
  const within = (all: readonly number[], size: number, room: number) => [
    ...new Set([...all, 0, room].map((at) => kept(at, size, room))),
  ]
  const tried = within(tops, card.height, window.height)
  return within(lefts, card.width, window.width).flatMap((left) => tried.map((top) => ({ left, top })))
}

function kept(at: number, size: number, room: number): number {
  return Math.max(margin, Math.min(at, room - margin - size))
}

function shared(one: Box, other: Box): number {
  const wide = Math.min(one.left + one.width, other.left + other.width) - Math.max(one.left, other.left)
  const high = Math.min(one.top + one.height, other.top + other.height) - Math.max(one.top, other.top)
  return Math.max(0, wide) * Math.max(0, high)
}

function distance(one: Box, other: Box): number {
  const across = Math.max(one.left - other.left - other.width, other.left - one.left - one.width, 0)
  const down = Math.max(one.top - other.top - other.height, other.top - one.top - one.height, 0)
  return Math.hypot(across, down)
}

/** By the first in which they differ. */
function isLess(costs: readonly number[], than: readonly number[]): boolean {
  const at = costs.findIndex((cost, index) => cost !== than[index])
  return at >= 0 && costs[at]! < than[at]!
}
