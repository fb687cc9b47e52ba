import { haloReach, inner, rimReach, type Disc } from './discs.ts'
import { drawnBeads } from './beads.ts'
import { inMillimetres } from '../quantity/index.ts'
import type { Drawing } from './drawing.ts'
import type { FastenerState } from './facts.ts'
import type { CircleShape, Layer, LineShape, Role, Shape, TextShape } from './scene.ts'

/** The state in which a fastener is drawn, with the share of its passes that is done. */
export function stateOf({ facts }: Drawing, id: string): { state: FastenerState; share: number } {
  const { state = 'waiting', share = 0 } = facts.fasteners[id] ?? {}
  return { state, share }
}

/** While a bead is to be laid and nothing is tightened, fasteners are their bare holes: the bead's side of each shows. */
export function asHoles(drawing: Drawing): boolean {
  return (
    drawnBeads(drawing).some(({ state }) => state === 'to-lay') &&
    drawing.discs.every(({ id }) => stateOf(drawing, id).state === 'waiting')
  )
}

/** Every fastener of the face: its holes, or its discs by state. */
export function fastenerShapes(drawing: Drawing): readonly Shape[] {
  if (asHoles(drawing)) return drawing.discs.map((disc) => hole(drawing, disc))
  return drawing.discs.flatMap((disc) => {
    const { state, share } = stateOf(drawing, disc.id)
    return discShapes(disc, state, share)
  })
}

function hole({ spec, here }: Drawing, { id, x, y }: Disc): CircleShape {
  const groupId = here.fasteners.find((fastener) => fastener.id === id)?.group
  const group = spec.fastenerGroups.find((each) => each.id === groupId)
  const radius = group === undefined ? 4 : inMillimetres(group.thread.diameter) / 2
  const about = `fastener/${id}`
  return { kind: 'circle', id: `${about}/hole`, about, layer: 'parts', role: 'hole', x, y, radius }
}

function discShapes(disc: Disc, state: FastenerState, share: number): readonly Shape[] {
  switch (state) {
    case 'waiting':
      return [circle(disc, 'disc', 'waiting', disc.radius), number(disc, 'waiting')]
    case 'after-next':
      return [
        circle(disc, 'ring', 'after-next', disc.radius * 1.2),
        circle(disc, 'disc', 'waiting', disc.radius),
        number(disc, 'waiting'),
      ]
    case 'next':
      return [
        circle(disc, 'ring', 'next-halo', disc.nextRadius * (haloReach - 0.04), 'overlay'),
        circle(disc, 'disc', 'next', disc.nextRadius, 'overlay'),
        number(disc, 'next', disc.nextRadius / disc.radius, 'overlay'),
      ]
    case 'partly-done':
      return [
        circle(disc, 'disc', 'waiting', disc.radius),
        {
          kind: 'ring',
          ...of(disc, 'share', 'partly-done'),
          x: disc.x,
          y: disc.y,
          inner: disc.radius * (inner + 0.04),
          outer: disc.radius,
          share: Math.min(Math.max(share, 0), 1),
        },
        number(disc, 'waiting'),
      ]
    case 'done':
      return [circle(disc, 'disc', 'done', disc.radius), number(disc, 'done'), badge(disc), tick(disc)]
    case 'flagged':
      return [diamond(disc), number(disc, 'waiting', 0.94), badge(disc), exclamation(disc)]
    default:
      return state satisfies never
  }
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

function number(disc: Disc, role: Role, times = 1, layer?: Layer): TextShape {
  return {
    kind: 'text',
    ...of(disc, 'number', role, layer),
    x: disc.x,
    y: disc.y,
    text: disc.number,
    capital: disc.capital * times,
    anchor: 'middle',
    weight: 'bold',
  }
}

const badgeRadius = 0.4

/** On the rim, up and to the right. */
function badgeMiddle({ x, y, radius }: Disc): { readonly x: number; readonly y: number } {
  const away = (rimReach - badgeRadius) * radius * Math.SQRT1_2
  return { x: x + away, y: y - away }
}

function badge(disc: Disc): CircleShape {
  return {
    kind: 'circle',
    ...of(disc, 'badge', 'badge'),
    ...badgeMiddle(disc),
    radius: badgeRadius * disc.radius,
  }
}

function tick(disc: Disc): LineShape {
  const { x, y } = badgeMiddle(disc)
  const size = badgeRadius * disc.radius * 0.55
  const points = [x - size, y, x - size * 0.25, y + size * 0.75, x + size, y - size * 0.75]
  return { kind: 'line', ...of(disc, 'tick', 'tick'), points, closed: false }
}

function exclamation(disc: Disc): TextShape {
  return {
    kind: 'text',
    ...of(disc, 'exclamation', 'warning-label'),
    ...badgeMiddle(disc),
    text: '!',
    capital: badgeRadius * disc.radius * 1.2,
    anchor: 'middle',
    weight: 'bold',
  }
}

function diamond(disc: Disc): LineShape {
  const reach = rimReach * disc.radius
  const { x, y } = disc
  const points = [x, y - reach, x + reach, y, x, y + reach, x - reach, y]
  return { kind: 'line', ...of(disc, 'disc', 'flagged'), points, closed: true }
}
