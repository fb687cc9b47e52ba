import { boxBetween, cornersOf, grown, middleOf, type Point } from '../../plane/index.ts'
import type { Drawing } from '../drawing.ts'
import { flat, moved } from '../on-sheet.ts'
import { leastReach, letterShare, symbolWidth, wantedReach } from './bearing-size.ts'
import type { BearingPlace } from '../case/on-face.ts'
import type { Box, LineShape, Shape } from '../scene/scene.ts'
import { textWidth } from '../labels/text-width.ts'

/** A bearing as it is drawn: both halves side by side across the axis, the upper one on the plus side. */
export interface DrawnBearing {
  readonly bearing: BearingPlace
  readonly middle: Point
  /** How wide its symbol is along the axis, in mm. */
  readonly width: number
  readonly upper: Box
  readonly lower: Box
  /** Both halves with the thrust washers. */
  readonly whole: Box
  /** How far a half reaches across. */
  readonly reach: number
}

/** The gap between the halves that leaves the axis in sight, half of it, in px. */
const halfGap = 1.5
/** Thickness of a thrust washer and what lies between it and the saddle, in mm. */
const washer = 2.4
/** How far a washer reaches beyond the housing of its saddle, in mm. */
const washerBeyond = 8

/** The bearings with their halves as long as the half bore, or shorter where a fastener's disc is near. */
export function drawnBearings(drawing: Drawing): readonly DrawnBearing[] {
  const { here, place, px, stretch, discs, across, content, facts, outline } = drawing
  const graded = content.bearings === 'graded'
  const xs = outline.map((point) => point.x)
  const ends = { from: Math.min(...xs), to: Math.max(...xs) }
  return here.bearings.map((bearing) => {
    const { x, y, diameter } = bearing
    const width = graded ? symbolWidth(bearing, here.bearings, facts, px, ends) : bearing.width
    const middle = place(x, y)
    const free = discs.map((disc) => {
      const dx = disc.x - middle.x
      const dy = disc.y - middle.y
      const beside = Math.max(0, Math.abs(dx * across.y) + Math.abs(dy * across.x) - width / 2)
      const away = Math.abs(dx * across.x) + Math.abs(dy * across.y)
      const reach = disc.radius + 2 * px
      return beside >= reach ? Infinity : away - Math.sqrt(reach * reach - beside * beside)
    })
    const half = (diameter / 2) * stretch
    const reach = graded ? Math.max(Math.min(Math.max(half, wantedReach(px)), ...free), 2 * px) : half
    const box = (from: number, to: number): Box =>
      boxBetween(moved(drawing, middle, -width / 2, from), moved(drawing, middle, width / 2, to))
    const side = width / 2 + (bearing.thrust ? 2 * washer : 0)
    return {
      ...{ bearing, middle, width, reach },
      upper: box(halfGap * px, reach),
      lower: box(-halfGap * px, -reach),
      whole: boxBetween(moved(drawing, middle, -side, -reach), moved(drawing, middle, side, reach)),
    }
  })
}

export function bearingShapes(drawing: Drawing, drawn: DrawnBearing): readonly Shape[] {
  const { bearing, upper, lower } = drawn
  const fact = drawing.facts.bearings[bearing.id]
  const isChecked = drawing.facts.checked === `thrust/${bearing.id}`
  const seen = drawing.content.bearings === 'graded' || isChecked || drawing.crank.length > 0
  const washers = bearing.thrust && seen ? thrustShapes(drawing, drawn) : []
  if (drawing.content.bearings === 'landmarks')
    return [
      ...washers,
      ...(['upper', 'lower'] as const).map((half) => {
        const about = `half/${bearing.id}/${half}`
        const box = half === 'upper' ? upper : lower
        return closedLine(
          { about, layer: 'ground', id: `${about}/landmark`, role: 'landmark' },
          flat(cornersOf(box)),
        )
      }),
    ]
  return [
    ...washers,
    ...halfShapes(drawing, drawn, 'upper', upper),
    ...halfShapes(drawing, drawn, 'lower', lower),
    ...(fact?.withinLimits === false || fact?.flag !== undefined ? [warningFrame(drawing, drawn)] : []),
  ]
}

const rolesOfHalf = {
  chosen: { shell: 'shell', plate: 'plate', grade: 'grade' },
  next: { shell: 'next-half', plate: 'next', grade: 'next' },
  fitted: { shell: 'shell-fitted', plate: 'plate-fitted', grade: 'grade-fitted' },
} as const

function halfShapes(
  { sizes, facts, px }: Drawing,
  { bearing, reach }: DrawnBearing,
  half: 'upper' | 'lower',
  box: Box,
): readonly Shape[] {
  const key = `${bearing.id}/${half}`
  const about = `half/${key}`
  const common = { about, layer: 'parts' } as const
  const fact = facts.bearings[bearing.id]?.[half] ?? null
  if (fact === null)
    return [closedLine({ ...common, id: `${about}/unknown`, role: 'shell-unknown' }, flat(cornersOf(box)))]
  const { x, y } = middleOf(box)
  // Wide enough for a tick beside the letter, so that the letter keeps its size and place when the shell is fitted.
  const long = textWidth(fact.grade, 1, 'bold') + 1
  const capital = Math.min(
    sizes.number * px,
    (box.width * letterShare.along) / long,
    box.height * letterShare.across,
  )
  const wing = { x: (capital * (fact.fitted ? long : long - 1)) / 2, y: capital / 2 }
  const plate = boxBetween({ x: x - wing.x, y: y - wing.y }, { x: x + wing.x, y: y + wing.y })
  const isNext = facts.nextHalf === key
  const roles = rolesOfHalf[isNext ? 'next' : fact.fitted ? 'fitted' : 'chosen']
  // Between fasteners that stand too close for a letter, the colour and the pattern say it.
  const letter: readonly Shape[] = [
    closedLine(
      { ...common, id: `${about}/plate`, role: roles.plate },
      flat(cornersOf(grown(plate, capital * 0.3))),
    ),
    {
      kind: 'text',
      ...common,
      id: `${about}/grade`,
      role: roles.grade,
      x: fact.fitted ? x - capital * 0.5 : x,
      y,
      text: fact.grade,
      capital,
      anchor: 'middle',
      weight: 'bold',
    },
    ...(fact.fitted
      ? [fittedTick(common, about, { x: plate.left + plate.width - capital * 0.36, y }, capital)]
      : []),
  ]
  return [
    ...(isNext
      ? [
          closedLine(
            { ...common, id: `${about}/halo`, role: 'next-halo' },
            flat(cornersOf(grown(box, 2 * px))),
          ),
        ]
      : []),
    {
      kind: 'swatch',
      ...common,
      id: `${about}/shell`,
      role: roles.shell,
      x: box.left,
      y: box.top,
      width: box.width,
      height: box.height,
      colour: fact.colour,
      pattern: fact.pattern,
    },
    ...(reach < 0.9 * leastReach(px) ? [] : letter),
  ]
}

/** A tick after the letter: this shell lies in its saddle. */
function fittedTick(
  common: { readonly about: string; readonly layer: 'parts' },
  about: string,
  { x, y }: Point,
  capital: number,
): Shape {
  const size = capital * 0.36
  return {
    kind: 'line',
    ...common,
    id: `${about}/fitted`,
    role: 'tick-fitted',
    points: [x - size, y, x - size * 0.25, y + size, x + size, y - size],
    closed: false,
  }
}

/** The two washers, one on each face of the saddle: the nose's side first. */
function thrustBoxes(drawing: Drawing, drawn: DrawnBearing): readonly Box[] {
  const { width, middle } = drawn
  const reach = washerReach(drawing, drawn)
  return ([-1, 1] as const).map((side) => {
    const inner = side * (width / 2 + washer * 0.4)
    const outer = side * (width / 2 + washer * 1.6)
    return boxBetween(moved(drawing, middle, inner, -reach), moved(drawing, middle, outer, reach))
  })
}

function thrustShapes(drawing: Drawing, drawn: DrawnBearing): readonly Shape[] {
  const about = `thrust/${drawn.bearing.id}`
  const washers = thrustBoxes(drawing, drawn).map((box, index) => {
    const id = `${about}/${index === 0 ? 'nose' : 'drive'}`
    return closedLine({ about, layer: 'ground', id, role: 'thrust' }, flat(cornersOf(box)))
  })
  return drawing.crank.length === 0 ? washers : [...washers, ...grooveShapes(drawing, drawn)]
}

/** With the crank in its saddle, a washer shows beyond the journal. */
function washerReach({ crank, stretch }: Drawing, { reach, bearing }: DrawnBearing): number {
  return crank.length === 0 ? reach : Math.max(reach, (bearing.diameter / 2 + washerBeyond) * stretch)
}

/** The oil grooves of both washers: they are on the side of the crank. */
function grooveShapes(drawing: Drawing, drawn: DrawnBearing): readonly LineShape[] {
  const { middle, width, bearing } = drawn
  const reach = washerReach(drawing, drawn)
  const at = (reach + (bearing.diameter / 2) * drawing.stretch) / 2
  const half = Math.max((reach - at) * 0.45, 1.2 * drawing.px)
  const about = `thrust/${bearing.id}`
  return ([-1, 1] as const).flatMap((side) =>
    ([1, -1] as const).map((way) => {
      const [inner, outer] = [1.05, 1.6].map((share) => side * (width / 2 + washer * share))
      const box = boxBetween(
        moved(drawing, middle, inner!, way * at - half),
        moved(drawing, middle, outer!, way * at + half),
      )
      const id = `${about}/groove/${side < 0 ? 'nose' : 'drive'}/${way > 0 ? 1 : 2}`
      return closedLine({ about, layer: 'ground', id, role: 'thrust-groove' }, flat(cornersOf(box)))
    }),
  )
}

function warningFrame({ px }: Drawing, { bearing, whole }: DrawnBearing): Shape {
  const common = { layer: 'parts', id: `bearing/${bearing.id}/out-of-limits`, role: 'out-of-limits' } as const
  return closedLine(common, flat(cornersOf(grown(whole, 2.5 * px))))
}

function closedLine(
  common: Pick<LineShape, 'about' | 'layer' | 'id' | 'role'>,
  points: readonly number[],
): LineShape {
  return { kind: 'line', ...common, points, closed: true }
}
