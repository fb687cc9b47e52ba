import { describe, expect, it } from 'vitest'
import { plausibleFriction, torqueAgainstProof } from '../../../core/joint/index.ts'
import { newtonMetres, torqueOf, type Torque } from '../../../core/quantity/index.ts'
import { given, m10, m6, m8 } from './workshop.ts'

const verdict = (bolt: typeof m8, propertyClass: string, torque: Torque) =>
  given(torqueAgainstProof({ ...bolt, propertyClass, torque })).verdict

describe('a torque against the proof load', () => {
  // Torques that VDI 2230 tabulates for µ 0.10 and 0.12.
  it.each([
    ['M6', m6, '8.8', 9.0],
    ['M6', m6, '8.8', 10.1],
    ['M8', m8, '8.8', 24.6],
    ['M8', m8, '10.9', 36.1],
    ['M8', m8, '12.9', 42.2],
    ['M10', m10, '8.8', 48],
    ['M10', m10, '10.9', 71],
    ['M10', m10, '12.9', 83],
  ])('%s: a tabulated torque is plausible (%#)', (_, bolt, propertyClass, torque) => {
    expect(verdict(bolt, propertyClass, newtonMetres(torque))).toBe('plausible')
  })

  it('inch-pounds written down as foot-pounds overload the thread at any plausible friction', () => {
    expect(verdict(m6, '8.8', torqueOf(85, 'lbf·in'))).toBe('plausible')
    expect(verdict(m6, '8.8', torqueOf(85, 'lbf·ft'))).toBe('overload')
  })

  it('foot-pounds written down as inch-pounds clamp next to nothing', () => {
    expect(verdict(m8, '8.8', torqueOf(18, 'lbf·ft'))).toBe('plausible')
    expect(verdict(m8, '8.8', torqueOf(18, 'lbf·in'))).toBe('next-to-no-clamp')
  })

  it('every torque that is no overload is caught when it is written twelve times too small, if it was near the usual', () => {
    for (const torque of [15, 20, 24.6]) {
      expect(verdict(m8, '8.8', newtonMetres(torque))).toBe('plausible')
      expect(verdict(m8, '8.8', newtonMetres(torque / 12))).toBe('next-to-no-clamp')
      expect(verdict(m8, '8.8', newtonMetres(torque * 12))).toBe('overload')
    }
  })

  it('the torque of class 12.9 on a bolt of class 8.8 is a likely overload', () => {
    expect(verdict(m8, '8.8', newtonMetres(42.2))).toBe('likely-overload')
  })

  it('a sump screw at 10 N·m is no cause for alarm', () => {
    expect(verdict(m8, '8.8', newtonMetres(10))).toBe('plausible')
  })

  it('no torque clamps nothing', () => {
    expect(verdict(m8, '8.8', newtonMetres(0))).toBe('next-to-no-clamp')
  })

  it('says between what preloads the truth lies', () => {
    // By hand for an M8: 24 000 N·mm / (0.2 + µ × (0.58 × 7.188 + 5.1575)) mm = 24 000 / (0.2 + 9.3266·µ).
    const found = given(torqueAgainstProof({ ...m8, propertyClass: '8.8', torque: newtonMetres(24) }))
    expect(found.preloadAtLeastFriction / 1000).toBeCloseTo(25.37, 2)
    expect(found.preloadAtUsualFriction / 1000).toBeCloseTo(18.19, 2)
    expect(found.preloadAtMostFriction / 1000).toBeCloseTo(9.84, 2)
    expect(found.proofLoad / 1000).toBeCloseTo(21.2, 1)
    expect(plausibleFriction).toEqual({ least: 0.08, usual: 0.12, most: 0.24 })
  })

  it('is refused for a class that there is not', () => {
    expect(torqueAgainstProof({ ...m8, propertyClass: '11.9', torque: newtonMetres(24) })).toMatchObject({
      ok: false,
      problem: { code: 'property-class-unknown' },
    })
  })
})
