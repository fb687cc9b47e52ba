import { inMillimetres } from '../../quantity/index.ts'
import { headWidth, type Bead, type EngineSpec } from '../../engine/index.ts'
import { boxAround, type Point } from '../../plane/index.ts'
import { areaOf, onFace, type OnFace } from './on-face.ts'
import { rounded } from './polygon.ts'
import type { Box } from '../scene/scene.ts'
import { acrossAnEnd } from '../view.ts'

/** A round piece of the face that metal must surround, in mm of the engine's own frame. */
export interface Boss {
  readonly x: number
  readonly y: number
  readonly radius: number
}

/** Where the metal is needed: round each fastener, dowel, passage, bead and bearing. */
export function bossesOf(spec: EngineSpec, here: OnFace): readonly Boss[] {
  const flats = new Map(spec.fastenerGroups.map((group) => [group.id, inMillimetres(headWidth(group))]))
  const at = ([x, y]: OnFace['fasteners'][number]['at'], radius: number): Boss => ({
    x: inMillimetres(x),
    y: inMillimetres(y),
    radius,
  })
  return [
    // Half the width across the corners of a hexagon is its width across the flats divided by √3.
    ...here.fasteners.map(({ group, at: place }) => at(place, (flats.get(group) ?? 12) / Math.sqrt(3) + 2)),
    ...here.dowels.map(({ at: place, diameter }) => at(place, inMillimetres(diameter) / 2 + 3)),
    ...here.oilPassages.flatMap((passage) => corners(areaOf(passage), 5)),
    ...here.faceParts.flatMap((part) =>
      'size' in part ? corners(areaOf(part), 3) : [at(part.at, inMillimetres(part.diameter) / 2 + 3)],
    ),
    ...here.beads.flatMap((bead) =>
      alongBead(bead).map((place) => ({ ...place, radius: inMillimetres(bead.width) / 2 + 4 })),
    ),
    ...here.beads.flatMap(({ keepOut }) => keepOut.flatMap((zone) => corners(areaOf(zone), 3))),
    ...here.bearings.flatMap(({ x, y, width, diameter }) =>
      corners({ left: x - width / 2, top: y - diameter / 2, width, height: diameter }, 6),
    ),
  ]
}

/** Places along a bead, no further apart than its metal is wide. */
function alongBead({ path, closed }: Bead): readonly Point[] {
  const places = path.map(([x, y]) => ({ x: inMillimetres(x), y: inMillimetres(y) }))
  return places.flatMap((from, index) => {
    const to = index + 1 < places.length || closed ? places[(index + 1) % places.length] : undefined
    if (to === undefined) return [from]
    const steps = Math.max(1, Math.ceil(Math.hypot(to.x - from.x, to.y - from.y) / 6))
    return Array.from({ length: steps }, (_, step) => ({
      x: from.x + ((to.x - from.x) * step) / steps,
      y: from.y + ((to.y - from.y) * step) / steps,
    }))
  })
}

function corners({ left, top, width, height }: Box, radius: number): readonly Boss[] {
  return [left, left + width].flatMap((x) => [top, top + height].map((y) => ({ x, y, radius })))
}

/** No edge of a casting is sharp. Small enough that a corner's metal is not missed by anything that stands near it. */
const cornerRadius = 8

/**
 * The face whose edge and openings are drawn: rods and balance shafts lie in the case, so that their faces show the case
 * as its own face shows it.
 */
export function caseFaceOf(spec: EngineSpec, here: OnFace): OnFace {
  const { outline, shows, plane } = here.face
  if (outline !== undefined || (shows !== 'rods' && shows !== 'balance')) return here
  const face = spec.case.faces.find((each) => each.shows === 'saddles' && each.plane === plane)
  return face === undefined ? here : onFace(spec, face.id)
}

/**
 * The edge of a face as a closed polygon, in mm of the engine's own frame: the spec's corners as they are given, or one
 * grown round what lies on the face. `bosses` are all that it must hold.
 */
export function outlineOf(spec: EngineSpec, here: OnFace, bosses: readonly Boss[]): readonly Point[] {
  const outlineOfSpec = here.face.outline
  if (outlineOfSpec === undefined) return grownOutline(here, [...bosses, ...boreBosses(spec, here)])
  const corners = outlineOfSpec.map(([x, y]) => ({ x: inMillimetres(x), y: inMillimetres(y) }))
  return rounded(corners, cornerRadius)
}

/** The bores stand inside the edge of the face they open into. */
function boreBosses(spec: EngineSpec, { face }: OnFace): readonly Boss[] {
  if (face.shows === 'flange' || face.plane !== 'plan') return []
  const { bore, pitch, firstBoreAt, cylinders, bankAngle } = spec.case
  const radius = inMillimetres(bore) / 2 + 8
  const inBank = bankAngle === 0 ? cylinders : Math.ceil(cylinders / 2)
  const last = inMillimetres(firstBoreAt) + (inBank - 1) * inMillimetres(pitch)
  return [inMillimetres(firstBoreAt), last].map((x) => ({ x, y: 0, radius }))
}

/** Metal between what lies on a face and its edge. */
const rail = 8

/**
 * A casting round the bosses: long sides, the corners at the nose cut back as far as the bosses allow, and, where the
 * face is that of the case, a wider flange at the drive end. Every corner is rounded, none so far that it meets a boss.
 */
function grownOutline({ face }: OnFace, bosses: readonly Boss[]): readonly Point[] {
  const box = boxAround(
    bosses.flatMap(({ x, y, radius }) => [
      { x: x - radius, y: y - radius },
      { x: x + radius, y: y + radius },
    ]),
  )
  const left = box.left - rail
  const right = box.left + box.width + rail
  const least = box.top - rail
  const most = box.top + box.height + rail
  const longestRun = Math.min(right - left, most - least) * 0.24
  /** How far a corner can be cut at 45° and stay clear of every boss. */
  const cut = (end: number, side: number): number =>
    bosses.reduce(
      (room, { x, y, radius }) =>
        Math.min(room, Math.abs(x - end) + Math.abs(y - side) - (radius + 3) * Math.SQRT2),
      longestRun,
    )
  const nose = [cut(left, most), cut(left, least)].map((depth) => Math.max(depth, 1)) as [number, number]
  const flange = face.shows === 'saddles' && !acrossAnEnd(face) ? Math.min(12, longestRun / 2) : 0
  const drive =
    flange > 0
      ? [
          { x: right - 3 * flange, y: most },
          { x: right - flange, y: most + flange },
          { x: right + flange, y: most + flange },
          { x: right + flange, y: least - flange },
          { x: right - flange, y: least - flange },
          { x: right - 3 * flange, y: least },
        ]
      : [
          { x: right - Math.max(cut(right, most), 1), y: most },
          { x: right, y: most - Math.max(cut(right, most), 1) },
          { x: right, y: least + Math.max(cut(right, least), 1) },
          { x: right - Math.max(cut(right, least), 1), y: least },
        ]
  return rounded(
    [
      { x: left, y: least + nose[1] },
      { x: left, y: most - nose[0] },
      { x: left + nose[0], y: most },
      ...drive,
      { x: left + nose[1], y: least },
    ],
    cornerRadius,
  )
}
