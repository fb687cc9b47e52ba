import { grown, type Point } from './box.ts'
import { flat, type Drawing } from './drawing.ts'
import { labelBox, leaderOf, leaderPasses, letter, nearestFree, type Line, type Target } from './lettering.ts'
import type { Place } from './lettering.ts'
import type { Box, Layer, Role, Shape } from './scene.ts'

/** Where a framed text stands, and the leader line from its thing to its frame. */
export interface FramedPlace {
  readonly lines: readonly Line[]
  readonly place: Place
  readonly frame: Box
  readonly leader: readonly [Point, Point]
  /** Whether the leader passes every other thing. */
  readonly passes: boolean
}

/** The best free place for a framed text near its thing; null where there is none. The frame stands `inset` px closer. */
export function framedPlace(
  { room, sizes }: Drawing,
  lines: readonly Line[],
  target: Target,
  inset = 0,
): FramedPlace | null {
  const place = nearestFree(lines, target, room)
  if (place === null) return null
  const box = labelBox(lines, place)
  const frame = grown(box, -inset * sizes.px)
  const leader = leaderOf(target, frame)
  return { lines, place, frame, leader, passes: leaderPasses(target, box, room) }
}

/** The text in its frame at the end of its leader line; nothing else may stand there any more. */
export function framedShapes(
  { room, sizes }: Drawing,
  { lines, place, frame, leader }: FramedPlace,
  look: {
    readonly id: string
    readonly textId: string
    readonly about: string
    readonly layer: Layer
    readonly role: Role
  },
): readonly Shape[] {
  const { id, textId, about, layer, role } = look
  const { left, top, width, height } = frame
  const corners = [left, top, left + width, top, left + width, top + height, left, top + height]
  const line = { kind: 'line', about, layer, role } as const
  const text = letter({ id: textId, about, layer, lines, places: [place] }, room)?.shapes ?? []
  room.takeBox(grown(frame, 3 * sizes.px))
  room.takeLeader(...leader)
  return [
    { ...line, id: `${id}/leader`, points: flat(leader), closed: false },
    { ...line, id: `${id}/frame`, points: corners, closed: true },
    ...text,
  ]
}
