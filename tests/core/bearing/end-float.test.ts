import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { correctedFloat, gapFault, washerFor } from '../../../core/bearing/index.ts'
import { nanometres } from '../../../core/quantity/index.ts'
import type { EndFloat } from '../../../core/engine/index.ts'
import { called, mm } from './fits.ts'
import { checkProperty } from '../../property.ts'
import { lineOf } from '../../problem-line.ts'

const row = (name: string, thickness: number, floatFrom: number, floatTo: number) => ({
  name: called(name),
  thickness: mm(thickness),
  floatFrom: mm(floatFrom),
  floatTo: mm(floatTo),
})

/** Rows that share an edge at 0.20 mm, and a gap from 0.30 to 0.32 mm. */
const pumpFloat: EndFloat = {
  saddle: 'M3',
  least: mm(0.08),
  most: mm(0.2),
  washers: [row('standard', 2.5, 0.08, 0.2), row('first', 2.55, 0.2, 0.3), row('second', 2.6, 0.32, 0.4)],
}

function washer(float: number, endFloat = pumpFloat): string {
  const found = washerFor(endFloat, mm(float))
  return found.ok ? found.value.name.text : lineOf(found.problem)
}

describe('thrust washers by the table', () => {
  it.each([
    [0.08, 'standard'],
    [0.2, 'standard'],
    [0.201, 'first'],
    [0.3, 'first'],
    [0.32, 'second'],
    [0.4, 'second'],
  ])('a float of %d mm asks for the %s ones', (float, name) => {
    expect(washer(float)).toBe(name)
  })

  it('are of the lower row on a shared edge, in whatever order the rows are listed', () => {
    const reversed = { ...pumpFloat, washers: pumpFloat.washers.toReversed() }
    expect([washer(0.2), washer(0.2, reversed)]).toEqual(['standard', 'standard'])
  })

  it.each([0.31, 0.079, 0.401])('what %d mm asks for is not defined', (float) => {
    expect(washer(float)).toBe(`washer-not-defined: place=M3, float=${float} mm`)
  })

  it('are never given by a row that does not hold the float', () => {
    checkProperty(
      fc.property(fc.integer({ min: 80_000, max: 400_000 }).map(nanometres), (float) => {
        const found = washerFor(pumpFloat, float)
        if (!found.ok) return
        expect(found.value.floatFrom).toBeLessThanOrEqual(float)
        expect(found.value.floatTo).toBeGreaterThanOrEqual(float)
      }),
    )
  })

  it('are not defined without a table', () => {
    expect(washer(0.1, { ...pumpFloat, washers: [] })).toBe('washer-not-defined: place=M3, float=0.1 mm')
  })
})

describe('a float measured with other washers than the table supposes', () => {
  it('is corrected by what these are thinner', () => {
    // 0.10 mm thinner in all, so 0.10 mm of the float is theirs.
    expect(correctedFloat(mm(0.25), mm(5), mm(4.9))).toBe(mm(0.15))
    expect(correctedFloat(mm(0.25), mm(5), mm(5))).toBe(mm(0.25))
  })
})

describe('a gap measured with a feeler gauge', () => {
  const limits = { least: mm(0.1), most: mm(0.3) }

  it('may be on its limits', () => {
    expect(gapFault('B1', 'side-clearance', mm(0.1), limits)).toBeNull()
    expect(gapFault('B1', 'side-clearance', mm(0.3), limits)).toBeNull()
  })

  it('is reported with its limits when beyond', () => {
    expect(gapFault('B1', 'side-clearance', mm(0.35), limits)!).toMatchObject({
      code: 'gap-outside-limits',
      facts: {
        place: 'B1',
        gap: 'side-clearance',
        reading: { amount: 0.35, decimals: 3, isShort: false, unit: 'mm' },
        least: { amount: 0.1, decimals: 3, isShort: false, unit: 'mm' },
        most: { amount: 0.3, decimals: 3, isShort: false, unit: 'mm' },
      },
    })
    expect(gapFault('M3', 'end-float', mm(0.05), limits)!).toMatchObject({
      code: 'gap-outside-limits',
      facts: {
        place: 'M3',
        gap: 'end-float',
        reading: { amount: 0.05, decimals: 3, isShort: false, unit: 'mm' },
        least: { amount: 0.1, decimals: 3, isShort: false, unit: 'mm' },
        most: { amount: 0.3, decimals: 3, isShort: false, unit: 'mm' },
      },
    })
  })
})
