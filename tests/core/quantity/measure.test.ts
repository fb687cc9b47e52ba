import { describe, expect, it } from 'vitest'
import { withUnit } from '../../../core/quantity/index.ts'

describe('a reading as it was typed', () => {
  it('gets the unit of the scale where none was typed along', () => {
    expect(withUnit('24', 'N·m')).toBe('24 N·m')
    expect(withUnit(' 24,5 ', 'N·m')).toBe('24,5 N·m')
    expect(withUnit('-0.02', 'mm')).toBe('-0.02 mm')
    expect(withUnit('90', '°')).toBe('90°')
  })

  it('keeps the unit that was typed', () => {
    expect(withUnit('30.2 lbf.ft', 'N·m')).toBe('30.2 lbf.ft')
    expect(withUnit('0.006"', 'mm')).toBe('0.006"')
    expect(withUnit('90°', '°')).toBe('90°')
  })
})
