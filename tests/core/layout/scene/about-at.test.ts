import { describe, expect, it } from 'vitest'
import { aboutAt, bareFacts, boxAbout, boxesAbout, sceneOf } from '../../../../core/layout/index.ts'
import { demo, factsAt, sheets } from '../demos.ts'
import { en } from '../../../../core/words/index.ts'
import { readSpec } from '../../../../core/engine/index.ts'
import { specOfMany } from '../../../bench/press/spec.ts'

const spec = demo('skerry-3')
const scene = sceneOf(en, spec, factsAt(spec, 'joint', 'under way'), { from: 'below', turn: 0 }, sheets[0]!)

/** 6 mm: about a thumb's 12 px on this sheet. */
const reach = 6

describe('a tap', () => {
  it('on a disc is about its fastener', () => {
    expect(aboutAt(scene, { x: 148, y: 46 }, reach)).toBe('fastener/case-1')
  })

  it('on a shell is about that half of its saddle: seen from below the upper half is below the axis', () => {
    expect(aboutAt(scene, { x: 244, y: 15 }, reach)).toBe('half/M3/upper')
    expect(aboutAt(scene, { x: 244, y: -15 }, reach)).toBe('half/M3/lower')
  })

  it('beside a small thing still means it', () => {
    // The dowel is 10 mm wide at 70, 86.
    expect(aboutAt(scene, { x: 70, y: 94 }, reach)).toBe('dowel/dowel-1')
  })

  it('on the bare face is about the face, and beside the case about nothing', () => {
    expect(aboutAt(scene, { x: 384, y: 6 }, reach)).toBe('face/joint')
    expect(aboutAt(scene, { x: -60, y: 120 }, reach)).toBeNull()
  })
})

describe('what a thing covers', () => {
  it('is the hole and its number, each by itself, where the number stands beside a face too full for it', () => {
    const many = readSpec(specOfMany(40))
    if (!many.ok) throw new Error('cannot be read')
    const sheet = { widthPx: 620, heightPx: 420, capitalPx: 9 }
    const full = sceneOf(en, many.spec, bareFacts('sump'), { from: 'below', turn: 0 }, sheet)
    const [hole, number, ...more] = boxesAbout(full, 'fastener/f30')
    const both = boxAbout(full, 'fastener/f30')!
    expect(more).toEqual([])
    // Round both together a ring would lie over its neighbours.
    expect(Math.max(hole!.height, number!.height)).toBeLessThan(both.height / 2)
    expect(number!.top).toBeGreaterThan(hole!.top + hole!.height)
  })

  it('is one box where the number stands in its hole, and none for what is not drawn', () => {
    expect(boxesAbout(scene, 'fastener/case-1')).toEqual([boxAbout(scene, 'fastener/case-1')])
    expect(boxesAbout(scene, 'fastener/none')).toEqual([])
  })
})
