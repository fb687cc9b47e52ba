import type { Drawing } from '../drawing.ts'
import { cornersOnSheet, flat, onSheet } from '../on-sheet.ts'
import type { LineShape, Role, Shape } from '../scene/scene.ts'
import { textWidth } from '../labels/text-width.ts'
import { leastCapital } from '../sizes.ts'
import { acrossAnEnd } from '../view.ts'
import { acrossOf, heightOf, hullOf, type Piece } from './pieces.ts'

const roles: Readonly<Record<Piece['kind'], Role>> = {
  journal: 'crank-journal',
  pin: 'crank-journal',
  web: 'crank-web',
  weight: 'crank-web',
  shaft: 'crank-shaft',
  wheel: 'crank-wheel',
}

/** The crank where it lies open: in the case seen from above or below, or looked at along it from an end. */
export function crankLaidIn(drawing: Drawing): readonly Shape[] {
  return acrossAnEnd(drawing.here.face) ? fromTheEnd(drawing) : inTheCase(drawing)
}

function inTheCase(drawing: Drawing): readonly Shape[] {
  const { view, crank } = drawing
  const up = view.from === 'above' ? 1 : -1
  // What is nearer to the eye lies over what is further away.
  const nearer = (piece: Piece): number => (piece.kind === 'shaft' ? -1e6 : up * heightOf(piece))
  return crank
    .toSorted((a, b) => nearer(a) - nearer(b))
    .flatMap((piece) => {
      const { least, most } = acrossOf(piece)
      const box = { left: piece.from, top: least, width: piece.to - piece.from, height: most - least }
      return [
        line(piece, piece.id, roles[piece.kind], flat(cornersOnSheet(drawing, box)), true),
        ...(piece.kind === 'wheel' ? [teethOf(drawing, piece)] : []),
        ...(piece.kind === 'pin' ? standsSign(drawing, piece) : []),
      ]
    })
}

/** Lines along a gear's teeth and a belt wheel's, across a chain wheel in its middle: as one line to and fro. */
function teethOf(drawing: Drawing, piece: Piece): LineShape {
  const { from, to, rounds } = piece
  const radius = rounds[0]?.radius ?? 0
  const wheel = drawing.spec.crank?.wheels.find(({ id }) => `wheel/${id}` === piece.id)
  const third = (to - from) / 3
  const places =
    wheel?.kind === 'chain'
      ? [
          { x: from + third, y: -radius },
          { x: from + third, y: radius },
          { x: to - third, y: radius },
          { x: to - third, y: -radius },
        ]
      : [-60, -40, -20, 0, 20, 40, 60].flatMap((angle, index) => {
          const y = radius * Math.sin((angle * Math.PI) / 180)
          const ends = [
            { x: from, y },
            { x: to, y },
          ]
          return index % 2 === 0 ? ends : ends.toReversed()
        })
  return line(piece, `${piece.id}/teeth`, 'crank-line', flat(onSheet(drawing, places)), false)
}

/** Of a pin that stands straight to or from the eye: a dot in a ring or a cross in it, as the tip and the tail of an arrow. */
function standsSign(drawing: Drawing, piece: Piece): readonly Shape[] {
  const { px, view, place } = drawing
  const [round] = piece.rounds
  if (round === undefined) return []
  const towards = round.z * (view.from === 'above' ? 1 : -1)
  if (Math.abs(towards) < 3 * Math.abs(round.y)) return []
  const { x, y } = place((piece.from + piece.to) / 2, round.y)
  const radius = Math.min(7 * px, (piece.to - piece.from) * 0.32, round.radius * 0.6)
  const common = { about: piece.about ?? piece.id, layer: 'parts' } as const
  const ring: Shape = {
    kind: 'circle',
    ...common,
    id: `${piece.id}/stands`,
    role: 'crank-sign',
    x,
    y,
    radius,
  }
  if (towards > 0)
    return [ring, { ...ring, id: `${piece.id}/towards`, role: 'crank-dot', radius: radius * 0.4 }]
  const arm = radius * Math.SQRT1_2
  const cross = [x - arm, y - arm, x + arm, y + arm, x, y, x - arm, y + arm, x + arm, y - arm]
  return [ring, line(piece, `${piece.id}/away`, 'crank-sign', cross, false)]
}

/** From the far end to the near one: what is nearer covers what lies behind it. */
function fromTheEnd(drawing: Drawing): readonly Shape[] {
  const { here, crank } = drawing
  const far = here.face.plane === 'nose' ? -1 : 1
  const inOrder = crank.toSorted((a, b) => far * (a.from - b.from) || order(a) - order(b))
  return [
    ...inOrder.map((piece) =>
      line(piece, piece.id, roles[piece.kind], flat(onSheet(drawing, hullOf(piece))), true),
    ),
    ...pinNames(drawing, inOrder),
  ]
}

/** Of pieces that begin at one place: the weight behind its web. */
function order({ kind }: Piece): number {
  return kind === 'weight' ? 0 : 1
}

/** In each pin the rods that run on it; pins that stand one behind the other share a name, on the nearest. */
function pinNames(drawing: Drawing, pieces: readonly Piece[]): readonly Shape[] {
  const { spec, px, place, sizes } = drawing
  const pins = pieces.filter(({ kind }) => kind === 'pin')
  return pins.flatMap((pin, index): readonly Shape[] => {
    const [round] = pin.rounds
    if (round === undefined) return []
    const same = pins.filter(({ rounds: [other] }) => {
      return other !== undefined && Math.hypot(other.y - round.y, other.z - round.z) < round.radius
    })
    // The nearest one comes last.
    if (same.some((other) => pins.indexOf(other) > index)) return []
    const text = same
      .flatMap((each) => rodsOn(spec, each))
      .toSorted()
      .join(' ')
    const room = round.radius * 1.7
    const capital = Math.min(sizes.name * px, room / textWidth(text, 1, 'bold'))
    if (capital < leastCapital * px) return []
    const common = { about: pin.about ?? pin.id, layer: 'parts', role: 'label' } as const
    const at = place(round.y, round.z)
    return [
      {
        kind: 'text',
        ...common,
        id: `${pin.id}/name`,
        ...at,
        text,
        capital,
        anchor: 'middle',
        weight: 'bold',
      },
    ]
  })
}

function rodsOn(spec: Drawing['spec'], { id }: Piece): readonly string[] {
  return spec.crank?.throws.find((each) => `pin/${each.id}` === id)?.rods ?? []
}

function line(piece: Piece, id: string, role: Role, points: readonly number[], closed: boolean): LineShape {
  return {
    ...{ kind: 'line', id, layer: 'parts', role, points, closed },
    ...(piece.about !== null && { about: piece.about }),
  }
}
