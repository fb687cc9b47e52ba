import { angleAmount, degrees, type Angle } from '../quantity/index.ts'
import type { Words } from '../words/index.ts'
import type { CircleShape, LineShape, Role, Scene, Shape } from './scene/scene.ts'

/** Directions of a wrench's handle at a fastener, in degrees clockwise from straight up on the sheet. */
export interface HandleDirections {
  readonly start: Angle
  /** Where the handle comes to: at the target, or at what was reached. */
  readonly end: Angle
  /** The wedge that is allowed, in the sense in which the fastener is turned. */
  readonly least: Angle
  readonly most: Angle
  /** After each whole flat of the hexagon. */
  readonly flats: readonly Angle[]
  readonly sense: 'clockwise' | 'anticlockwise'
  /** From the start to the end, more than 360° where it goes round. */
  readonly turned: Angle
}

/** Where the protractor lies on the sheet, and the two knobs by which it is dragged. All in mm. */
export interface ProtractorPlace {
  readonly x: number
  readonly y: number
  readonly radius: number
  readonly knobAt: number
}

/** How much larger than the fastener's disc the protractor is, and how far out its knobs stand. */
const outside = { ring: 2.4, leastRing: 1.43, knob: 1.34 } as const
const usualRadiusPx = 54
const leastRadiusPx = 42
const knobRadiusPx = 11

/**
 * Null where the fastener is not drawn. `px` is one pixel of the sheet in mm. Wherever the handle stands, no knob lies on the
 * number of another fastener: the protractor is drawn smaller for that, as long as it does not lie on its own.
 */
export function protractorPlace({ shapes }: Scene, fastener: string, px: number): ProtractorPlace | null {
  const discs = shapes.filter(
    (shape): shape is CircleShape => shape.kind === 'circle' && /^fastener\/.+\/disc$/.test(shape.id),
  )
  const disc = discs.find(({ id }) => id === `fastener/${fastener}/disc`)
  if (disc === undefined) return null
  const wished = Math.max(disc.radius * outside.ring, usualRadiusPx * px) * outside.knob
  const least = Math.max(disc.radius * outside.leastRing, leastRadiusPx * px) * outside.knob
  const knob = knobRadiusPx * px
  const others = discs
    .filter((other) => other !== disc)
    .map(({ x, y, radius }) => ({ away: Math.hypot(x - disc.x, y - disc.y), room: radius + knob }))
  const knobAt = [wished, ...others.map(({ away, room }) => away - room)]
    .filter((at) => at >= least && at <= wished)
    .filter((at) => others.every(({ away, room }) => Math.abs(away - at) >= room - 1e-9))
    .reduce((farthest, at) => Math.max(farthest, at), 0)
  const at = knobAt === 0 ? wished : knobAt
  return { x: disc.x, y: disc.y, radius: at / outside.knob, knobAt: at }
}

/**
 * The scene with a protractor around one fastener: where the handle starts, how far it has to go, the wedge of what is
 * allowed, and the flats of the hexagon on the way. The scene itself where the fastener is not drawn.
 */
export function withProtractor(
  words: Words,
  scene: Scene,
  fastener: string,
  to: HandleDirections,
  px: number,
): Scene {
  const place = protractorPlace(scene, fastener, px)
  if (place === null) return scene
  const { x, y, radius, knobAt } = place
  const line = (piece: string, role: Role, points: readonly number[], closed = false): LineShape => ({
    kind: 'line',
    id: `protractor/${piece}`,
    layer: 'overlay',
    role,
    points,
    closed,
  })
  const ray = (direction: Angle, from: number, upTo: number) => [
    ...onCircle(place, direction, from),
    ...onCircle(place, direction, upTo),
  ]
  const knob = (piece: 'start' | 'end', role: Role): CircleShape => {
    const [left, top] = onCircle(place, to[piece], knobAt)
    return {
      kind: 'circle',
      id: `protractor/${piece}/knob`,
      layer: 'overlay',
      role,
      x: left,
      y: top,
      radius: knobRadiusPx * px,
    }
  }
  const sign = to.sense === 'clockwise' ? 1 : -1
  const wedgeBy = modulo(sign * (to.most - to.least))
  const shapes: Shape[] = [
    { kind: 'circle', id: 'protractor/ring', layer: 'overlay', role: 'protractor-ring', x, y, radius },
    line(
      'wedge',
      'protractor-wedge',
      [
        ...arc(place, to.least, sign * wedgeBy, radius * 0.84),
        ...reversedPairs(arc(place, to.least, sign * wedgeBy, radius * 1.16)),
      ],
      true,
    ),
    line('swept', 'protractor-swept', arc(place, to.start, sign * Math.min(to.turned, 360), radius)),
    ...to.flats.map((flat, index) =>
      line(`flat/${index + 1}`, 'protractor-flat', ray(flat, radius * 0.86, radius * 1.14)),
    ),
    line('start', 'protractor-start', ray(to.start, radius * 0.55, knobAt)),
    line('end', 'protractor-end', ray(to.end, radius * 0.55, knobAt)),
    knob('start', 'protractor-start-knob'),
    knob('end', 'protractor-end-knob'),
  ]
  const inDegrees = (direction: Angle) => words.amounts.amount(angleAmount(degrees(Math.round(direction))))
  const text = words.drawing.protractor({
    ...{ start: inDegrees(to.start), startClock: onClock(to.start) },
    ...{ end: inDegrees(to.end), endClock: onClock(to.end) },
    ...{ turned: words.amounts.amount(angleAmount(to.turned)), sense: to.sense },
  })
  // The callout stays in sight.
  const callout = scene.shapes.findIndex(({ id }) => id === 'callout')
  const under = callout < 0 ? scene.shapes.length : callout
  return {
    ...scene,
    shapes: [...scene.shapes.slice(0, under), ...shapes, ...scene.shapes.slice(under)],
    rows: [...scene.rows, { about: 'protractor', text, state: 'next' }],
  }
}

/** The direction of a point of the sheet from the middle of the protractor. */
export function directionTo(
  { x, y }: ProtractorPlace,
  point: { readonly x: number; readonly y: number },
): Angle {
  return degrees(modulo((Math.atan2(point.x - x, y - point.y) * 180) / Math.PI))
}

/** As on a clock's face: straight up is 12 o'clock. */
function onClock(direction: Angle): number {
  const twelfths = Math.round(direction / 30) % 12
  return twelfths === 0 ? 12 : twelfths
}

function onCircle({ x, y }: ProtractorPlace, direction: number, radius: number): readonly [number, number] {
  const turn = (direction * Math.PI) / 180
  return [x + radius * Math.sin(turn), y - radius * Math.cos(turn)]
}

/** Points along an arc, one for every 3° at least. */
function arc(place: ProtractorPlace, from: number, by: number, radius: number): readonly number[] {
  const pieces = Math.max(1, Math.ceil(Math.abs(by) / 3))
  return Array.from({ length: pieces + 1 }, (_, piece) =>
    onCircle(place, from + (by * piece) / pieces, radius),
  ).flat()
}

function reversedPairs(points: readonly number[]): readonly number[] {
  const pairs = Array.from({ length: points.length / 2 }, (_, index) =>
    points.slice(2 * index, 2 * index + 2),
  )
  return pairs.reverse().flat()
}

function modulo(angle: number): number {
  return ((angle % 360) + 360) % 360
}
