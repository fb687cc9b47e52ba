import { halfName, type EngineSpec, type Face, type Fit } from '../../engine/index.ts'
import type { Words } from '../../words/index.ts'
import type { Point } from '../../plane/index.ts'
import { cutOff, inRoom, lineWidth, stacked, stackSize, type Line } from './label.ts'
import type { Box, LineShape, Shape, TextShape } from '../scene/scene.ts'
import { leastCapital, type Sizes } from '../sizes.ts'
import { acrossAnEnd } from '../view.ts'

/** What is written beyond the two ends of a drawn face, in the shop's words. In px. */
export interface EndNames {
  readonly nose: readonly Line[]
  readonly drive: readonly Line[]
  /** The sides of the engine: of growing places across, and the other one. */
  readonly sides: { readonly plus: readonly Line[]; readonly minus: readonly Line[] }
  readonly halves: { readonly upper: readonly Line[]; readonly lower: readonly Line[] } | null
}

/** Between the case and what is written beyond its end, and at the sheet's edge, in px. */
const air = 8
const arrowSize = 13
/** The name of a side takes no more of the sheet's width than this beside the case, or above or below it. */
const mostOfSheet = { beside: 0.16, over: 0.4 } as const

/** The names where the axis lies across the sheet, or stands on it. `split` says how the halves are called; null where none are named. */
export function endNames(
  words: Words,
  spec: EngineSpec,
  face: Face,
  split: Fit['split'] | null,
  sizes: Sizes,
  lying: boolean,
  sheetWidthPx: number,
): EndNames {
  const strong = (text: string): Line => ({ text, capital: sizes.name, weight: 'bold', role: 'label' })
  const quiet = (text: string): Line => ({
    text,
    capital: sizes.quiet,
    weight: 'regular',
    role: 'quiet-label',
  })
  const { plus, minus } = spec.case.sides
  const half = (split: Fit['split'], which: 'upper' | 'lower'): Line =>
    quiet(words.engineParts.halves[halfName({ split }, which)])
  const inLines = (text: string): readonly string[] => (lying ? text.split(' ') : [text])
  const nose = lineWidth(strong(words.drawing.nose))
  // Beside the case the nose's own name takes its width anyway.
  const room = lying ? Math.max(sheetWidthPx * mostOfSheet.beside, nose) : sheetWidthPx * mostOfSheet.over
  /** As wide as the nose's name, or as its own longest word; smaller letters before fewer of them. */
  const side = (name: string): readonly Line[] => {
    // A number stays with what it counts: `cylinder 2` is one word.
    const text = name.replaceAll(/(?<=\p{L}) (?=\d)/gu, '\u00a0')
    const longestWord = Math.max(...text.split(' ').map(quiet).map(lineWidth))
    const wrapped = lying ? inRoom(quiet(text), Math.max(nose, longestWord)) : [quiet(text)]
    const lines = wrapped.map((line) => ({ ...line, text: line.text.replaceAll('\u00a0', ' ') }))
    const widestLine = Math.max(...lines.map(lineWidth))
    const capital = Math.max(leastCapital, sizes.quiet * Math.min(1, room / widestLine))
    return lines.map((line) => cutOff({ ...line, capital }, room))
  }
  const ends = !acrossAnEnd(face)
  // A side of the case has the engine's top and bottom at its edges, not its sides.
  const named = face.plane === 'plan' || !ends
  return {
    nose: ends ? [strong(words.drawing.nose)] : [],
    drive: ends ? inLines(words.drawing.driveEnd).map(strong) : [],
    sides: { plus: named ? side(plus) : [], minus: named ? side(minus) : [] },
    halves: split === null ? null : { upper: [half(split, 'upper')], lower: [half(split, 'lower')] },
  }
}

/** How much room the names take beyond each end of the face, in px. */
export function endMargins(
  names: EndNames,
  face: Face,
  lying: boolean,
): { readonly nose: number; readonly drive: number } {
  const extent = (lines: readonly Line[]): number => {
    const { width, height } = stackSize(lines)
    return lying ? width : height
  }
  if (acrossAnEnd(face)) {
    const reach = Math.max(extent(names.sides.plus), extent(names.sides.minus)) + 2 * air
    return { nose: reach, drive: reach }
  }
  const halves = names.halves === null ? 0 : Math.max(extent(names.halves.upper), extent(names.halves.lower))
  const nose = Math.max(
    extent(names.nose),
    extent(names.sides.plus),
    extent(names.sides.minus),
    arrowSize + 4,
  )
  const drive = Math.max(extent(names.drive), halves)
  return { nose: nose + 2 * air, drive: drive + 2 * air }
}

/** Where the ends are, all in mm on the sheet. */
export interface EndPlaces {
  readonly body: Box
  /** Unit steps for growing x and for growing y of the face. */
  readonly along: Point
  readonly across: Point
  /** Where the crank axis passes across the sheet's other direction; null where it passes beside the face. */
  readonly axisAt: number | null
  /** Where the axis of the bearings passes, which may be another shaft's. */
  readonly bearingsAt: number
  readonly px: number
}

/** NOSE with its arrow, DRIVE END, the sides at the corners of the nose's end, the halves at the drive's. */
export function endShapes(names: EndNames, face: Face, places: EndPlaces): readonly Shape[] {
  const { body, along, across, axisAt, bearingsAt, px } = places
  const lying = along.x !== 0
  const middle = axisAt ?? (lying ? body.top + body.height / 2 : body.left + body.width / 2)
  const from = lying ? body.left : body.top
  const to = from + (lying ? body.width : body.height)
  /** On the nose's side of the sheet or on the drive's: how far beyond the case, and where the sheet's other way. */
  const at = (end: 'nose' | 'drive', off: number, aside: number): Point => {
    const first = (end === 'nose') === (lying ? along.x > 0 : along.y > 0)
    const place = first ? from - off * px : to + off * px
    return lying ? { x: place, y: aside } : { x: aside, y: place }
  }
  const margins = endMargins(names, face, lying)
  const centred = (
    id: string,
    about: string | null,
    lines: readonly Line[],
    end: 'nose' | 'drive',
    aside: number,
  ): readonly TextShape[] => {
    if (lines.length === 0) return []
    const { width, height } = stackSize(lines)
    const { x, y } = at(end, margins[end] / 2, aside)
    const box = {
      left: x - (width / 2) * px,
      top: y - (height / 2) * px,
      width: width * px,
      height: height * px,
    }
    return stacked({ id, layer: 'ground', ...(about !== null && { about }) }, lines, box, 'middle', px)
  }
  /** How much a text takes of the sheet's other way. */
  const takes = (lines: readonly Line[]): number => {
    const { width, height } = stackSize(lines)
    return (lying ? height : width) * px
  }
  const { plus, minus } = names.sides
  if (acrossAnEnd(face))
    // Growing x is the plus side here, where a plan has its drive end.
    return [
      ...centred('side/minus', null, minus, 'nose', middle),
      ...centred('side/plus', null, plus, 'drive', middle),
    ]
  // Above the axis the name, on it the arrow: or right of it.
  const up = lying ? -1 : 1
  const aside = (lines: readonly Line[], by: number): number => middle + up * (takes(lines) / 2 + by * px)
  const tip = at('nose', margins.nose / 2 + arrowSize / 2, middle)
  const wing = (side: number): Point =>
    at('nose', margins.nose / 2 - arrowSize / 2, middle + side * arrowSize * 0.55 * px)
  const sign = lying ? across.y : across.x
  const span = lying
    ? { from: body.top, to: body.top + body.height }
    : { from: body.left, to: body.left + body.width }
  const corner = (lines: readonly Line[], side: 1 | -1): number =>
    side * sign > 0 ? span.to - takes(lines) / 2 : span.from + takes(lines) / 2
  // At a corner of the face, unless the nose itself is there.
  const ofNose = takes(names.nose) + 2 * arrowSize * px
  const isFree = (lines: readonly Line[], side: 1 | -1): boolean =>
    Math.abs(corner(lines, side) - middle) > takes(lines) / 2 + ofNose
  const halves = names.halves
  const ofDrive = takes(names.drive) / 2 + 9 * px
  const besideDrive = Math.abs(bearingsAt - middle) < ofDrive + takes(names.drive) * 1.5
  const halfAt = (lines: readonly Line[], side: 1 | -1): number => {
    const off = (besideDrive ? ofDrive : 3 * px) + takes(lines) / 2
    return (besideDrive ? middle : bearingsAt) + side * sign * off
  }
  return [
    ...centred('nose/name', 'nose', names.nose, 'nose', aside(names.nose, arrowSize * 0.55 + 4)),
    arrow([tip, wing(1), wing(-1)]),
    ...centred('drive/name', 'drive', names.drive, 'drive', middle),
    ...(isFree(plus, 1) ? centred('side/plus', null, plus, 'nose', corner(plus, 1)) : []),
    ...(isFree(minus, -1) ? centred('side/minus', null, minus, 'nose', corner(minus, -1)) : []),
    ...(halves === null
      ? []
      : [
          ...centred('half-name/upper', null, halves.upper, 'drive', halfAt(halves.upper, 1)),
          ...centred('half-name/lower', null, halves.lower, 'drive', halfAt(halves.lower, -1)),
        ]),
  ]
}

function arrow(points: readonly Point[]): LineShape {
  return {
    ...{ kind: 'line', id: 'nose', about: 'nose', layer: 'ground', role: 'nose', closed: true },
    points: points.flatMap(({ x, y }) => [x, y]),
  }
}
