import type { DrawnBearing } from './bearings.ts'
import { cornersOf, middleOf, type Point } from './box.ts'
import { haloReach, type Disc } from './discs.ts'
import { flat, type Drawing } from './drawing.ts'
import { stateOf } from './fasteners.ts'
import { framedPlace, framedShapes } from './framed.ts'
import { boxTarget, type Line, type Target } from './lettering.ts'
import type { Box, Shape } from './scene.ts'
import { textWidth } from './text-width.ts'

const stepsInWay = 24
/** How far the way bows out, as shares of its length: gently, to either side, further, straight. */
const bows = [0.08, -0.08, 0.16, -0.16, 0, 0.24, -0.24]

/**
 * The way from the last fastener to the next one. It lies under bearings, names and other fasteners, and bows to the side
 * on which it meets fewest of them; the value keeps off it.
 */
export function wayShapes({ facts, discs, room, sizes }: Drawing): readonly Shape[] {
  const from = discs.find(({ id }) => id === facts.path?.from)
  const to = discs.find(({ id }) => id === facts.path?.to)
  if (from === undefined || to === undefined || from === to) return []
  const curves = bows.map((bow) => curve(from, to, bow, sizes.px))
  const costs = curves.map((points, index) => {
    // Something met just before the arrow's head would hide it.
    const met = points
      .slice(1)
      .map((point, step) =>
        room.passes(points[step] ?? point, point) ? 0 : step > points.length * 0.8 ? 3 : 1,
      )
      .reduce((sum: number, cost) => sum + cost, 0)
    return met + Math.abs(bows[index] ?? 0) * 60
  })
  const best = curves[costs.indexOf(Math.min(...costs))] ?? []
  const tip = best.at(-1)
  const before = best.at(-3)
  if (tip === undefined || before === undefined) return []
  room.crossAtCost(best, false, 6)
  const common = { kind: 'line', about: `fastener/${to.id}`, layer: 'parts' } as const
  const head = flat(arrowHead(before, tip, 10 * sizes.px))
  return [
    { ...common, id: 'path', role: 'path', points: flat(best.slice(0, -1)), closed: false },
    { ...common, id: 'path/head', role: 'path-head', points: head, closed: true },
  ]
}

/** From rim to rim. */
function curve(from: Disc, to: Disc, bow: number, px: number): readonly Point[] {
  const dx = to.x - from.x
  const dy = to.y - from.y
  const bend = { x: from.x + dx / 2 - dy * bow * 2, y: from.y + dy / 2 + dx * bow * 2 }
  const points = Array.from({ length: stepsInWay * 2 + 1 }, (_, step) => {
    const t = step / (stepsInWay * 2)
    return {
      x: (1 - t) ** 2 * from.x + 2 * t * (1 - t) * bend.x + t ** 2 * to.x,
      y: (1 - t) ** 2 * from.y + 2 * t * (1 - t) * bend.y + t ** 2 * to.y,
    }
  })
  const clear = (disc: Disc, radius: number, point: Point): boolean =>
    Math.hypot(point.x - disc.x, point.y - disc.y) > radius
  return points.filter(
    (point) =>
      clear(from, from.radius + 4 * px, point) && clear(to, to.nextRadius * haloReach + 3 * px, point),
  )
}

function arrowHead(before: Point, tip: Point, size: number): readonly Point[] {
  const length = Math.hypot(tip.x - before.x, tip.y - before.y) || 1
  const x = (tip.x - before.x) / length
  const y = (tip.y - before.y) / length
  return [
    tip,
    { x: tip.x - size * x - size * 0.5 * y, y: tip.y - size * y + size * 0.5 * x },
    { x: tip.x - size * x + size * 0.5 * y, y: tip.y - size * y - size * 0.5 * x },
  ]
}

/**
 * What stands beside the next fastener or half, in a frame at the end of a leader line that starts on its edge. It begins
 * with the name of a half, and with the number of a fastener whose disc is too small for it or whose leader line crosses
 * something else. Where there is no place for it at its full size, the other shares of it are tried in turn; null where
 * there is none for any. `halves` says whether the leader to a half, which has little room about it, may cross something.
 */
export function calloutShapes(
  drawing: Drawing,
  bearings: readonly DrawnBearing[],
  sharesOfSize: readonly number[],
  halves: 'past everything' | 'anyhow',
): readonly Shape[] | null {
  const { facts, sizes } = drawing
  const next = nextTarget(drawing, bearings)
  if (next === null || facts.callout === null) return []
  const { about, target, name } = next
  for (const share of sharesOfSize) {
    const value: Line = {
      text: facts.callout,
      capital: sizes.next * share,
      weight: 'bold',
      role: 'next-value',
    }
    const bare = next.mustBeNamed ? null : framedPlace(drawing, [value], target, 2)
    const whole = { ...value, text: `${name}  ${value.text}` }
    const named = bare?.passes === true ? null : framedPlace(drawing, [whole], target, 2)
    const found = named ?? bare
    const crosses = target.box !== undefined && halves === 'past everything' && found?.passes === false
    if (found === null || crosses) continue
    const tag = named === null ? null : name
    const cell = tag === null ? 0 : textWidth(tag, value.capital, 'bold') + 0.8 * value.capital
    const place = { ...found.place, x: found.place.x + cell / 2 }
    const look = { id: about, textId: `${about}/value`, about, layer: 'overlay', role: 'leader' } as const
    const framed = framedShapes(drawing, { ...found, lines: [value], place }, look)
    return tag === null
      ? framed
      : [...framed, ...tagShapes(about, tag, value.capital, { ...found.frame, width: cell })]
  }
  return null
}

function tagShapes(about: string, text: string, capital: number, box: Box): readonly Shape[] {
  const common = { about, layer: 'overlay', role: 'next' } as const
  const { x, y } = middleOf(box)
  const points = flat(cornersOf(box))
  return [
    { kind: 'line', ...common, id: `${about}/tag`, points, closed: true },
    {
      kind: 'text',
      ...common,
      id: `${about}/tag/text`,
      x,
      y,
      text,
      capital,
      anchor: 'middle',
      weight: 'bold',
    },
  ]
}

function nextTarget(
  drawing: Drawing,
  bearings: readonly DrawnBearing[],
): {
  readonly about: string
  readonly target: Target
  readonly name: string
  readonly mustBeNamed: boolean
} | null {
  const { discs, facts, sizes, along } = drawing
  const disc = discs.find(({ id }) => stateOf(drawing, id).state === 'next')
  if (disc !== undefined) {
    const clear = disc.reach - disc.nextRadius + 2 * sizes.px
    return {
      about: `fastener/${disc.id}`,
      target: { x: disc.x, y: disc.y, radius: disc.nextRadius, clear },
      name: disc.number,
      mustBeNamed: disc.nextCapital < sizes.asked,
    }
  }
  for (const { bearing, upper, lower, whole } of bearings)
    for (const [half, box] of [
      ['upper', upper],
      ['lower', lower],
    ] as const)
      if (facts.nextHalf === `${bearing.id}/${half}`) {
        const washer = (along.x !== 0 ? whole.width - box.width : whole.height - box.height) / 2
        const target = boxTarget(box, washer + 4 * sizes.px)
        return { about: `half/${facts.nextHalf}`, target, name: bearing.id, mustBeNamed: true }
      }
  return null
}
