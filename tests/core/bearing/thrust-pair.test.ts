import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { thrustPairFor, washersToGet } from '../../../core/bearing/index.ts'
import type { EndFloat } from '../../../core/engine/index.ts'
import { inMillimetres, nanometres } from '../../../core/quantity/index.ts'
import { checkProperty } from '../../property.ts'
import { called, mm } from './fits.ts'
import { lineOf } from '../../problem-line.ts'

const washer = (name: string, thickness: number) => ({ name: called(name), thickness: mm(thickness) })
const [thin, standard, thick] = [washer('thin', 2.45), washer('standard', 2.5), washer('thick', 2.55)]

/** An end float of 0.10 to 0.20 mm, best 0.15. */
const alike: EndFloat = { saddle: 'M3', least: mm(0.1), most: mm(0.2), washers: [thin, standard, thick] }
const mixed: EndFloat = { ...alike, mixed: true }

function chosen(endFloat: EndFloat, measured: number, fitted: readonly (typeof thin)[]): string {
  const pair = thrustPairFor(endFloat, mm(measured), fitted)
  if (!pair.ok) return lineOf(pair.problem)
  const { first, second, float } = pair.value
  return `${first.name.text} + ${second.name.text}: ${inMillimetres(float).toFixed(3)}`
}

describe('thrust washers by their thickness', () => {
  it('are chosen for the gap without any: 5.14 mm less twice 2.50 is 0.14', () => {
    expect(chosen(alike, 5.14, [])).toBe('standard + standard: 0.140')
    // Less 5.10: the thick ones; less 4.90: the thin ones.
    expect(chosen(alike, 5.25, [])).toBe('thick + thick: 0.150')
    expect(chosen(alike, 5.06, [])).toBe('thin + thin: 0.160')
  })

  it('are chosen for a float measured with others: 0.28 with two of 2.50 is a gap of 5.28, less 5.10 is 0.18', () => {
    expect(chosen(alike, 0.28, [standard, standard])).toBe('thick + thick: 0.180')
  })

  it('stay where the float is within with them, though others would be nearer the middle', () => {
    expect(chosen(mixed, 0.2, [standard, standard])).toBe('standard + standard: 0.200')
    expect(chosen(mixed, 0.1, [standard, thin])).toBe('standard + thin: 0.100')
  })

  it('may be of two thicknesses where the spec says so: 0.21 with two of 2.50, one of them thicker leaves 0.16', () => {
    expect(chosen(mixed, 0.21, [standard, standard])).toBe('standard + thick: 0.160')
    expect(chosen(alike, 0.21, [standard, standard])).toBe('thick + thick: 0.110')
  })

  it('are not chosen where none leaves a float within its limits, and the nearest are reported', () => {
    expect(chosen(alike, 0.45, [standard, standard])).toBe(
      'no-thrust-pair: place=M3, gap=5.45 mm, first=thick, second=thick, float=0.35 mm, least=0.1 mm, most=0.2 mm',
    )
  })

  it('leave a float within its limits whenever one is chosen, and no other pair is nearer the middle', () => {
    let reached = 0
    const sums = [4.9, 4.95, 5, 5.05, 5.1]
    checkProperty(
      fc.property(fc.integer({ min: 4_900_000, max: 5_400_000 }).map(nanometres), (gap) => {
        const pair = thrustPairFor(mixed, gap, [])
        const floats = sums.map((together) => inMillimetres(gap) - together)
        const best = Math.min(...floats.map((float) => Math.abs(float - 0.15)))
        expect(pair.ok).toBe(best <= 0.05 + 1e-9)
        if (!pair.ok) return
        reached += 1
        expect(Math.abs(inMillimetres(pair.value.float) - 0.15)).toBeCloseTo(best, 6)
      }),
    )
    expect(reached).toBeGreaterThan(10)
  })
})

describe('what has to be got before they can be fitted', () => {
  it('is what is not in already', () => {
    const names = (fitted: readonly (typeof thin)[], first = thick, second = thick) =>
      washersToGet({ first, second }, fitted).map(({ washer: { name }, count }) => `${count} ${name.text}`)
    expect(names([standard, standard])).toEqual(['2 thick'])
    expect(names([standard, thick])).toEqual(['1 thick'])
    expect(names([], standard, thick)).toEqual(['1 standard', '1 thick'])
    expect(names([standard, standard], standard, standard)).toEqual([])
  })
})
