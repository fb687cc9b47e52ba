import { halfName } from '../../engine/index.ts'
import type { DrawnBearing } from './bearings.ts'
import { cornersOf, grown, middleOf, type Point } from '../../plane/index.ts'
import type { Disc } from '../labels/discs.ts'
import type { Drawing } from '../drawing.ts'
import { flat } from '../on-sheet.ts'
import { stateOf } from './fastener-state.ts'
import type { Box, LineShape, Shape, TextShape } from '../scene/scene.ts'
import { calloutHeight } from '../sizes.ts'
import { textWidth } from '../labels/text-width.ts'

/** What a person has to act on: the next fastener or half, a flagged fastener, or what is checked. */
export interface ActedOn extends Point {
  readonly about: string
  /** What stands in the callout's first cell; null where nothing is said there. */
  readonly name: string | null
  readonly flagged: boolean
  /** What it takes on the sheet. */
  readonly box: Box
}

export function actedOn(drawing: Drawing, bearings: readonly DrawnBearing[]): ActedOn | null {
  const { discs, facts } = drawing
  const disc = discs.find(({ id }) =>
    facts.actOn === null ? stateOf(drawing, id).state === 'next' : `fastener/${id}` === facts.actOn,
  )
  if (disc !== undefined && drawing.content.fasteners === 'numbered') {
    const { id, x, y, number, haloRadius } = disc
    const box = grown({ left: x, top: y, width: 0, height: 0 }, haloRadius)
    return { about: `fastener/${id}`, x, y, name: number, flagged: facts.actOn !== null, box }
  }
  for (const drawn of bearings) {
    const { bearing, whole } = drawn
    for (const half of ['upper', 'lower'] as const) {
      if (facts.nextHalf !== `${bearing.id}/${half}`) continue
      const about = `half/${facts.nextHalf}`
      return {
        about,
        ...middleOf(drawn[half]),
        name: drawing.words.drawing.halfOf({
          bearing: bearing.id,
          half: drawing.words.engineParts.halves[halfName(bearing, half)],
        }),
        flagged: false,
        box: drawn[half],
      }
    }
    if (facts.checked === `thrust/${bearing.id}` || facts.checked?.startsWith(`half/${bearing.id}/`)) {
      return { about: facts.checked, ...middleOf(whole), name: null, flagged: false, box: whole }
    }
  }
  return null
}

/**
 * Two lines from frame to frame through what is acted on, behind everything. As on any drawing a line is broken where a text
 * stands in its way: `texts` are all that are not written in a disc or on a plate.
 */
export function crosshairShapes(
  { frame, px }: Drawing,
  acted: ActedOn | null,
  texts: readonly Box[],
): readonly Shape[] {
  if (acted === null) return []
  const { left, top, width, height } = frame
  const clear = texts.map((box) => grown(box, 2 * px))
  const least = shortest * px
  const line = (id: string, points: readonly number[], index: number): LineShape => ({
    ...{ kind: 'line', layer: 'parts', role: 'crosshair', points, closed: false },
    id: index === 0 ? `crosshair/${id}` : `crosshair/${id}/${index + 1}`,
  })
  const across = clear.filter((box) => box.top < acted.y && acted.y < box.top + box.height)
  const down = clear.filter((box) => box.left < acted.x && acted.x < box.left + box.width)
  return [
    ...unbroken(
      { from: left, to: left + width },
      least,
      across.map((box) => ({ from: box.left, to: box.left + box.width })),
    ).map(({ from, to }, index) => line('across', [from, acted.y, to, acted.y], index)),
    ...unbroken(
      { from: top, to: top + height },
      least,
      down.map((box) => ({ from: box.top, to: box.top + box.height })),
    ).map(({ from, to }, index) => line('down', [acted.x, from, acted.x, to], index)),
    ...(acted.name === null
      ? [
          {
            ...({
              kind: 'line',
              id: 'checked',
              about: acted.about,
              layer: 'overlay',
              role: 'checked',
            } as const),
            ...{ points: flat(cornersOf(grown(acted.box, 5 * px))), closed: true },
          },
        ]
      : []),
  ]
}

interface Stretch {
  readonly from: number
  readonly to: number
}

/** Less of a line than this between two texts would be a speck, in px. */
const shortest = 8

/** What is left of a stretch beside others, in order, without what is too short between two to be seen as a line. */
function unbroken(whole: Stretch, least: number, others: readonly Stretch[]): readonly Stretch[] {
  const left: Stretch[] = []
  let from = whole.from
  for (const other of others.toSorted((one, next) => one.from - next.from)) {
    if (other.from - from >= least || (from === whole.from && other.from > from))
      left.push({ from, to: Math.min(other.from, whole.to) })
    from = Math.max(from, other.to)
  }
  if (from < whole.to) left.push({ from, to: whole.to })
  return left
}

const stepsInPath = 24
/** How far the path bows out, as a share of its length: always to the same side. */
const bow = 0.12

/** The way from the last fastener to the next one: an arc that passes under everything on its way. */
export function pathShapes({ facts, discs, px, content }: Drawing): readonly Shape[] {
  const from = discs.find(({ id }) => id === facts.path?.from)
  const to = discs.find(({ id }) => id === facts.path?.to)
  if (from === undefined || to === undefined || from === to) return []
  if (content.fasteners !== 'numbered' || facts.actOn !== null) return []
  const points = arc(from, to, px)
  const tip = points.at(-1)
  const before = points.at(-3)
  if (tip === undefined || before === undefined) return []
  const common = { kind: 'line', about: `fastener/${to.id}`, layer: 'parts' } as const
  return [
    { ...common, id: 'path', role: 'path', points: flat(points.slice(0, -1)), closed: false },
    {
      ...common,
      id: 'path/head',
      role: 'path-head',
      points: flat(arrowHead(before, tip, 10 * px)),
      closed: true,
    },
  ]
}

/** From rim to rim. */
function arc(from: Disc, to: Disc, px: number): readonly Point[] {
  const dx = to.x - from.x
  const dy = to.y - from.y
  const bend = { x: from.x + dx / 2 - dy * bow * 2, y: from.y + dy / 2 + dx * bow * 2 }
  const points = Array.from({ length: stepsInPath * 2 + 1 }, (_, step) => {
    const t = step / (stepsInPath * 2)
    return {
      x: (1 - t) ** 2 * from.x + 2 * t * (1 - t) * bend.x + t ** 2 * to.x,
      y: (1 - t) ** 2 * from.y + 2 * t * (1 - t) * bend.y + t ** 2 * to.y,
    }
  })
  const clear = (disc: Disc, radius: number, point: Point): boolean =>
    Math.hypot(point.x - disc.x, point.y - disc.y) > radius
  return points.filter(
    (point) => clear(from, from.radius + 3 * px, point) && clear(to, to.haloRadius + 4 * px, point),
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

/** From the sheet's left edge, and of a cell round its text, in px and in capitals. */
const calloutInset = 12
const cellPad = 0.5
/** The value takes no more of the sheet's width than this. */
const mostOfWidth = 0.94

/**
 * What is next, and its value, in the one place of the sheet where they always stand: in its upper left corner under the
 * title, in the size that is read from where one stands.
 */
export function calloutShapes(drawing: Drawing, acted: ActedOn | null): readonly Shape[] {
  const { facts, frame, px, calloutPlace } = drawing
  if (acted === null || acted.name === null || facts.callout === null || calloutPlace === null) return []
  const { about, name, flagged } = acted
  const shown = flagged ? `${name} !` : name
  const room = Math.min(frame.width * mostOfWidth - calloutInset * px, calloutPlace.widthPx * px)
  const size = (capital: number): number =>
    widthOf(shown, capital) + widthOf(facts.callout!, capital) + 4 * cellPad * capital
  const full = calloutPlace.capital * px
  const shrunk = Math.max(Math.min(full, (full * room) / size(full)), full * 0.55)
  const lines = size(shrunk) > room * roundingErrors ? inTwoLines(facts.callout) : [facts.callout]
  const widestLine = Math.max(...lines.map((line) => widthOf(line, 1)))
  // Two lines stand in the height of the callout, its name as large as they let it be: a value is what a bolt gets.
  const ofName = (room - widestLine * full * 0.45) / (widthOf(shown, 1) + 4 * cellPad)
  const capital = lines.length === 1 ? shrunk : Math.max(full * 0.45, Math.min(full, ofName))
  const pad = cellPad * capital
  const left = frame.left + calloutInset * px
  const top = frame.top + calloutPlace.top * px
  const height = (lines.length === 1 ? capital : full) * calloutHeight
  const cell = widthOf(shown, capital) + 2 * pad
  const free = room - cell - 2 * pad
  const ofValue =
    lines.length === 1 ? capital : Math.max(full * 0.45, Math.min(full * 0.6, free / widestLine))
  const values = lines.map((line) => cutTo(line, ofValue, free))
  const width = cell + Math.max(...values.map((value) => widthOf(value, ofValue))) + 2 * pad
  const common = { about, layer: 'overlay' } as const
  const text = { ...common, kind: 'text', weight: 'bold' } as const
  const middle = top + height / 2
  const [box, cellRole] = flagged
    ? (['callout-flagged', 'callout-flagged'] as const)
    : (['callout', 'next'] as const)
  return [
    {
      kind: 'line',
      ...common,
      id: 'callout',
      role: box,
      points: flat(cornersOf({ left, top, width, height })),
      closed: true,
    },
    {
      kind: 'line',
      ...common,
      id: 'callout/cell',
      role: cellRole,
      points: flat(cornersOf({ left, top, width: cell, height })),
      closed: true,
    },
    {
      ...text,
      id: 'callout/name',
      role: flagged ? 'next-value' : 'next',
      x: left + cell / 2,
      y: middle,
      text: shown,
      capital,
      anchor: 'middle',
    },
    ...values.map((value, index): TextShape => ({
      ...text,
      id: index === 0 ? 'callout/value' : `callout/value/${index + 1}`,
      role: 'next-value',
      x: left + cell + pad,
      y: middle + (index - (values.length - 1) / 2) * ofValue * 1.5,
      text: value,
      capital: ofValue,
      anchor: 'start',
    })),
  ]
}

/** A text that was made to fit is as wide as the room but for these. */
const roundingErrors = 1 + 1e-9

/** Parted between two words, so that the longer line is as short as it goes; in one line where it is one word. */
function inTwoLines(text: string): readonly string[] {
  const words = text.split(' ')
  const parted = words
    .slice(1)
    .map((_, index): readonly [string, string] => [
      words.slice(0, index + 1).join(' '),
      words.slice(index + 1).join(' '),
    ])
  const longestWidth = (lines: readonly string[]): number =>
    Math.max(...lines.map((line) => widthOf(line, 1)))
  const [best] = parted.toSorted((one, other) => longestWidth(one) - longestWidth(other))
  return best ?? [text]
}

function cutTo(text: string, capital: number, room: number): string {
  if (widthOf(text, capital) <= room * roundingErrors) return text
  const characters = [...text]
  while (characters.length > 1 && widthOf(`${characters.join('')}…`, capital) > room) characters.pop()
  return `${characters.join('').trimEnd()}…`
}

/** Figures are tabular: each as wide as the widest. */
function widthOf(text: string, capital: number): number {
  return textWidth(text.replace(/\d/g, '0'), capital, 'bold')
}
