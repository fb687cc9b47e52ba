import { describe, expect, it } from 'vitest'
import { aboutAt, sceneOf } from '../../../../core/layout/index.ts'
import { demo, factsAt, sheets } from '../demos.ts'
import { en } from '../../../../core/words/index.ts'

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
