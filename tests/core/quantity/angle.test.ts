import { describe, expect, it } from 'vitest'
import { amountsIn, degrees, parseAngle } from '../../../core/quantity/index.ts'
import { en } from '../../../core/words/index.ts'

const shown = amountsIn(en)

describe('an angle', () => {
  it.each(['90°', '90 °', '90 deg', '90', '90,0°'])('reads %j as a quarter turn', (typed) => {
    expect(parseAngle(typed)).toEqual({ ok: true, value: 90 })
  })

  it.each([
    ['-90°', 'number-negative'],
    ['90 rad', 'unit-unknown'],
    ['°', 'number-unreadable'],
  ])('refuses %j: %s', (typed, code) => {
    expect(parseAngle(typed)).toMatchObject({ ok: false, problem: { code } })
  })

  it('prints without a blank, and with a place only where one is needed', () => {
    expect(shown.angle(degrees(90))).toBe('90°')
    expect(shown.angle(degrees(17.34))).toBe('17.3°')
    expect(shown.angle(degrees(17.5), 0)).toBe('18°')
  })
})
