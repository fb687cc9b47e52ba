import type { DrawnBearing } from './bearings.ts'
import { gapBetween, turned } from './box.ts'
import { moved, type Drawing } from './drawing.ts'
import {
  beside,
  labelBox,
  labelSize,
  letter,
  type Label,
  type Lettered,
  type Line,
  type Place,
} from './lettering.ts'
import type { Box, Shape } from './scene.ts'

/**
 * The name of each bearing with its clearance. All stand at the same corner of their bearings, the one that has room most
 * often, so that the eye finds the next one where it expects it; only where that is taken does one stand elsewhere.
 */
export function bearingLabels(drawing: Drawing, bearings: readonly DrawnBearing[]): readonly Shape[] {
  const { sizes, facts, room, across } = drawing
  const labels = bearings.map((drawn) => {
    const fact = facts.bearings[drawn.bearing.id]
    const outside = fact?.withinLimits === false || fact?.flag !== undefined
    const lines: readonly Line[] = [
      { text: drawn.bearing.id, capital: sizes.name, weight: 'bold', role: 'label' },
      ...(drawn.bearing.thrust
        ? ([{ text: 'thrust', capital: sizes.quiet, weight: 'regular', role: 'quiet-label' }] as const)
        : []),
      {
        text: `${fact?.clearance ?? ''}${outside ? ' !' : ''}`,
        longest: '88 µm !',
        capital: sizes.name * 0.92,
        weight: outside ? 'bold' : 'regular',
        role: outside ? 'warning-label' : 'label',
      },
    ]
    return { drawn, lines, places: quartersOf(drawing, drawn, lines) }
  })
  const isNearest = ({ whole }: DrawnBearing, box: Box): boolean => {
    const clearly = gapBetween(whole, box) + 4 * sizes.px
    return bearings.every((other) => other.whole === whole || gapBetween(other.whole, box) > clearly)
  }
  const ranks = (labels[0]?.places ?? []).map((_, rank) => {
    const boxes = labels.flatMap(({ drawn, lines, places }) => {
      const place = places[rank]
      return place === undefined ? [] : [{ drawn, box: labelBox(lines, place) }]
    })
    const taken = boxes.filter(({ drawn, box }) => !room.free(box) || !isNearest(drawn, box)).length
    const cost = boxes.reduce((sum, { box }) => sum + room.cost(box), 0)
    return { rank, worth: taken * 20 + cost + rank * 0.3 }
  })
  const order = ranks.toSorted((a, b) => a.worth - b.worth).map(({ rank }) => rank)
  const lettered = labels.flatMap(({ drawn, lines, places }) => {
    const { middle, reach, bearing, whole } = drawn
    const ends = ([1, -1] as const).map((side) => {
      const at = moved(drawing, middle, 0, side * (reach + 2 * sizes.px))
      return beside(at, turned(across, side), lines)
    })
    const label: Label = {
      id: `bearing/${bearing.id}/name`,
      about: `half/${bearing.id}/upper`,
      layer: 'parts',
      lines,
      places: [...order.flatMap((rank) => places[rank] ?? []), ...ends].filter((place) =>
        isNearest(drawn, labelBox(lines, place)),
      ),
      target: { ...middle, radius: Math.max(whole.width, whole.height) / 2, box: whole, clear: 2 * sizes.px },
    }
    const found = letter(label, room)
    if (found !== null) room.takeBox(found.box)
    return found === null ? [] : [{ ...found, drawn }]
  })
  return [...lettered.flatMap(({ shapes }) => shapes), ...shelves(drawing, lettered)]
}

type LetteredBearing = Lettered & { readonly drawn: DrawnBearing }

/**
 * Where two names share a bay, one above the other, each has a line from its own bearing along its whole length: which
 * is whose could not be told otherwise.
 */
function shelves({ along }: Drawing, lettered: readonly LetteredBearing[]): readonly Shape[] {
  const lying = along.x !== 0
  const extent = ({ left, top, width, height }: Box) =>
    lying ? { from: left, to: left + width } : { from: top, to: top + height }
  const besides = lettered
    .filter(({ shapes }) => shapes.every(({ kind }) => kind === 'text'))
    .map(({ box, drawn }) => ({
      box,
      id: drawn.bearing.id,
      middle: drawn.middle,
      label: extent(box),
      bearing: extent(drawn.whole),
    }))
    .filter(({ label, bearing }) => label.from >= bearing.to || label.to <= bearing.from)
  return besides
    .filter(({ id, label }) =>
      besides.some((other) => other.id !== id && other.label.from < label.to && label.from < other.label.to),
    )
    .map(({ id, box, middle, label, bearing }): Shape => {
      const [from, to] = label.from >= bearing.to ? [bearing.to, label.to] : [bearing.from, label.from]
      // The side of the label that is nearer to the bearing's middle never lies beyond its end.
      const beside = lying
        ? nearer(middle.y, box.top, box.top + box.height)
        : nearer(middle.x, box.left, box.left + box.width)
      const points = lying ? [from, beside, to, beside] : [beside, from, beside, to]
      const about = `half/${id}/upper`
      return {
        kind: 'line',
        id: `bearing/${id}/shelf`,
        about,
        layer: 'parts',
        role: 'label-leader',
        points,
        closed: false,
      }
    })
}

function nearer(to: number, one: number, other: number): number {
  return Math.abs(one - to) < Math.abs(other - to) ? one : other
}

/** Beside the four quarters of a bearing, then nearer the axis and further from it, then all of these a little away. */
function quartersOf(drawing: Drawing, drawn: DrawnBearing, lines: readonly Line[]): readonly Place[] {
  const { sizes, along } = drawing
  const { middle, reach, bearing } = drawn
  const half = bearing.width / 2 + (bearing.thrust ? 5 : 0) + 3 * sizes.px
  const { height, width } = labelSize(lines)
  const extent = along.x !== 0 ? height : width
  const aways = [0.5 * reach, extent / 2 + 3 * sizes.px, reach + extent / 2]
  return [0, 8 * sizes.px, 16 * sizes.px].flatMap((off) =>
    aways.flatMap((away) =>
      ([1, -1] as const).flatMap((up) =>
        ([1, -1] as const).map((behind) => {
          const at = moved(drawing, middle, behind * (half + off), away * up)
          return beside(at, turned(along, behind), lines)
        }),
      ),
    ),
  )
}
