import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  expectedSize,
  readGrid,
  readSize,
  type ExpectedReading,
  type TypedReading,
} from '../../../../core/bearing/index.ts'
import { lengthUnits, type LengthUnit } from '../../../../core/quantity/index.ts'
import { mm, pumpMains } from '../fits.ts'
import { checkProperty } from '../../../property.ts'
import { lineOf } from '../../../problem-line.ts'

const bore: ExpectedReading = { place: 'M3', what: 'bore', between: { least: mm(62), most: mm(65) } }

function read(typed: string, unit: LengthUnit, expected = bore) {
  const size = readSize(typed, unit, expected)
  return size.ok ? size.value : lineOf(size.problem)
}

describe('a reading off a gauge', () => {
  it('is taken in the unit of the gauge, or in the one typed with it', () => {
    expect(read('63.508', 'mm')).toBe(mm(63.508))
    expect(read('63,508', 'mm')).toBe(mm(63.508))
    expect(read('2.5003', 'in')).toBe(63_507_620)
    expect(read('2.5003 in', 'mm')).toBe(63_507_620)
    expect(read('63508 µm', 'mm')).toBe(mm(63.508))
  })

  it('in the wrong unit is asked about, not guessed at', () => {
    expect(read('2.5', 'mm')).toBe(
      'reading-in-other-unit: place=M3, what=bore, typed=2.5, least=62 mm, most=65 mm, unit=in, meant=63.5 mm',
    )
    expect(read('63.5', 'in')).toMatch(/typed=63\.5, .*unit=mm, /)
    expect(read('2500', 'mm')).toMatch(/unit=thou, meant=63\.5 mm$/)
    expect(read('2.5 mm', 'in')).toMatch(/typed=2\.5 mm, .*unit=in, /)
  })

  it('that fits in no unit is to be read again', () => {
    expect(read('36.5', 'mm')).toBe(
      'reading-far-off: place=M3, what=bore, typed=36.5, least=62 mm, most=65 mm',
    )
  })

  it.each(['-5', '0', '-63.5'])('of %s is refused', (typed) => {
    expect(read(typed, 'mm')).toBe(`size-not-above-zero: place=M3, what=bore, typed=${typed}`)
  })

  it.each([
    ['abc', /^number-unreadable: typed=abc$/],
    ['1e999', /^unit-unknown: typed=1e999, /],
    ['', /^number-missing$/],
    ['63.5 furlongs', /^unit-unknown: typed=63\.5 furlongs, /],
    ['1,234.5', /^number-ambiguous: typed=1,234\.5$/],
  ])('of "%s" is refused', (typed, refusal) => {
    expect(read(typed, 'mm')).toMatch(refusal)
  })

  it('is taken when it is in the range that was expected, and never when it is not', () => {
    const mmPer = { mm: 1, in: 25.4, µm: 0.001, thou: 0.0254 }
    const near = fc.double({ min: 60, max: 67, noNaN: true })
    const anyReading = fc.constantFrom(...lengthUnits).chain((unit) =>
      fc.record({
        unit: fc.constant(unit),
        shown: fc.oneof(
          near.map((inMm) => inMm / mmPer[unit]),
          fc.double({ min: 0, max: 1e5, noNaN: true }),
        ),
      }),
    )
    let readings = 0
    checkProperty(
      fc.property(anyReading, ({ unit, shown }) => {
        const typed = shown.toFixed(4)
        const inMm = Number(typed) * mmPer[unit]
        fc.pre(Math.abs(inMm - 62) > 1e-6 && Math.abs(inMm - 65) > 1e-6) // the edges have their own example
        const size = readSize(typed, unit, bore)
        expect(size.ok).toBe(inMm > 62 && inMm < 65)
        if (!size.ok) return
        readings += 1
        expect(Math.abs(size.value - inMm * 1e6)).toBeLessThanOrEqual(1)
      }),
      { numRuns: 1_000 },
    )
    expect(readings).toBeGreaterThan(100)
  })

  it.each(['62', '65'])('of %s mm, the edge of the range, is taken', (typed) => {
    expect(read(typed, 'mm')).toBe(mm(Number(typed)))
  })
})

describe('the size that a reading is expected to have', () => {
  it('spans the bands of the marks and 3 % beyond', () => {
    expect(expectedSize(pumpMains, 'bore')).toEqual({ least: mm(56 * 0.97), most: mm(56.018 * 1.03) })
  })

  it('spans undersizes for journals and for walls', () => {
    expect(expectedSize(pumpMains, 'journal')!.least).toBe(mm((51.982 - 0.5) * 0.97))
    expect(expectedSize(pumpMains, 'wall')).toEqual({
      least: mm(1.986 * 0.75),
      most: mm((2.001 + 0.25) * 1.25),
    })
  })

  it('is not known where the spec has no bands', () => {
    const marks = [{ mark: '1' }]
    expect(expectedSize({ ...pumpMains, housing: { name: 'the case', marks } }, 'bore')).toBeNull()
  })

  it('tells every unit from every other for every part', () => {
    for (const what of ['bore', 'journal', 'wall'] as const) {
      const { least, most } = expectedSize(pumpMains, what)!
      expect(most / least).toBeLessThan(25.4)
    }
  })
})

describe('an entry grid', () => {
  const cells = (...typed: string[][]) =>
    typed.map((plane) => plane.map((each): TypedReading => ({ typed: each, unit: 'mm' })))
  const shape = { planes: 2, directions: 2 }

  it('is read plane by plane, each cell in its own unit', () => {
    const grid = readGrid(
      [
        [
          { typed: '63.501', unit: 'mm' },
          { typed: '2.5', unit: 'in' },
        ],
        [
          { typed: '63.503', unit: 'mm' },
          { typed: '63.504', unit: 'mm' },
        ],
      ],
      shape,
      bore,
    )
    expect(grid).toEqual({
      ok: true,
      value: [
        [mm(63.501), mm(63.5)],
        [mm(63.503), mm(63.504)],
      ],
    })
  })

  it('points at the cell that is wrong', () => {
    const grid = readGrid(cells(['63.501', '63.502'], ['2.5', '63.504']), shape, bore)
    expect(grid).toMatchObject({ ok: false, problem: { code: 'reading-in-other-unit', path: '1.0' } })
  })

  it('must have every reading that the spec asks for', () => {
    const grid = readGrid(cells(['63.501', '63.502'], ['63.503']), shape, bore)
    expect(grid.ok ? '' : lineOf(grid.problem)).toBe(
      'readings-missing: place=M3, what=bore, planes=2, directions=2',
    )
  })
})
