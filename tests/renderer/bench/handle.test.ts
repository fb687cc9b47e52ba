import { describe, expect, it } from 'vitest'
import { preferences } from '../../../core/contract/index.ts'
import type { View } from '../../../core/layout/index.ts'
import { degrees } from '../../../core/quantity/index.ts'
import { Handle } from '../../../renderer/bench/handle.svelte.ts'

function handle(view: View = { from: 'below', turn: 0 }, plane: 'plan' | 'nose' = 'plan') {
  const looked = { view, workedFrom: 'below', plane } as const
  return new Handle(() => looked)
}

describe('where the handle starts', () => {
  it('is moved in steps and stays within a full turn', () => {
    const wrench = handle()
    wrench.pointBy(15)
    wrench.pointBy(-30)
    expect(wrench.start).toBe(345)
  })

  it.each([
    [{ from: 'below', turn: 1 }, 'plan', 30],
    [{ from: 'above', turn: 0 }, 'plan', 150],
    [{ from: 'above', turn: 3 }, 'plan', 60],
    [{ from: 'above', turn: 0 }, 'nose', 210],
  ] as const)('is taken as it lies on the sheet: %o, %s', (view, plane, onSheet) => {
    const wrench = handle(view, plane)
    wrench.point(onSheet)
    expect(wrench.start).toBe(onSheet)
  })

  it('turns clockwise seen from the heads, and the other way on a plan seen from the far side', () => {
    expect(handle().sense).toBe('clockwise')
    expect(handle({ from: 'above', turn: 2 }).sense).toBe('anticlockwise')
    expect(handle({ from: 'above', turn: 0 }, 'nose').sense).toBe('clockwise')
  })
})

describe('the angle that was reached', () => {
  it('is dragged on from the target, also past where the handle began', () => {
    const wrench = handle()
    wrench.drag('caps/0', degrees(350), degrees(355))
    wrench.drag('caps/0', degrees(350), degrees(10))
    expect(wrench.reached('caps/0')).toBe(370)
  })

  it('is never below nothing, and in whole degrees', () => {
    const wrench = handle()
    wrench.reach('caps/0', -3)
    expect(wrench.reached('caps/0')).toBe(0)
    wrench.reach('caps/0', 91.6)
    expect(wrench.reached('caps/0')).toBe(92)
  })

  it('counts for its own pull alone, as the swings do', () => {
    const wrench = handle()
    wrench.reach('caps/0', 92)
    wrench.countSwing('caps/0')
    expect(wrench.swings('caps/0')).toBe(1)
    expect(wrench.reached('caps/1')).toBeNull()
    expect(wrench.swings('caps/1')).toBe(0)
  })
})

describe('a handle that was left', () => {
  it('stands as it stood: direction, room, what turns, the angle reached and the swings counted', () => {
    const wrench = handle()
    wrench.point(40)
    wrench.allow(45)
    wrench.hold('hexagon')
    wrench.reach('caps/0', 92)
    wrench.countSwing('caps/0')
    wrench.countSwing('caps/0')

    const looked = { view: { from: 'below', turn: 0 }, workedFrom: 'below', plane: 'plan' } as const
    const again = new Handle(() => looked, wrench.state)
    expect(again.start).toBe(wrench.start)
    expect([again.room, again.grip]).toEqual([45, 'hexagon'])
    expect([again.reached('caps/0'), again.swings('caps/0')]).toEqual([92, 2])
    expect([again.reached('caps/1'), again.swings('caps/1')]).toEqual([null, 0])
  })

  it('is what the host takes, moved or not', () => {
    const schema = preferences.shape.unfinished.element.shape.handle
    const wrench = handle({ from: 'above', turn: 3 })
    expect(schema.safeParse(wrench.state).success).toBe(true)
    wrench.point(-0.4)
    wrench.reach('caps/0', 720)
    expect(schema.safeParse(wrench.state).success).toBe(true)
  })
})
