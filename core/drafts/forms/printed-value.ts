/** A value as a manual prints it, in the parts that a spec keeps. */
export interface PrintedValue {
  readonly target?: string
  readonly least?: string
  readonly most?: string
}

const number = String.raw`([+\-\u2212]?(?:\d+(?:[.,]\d+)?|[.,]\d+))`
const unit = String.raw`([^\d()±]*?)`
const inBrackets = /^([^()]+)\(([^()]+)\)\s*$/
const tolerance = new RegExp(
  String.raw`^\s*${number}\s*${unit}\s*(?:±|\+\s*/\s*[-\u2212]|\+-)\s*${number}\s*${unit}\s*$`,
)
const range = new RegExp(
  String.raw`^\s*${number}\s*${unit}\s*(?:\bto\b|\bbis\b|\ba\b|-|–|—|…|\.{2,3}|/)\s*${number}\s*${unit}\s*$`,
)

/**
 * `30 ± 3 lbf·ft` is 30 with 27 and 33 as its limits; `27 to 33 lbf·ft` is a range without a value of its own, and so is
 * `2.999/3.000 in`; anything else is a value as it stands. Where the manual prints it in a second unit, `30 ± 3 lbf·ft (40 ± 4 N·m)`,
 * each of them has both. Decimals and commas are kept as they were typed.
 */
export function printedValue(typed: string): PrintedValue {
  const [, first, second] = inBrackets.exec(typed) ?? []
  const whole = { target: typed.trim() }
  if (first === undefined || second === undefined) return inOneUnit(typed) ?? whole
  const [one, other] = [inOneUnit(first), inOneUnit(second)]
  const both = (key: keyof PrintedValue) => one?.[key] && other?.[key] && `${one[key]} (${other[key]})`
  const [target, least, most] = [both('target'), both('least'), both('most')]
  return least && most ? { ...(target && { target }), least, most } : whole
}

/** Null where it is neither a value with its tolerance nor a range. */
function inOneUnit(typed: string): PrintedValue | null {
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
    if (shown !== null && !isFraction(typed, least, most))
      return { least: `${least}${shown}`, most: `${most}${shown}` }
  }
  return null
}

/** `1/2 in` is one length; with decimals the stroke stands between two. */
function isFraction(typed: string, ...numbers: readonly string[]): boolean {
  return typed.includes('/') && numbers.some((each) => !/[.,]/.test(each))
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
