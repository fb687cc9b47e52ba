import type { Drawing } from '../drawing.ts'
import type { Disc } from '../labels/discs.ts'
import type { LaneDisc } from '../labels/fastener-lanes.ts'
import { stateOf } from './fastener-state.ts'
import type { FastenerState } from '../facts.ts'
import type { CircleShape, Layer, LineShape, Role, Shape, TextShape } from '../scene/scene.ts'
import { textWidth } from '../labels/text-width.ts'

/** Every fastener of the face: its disc with its number by its state, its bare hole, or a ring that says where it is. */
export function fastenerShapes(drawing: Drawing): readonly Shape[] {
  const { content, discs, numbered } = drawing
  if (content.fasteners === 'holes') return discs.map((disc) => circle(disc, 'hole', 'hole', disc.radius))
  if (content.fasteners === 'rings') return discs.map((disc) => circle(disc, 'disc', 'distant', disc.radius))
  if (drawing.laneDiscs !== null) return laneShapes(drawing, drawing.laneDiscs)
  return discs.flatMap((disc) => {
    const { state, share } = stateOf(drawing, disc.id)
    const acted = state === 'next' || drawing.facts.actOn === `fastener/${disc.id}`
    return acted || numbered === null || numbered.has(disc.id)
      ? discShapes(disc, state, share, acted)
      : [withoutNumber(disc, state)]
  })
}

/** Far from what is next, for somebody who reads from afar: where it is and how far it has come. */
function withoutNumber(disc: Disc, state: FastenerState): CircleShape {
  return circle(
    disc,
    'disc',
    state === 'done' ? 'done' : state === 'flagged' ? 'flagged' : 'distant',
    disc.radius * 0.5,
  )
}

function discShapes(disc: Disc, state: FastenerState, share: number, acted: boolean): readonly Shape[] {
  const rim = circle(disc, 'disc', 'waiting', disc.radius)
  switch (state) {
    case 'waiting':
      return [rim, number(disc, 'waiting')]
    case 'after-next':
      return [rim, circle(disc, 'ring', 'after-next', disc.radius * 0.9), number(disc, 'waiting')]
    case 'next':
      return [
        circle(disc, 'ring', 'next-halo', disc.haloRadius, 'overlay'),
        circle(disc, 'disc', 'next', disc.nextRadius, 'overlay'),
        number(disc, 'next', disc.nextCapital, 'overlay'),
      ]
    case 'partly-done':
      return [rim, shareRing(disc, share), number(disc, 'waiting')]
    case 'done':
      return [circle(disc, 'disc', 'done', disc.radius), number(disc, 'done'), ...tick(disc)]
    case 'flagged':
      return acted
        ? flagShapes(disc, disc.nextRadius, disc.nextCapital, 'overlay')
        : flagShapes(disc, disc.corner, disc.capital, 'parts')
    default:
      return state satisfies never
  }
}

/** A face too full for numbers: small symbols by state, and their numbers in the lanes. */
function laneShapes(drawing: Drawing, lanes: readonly LaneDisc[]): readonly Shape[] {
  const acted = (id: string): boolean =>
    stateOf(drawing, id).state === 'next' || drawing.facts.actOn === `fastener/${id}`
  const ticks = lanes.map(({ disc, tick: points }): LineShape => ({
    ...{ kind: 'line', ...of(disc, 'lane-tick', 'fastener-tick'), closed: false },
    points: points.flatMap(({ x, y }) => [x, y]),
  }))
  return [
    ...ticks,
    ...drawing.discs.flatMap((disc): readonly Shape[] => {
      const { state } = stateOf(drawing, disc.id)
      if (acted(disc.id) && state === 'next')
        return [
          circle(disc, 'ring', 'next-halo', disc.haloRadius, 'overlay'),
          circle(disc, 'disc', 'next', disc.nextRadius, 'overlay'),
        ]
      if (state === 'flagged') return [diamond(disc, disc.corner, 'parts')]
      return [circle(disc, 'disc', state === 'done' ? 'done' : 'distant', disc.radius)]
    }),
    ...lanes.flatMap(({ disc, x, y, radius, capital }): readonly Shape[] => {
      const { state, share } = stateOf(drawing, disc.id)
      const at = { ...disc, x, y, radius, capital }
      const role = state === 'done' || state === 'next' ? state : 'waiting'
      return [
        circle(at, 'lane-disc', role, radius),
        ...(state === 'partly-done' ? [shareRing(at, share)] : []),
        number(at, role),
      ]
    }),
  ]
}

function of(
  { id }: Disc,
  piece: string,
  role: Role,
  layer: Layer = 'parts',
): Pick<Shape, 'id' | 'role' | 'layer'> & { readonly about: string } {
  return { id: `fastener/${id}/${piece}`, about: `fastener/${id}`, layer, role }
}

function circle(disc: Disc, piece: string, role: Role, radius: number, layer?: Layer): CircleShape {
  return { kind: 'circle', ...of(disc, piece, role, layer), x: disc.x, y: disc.y, radius }
}

function shareRing(disc: Disc, share: number): Shape {
  const { x, y, radius } = disc
  return {
    ...{ kind: 'ring', ...of(disc, 'share', 'partly-done'), x, y, inner: radius * 0.89, outer: radius },
    share: Math.min(Math.max(share, 0), 1),
  }
}

function number(disc: Disc, role: Role, capital = disc.capital, layer?: Layer, lift = 0): TextShape {
  return {
    ...{ kind: 'text', ...of(disc, 'number', role, layer), x: disc.x, y: disc.y - lift },
    ...{ text: disc.number, capital, anchor: 'middle', weight: 'bold' },
  }
}

/** Under the number, where the disc leaves room for it. */
function tick(disc: Disc): readonly LineShape[] {
  const { x, y, radius, capital } = disc
  const size = Math.min(radius * 0.22, (radius * 0.92 - capital / 2) * 0.36)
  if (size < capital * 0.14) return []
  const middle = y + (capital / 2 + radius) / 2 - radius * 0.02
  const points = [x - size, middle, x - size * 0.25, middle + size * 0.75, x + size, middle - size * 0.75]
  return [{ kind: 'line', ...of(disc, 'tick', 'tick-done'), points, closed: false }]
}

/**
 * A diamond with the number, and an exclamation mark under it where that finds room. Where the number could not be read in a
 * diamond it has a heavy ring.
 */
function flagShapes(disc: Disc, corner: number, wished: number, layer: Layer): readonly Shape[] {
  const { x, y, number: text } = disc
  const half = textWidth(text, 1, 'bold') / 2
  const capital = Math.min(wished, (0.9 * corner) / (half + 0.5))
  if (capital < Math.min(disc.least, wished)) {
    const ring = circle(disc, 'disc', 'flagged', Math.min(corner, disc.radius), layer)
    return [ring, number(disc, 'waiting', disc.capital, layer)]
  }
  const sign = Math.min(capital * 0.7, corner * 0.34)
  const below = y + capital / 2 + sign * 0.85
  return [
    diamond(disc, corner, layer),
    number(disc, 'waiting', capital, layer),
    ...(below + sign / 2 < y + corner * 0.94
      ? [
          {
            ...({
              kind: 'text',
              ...of(disc, 'exclamation', 'warning-label', layer),
              x,
              y: below,
              text: '!',
            } as const),
            ...({ capital: sign, anchor: 'middle', weight: 'bold' } as const),
          },
        ]
      : []),
  ]
}

function diamond(disc: Disc, corner: number, layer: Layer): LineShape {
  const { x, y } = disc
  const points = [x, y - corner, x + corner, y, x, y + corner, x - corner, y]
  return { kind: 'line', ...of(disc, 'disc', 'flagged', layer), points, closed: true }
}
