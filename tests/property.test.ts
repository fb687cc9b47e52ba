import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { checkAsyncProperty, checkProperty } from './property.ts'

const number = fc.integer({ min: 0, max: 999 })

function assertBelow(most: number) {
  return (n: number): void => void expect(n).toBeLessThan(most)
}

function assertIf(condition: (n: number) => boolean) {
  return (n: number): void => void (condition(n) && expect(condition(n)).toBe(true))
}

describe('a property', () => {
  it('is good when what it asserts holds, in every run or in many', () => {
    checkProperty(fc.property(number, assertBelow(1_000)))
    checkProperty(fc.property(number, (n) => (n % 2 === 0 ? undefined : assertBelow(1_000)(n))))
  })

  it('is bad when what it asserts does not hold', () => {
    expect(() => checkProperty(fc.property(number, assertBelow(500)))).toThrow(/Property failed/)
  })

  it('is bad when no run, or few, came to what it asserts', async () => {
    const never = assertIf((n) => n < 0)
    expect(() => checkProperty(fc.property(number, never))).toThrow(
      /share of 100 runs that reached an assertion/,
    )
    const seldom = assertIf((n) => n % 10 === 9)
    expect(() => checkProperty(fc.property(number, seldom), { numRuns: 1_000 })).toThrow(/share of 1000 runs/)
    await expect(
      checkAsyncProperty(fc.asyncProperty(number, (n) => Promise.resolve(never(n)))),
    ).rejects.toThrow(/share of 100 runs/)
  })

  it('may be asked less of where the inputs are rare', () => {
    const seldom = assertIf((n) => n % 10 === 9)
    checkProperty(fc.property(number, seldom), { numRuns: 1_000, leastShare: 0.01 })
  })
})
