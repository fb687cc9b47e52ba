import type { Fit } from './fit.ts'
import type { EngineSpec } from './schema.ts'

export type HalfName = 'upper' | 'lower' | 'left' | 'right'

/** How people call a half that specs and entries have as `upper` or `lower`: of a case that is split upright, left and right. */
export function halfName({ split }: Pick<Fit, 'split'>, half: 'upper' | 'lower'): HalfName {
  if (split === 'upper-lower') return half
  return half === 'upper' ? 'left' : 'right'
}

/** How the housing of a saddle, rod or balance bearing is split; upper and lower where no fit has it. */
export function splitAt({ fits }: Pick<EngineSpec, 'fits'>, position: string): Fit['split'] {
  return fits.find(({ positions }) => positions.includes(position))?.split ?? 'upper-lower'
}

/** How the case itself is split, which is as its first saddle. */
export function splitOfCase(spec: Pick<EngineSpec, 'fits' | 'case'>): Fit['split'] {
  const first = spec.case.saddles[0]
  return first === undefined ? 'upper-lower' : splitAt(spec, first.id)
}
