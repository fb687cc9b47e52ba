import { distanceTo, type Point } from './box.ts'
import type { Disc } from './discs.ts'
import type { Drawing } from './drawing.ts'
import { asHoles } from './fasteners.ts'
import { labelBox, labelSize, letter, type Line, type Place } from './lettering.ts'
import type { Box, Shape } from './scene.ts'

/** A number stands beside its disc where it would be smaller in it than this share of a name. */
const leastShare = 0.8
/** A face with more fasteners has no room beside them. */
const mostFasteners = 100

/**
 * The numbers that are too small in their discs, by fastener, beside them in the size of names: beyond the edge of the
 * face where that is near, else next to the disc. One that finds no room there stays in its disc.
 */
export function numbersBeside(drawing: Drawing): ReadonlyMap<string, Shape> {
  const { discs, room, sizes } = drawing
  const numbers = new Map<string, Shape>()
  if (asHoles(drawing) || discs.length > mostFasteners) return numbers
  for (const disc of discs) {
    if (disc.capital >= sizes.name * leastShare) continue
    const about = `fastener/${disc.id}`
    const lines: readonly Line[] = [{ text: disc.number, capital: sizes.name, weight: 'bold', role: 'label' }]
    const clear = places(disc, lines, sizes.px).filter((place) =>
      isNearest(discs, disc, labelBox(lines, place), 3 * sizes.px),
    )
    const label = { id: `${about}/number-beside`, about, layer: 'parts', lines, places: clear } as const
    const lettered = letter(label, room)
    const [text] = lettered?.shapes ?? []
    if (lettered === null || text === undefined) continue
    room.takeBox(lettered.box)
    numbers.set(disc.id, text)
  }
  return numbers
}

/** Whether the box is clearly nearer to its own disc than to any other. */
function isNearest(discs: readonly Disc[], own: Disc, box: Box, clearly: number): boolean {
  const gap = distanceTo(box, own) - own.radius + clearly
  return discs.every((disc) => disc === own || distanceTo(box, disc) - disc.radius > gap)
}

const directions: readonly Point[] = [
  { x: 0, y: -1 },
  { x: 0, y: 1 },
  { x: 1, y: 0 },
  { x: -1, y: 0 },
]

function places(disc: Disc, lines: readonly Line[], px: number): readonly Place[] {
  const { width, height } = labelSize(lines)
  const towards = (direction: Point, from: number, gap = 3): Place => {
    const away = from + gap * px + (Math.abs(direction.x) * width + Math.abs(direction.y) * height) / 2
    return { x: disc.x + direction.x * away, y: disc.y + direction.y * away, anchor: 'middle' }
  }
  const beside = directions.map((direction) => towards(direction, disc.reach))
  const toEdge = disc.edge === null ? 0 : Math.hypot(disc.edge.x - disc.x, disc.edge.y - disc.y)
  if (disc.edge === null || toEdge === 0 || toEdge > 3 * disc.radius) return beside
  const outwards = { x: (disc.edge.x - disc.x) / toEdge, y: (disc.edge.y - disc.y) / toEdge }
  return [...[3, 6, 10].map((gap) => towards(outwards, toEdge, gap)), ...beside]
}
