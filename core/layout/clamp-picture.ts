import type { ClampState, Flange, FlangeBeam } from '../joint/index.ts'
import { amountsIn } from '../quantity/index.ts'
import type { EngineSpec } from '../engine/index.ts'
import type { Words } from '../words/index.ts'
import type { Point } from '../plane/index.ts'
import { drawingOf, type Drawing } from './drawing.ts'
import { bareFacts, type Sheet, type View } from './facts.ts'
import { onFace } from './case/on-face.ts'
import { bossesOf, caseFaceOf, outlineOf } from './case/outline.ts'
import type { LineShape, Scene, Shape, SwatchShape } from './scene/scene.ts'
import { sceneOn } from './scene-of.ts'

/** The edge of a face as it is drawn, in mm of the engine's own frame: what `flangeOf` wants. */
export function faceOutline(spec: EngineSpec, face: string): readonly Point[] {
  const here = onFace(spec, face)
  const caseFace = caseFaceOf(spec, here)
  const own = bossesOf(spec, here)
  const bosses = caseFace === here ? own : [...bossesOf(spec, caseFace), ...own]
  return outlineOf(spec, caseFace, bosses)
}

/** From little to much; open is hatched, so that colour is never alone. */
export const clampColours = ['#FFF6DC', '#F8DF9F', '#EEC05C', '#D6972A', '#A66713', '#693D08'] as const
/** Of places where the faces stand apart. */
export const clampOpenColour = '#FFFFFF'

/** How a flange lies, or how differently it lies in two states, and what stands in the discs of its fasteners. */
export interface ClampPicture {
  readonly flange: Flange
  readonly state: ClampState
  /** Another state of the same flange: what is drawn is then by how much the pressures of the two differ. */
  readonly against?: ClampState
  /** The most on the scale that is drawn beside it, in MPa, above zero. */
  readonly most: number
  /** The run's own fasteners: they have discs. Others are quiet. */
  readonly own: ReadonlySet<string>
  /** What stands in a disc, by fastener; nothing for one that is not named here. */
  readonly numbers: ReadonlyMap<string, string>
  /** The longest that may come to stand in one, so that no disc grows while pulls are made. */
  readonly widest: string
  /** What to look at: filled. */
  readonly marked: ReadonlySet<string>
}

/** The greatest pressure between the faces in MPa; the greatest difference of it where there are two states. */
export function mostPressure(flange: Flange, state: ClampState, against?: ClampState): number {
  const ends = flange.beams.flatMap((beam) =>
    [0, 1].map((share) => pressureAt({ state, ...(against !== undefined && { against }) }, beam, share)),
  )
  return Math.max(0, ...ends)
}

/**
 * One face with the pressure between the faces in colours, lines where one colour gives way to the next, and what every
 * fastener of the run holds in its disc.
 */
export function clampScene(
  words: Words,
  spec: EngineSpec,
  face: string,
  view: View,
  sheet: Sheet,
  picture: ClampPicture,
): Scene {
  const { own, widest } = picture
  const facts = {
    ...bareFacts(face),
    subject: 'clamp-map',
    fasteners: Object.fromEntries(
      spec.fasteners.map(({ id }) => [
        id,
        {
          number: own.has(id) ? widest : '',
          state: picture.marked.has(id) ? ('done' as const) : ('waiting' as const),
          share: 0,
        },
      ]),
    ),
  } as const
  const drawing = drawingOf(words, spec, facts, view, sheet)
  const bare = sceneOn(drawing)
  const field = pressureField(drawing, picture)
  return {
    frame: bare.frame,
    shapes: [
      ...bare.shapes.flatMap((shape) => asClampShape(shape, picture, drawing.px)),
      ...cells(field, picture.most),
      ...contours(field, picture.most),
    ],
    rows: [],
  }
}

/** Fasteners of others are small rings, and the run's own have what they hold where their numbers would be. */
function asClampShape(shape: Shape, { own, numbers }: ClampPicture, px: number): readonly Shape[] {
  const fastener = /^fastener\/(.*)$/.exec(shape.about ?? '')?.[1]
  if (fastener === undefined) return [shape]
  if (shape.id.endsWith('/tick')) return []
  if (!own.has(fastener)) {
    if (shape.kind !== 'circle' || !shape.id.endsWith('/disc')) return []
    return [{ ...shape, role: 'distant', radius: Math.min(shape.radius, 5 * px) }]
  }
  if (shape.kind !== 'text') return [shape]
  const text = numbers.get(fastener)
  return text === undefined ? [] : [{ ...shape, text }]
}

/** Pressures on a grid of the sheet: null beside the flange. */
interface Field {
  readonly left: number
  readonly top: number
  readonly step: number
  readonly columns: number
  readonly rows: readonly (readonly (number | null)[])[]
}

/** Cells along the longer side of the face. */
const cellsAlong = 110

function pressureField({ body, place }: Drawing, picture: ClampPicture): Field {
  const { flange } = picture
  const step = Math.max(body.width, body.height) / cellsAlong
  const columns = Math.ceil(body.width / step)
  const nodes = flange.nodes.map(({ x, y }) => place(x, y))
  const beams = flange.beams.filter(({ bedMpa }) => bedMpa > 0)
  const rows = Array.from({ length: Math.ceil(body.height / step) }, () =>
    Array.from({ length: columns }, (): number | null => null),
  )
  const distances = rows.map((row) => row.map(() => Infinity))
  for (const beam of beams) {
    const [from, to] = [nodes[beam.from]!, nodes[beam.to]!]
    const reach = beam.widthMm / 2
    const [firstRow, lastRow] = cellsBetween(from.y, to.y, reach, body.top, step, rows.length)
    const [firstColumn, lastColumn] = cellsBetween(from.x, to.x, reach, body.left, step, columns)
    for (let row = firstRow; row <= lastRow; row += 1)
      for (let column = firstColumn; column <= lastColumn; column += 1) {
        const { distance, share } = nearestOn(
          from,
          to,
          body.left + (column + 0.5) * step,
          body.top + (row + 0.5) * step,
        )
        if (distance > reach || distance >= distances[row]![column]!) continue
        distances[row]![column] = distance
        rows[row]![column] = pressureAt(picture, beam, share)
      }
  }
  return { left: body.left, top: body.top, step, columns, rows }
}

/** The first and the last cell whose middle a beam can reach that goes from `a` to `b`, along one side of the grid. */
function cellsBetween(
  a: number,
  b: number,
  reach: number,
  start: number,
  step: number,
  count: number,
): readonly [first: number, last: number] {
  const first = Math.floor((Math.min(a, b) - reach - start) / step - 0.5)
  const last = Math.ceil((Math.max(a, b) + reach - start) / step - 0.5)
  return [Math.max(0, first), Math.min(count - 1, last)]
}

/** A face counts as open from here on, as `ClampState.openShare` has it. */
const openFromMm = 0.001

/** In MPa; below 0 where the face is open. */
function pressureOn({ bedMpa, widthMm }: FlangeBeam, sinkMm: number): number {
  if (sinkMm >= 0) return (bedMpa * sinkMm) / widthMm
  return sinkMm < -openFromMm ? -1 : 0
}

/** `share` of the way along a beam. Where one of two states leaves the face open it has no pressure there. */
function pressureAt(
  { state, against }: Pick<ClampPicture, 'state' | 'against'>,
  beam: FlangeBeam,
  share: number,
): number {
  const inState = ({ sinkMm }: ClampState): number =>
    pressureOn(beam, sinkMm[beam.from]! * (1 - share) + sinkMm[beam.to]! * share)
  if (against === undefined) return inState(state)
  return Math.abs(Math.max(0, inState(state)) - Math.max(0, inState(against)))
}

function nearestOn(from: Point, to: Point, x: number, y: number) {
  const [dx, dy] = [to.x - from.x, to.y - from.y]
  const length = dx * dx + dy * dy
  const share = length === 0 ? 0 : Math.min(1, Math.max(0, ((x - from.x) * dx + (y - from.y) * dy) / length))
  return { share, distance: Math.hypot(x - from.x - share * dx, y - from.y - share * dy) }
}

/** The step of the scale: −1 where the face is open, else 0 to 5. */
function stepOf(pressure: number, most: number): number {
  if (pressure < 0) return -1
  return Math.min(clampColours.length - 1, Math.floor((pressure / most) * clampColours.length))
}

/** Cells of one colour that follow one another in a row are one swatch. */
function cells({ left, top, step, rows }: Field, most: number): readonly SwatchShape[] {
  return rows.flatMap((row, index) => {
    const swatches: SwatchShape[] = []
    let start = 0
    for (let column = 1; column <= row.length; column += 1) {
      const [first, here] = [row[start], row[column]]
      const same = column < row.length && kindOf(first, most) === kindOf(here, most)
      if (same) continue
      if (first !== null && first !== undefined) {
        const kind = stepOf(first, most)
        swatches.push({
          kind: 'swatch',
          id: `clamp/${index}/${start}`,
          layer: 'ground',
          role: 'clamp-cell',
          x: left + start * step,
          y: top + index * step,
          width: (column - start) * step,
          height: step,
          colour: kind < 0 ? clampOpenColour : clampColours[kind]!,
          pattern: 'plain',
        })
      }
      start = column
    }
    return swatches
  })
}

function kindOf(pressure: number | null | undefined, most: number): number | null {
  return pressure === null || pressure === undefined ? null : stepOf(pressure, most)
}

/** Lines along the edges of cells between two colours, and along the edge of what is open. */
function contours({ left, top, step, columns, rows }: Field, most: number): readonly LineShape[] {
  const lines: LineShape[] = []
  const add = (id: string, open: boolean, points: readonly number[]) =>
    lines.push({
      kind: 'line',
      id: `clamp/line/${id}`,
      layer: 'ground',
      role: open ? 'clamp-open' : 'clamp-line',
      points,
      closed: false,
    })
  rows.forEach((row, index) => {
    for (let column = 0; column < columns; column += 1) {
      const here = kindOf(row[column], most)
      if (here === null) continue
      const x = left + (column + 1) * step
      const y = top + index * step
      const right = kindOf(row[column + 1], most)
      if (right !== null && right !== here)
        add(`${index}/${column}/right`, Math.min(here, right) < 0, [x, y, x, y + step])
      const below = kindOf(rows[index + 1]?.[column], most)
      if (below !== null && below !== here)
        add(`${index}/${column}/below`, Math.min(here, below) < 0, [x - step, y + step, x, y + step])
      if (here < 0 && (index + column) % 3 === 0)
        add(`${index}/${column}/open`, true, [x - step, y + step, x, y])
    }
  })
  return lines
}

export function kilonewtons(words: Words, load: number): string {
  return amountsIn(words).number(load / 1000, 1)
}
