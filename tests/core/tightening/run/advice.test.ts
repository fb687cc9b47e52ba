import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { checkProperty } from '../../../property.ts'
import { Follower } from './follower.ts'
import { reached } from './nut-on-bench.ts'
import { hand, work, type Hand } from './work-and-hands.ts'

describe('the program’s advice, followed to the letter', () => {
  it('never takes a bolt past the most of its spec, and leaves none there that went past by hand', () => {
    checkProperty(
      fc.property(work, fc.array(hand, { minLength: 20, maxLength: 70 }), (onBench, hands) => {
        const follower = new Follower(onBench)
        let goesOn = true
        for (const each of hands) goesOn = goesOn && follower.goesOn(each)
        // Then steady hands bring it to its end.
        const steady: Hand = {
          ...{ off: 0, typo: false, reads: true },
          ...{ adapter: false, unsure: false, besides: 'nothing' },
        }
        for (let steps = 0; goesOn && steps < 200; steps += 1) goesOn = follower.goesOn(steady)
        expect(goesOn).toBe(false)
        expect([...follower.bolts.values()].map(({ past }) => past)).toEqual([false, false])
        reached.done += 1
      }),
      { numRuns: 600 },
    )
    for (const [what, count] of Object.entries(reached)) expect(count, what).toBeGreaterThan(5)
  })
})
