import { angleAmount, degrees, type Angle } from '../quantity/index.ts'
import type { Words } from '../words/index.ts'
import { grown, type Point } from '../plane/index.ts'
import type { Box, CircleShape, LineShape, Role, Scene, Shape } from './scene/scene.ts'

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

/** Where the protractor lies on the sheet, and how the two knobs by which it is dragged keep clear of what is round it. All in mm. */
export interface ProtractorPlace {
  readonly x: number
  readonly y: number
  readonly radius: number
  /** How far out a knob stands where nothing is in its way, and the nearest that it comes. */
  readonly usualKnob: number
  readonly leastKnob: number
  /** The other fasteners' discs, each with the room of a knob round it, and the sheet that a knob stays on. */
  readonly others: readonly { readonly x: number; readonly y: number; readonly room: number }[]
  readonly frame: Box
}

/** How much larger than the fastener's disc the protractor is, and how far out its knobs stand. */
const outside = { ring: 2.4, leastRing: 1.43, knob: 1.34 } as const
const usualRadiusPx = 54
const leastRadiusPx = 42
const knobRadiusPx = 11

/**
 * Null where the fastener is not drawn. `px` is one pixel of the sheet in mm. The protractor is drawn smaller where its knobs
 * then pass between the discs round it all the way, as long as it does not lie on its own.
 */
export function protractorPlace(
  { shapes, frame }: Scene,
  fastener: string,
  px: number,
): ProtractorPlace | null {
  const discs = shapes.filter(
    (shape): shape is CircleShape => shape.kind === 'circle' && /^fastener\/.+\/(lane-)?disc$/.test(shape.id),
  )
  const disc = discs.find(({ id }) => id === `fastener/${fastener}/disc`)
  if (disc === undefined) return null
  const wished = Math.max(disc.radius * outside.ring, usualRadiusPx * px) * outside.knob
  const least = Math.max(disc.radius * outside.leastRing, leastRadiusPx * px) * outside.knob
  const knob = knobRadiusPx * px
  const others = discs
    .filter((other) => other !== disc)
    .map(({ x, y, radius }) => ({ x, y, room: radius + knob, away: Math.hypot(x - disc.x, y - disc.y) }))
  const between = [wished, ...others.map(({ away, room }) => away - room)]
    .filter((at) => at >= least && at <= wished)
    .filter((at) => others.every(({ away, room }) => Math.abs(away - at) >= room - 1e-9))
    .reduce((farthest, at) => Math.max(farthest, at), 0)
  const usualKnob = between === 0 ? wished : between
  return {
    ...{ x: disc.x, y: disc.y, radius: usualKnob / outside.knob, usualKnob },
    leastKnob: disc.radius + knob + px,
    ...{ others, frame: grown(frame, -knob) },
  }
}

/** Where the knob of a handle in this direction stands. */
export function knobPlace(place: ProtractorPlace, direction: Angle): Point {
  const [x, y] = onCircle(place, direction, knobAt(place, direction))
  return { x, y }
}

/** Where it usually does, or at the nearest place on its ray that is clear of every other fastener: how far out, in mm. */
function knobAt(place: ProtractorPlace, direction: Angle): number {
  const { x, y, usualKnob, leastKnob, others, frame } = place
  const [right, down] = onCircle({ x: 0, y: 0 }, direction, 1)
  const along = others.map((other) => {
    const [dx, dy] = [other.x - x, other.y - y]
    return { at: dx * right + dy * down, aside: dx * down - dy * right, room: other.room }
  })
  const edges = along.flatMap(({ at, aside, room }) => {
    if (Math.abs(aside) >= room) return []
    const half = Math.sqrt(room ** 2 - aside ** 2)
    return [at - half, at + half]
  })
  const isFree = (at: number): boolean => {
    const [left, top] = onCircle(place, direction, at)
    const onSheet =
      left >= frame.left &&
      left <= frame.left + frame.width &&
      top >= frame.top &&
      top <= frame.top + frame.height
    return onSheet && along.every((other) => Math.hypot(at - other.at, other.aside) >= other.room - 1e-9)
  }
  const free = [usualKnob, ...edges].filter((at) => at >= leastKnob && isFree(at))
  const nearestFree = free.toSorted((one, other) => Math.abs(one - usualKnob) - Math.abs(other - usualKnob))
  return nearestFree[0] ?? usualKnob
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
  const { x, y, radius } = place
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
    return {
      kind: 'circle',
      id: `protractor/${piece}/knob`,
      layer: 'overlay',
      role,
      ...knobPlace(place, to[piece]),
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
    line('start', 'protractor-start', ray(to.start, radius * 0.55, knobAt(place, to.start))),
    line('end', 'protractor-end', ray(to.end, radius * 0.55, knobAt(place, to.end))),
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

function onCircle(
  { x, y }: { readonly x: number; readonly y: number },
  direction: number,
  radius: number,
): readonly [number, number] {
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
