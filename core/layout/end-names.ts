import type { EngineSpec, Face } from '../engine/index.ts'
import type { Line } from './lettering.ts'
import type { Sizes } from './sizes.ts'
import { acrossAnEnd } from './view.ts'

/** What is written beyond the two ends of the drawn face: the ends of the crank, or the sides where one looks along it. */
export function endNames(
  spec: EngineSpec,
  face: Face,
  sizes: Sizes,
): readonly [readonly Line[], readonly Line[]] {
  if (acrossAnEnd(face)) return sideNames(spec, sizes)
  const name = (text: string): Line => ({ text, capital: sizes.name, weight: 'bold', role: 'label' })
  return [[name('NOSE')], [name('DRIVE'), name('END')]]
}

/** What the shop calls the side of growing places across, and the other one. */
export function sideNames(
  { case: { sides } }: EngineSpec,
  sizes: Sizes,
): readonly [readonly Line[], readonly Line[]] {
  const name = (text: string): Line => ({
    text,
    capital: sizes.quiet,
    weight: 'regular',
    role: 'quiet-label',
  })
  return [[name(sides.plus)], [name(sides.minus)]]
}
