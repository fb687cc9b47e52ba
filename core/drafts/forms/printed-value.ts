/** A value as a manual prints it, in the parts that a spec keeps. */
export interface PrintedValue {
  readonly target?: string
  readonly least?: string
  readonly most?: string
}

const number = String.raw`([+\-\u2212]?\d+(?:[.,]\d+)?)`
const unit = String.raw`([^\d()±]*?)`
const tolerance = new RegExp(
  String.raw`^\s*${number}\s*${unit}\s*(?:±|\+\s*/\s*[-\u2212]|\+-)\s*${number}\s*${unit}\s*$`,
)
const range = new RegExp(
  String.raw`^\s*${number}\s*${unit}\s*(?:\bto\b|\bbis\b|\ba\b|-|–|—|…|\.{2,3})\s*${number}\s*${unit}\s*$`,
)

/**
 * `30 ± 3 lbf·ft` is 30 with 27 and 33 as its limits; `27 to 33 lbf·ft` is a range without a value of its own; anything else is a
 * value as it stands. Decimals and commas are kept as they were typed.
 */
export function printedValue(typed: string): PrintedValue {
  const within = tolerance.exec(typed)
  if (within) {
    const [, value = '', one = '', off = '', other = ''] = within
    const shown = unitText(one, other)
    if (shown !== null)
      return {
        target: `${value}${shown}`,
        least: `${added(value, off, -1)}${shown}`,
        most: `${added(value, off, 1)}${shown}`,
      }
  }
  const between = range.exec(typed)
  if (between) {
    const [, least = '', one = '', most = '', other = ''] = between
    const shown = unitText(one, other)
    if (shown !== null) return { least: `${least}${shown}`, most: `${most}${shown}` }
  }
  return { target: typed.trim() }
}

/** The unit of both numbers; null where they name two. A degree sign stands at its number. */
function unitText(one: string, other: string): string | null {
  const [first, second] = [one.trim(), other.trim()]
  if (first !== '' && second !== '' && first !== second) return null
  const named = second === '' ? first : second
  return named === '' ? '' : ` ${named}`
}

/** Exact: counted in the last digit that either of them has. */
function added(value: string, off: string, sign: 1 | -1): string {
  const decimals = Math.max(...[value, off].map((each) => each.split(/[.,]/)[1]?.length ?? 0))
  const whole = (text: string) =>
    Math.round(Number(text.replace(',', '.').replace('\u2212', '-')) * 10 ** decimals)
  const text = ((whole(value) + sign * whole(off)) / 10 ** decimals).toFixed(decimals)
  return value.includes(',') || (off.includes(',') && !value.includes('.')) ? text.replace('.', ',') : text
}
