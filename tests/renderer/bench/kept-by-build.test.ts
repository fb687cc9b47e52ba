import { describe, expect, it } from 'vitest'
import { preferences } from '../../../core/contract/index.ts'
import { keptFor, withKept } from '../../../renderer/bench/kept-by-build.ts'

const below = { joint: { from: 'below', turn: 2 } } as const
const build = (number: number) => `01956f6c-8a00-7000-8000-${String(number).padStart(12, '0')}`

describe('what is kept by build', () => {
  it('is that of each build, none for a build that has nothing', () => {
    const kept = withKept([], { build: build(1), faces: below })
    expect(keptFor(kept, build(1))?.faces).toEqual(below)
    expect(keptFor(kept, build(2))).toBeUndefined()
  })

  it('is replaced as a whole, and the build comes first', () => {
    const two = withKept(withKept([], { build: build(1), faces: {} }), { build: build(2), faces: {} })
    const again = withKept(two, { build: build(1), faces: below })
    expect(again.map((each) => each.build)).toEqual([build(1), build(2)])
    expect(keptFor(again, build(1))?.faces).toEqual(below)
  })

  it('is that of fifty builds, which is what the host takes', () => {
    let kept = withKept([], { build: build(0), faces: below })
    for (let number = 1; number <= 60; number++) kept = withKept(kept, { build: build(number), faces: below })
    expect(kept).toHaveLength(50)
    expect(kept[0]?.build).toBe(build(60))
    expect(preferences.shape.views.safeParse(kept).success).toBe(true)
    expect(preferences.shape.views.safeParse([...kept, ...kept]).success).toBe(false)
  })
})
