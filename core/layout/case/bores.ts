import { inMillimetres } from '../../quantity/index.ts'
import type { EngineCase } from '../../engine/index.ts'
import type { Point } from '../../plane/index.ts'
import { inside, spanAt } from './polygon.ts'

/** One cylinder's bore as it shows in a face, in mm of the face's own frame. */
export interface Bore {
  /** The cylinder's number. */
  readonly number: number
  readonly x: number
  /** Its middle, where its centre marks cross. */
  readonly y: number
  /** Half its extent along and across. */
  readonly halfAlong: number
  readonly halfAcross: number
  /** A round bore, one seen at a slant, or a barrel seen from its side. */
  readonly form: 'ellipse' | 'barrel'
}

/** Metal that is left between a bore and the edge of the face. */
const wall = 4

/**
 * The bores of a face in plan. In line they are circles on the crank axis. In a V each bank leans, so its mouths are
 * ellipses beside the axis; the first bank is on the plus side. Of a flat engine whose case is split along the crank and
 * lies on its side the bores are circles again; otherwise its barrels are seen from their sides. What would leave the
 * outline is moved or shortened: these are hidden lines that tell where the bores are, not how big the block is.
 */
export function boresInPlan(engineCase: EngineCase, outline: readonly Point[]): readonly Bore[] {
  const radius = inMillimetres(engineCase.bore) / 2
  const lean = (engineCase.bankAngle / 2) * (Math.PI / 180)
  const faceOn = engineCase.bankAngle === 0 || engineCase.family === 'split-vertical'
  return borePlaces(engineCase).map(({ number, x, side }) => {
    if (faceOn) return { number, x, y: 0, halfAlong: radius, halfAcross: radius, form: 'ellipse' }
    const span = spanAt(outline, x) ?? { least: 0, most: 0 }
    const room = (side > 0 ? span.most : -span.least) - wall
    if (engineCase.bankAngle > 150) {
      const from = Math.min(radius, room / 2)
      const halfAcross = (room - from) / 2
      return { number, x, y: side * (from + halfAcross), halfAlong: radius, halfAcross, form: 'barrel' }
    }
    const halfAcross = radius * Math.cos(lean)
    const away = Math.max(0, Math.min(2.2 * radius * Math.sin(lean), room - halfAcross))
    return { number, x, y: side * away, halfAlong: radius, halfAcross, form: 'ellipse' }
  })
}

/** The outline of a bore, closed. */
export function boreOutline({ x, y, halfAlong, halfAcross, form }: Bore): readonly Point[] {
  if (form === 'barrel')
    return [
      { x: x - halfAlong, y: y - halfAcross },
      { x: x + halfAlong, y: y - halfAcross },
      { x: x + halfAlong, y: y + halfAcross },
      { x: x - halfAlong, y: y + halfAcross },
    ]
  return Array.from({ length: 48 }, (_, step) => {
    const angle = (step / 48) * 2 * Math.PI
    return { x: x + halfAlong * Math.cos(angle), y: y + halfAcross * Math.sin(angle) }
  })
}

/** A barrel seen along the crank: the corners of its two sides, from the crank outwards. Shortened to stay inside. */
export function barrelsAcross(
  engineCase: EngineCase,
  outline: readonly Point[],
): readonly (readonly Point[])[] {
  const radius = inMillimetres(engineCase.bore) / 2
  const half = (engineCase.bankAngle / 2) * (Math.PI / 180)
  const leans = engineCase.bankAngle === 0 ? [0] : [half, -half]
  return leans.flatMap((lean) => {
    const corner = (along: number, across: number): Point => ({
      x: along * Math.sin(lean) + across * Math.cos(lean),
      y: along * Math.cos(lean) - across * Math.sin(lean),
    })
    const from = radius * 0.9
    for (let to = 6 * radius; to > from + radius / 4; to -= radius / 8) {
      const corners = [corner(from, -radius), corner(to, -radius), corner(to, radius), corner(from, radius)]
      if (corners.every((each) => inside(outline, each))) return [corners]
    }
    return []
  })
}

interface BorePlace {
  readonly number: number
  readonly x: number
  /** +1 for the first bank, −1 for the second. */
  readonly side: 1 | -1
}

/** Numbers come from the rods, the nearest one to each bore; without rods bank after bank. */
function borePlaces(engineCase: EngineCase): readonly BorePlace[] {
  const first = inMillimetres(engineCase.firstBoreAt)
  const pitch = inMillimetres(engineCase.pitch)
  const behind = engineCase.bankOffset === undefined ? 0 : inMillimetres(engineCase.bankOffset)
  const inFirstBank = engineCase.bankAngle === 0 ? engineCase.cylinders : Math.ceil(engineCase.cylinders / 2)
  const rods = [...engineCase.rods]
  return Array.from({ length: engineCase.cylinders }, (_, index) => {
    const side = index < inFirstBank ? 1 : -1
    const x = side === 1 ? first + index * pitch : first + behind + (index - inFirstBank) * pitch
    const distances = rods.map(({ at }) => Math.abs(inMillimetres(at) - x))
    const nearestBore = distances.indexOf(Math.min(...distances))
    const [rod] = nearestBore < 0 ? [] : rods.splice(nearestBore, 1)
    return { number: rod?.cylinder ?? index + 1, x, side }
  })
}
