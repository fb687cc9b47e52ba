import type { EngineSpec, Face } from '../../engine/index.ts'
import { noseSide, type Scene, type Shape, type View } from '../../layout/index.ts'
import type { Words } from '../../words/index.ts'
import { turnableCaps } from './build-fault.ts'

/** Of an arrow, in px. */
const arrowPx = 15

/**
 * A drawing of the saddles with the arrow that is cast on each separate cap: at one end of it, and pointing to the nose. On a
 * cap that is turned round it lies at the other end and points to the drive end. `px` is one pixel of the sheet in mm.
 */
export function withCapArrows(
  words: Words,
  spec: EngineSpec,
  scene: Scene,
  {
    face,
    view,
    px,
    turned,
  }: { readonly face: Face; readonly view: View; readonly px: number; readonly turned: string | null },
): Scene {
  if (face.shows !== 'saddles') return scene
  const ahead = { left: [-1, 0], right: [1, 0], top: [0, -1], bottom: [0, 1] } as const
  const [x, y] = ahead[noseSide(face, view)]
  const drawn = turnableCaps(spec).flatMap((id) => {
    const cap = scene.shapes.find((shape) => shape.id === `cap/${id}`)
    if (cap?.kind !== 'line') return []
    const way = id === turned ? -1 : 1
    return [{ id, way, arrow: arrowAt(`cap/${id}`, cap.points, { x: x * way, y: y * way }, arrowPx * px) }]
  })
  const rows = drawn.map(({ id, way }) => ({
    about: `cap/${id}`,
    text: words.practice.fault.cap({ id, to: way > 0 ? 'nose' : 'drive' }),
    state: 'plain',
  }))
  return {
    ...scene,
    shapes: [...scene.shapes, ...drawn.flatMap(({ arrow }) => arrow)],
    rows: [...scene.rows, ...rows],
  }
}

/** A boss with an arrow on it, at the end of the cap that lies at the arrow's left hand. */
function arrowAt(
  about: string,
  corners: readonly number[],
  ahead: { readonly x: number; readonly y: number },
  size: number,
): readonly Shape[] {
  const [xs, ys] = [0, 1].map((part) => corners.filter((_, index) => index % 2 === part)) as [
    number[],
    number[],
  ]
  const side = { x: ahead.y, y: -ahead.x }
  const middle = { x: (Math.min(...xs) + Math.max(...xs)) / 2, y: (Math.min(...ys) + Math.max(...ys)) / 2 }
  const reach =
    (Math.abs(side.x) * (Math.max(...xs) - Math.min(...xs)) +
      Math.abs(side.y) * (Math.max(...ys) - Math.min(...ys))) /
    2
  const at = { x: middle.x + side.x * (reach + size * 0.6), y: middle.y + side.y * (reach + size * 0.6) }
  const point = (along: number, across: number) => [
    at.x + ahead.x * along + side.x * across,
    at.y + ahead.y * along + side.y * across,
  ]
  const [half, narrow] = [size * 0.6, size * 0.42]
  const common = { kind: 'line', about, layer: 'parts', closed: true } as const
  return [
    {
      ...{ ...common, id: `${about}/boss`, role: 'cap' },
      points: [point(half, half), point(half, -half), point(-half, -half), point(-half, half)].flat(),
    },
    {
      ...{ ...common, id: `${about}/arrow`, role: 'nose' },
      points: [point(narrow, 0), point(-narrow, narrow), point(-narrow, -narrow)].flat(),
    },
  ]
}
