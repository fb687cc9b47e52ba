import { inMillimetres } from '../../quantity/index.ts'
import type { Bead } from '../../engine/index.ts'
import type { Point } from '../../plane/index.ts'
import type { Drawing } from '../drawing.ts'
import { cornersOnSheet, flat, placeOf } from '../on-sheet.ts'
import { keepOutId } from '../labels/names.ts'
import { areaOf } from '../case/on-face.ts'
import type { BeadState } from '../facts.ts'
import type { LineShape, Shape } from '../scene/scene.ts'

/** The beads that are drawn: those to be laid now, and those laid. */
export function drawnBeads({ facts, here, content }: Drawing): readonly { bead: Bead; state: BeadState }[] {
  if (!content.beads) return []
  return here.beads.flatMap((bead) => {
    const state = facts.beads[bead.id]
    return state === undefined ? [] : [{ bead, state }]
  })
}

/** Each bead with what it must keep out of. */
export function beadShapes(drawing: Drawing): readonly Shape[] {
  return drawnBeads(drawing).flatMap(({ bead, state }) => {
    const about = `bead/${bead.id}`
    const path = beadPath(drawing, bead)
    const width = inMillimetres(bead.width)
    const role = state === 'laid' ? 'bead-laid' : 'bead-to-lay'
    const line = { kind: 'line', about, layer: 'parts', points: flat(path), closed: bead.closed } as const
    return [
      ...bead.keepOut.map((zone, index): Shape => {
        const id = keepOutId(bead, index)
        const points = flat(cornersOnSheet(drawing, areaOf(zone)))
        return { kind: 'line', id, about: id, layer: 'parts', role: 'keep-out', points, closed: true }
      }),
      { ...line, id: about, role, width },
      ...directionMarks(drawing, bead, path),
      ...(state === 'to-lay' ? [startMark(about, path, Math.max(width, 5 * drawing.px))] : []),
    ]
  })
}

function beadPath(drawing: Drawing, bead: Bead): readonly Point[] {
  return bead.path.map((place) => placeOf(drawing, place))
}

/** Where the hand begins. */
function startMark(about: string, path: readonly Point[], radius: number): Shape {
  const { x, y } = path[0] ?? { x: 0, y: 0 }
  return { kind: 'circle', id: `${about}/start`, about, layer: 'parts', role: 'bead-start', x, y, radius }
}

/** Arrow heads along the bead, one at the middle of each piece that is long enough to carry one. */
function directionMarks(drawing: Drawing, bead: Bead, path: readonly Point[]): readonly LineShape[] {
  const { px } = drawing
  const size = Math.max(inMillimetres(bead.width) * 1.1, 5 * px)
  const last = bead.closed ? path.length : path.length - 1
  return path.slice(0, last).flatMap((from, index) => {
    const to = path[(index + 1) % path.length] ?? from
    const length = Math.hypot(to.x - from.x, to.y - from.y)
    if (length < 70 * px) return []
    const ahead = { x: (to.x - from.x) / length, y: (to.y - from.y) / length }
    // Off the middle, where the next part of the case is as likely as not a fastener.
    const tip = { x: from.x + ahead.x * length * 0.4, y: from.y + ahead.y * length * 0.4 }
    const wing = (side: number): Point => ({
      x: tip.x - ahead.x * size - ahead.y * size * side,
      y: tip.y - ahead.y * size + ahead.x * size * side,
    })
    return [
      {
        kind: 'line',
        id: `bead/${bead.id}/way/${index + 1}`,
        about: `bead/${bead.id}`,
        layer: 'parts',
        role: 'bead-way',
        points: flat([wing(1), tip, wing(-1)]),
        closed: false,
      },
    ]
  })
}
