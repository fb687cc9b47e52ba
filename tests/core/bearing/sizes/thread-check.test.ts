import { describe, expect, it } from 'vitest'
import { checkByThread } from '../../../../core/bearing/index.ts'
import { um } from '../fits.ts'

describe('a plastic thread against a clearance of 28 to 34 µm from readings', () => {
  const computed = { least: um(28), most: um(34) }
  /** The card's stripes here are 13 µm apart. */
  const step = um(13)

  it.each([25, 38, 15, 47])('of %d µm agrees, the card’s step allowed for', (read) => {
    expect(checkByThread(um(read), step, computed)).toEqual({ verdict: 'agrees', off: 0 })
  })

  it('of 12 µm says tighter, of 51 µm looser, and by how much', () => {
    expect(checkByThread(um(12), step, computed)).toEqual({ verdict: 'says-tighter', off: um(3) })
    expect(checkByThread(um(51), step, computed)).toEqual({ verdict: 'says-looser', off: um(4) })
  })
})
