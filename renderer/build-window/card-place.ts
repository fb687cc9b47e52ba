import { boxAbout, type Box, type Scene } from '../../core/layout/index.ts'
import type { SheetPoint } from '../canvas/board.ts'
import { inWindow, type Camera } from '../canvas/camera.ts'

/** What a card is to tell of. */
export interface PickedThing {
  /** As the scene names it. */
  readonly about: string
  /** Where the board was tapped, in px; null where it was asked for by keys. */
  readonly at: SheetPoint | null
  /** The last entry of the build by then: what was told is out of date with the next. */
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

/** Between the card and the thing, and between it and the edge of its window, in px. */
const gap = 14
const margin = 8

/**
 * Where a card stands in a window, in px: right of the thing it tells of, left of it, below or above, whichever is the
 * first to have room; where none has, in the corner in which it covers least of the thing.
 */
export function cardPlace(
  thing: Box,
  card: Size,
  window: Size,
): { readonly left: number; readonly top: number } {
  const kept = (at: number, size: number, room: number) =>
    Math.max(margin, Math.min(at, room - margin - size))
  const left = kept(thing.left + thing.width / 2 - card.width / 2, card.width, window.width)
  const top = kept(thing.top + thing.height / 2 - card.height / 2, card.height, window.height)
  const right = thing.left + thing.width
  const bottom = thing.top + thing.height
  const beside = [
    { left: right + gap, top },
    { left: thing.left - gap - card.width, top },
    { left, top: bottom + gap },
    { left, top: thing.top - gap - card.height },
  ]
  const free = beside.find(
    (place) =>
      place.left >= margin &&
      place.top >= margin &&
      place.left + card.width <= window.width - margin &&
      place.top + card.height <= window.height - margin,
  )
  if (free !== undefined) return free
  const corners = [window.width, 0].flatMap((x) =>
    [0, window.height].map((y) => ({
      left: kept(x, card.width, window.width),
      top: kept(y, card.height, window.height),
    })),
  )
  const covered = corners.map((place) => {
    const wide = Math.min(right, place.left + card.width) - Math.max(thing.left, place.left)
    const high = Math.min(bottom, place.top + card.height) - Math.max(thing.top, place.top)
    return Math.max(0, wide) * Math.max(0, high)
  })
  return corners[covered.indexOf(Math.min(...covered))]!
}
