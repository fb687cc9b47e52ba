import { withUnit } from '../../quantity/index.ts'

/** What stands behind the first number of a value: `30 lbf·ft (41 N·m)` is in lbf·ft. Empty for none. */
export function unitOfValue(value: string): string {
  return /^\s*[+\-\u2212]?[\d.,/\s]*\d\s*([^\d\s(][^\d(]*)/.exec(value)?.[1]?.trim() ?? ''
}

/** A bare number in the unit of the value before it, as on a number pad; anything else as it was typed, nothing too. */
export function inUnitOf(typed: string, before: string): string {
  const unit = unitOfValue(before)
  return unit === '' || typed.trim() === '' ? typed.trim() : withUnit(typed, unit)
}
