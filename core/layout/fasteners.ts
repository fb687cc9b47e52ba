import { badgeRadius, inner, rimReach, type Disc } from './discs.ts'
import { drawnBeads } from './beads.ts'
import type { Point } from './box.ts'
import { inMillimetres } from '../quantity/index.ts'
import type { Drawing } from './drawing.ts'
import type { FastenerState } from './facts.ts'
import type { CircleShape, Layer, LineShape, Role, Shape, TextShape } from './scene.ts'
import { textWidth } from './text-width.ts'

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

/** Every fastener of the face: its holes, or its discs by state, with the numbers that stand beside theirs. */
export function fastenerShapes(drawing: Drawing, beside: ReadonlyMap<string, Shape>): readonly Shape[] {
  if (asHoles(drawing)) return drawing.discs.map((disc) => hole(drawing, disc))
  return drawing.discs.flatMap((disc) => {
    const { state, share } = stateOf(drawing, disc.id)
    return discShapes(disc, state, share, beside.get(disc.id) ?? null)
  })
}

function hole({ spec, here }: Drawing, { id, x, y }: Disc): CircleShape {
  const groupId = here.fasteners.find((fastener) => fastener.id === id)?.group
  const group = spec.fastenerGroups.find((each) => each.id === groupId)
  const radius = group === undefined ? 4 : inMillimetres(group.thread.diameter) / 2
  const about = `fastener/${id}`
  return { kind: 'circle', id: `${about}/hole`, about, layer: 'parts', role: 'hole', x, y, radius }
}

/** Where the number stands beside the disc, a tick or an exclamation mark has the disc's middle instead. */
function discShapes(disc: Disc, state: FastenerState, share: number, beside: Shape | null): readonly Shape[] {
  const rim = circle(disc, 'disc', 'waiting', disc.radius)
  switch (state) {
    case 'waiting':
      return [rim, beside ?? number(disc, 'waiting')]
    case 'after-next':
      return [
        rim,
        circle(disc, 'ring', 'after-next', disc.radius * (inner + 0.06)),
        beside ?? number(disc, 'waiting'),
      ]
    case 'next':
      return [
        circle(disc, 'ring', 'next-halo', disc.haloRadius, 'overlay'),
        circle(disc, 'disc', 'next', disc.nextRadius, 'overlay'),
        number(disc, 'next', disc.nextCapital, 'overlay'),
        ...(beside === null ? [] : [beside]),
      ]
    case 'partly-done':
      return [
        rim,
        {
          kind: 'ring',
          ...of(disc, 'share', 'partly-done'),
          x: disc.x,
          y: disc.y,
          inner: disc.radius * (inner + 0.04),
          outer: disc.radius,
          share: Math.min(Math.max(share, 0), 1),
        },
        beside ?? number(disc, 'waiting'),
      ]
    case 'done': {
      const done = circle(disc, 'disc', 'done', disc.radius)
      return beside === null
        ? [done, number(disc, 'done'), badge(disc), tick(disc, 'tick', badgeMiddle(disc), badgeRadius)]
        : [done, tick(disc, 'tick-fitted', disc, inner), beside]
    }
    case 'flagged':
      return beside === null
        ? [
            diamond(disc),
            number(disc, 'waiting', capitalInDiamond(disc)),
            badge(disc),
            exclamation(disc, badgeMiddle(disc), badgeRadius),
          ]
        : [diamond(disc), exclamation(disc, disc, inner), beside]
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

function number(disc: Disc, role: Role, capital = disc.capital, layer?: Layer): TextShape {
  return {
    kind: 'text',
    ...of(disc, 'number', role, layer),
    x: disc.x,
    y: disc.y,
    text: disc.number,
    capital,
    anchor: 'middle',
    weight: 'bold',
  }
}

/** On the rim. */
function badgeMiddle({ x, y, radius, badge }: Disc): Point {
  const away = (rimReach - badgeRadius) * radius * Math.SQRT1_2
  return { x: x + badge.x * away, y: y + badge.y * away }
}

function badge(disc: Disc): CircleShape {
  return {
    kind: 'circle',
    ...of(disc, 'badge', 'badge'),
    ...badgeMiddle(disc),
    radius: badgeRadius * disc.radius,
  }
}

/** `share` of the disc's radius is what it has for itself. */
function tick(disc: Disc, role: Role, { x, y }: Point, share: number): LineShape {
  const size = share * disc.radius * 0.55
  const points = [x - size, y, x - size * 0.25, y + size * 0.75, x + size, y - size * 0.75]
  return { kind: 'line', ...of(disc, 'tick', role), points, closed: false }
}

function exclamation(disc: Disc, { x, y }: Point, share: number): TextShape {
  return {
    kind: 'text',
    ...of(disc, 'exclamation', 'warning-label'),
    ...{ x, y },
    text: '!',
    capital: share * disc.radius * 1.2,
    anchor: 'middle',
    weight: 'bold',
  }
}

/** The corners of the number's box stay inside the diamond's sides. */
function capitalInDiamond({ number, capital, corner }: Disc): number {
  return Math.min(capital, (0.93 * corner) / (textWidth(number, 1, 'bold') / 2 + 0.5))
}

function diamond(disc: Disc): LineShape {
  const { x, y, corner } = disc
  const points = [x, y - corner, x + corner, y, x, y + corner, x - corner, y]
  return { kind: 'line', ...of(disc, 'disc', 'flagged'), points, closed: true }
}
