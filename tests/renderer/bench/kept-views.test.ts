import { describe, expect, it } from 'vitest'
import { preferences } from '../../../core/contract/index.ts'
import { viewsOf, withViews } from '../../../renderer/bench/kept-views.ts'

const below = { joint: { from: 'below', turn: 2 } } as const
const build = (number: number) => `01956f6c-8a00-7000-8000-${String(number).padStart(12, '0')}`

describe('the views that are kept', () => {
  it('are those of each build, none for a build that was never turned', () => {
    const kept = withViews([], build(1), below)
    expect(viewsOf(kept, build(1))).toEqual(below)
    expect(viewsOf(kept, build(2))).toEqual({})
  })

  it('are replaced as a whole, and the build comes first', () => {
    const two = withViews(withViews([], build(1), below), build(2), below)
    const again = withViews(two, build(1), { joint: { from: 'above', turn: 1 } })
    expect(again.map((each) => each.build)).toEqual([build(1), build(2)])
    expect(viewsOf(again, build(1))).toEqual({ joint: { from: 'above', turn: 1 } })
  })

  it('are those of fifty builds, which is what the host takes', () => {
    let kept = withViews([], build(0), below)
    for (let number = 1; number <= 60; number++) kept = withViews(kept, build(number), below)
    expect(kept).toHaveLength(50)
    expect(kept[0]?.build).toBe(build(60))
    expect(preferences.shape.views.safeParse(kept).success).toBe(true)
    expect(preferences.shape.views.safeParse([...kept, ...kept]).success).toBe(false)
  })
})
