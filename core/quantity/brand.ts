declare const kind: unique symbol

/** A number that says what it measures, so that two kinds cannot be mixed by mistake. It costs nothing at run time. */
export type Quantity<Kind extends string> = number & { readonly [kind]: Kind }

/** The number as it came, never −0. Throws a RangeError unless it is finite: to reach here with less is a bug. */
export function finite(value: number): number {
  if (!Number.isFinite(value)) throw new RangeError(`a quantity must be a finite number, not ${value}`)
  return value + 0
}
