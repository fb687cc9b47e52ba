const SIGNIFICANT = 15

/**
 * The value rounded to `decimals` places (0 or more), a half going away from zero, as a person with a pencil rounds.
 *
 * A half is judged on the first 15 significant digits, so that 1.005, which binary stores a hair too low, rounds to
 * 1.01, and a value that went through two conversions of unit still rounds as the one that was typed.
 * Never gives −0. A value of 15 digits or more before the point comes back as it is.
 */
export function roundHalfAway(value: number, decimals = 0): number {
  const size = Math.abs(value)
  if (!(size < 10 ** (SIGNIFICANT - decimals))) return value
  const [mantissa, exponent] = size.toExponential(SIGNIFICANT - 1).split('e')
  const scaled = Math.round(Number(`${mantissa}e${Number(exponent) + decimals}`))
  return Math.sign(value) * Number(`${scaled}e-${decimals}`) + 0
}

/**
 * The value as it is shown, with exactly `decimals` places (0 to 20), rounded half away from zero, decimal point, no
 * thousands mark, and the true minus sign (U+2212), which every `parse` function here reads back.
 */
export function formatNumber(value: number, decimals: number): string {
  return roundHalfAway(value, decimals).toFixed(decimals).replace('-', '\u2212')
}
