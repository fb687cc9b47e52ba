import { inMillimetres } from '../../quantity/index.ts'
import { splitOfCase, type FacePart } from '../../engine/index.ts'
import type { Drawing } from '../drawing.ts'
import { areaOf } from '../case/on-face.ts'
import { cornersOnSheet, flat, moved, onSheet, placeOf } from '../on-sheet.ts'
import type { Point } from '../../plane/index.ts'
import type { CircleShape, LineShape, Role, Shape } from '../scene/scene.ts'

/** Seals, plugs, valves and strainers in the face. */
export function facePartShapes(drawing: Drawing): readonly Shape[] {
  if (!drawing.content.faceParts) return []
  return drawing.here.faceParts.flatMap((part) => [
    ...shapesOf(drawing, part),
    ...markOfChecked(drawing, part),
  ])
}

function shapesOf(drawing: Drawing, part: FacePart): readonly Shape[] {
  const at = placeOf(drawing, part.at)
  const circle = (name: string, radius: number, role: Role = 'face-part-edge') =>
    round(part, name, at, radius, role)
  switch (part.kind) {
    case 'seal':
    case 'two-piece-seal': {
      const [outer, inner] = [inMillimetres(part.diameter) / 2, inMillimetres(part.shaft) / 2]
      const ring = [...aroundIt(at, outer, 1), ...aroundIt(at, inner, -1)]
      const isUpright = splitOfCase(drawing.spec) === 'left-right'
      const joints = part.kind === 'seal' ? [] : [1, -1]
      return [
        line(part, 'ring', 'face-part-fill', flat(ring), true),
        circle('outer', outer),
        circle('spring', inner + (outer - inner) * 0.35, 'face-part-line'),
        circle('inner', inner),
        ...joints.map((side, index) => {
          const points = [inner, outer].map((radius) =>
            isUpright ? moved(drawing, at, 0, side * radius) : moved(drawing, at, side * radius, 0),
          )
          return line(part, `joint/${index + 1}`, 'face-part-edge', flat(points), false)
        }),
      ]
    }
    case 'plug': {
      const radius = inMillimetres(part.diameter) / 2
      return [circle('edge', radius, 'face-part'), circle('cup', radius * 0.78, 'face-part-line')]
    }
    case 'check-valve': {
      const radius = inMillimetres(part.diameter) / 2
      return [
        circle('edge', radius, 'face-part'),
        circle('seat', radius * 0.62, 'face-part-line'),
        circle('ball', radius * 0.4),
      ]
    }
    case 'strainer': {
      const box = areaOf(part)
      const gauze = Array.from({ length: 7 }, (_, step): readonly Point[] => {
        const x = box.left + (box.width * (step + 1)) / 8
        const ends = [
          { x, y: box.top },
          { x, y: box.top + box.height },
        ]
        return step % 2 === 0 ? ends : ends.toReversed()
      }).flat()
      return [
        line(part, 'edge', 'face-part', flat(cornersOnSheet(drawing, box)), true),
        line(part, 'gauze', 'face-part-line', flat(onSheet(drawing, gauze)), false),
      ]
    }
    default:
      return part satisfies never
  }
}

/** Round the part that the step is about now. */
function markOfChecked({ facts, px, ...drawing }: Drawing, part: FacePart): readonly Shape[] {
  if (facts.checked !== `face-part/${part.id}`) return []
  const at = placeOf({ facts, px, ...drawing }, part.at)
  const reach =
    'diameter' in part
      ? inMillimetres(part.diameter) / 2
      : Math.hypot(...part.size.map((side) => inMillimetres(side) / 2))
  return [{ ...round(part, 'checked', at, reach + 5 * px, 'checked'), layer: 'overlay' }]
}

function aroundIt({ x, y }: Point, radius: number, way: 1 | -1): readonly Point[] {
  const steps = 48
  return Array.from({ length: steps + 1 }, (_, step) => {
    const turned = way * (step / steps) * 2 * Math.PI
    return { x: x + radius * Math.cos(turned), y: y + radius * Math.sin(turned) }
  })
}

function round({ id }: FacePart, name: string, { x, y }: Point, radius: number, role: Role): CircleShape {
  const about = `face-part/${id}`
  return { kind: 'circle', id: `${about}/${name}`, about, layer: 'parts', role, x, y, radius }
}

function line(
  { id }: FacePart,
  name: string,
  role: Role,
  points: readonly number[],
  closed: boolean,
): LineShape {
  const about = `face-part/${id}`
  return { kind: 'line', id: `${about}/${name}`, about, layer: 'parts', role, points, closed }
}
