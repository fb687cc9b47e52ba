import { inMillimetres } from '../../quantity/index.ts'
import type { Rod, Saddle } from '../../engine/index.ts'
import { boreOutline, barrelsAcross, boresInPlan, type Bore } from './bores.ts'
import type { Drawing } from '../drawing.ts'
import { cornersOnSheet, flat, moved, onSheet, placeOf } from '../on-sheet.ts'
import { areaOf } from './on-face.ts'
import { rounded } from './polygon.ts'
import type { LineShape, Shape } from '../scene/scene.ts'
import { acrossAnEnd } from '../view.ts'

/** The bare case: its edge, its openings and caps, the bores, dowels and oil passages. */
export function groundShapes(drawing: Drawing, bores: readonly Bore[]): readonly Shape[] {
  const { content } = drawing
  return [
    edgeOfFace(drawing),
    ...drawing.openings.map((box, index) => {
      const about = `opening/${index + 1}`
      return { ...roundedBox(drawing, about, 'opening', box, 7), about }
    }),
    ...(content.bores ? bores.flatMap((bore) => boreShapes(drawing, bore)) : []),
    ...crankShapes(drawing),
    ...capShapes(drawing),
    ...(content.bores ? endBarrels(drawing) : []),
    ...(content.dowels ? drawing.here.dowels : []).flatMap((dowel) => {
      const { x, y } = placeOf(drawing, dowel.at)
      const radius = inMillimetres(dowel.diameter) / 2
      const common = {
        kind: 'circle',
        about: `dowel/${dowel.id}`,
        layer: 'ground',
        role: 'dowel',
        x,
        y,
      } as const
      return [
        { ...common, id: `dowel/${dowel.id}`, radius },
        { ...common, id: `dowel/${dowel.id}/hole`, radius: radius * 0.55 },
      ]
    }),
    ...(content.oilPassages ? drawing.here.oilPassages : []).map((passage) =>
      line(drawing, `oil-passage/${passage.id}`, 'oil-passage', cornersInEngine(passage)),
    ),
  ]
}

/** The bores that show in this face. */
export function boresOf({ spec, here, outline }: Drawing): readonly Bore[] {
  return here.face.plane === 'plan' && here.face.shows !== 'flange' ? boresInPlan(spec.case, outline) : []
}

function edgeOfFace({ here, edge }: Drawing): LineShape {
  const about = `face/${here.face.id}`
  return {
    kind: 'line',
    id: about,
    about,
    layer: 'ground',
    role: 'outline',
    points: flat(edge),
    closed: true,
  }
}

function line(drawing: Drawing, about: string, role: 'oil-passage', points: Drawing['outline']): LineShape {
  const common = { kind: 'line', id: about, about, layer: 'ground', role } as const
  return { ...common, points: flat(onSheet(drawing, points)), closed: true }
}

function cornersInEngine(part: Parameters<typeof areaOf>[0]): Drawing['outline'] {
  const { left, top, width, height } = areaOf(part)
  return [
    { x: left, y: top },
    { x: left + width, y: top },
    { x: left + width, y: top + height },
    { x: left, y: top + height },
  ]
}

function roundedBox(
  drawing: Drawing,
  id: string,
  role: 'opening' | 'crank' | 'cap' | 'quiet-cap' | 'rod',
  box: ReturnType<typeof areaOf>,
  radius: number,
): LineShape {
  const points = flat(rounded(cornersOnSheet(drawing, box), radius))
  return { kind: 'line', id, layer: 'ground', role, points, closed: true }
}

/** Under the rods: the crank's main journals, and its webs between them and the pins. */
function crankShapes(drawing: Drawing): readonly LineShape[] {
  const { spec, px } = drawing
  const saddles = shownJournals(drawing)
  if (saddles.length === 0) return []
  const mains = saddles.map((saddle) => ({ kind: 'main' as const, ...bearingAlong(saddle) }))
  const pins = spec.case.rods.map((rod) => ({ kind: 'pin' as const, ...bearingAlong(rod) }))
  const inOrder = [...mains, ...pins].toSorted((a, b) => a.from - b.from)
  const journals = mains.map(({ from, to, radius }) => ({ from, to, radius: radius * 0.86 }))
  const webs = inOrder.slice(1).flatMap((after, index) => {
    const before = inOrder[index]
    if (before === undefined || before.kind === after.kind || after.from - before.to < 2) return []
    return [{ from: before.to, to: after.from, radius: Math.max(before.radius, after.radius) * 1.15 }]
  })
  return [...journals, ...webs].map(({ from, to, radius }, index) => {
    const box = { left: from, top: -radius, width: to - from, height: 2 * radius }
    const drawn = roundedBox(drawing, `crank/${index + 1}`, 'crank', box, 2 * px)
    const saddle = saddles[index]
    return saddle === undefined ? drawn : { ...drawn, about: `journal/${saddle.id}` }
  })
}

/** The main journals that lie open between the rods. */
export function shownJournals({ here, spec }: Drawing): readonly Saddle[] {
  return here.face.shows === 'rods' && here.face.plane === 'plan' ? spec.case.saddles : []
}

function bearingAlong({ at, width, diameter }: Pick<Rod, 'at' | 'width' | 'diameter'>): {
  readonly from: number
  readonly to: number
  readonly radius: number
} {
  const half = inMillimetres(width) / 2
  return { from: inMillimetres(at) - half, to: inMillimetres(at) + half, radius: inMillimetres(diameter) / 2 }
}

/** Separate main caps, and the caps of rods: from the outermost fastener beside the bearing to the one opposite. */
function capShapes(drawing: Drawing): readonly LineShape[] {
  const { here, spec, discs, bosses, facts } = drawing
  const role = here.face.shows === 'rods' ? 'rod' : 'cap'
  // A crank that lies open has no caps over it yet.
  if (drawing.crank.length > 0) return []
  if (role === 'cap' && (spec.case.family !== 'caps' || here.face.shows !== 'saddles')) return []
  if (here.face.plane !== 'plan' || discs.length === 0) return []
  return here.bearings.flatMap(({ id, x, y, width, diameter }) => {
    const beside = bosses.filter(
      (boss) => Math.abs(boss.x - x) <= width / 2 && Math.abs(boss.y - y) <= 2.5 * diameter,
    )
    const least = Math.min(y - diameter / 2 - 4, ...beside.map((boss) => boss.y - boss.radius - 1))
    const most = Math.max(y + diameter / 2 + 4, ...beside.map((boss) => boss.y + boss.radius + 1))
    const [next = Infinity] = here.bearings
      .filter((other) => other.id !== id && other.y === y)
      .map((other) => Math.abs(other.x - x))
      .sort((one, other) => one - other)
    // Two rods on one pin stand side by side.
    const half = Math.min(width / 2 + 2.5, next / 2)
    const box = { left: x - half, top: least, width: 2 * half, height: most - least }
    const isQuiet = Boolean(facts.cap) && facts.cap?.bearing !== id
    return [roundedBox(drawing, `cap/${id}`, isQuiet ? 'quiet-cap' : role, box, 6)]
  })
}

function boreShapes(drawing: Drawing, bore: Bore): readonly Shape[] {
  const { x, y } = drawing.place(bore.x, bore.y)
  const about = `bore/${bore.number}`
  const common = { id: about, about, layer: 'ground', role: 'bore' } as const
  const mark = Math.min(7 * drawing.px, bore.halfAcross)
  const round = bore.form === 'ellipse' && bore.halfAlong === bore.halfAcross
  return [
    round
      ? { kind: 'circle', ...common, x, y, radius: bore.halfAlong }
      : { kind: 'line', ...common, points: flat(onSheet(drawing, boreOutline(bore))), closed: true },
    ...(
      [
        [mark, 0],
        [0, mark],
      ] as const
    ).map(([byAlong, byAcross], index): LineShape => {
      const ends = [
        moved(drawing, { x, y }, byAlong, byAcross),
        moved(drawing, { x, y }, -byAlong, -byAcross),
      ]
      const id = `${about}/centre/${index + 1}`
      return {
        kind: 'line',
        id,
        about,
        layer: 'ground',
        role: 'centre-mark',
        points: flat(ends),
        closed: false,
      }
    }),
  ]
}

/** Barrels in a face across an end: hidden lines from the crank outwards. */
function endBarrels(drawing: Drawing): readonly LineShape[] {
  if (!acrossAnEnd(drawing.here.face) || drawing.here.face.shows === 'flange') return []
  return barrelsAcross(drawing.spec.case, drawing.outline).map((corners, index) => ({
    kind: 'line',
    id: `barrel/${index + 1}`,
    layer: 'ground',
    role: 'bore',
    points: flat(onSheet(drawing, corners)),
    closed: false,
  }))
}
