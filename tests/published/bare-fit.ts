import { lengthOf, type Length } from '../../core/quantity/index.ts'
import type { Fit } from '../../core/engine/index.ts'

export const um = (value: number): Length => lengthOf(value, 'µm')

/** A fit with nothing in it but what a check needs. */
export const bare: Fit = {
  id: 'mains',
  name: 'Main bearings',
  kind: 'main',
  split: 'upper-lower',
  positions: ['M1'],
  housing: { name: 'the case', marks: [{ mark: '1' }] },
  journal: { name: 'the crank', marks: [{ mark: '1' }] },
  grades: [],
  mixing: { neighbours: true, thicker: 'lower' },
  clearance: { least: um(0), most: um(100) },
  undersizes: [],
}
