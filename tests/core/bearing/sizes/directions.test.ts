import { describe, expect, it } from 'vitest'
import { directionsAcross } from '../../../../core/bearing/index.ts'

describe('the directions in which a diameter is measured', () => {
  it('stand on both sides of straight up in a bore, so that none lies in its joint', () => {
    expect(directionsAcross('housing', 1)).toEqual([0])
    expect(directionsAcross('housing', 2)).toEqual([-45, 45])
    expect(directionsAcross('housing', 3)).toEqual([-60, 0, 60])
  })

  it('begin straight up on a journal: the second of two is square to the first', () => {
    expect(directionsAcross('journal', 1)).toEqual([0])
    expect(directionsAcross('journal', 2)).toEqual([0, 90])
    expect(directionsAcross('journal', 3)).toEqual([0, 60, 120])
  })

  it.each([1, 2, 3, 4, 5, 6])('keep off the joint of a bore by as much as they can: %i of them', (count) => {
    const fromJoint = directionsAcross('housing', count).map((degrees) => 90 - Math.abs(degrees))
    expect(Math.min(...fromJoint)).toBeCloseTo(90 / count, 9)
  })

  it('are at least one', () => {
    expect(() => directionsAcross('journal', 0)).toThrow(RangeError)
    expect(() => directionsAcross('housing', 1.5)).toThrow(RangeError)
  })
})
