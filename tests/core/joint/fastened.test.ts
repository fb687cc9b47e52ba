import { describe, expect, it } from 'vitest'
import { boltResilience, fastenedJoint } from '../../../core/joint/index.ts'
import { millimetres } from '../../../core/quantity/index.ts'
import { groupOf, jointOf } from './groups.ts'
import { m10 } from './workshop.ts'

/** δ_S of an M10×1.5 of steel into aluminium, by its lengths of shank and free thread in mm. */
function boltOf(shank: number, freeThread: number): number {
  return boltResilience({
    thread: m10.thread,
    shank: millimetres(shank),
    freeThread: millimetres(freeThread),
    anchor: 'tapped-hole',
    modulusMpa: 207_000,
    anchorModulusMpa: 71_000,
  })
}

describe('the fasteners of a group', () => {
  it('have the friction of their threads, the drier the more', () => {
    expect(jointOf({ threadState: 'oiled' }).friction.usual).toBe(0.12)
    expect(jointOf({ threadState: 'dry' }).friction.usual).toBe(0.19)
    expect(jointOf({ threadState: 'sealant' }).friction).toEqual({ least: 0.08, usual: 0.15, most: 0.24 })
  })

  it('have the head face of the spec, or that of their hexagon', () => {
    expect(jointOf().bearing).toEqual({ outer: millimetres(14.63), hole: millimetres(11) })
    expect(jointOf({ headFace: undefined }).bearing).toEqual({
      outer: millimetres(14.4),
      hole: millimetres(11),
    })
  })

  // ISO 4014: an M10 of 70 mm has 26 mm of thread, of which 10 mm are engaged.
  it('are bolts with a shank where the grip is long: 60 mm are 44 mm of shank and 16 mm of thread', () => {
    expect(jointOf().boltMmPerN).toBeCloseTo(boltOf(44, 16), 12)
  })

  it('have thread all along where the grip is short', () => {
    expect(jointOf({ grip: '12 mm' }).boltMmPerN).toBeCloseTo(boltOf(0, 12), 12)
  })

  it('are as long as a short one up to 125 mm, and as a middle one up to 200 mm', () => {
    // An M10 is its grip and 10 mm of thread: b is 26 mm up to 125, 32 mm up to 200, 45 mm above (ISO 888).
    const stretch = (grip: number) => jointOf({ grip: `${grip} mm` }).boltMmPerN
    expect(stretch(115)).toBeCloseTo(boltOf(115 - 16, 16), 12)
    expect(stretch(116)).toBeCloseTo(boltOf(116 - 22, 22), 12)
    expect(stretch(190)).toBeCloseTo(boltOf(190 - 22, 22), 12)
    expect(stretch(191)).toBeCloseTo(boltOf(191 - 35, 35), 12)
  })

  it('have more thread when they are longer than 125 mm, and still more above 200 mm', () => {
    expect(jointOf({ grip: '115 mm' }).boltMmPerN).toBeCloseTo(boltOf(99, 16), 12)
    expect(jointOf({ grip: '116 mm' }).boltMmPerN).toBeCloseTo(boltOf(94, 22), 12)
    expect(jointOf({ grip: '191 mm' }).boltMmPerN).toBeCloseTo(boltOf(156, 35), 12)
  })

  it('clamp parts that give way more in aluminium than in iron', () => {
    expect(jointOf({ clamped: 'aluminium' }).clampedMmPerN).toBeGreaterThan(
      jointOf({ clamped: 'cast-iron' }).clampedMmPerN,
    )
  })

  it.each([
    ['a class of 11.9', { propertyClass: '11.9' }, 'property-class-unknown'],
    [
      'a pitch larger than the diameter',
      { thread: { diameter: '10 mm', pitch: '12 mm' } },
      'thread-pitch-out-of-range',
    ],
    ['a face within its hole', { headFace: { outer: '10 mm', hole: '11 mm' } }, 'bearing-face-out-of-range'],
  ])('are refused with %s', (_, change, code) => {
    expect(fastenedJoint(groupOf(change))).toMatchObject({ ok: false, problem: { code } })
  })
})
