import { describe, expect, it } from 'vitest'
import { amountsIn, newtons, parseForce } from '../../../core/quantity/index.ts'
import { en } from '../../../core/words/index.ts'

const shown = amountsIn(en)

describe('a force', () => {
  it('reads newtons, kilonewtons and pounds-force', () => {
    expect(parseForce('18600 N')).toEqual({ ok: true, value: 18600 })
    expect(parseForce('18,6 kN')).toEqual({ ok: true, value: 18600 })
    const pounds = parseForce('1000 lbf')
    expect(pounds.ok && pounds.value).toBeCloseTo(4448.2216, 4)
    // A spring balance shows what a mass weighs: 2 kg pull with 2 × 9.80665 N.
    const balance = parseForce('2 kg')
    expect(balance.ok && balance.value).toBeCloseTo(19.6133, 4)
  })

  it.each([
    ['18.6', 'unit-missing'],
    ['18.6 psi', 'unit-unknown'],
    ['-1 N', 'number-negative'],
  ])('refuses %j: %s', (typed, code) => {
    expect(parseForce(typed)).toMatchObject({ ok: false, problem: { code } })
  })

  it('prints in kilonewtons', () => {
    expect(shown.force(newtons(18_649))).toBe('18.6 kN')
  })
})
