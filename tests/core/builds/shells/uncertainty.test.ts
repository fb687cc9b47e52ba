import { describe, expect, it } from 'vitest'
import { bearingAt, proposalsFor } from '../../../../core/builds/index.ts'
import { mains, marked, readings, skerry, choosing as step } from '../main-shells.ts'
import type { Workshop } from '../workshop.ts'

/** Worn marks, so that the readings of M2 decide: both parts sure to so many micrometres, or nothing said of it. */
function measured(uncertainty: string): Workshop {
  const shop = marked('? ? ? ?', '? ? ? ?')
  shop.does(readings('M2', 'housing', '55.010', { uncertainty }))
  shop.does(readings('M2', 'journal', '51.997', { uncertainty }))
  return shop
}

const at = (shop: Workshop) => proposalsFor(skerry, shop.state, 'mains')[1]!
const pinned = (shop: Workshop, grade: string): Workshop => {
  shop.does({
    type: 'pin-shells',
    step,
    position: 'M2',
    reason: 'came out of here',
    upper: { grade },
    lower: { grade },
  })
  return shop
}

/** What the mean clearance is proved by: both ends of its range further inside than the uncertainty. */
const { least, most } = mains.clearance

describe('what readings are uncertain by', () => {
  it('is weighed alike for shells that are pinned: some that look inside are not proved to be', () => {
    let unproved = 0
    for (const { grade } of mains.grades) {
      const plain = at(pinned(measured('0'), grade))
      const guarded = at(pinned(measured('4'), grade))
      expect(guarded.clearance).toEqual(plain.clearance)
      // √(4² + 4²) = 5.66 µm.
      const proved = plain.clearance!.least - 5657 >= least && plain.clearance!.most + 5657 <= most
      expect(guarded.within === 'inside').toBe(proved)
      if (plain.within === 'inside' && !proved) unproved += 1
    }
    expect(unproved).toBeGreaterThan(0)
  })

  it('gives a free choice and the same shells pinned one verdict', () => {
    const free = at(measured('2'))
    expect(free.upper).not.toBeNull()
    expect(free.upper!.grade).toBe(free.lower!.grade)
    expect(at(pinned(measured('2'), free.upper!.grade)).within).toBe(free.within)
  })

  it('is not known where nothing was said of it, and that is not the same as none', () => {
    expect(bearingAt(measured('').state, mains, 'M2').uncertainty).toBeNull()
    expect(bearingAt(measured('0').state, mains, 'M2').uncertainty).toBe(0)
    expect(bearingAt(measured('3').state, mains, 'M2').uncertainty).toBe(4243)
  })
})
