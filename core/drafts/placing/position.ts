import type { Point } from '../../plane/index.ts'
import { parseLength, readBoth, type LengthUnit } from '../../quantity/index.ts'

type PlaceText = readonly [string, string]

const inInches = /^[^(]*\d\s*(?:in|inch|inches|"|″|”|'')\s*(?:\(|$)/i
/** Digits behind the point at which a length comes back to the same nanometre: an inch has 25.4 million of them. */
const decimals: Readonly<Record<'mm' | 'in', number>> = { mm: 6, in: 8 }
const nanometresIn: Readonly<Record<'mm' | 'in', number>> = { mm: 1_000_000, in: 25_400_000 }

/** A length of a document in whole nanometres. Throws for a text that is none, which no document has. */
export function inNanometres(text: string): number {
  const read = readBoth(text, parseLength)
  if (!read.ok) throw new Error(`“${text}” is no length`)
  return read.value
}

/** Places by the very pair of texts: all of a face are asked for after each edit, and few have changed. */
const places = new WeakMap<PlaceText, Point>()

export function inPlace(texts: PlaceText): Point {
  const known = places.get(texts)
  if (known !== undefined) return known
  const [x, y] = texts
  const place = { x: inNanometres(x), y: inNanometres(y) }
  places.set(texts, place)
  return place
}

/** The unit in which a person gave a length: of two, the first one. */
export function unitOf(text: string): Extract<LengthUnit, 'mm' | 'in'> {
  return inInches.test(text) ? 'in' : 'mm'
}

/** A length as it would be typed in a unit, to the nanometre. */
export function lengthTextOf(nanometres: number, unit: 'mm' | 'in'): string {
  const number = (nanometres / nanometresIn[unit]).toFixed(decimals[unit])
  const short = number.replace(/\.?0+$/, '')
  return `${short === '-0' ? '0' : short} ${unit}`
}

/** A place in the units of the one before it; an axis that is the same keeps its text. */
export function placeTexts({ x, y }: Point, [oldX, oldY]: PlaceText): [string, string] {
  const text = (value: number, old: string) =>
    inNanometres(old) === value ? old : lengthTextOf(value, unitOf(old))
  return [text(x, oldX), text(y, oldY)]
}
