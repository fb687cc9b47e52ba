import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  amountsIn,
  lengthIn,
  lengthOf,
  nanometres,
  parseLength,
  parseTemperature,
  parseTorque,
  readBoth,
} from '../../../core/quantity/index.ts'
import { en } from '../../../core/words/index.ts'
import { sentenceOf } from '../../../core/problem/index.ts'
import { checkProperty } from '../../property.ts'

const shown = amountsIn(en)

describe('a value that is printed in two units', () => {
  it('is the first of the two', () => {
    expect(readBoth('0.010 in (0.25 mm)', parseLength)).toEqual({ ok: true, value: nanometres(254_000) })
    expect(readBoth('0.25 mm (0.010 in)', parseLength)).toEqual({ ok: true, value: nanometres(250_000) })
  })

  it('is a plain value without the second', () => {
    expect(readBoth('0.25 mm', parseLength)).toEqual({ ok: true, value: nanometres(250_000) })
  })

  it('may be as far from the second as both are rounded: half of the last digit of each', () => {
    // 0.25 mm ± 0.005 and 0.010 in ± 0.0005 (12.7 µm): up to 17.7 µm apart. 0.2714 mm is 17.4 µm away, 0.272 mm with a finer
    // digit 18 µm against 13.2.
    expect(readBoth('0.010 in (0.27 mm)', parseLength).ok).toBe(true)
    expect(readBoth('0.010 in (0.272 mm)', parseLength).ok).toBe(false)
    expect(readBoth('0.010 in (0.28 mm)', parseLength).ok).toBe(false)
  })

  it('holds a fraction for exact', () => {
    expect(readBoth('1/2 in (12.7 mm)', parseLength).ok).toBe(true)
    expect(readBoth('1/2 in (12.8 mm)', parseLength).ok).toBe(false)
  })

  it('is refused with what the first would be in the unit of the second', () => {
    const read = readBoth('0.00475 in (0.119 mm)', parseLength)
    expect(!read.ok && sentenceOf(read.problem)).toBe(
      '0.00475 in is 0.12065 mm, and 0.119 mm stands beside it. One of the two is a misprint: find out which is right, and write that one.',
    )
    const warm = readBoth('212 °F (90 °C)', parseTemperature)
    expect(!warm.ok && sentenceOf(warm.problem)).toContain('212 °F is 100 °C, and 90 °C stands beside it')
  })

  it('is refused where either cannot be read', () => {
    expect(readBoth('(0.25 mm)', parseLength).ok).toBe(false)
    expect(readBoth('0.010 in (0.25 Nm)', parseLength)).toMatchObject({
      ok: false,
      problem: { code: 'unit-unknown' },
    })
    expect(readBoth('0.010 (0.25 mm)', parseLength)).toMatchObject({
      ok: false,
      problem: { code: 'unit-missing' },
    })
  })

  it('reads torques and temperatures alike', () => {
    expect(readBoth('30 lbf·ft (41 N·m)', parseTorque).ok).toBe(true)
    expect(readBoth('212 °F (100 °C)', parseTemperature).ok).toBe(true)
  })

  it('agrees whenever the second is the first, rounded', () => {
    checkProperty(
      fc.property(
        fc.integer({ min: 1, max: 99_999 }),
        fc.integer({ min: 2, max: 4 }),
        (tenThousandths, digits) => {
          const inches = (tenThousandths / 10_000).toFixed(4)
          const mm = shown.length(lengthOf(Number(inches), 'in'), 'mm', digits)
          expect(readBoth(`${inches} in (${mm})`, parseLength).ok, `${inches} in (${mm})`).toBe(true)
        },
      ),
    )
  })

  it('disagrees whenever the second is off by more than a digit of each', () => {
    checkProperty(
      fc.property(fc.integer({ min: 1, max: 99_999 }), fc.constantFrom(-1, 1), (tenThousandths, side) => {
        const inches = (tenThousandths / 10_000).toFixed(4)
        const off = lengthIn(lengthOf(Number(inches), 'in'), 'mm') + side * 0.0042
        expect(readBoth(`${inches} in (${off.toFixed(3)} mm)`, parseLength).ok && off > 0).toBe(false)
      }),
    )
  })
})
