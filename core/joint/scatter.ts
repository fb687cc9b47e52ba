/**
 * The tightening factor α_A of VDI 2230: the greatest preload over the least, from 1 up, for a way of tightening that
 * strays by ± `deviation` (a share of the mean, 0 included, 1 not).
 */
export function tighteningFactor(deviation: number): number {
  return (1 + deviation) / (1 - deviation)
}
