/**
 * How often something is tried that chance makes each time: as often as its usual runs need to reach what they assert, or
 * all of them with `BEDPLATE_RUNS=long`, before a release or after a change of what is tried.
 */
export function runs(usual: number, long: number): number {
  return isLong ? long : usual
}

export const isLong = process.env.BEDPLATE_RUNS === 'long'
