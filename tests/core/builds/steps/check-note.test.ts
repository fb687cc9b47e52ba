import { describe, expect, it } from 'vitest'
import { checkNote } from '../../../../core/builds/index.ts'
import { en } from '../../../../core/words/index.ts'

const washersByTable = { name: 'B', thickness_nm: 2_500_000 }

describe('what stands beside the reading of a check', () => {
  it('is the person’s own words, then the washers of the table and those that were in', () => {
    expect(checkNote(en, { note: 'New washers on order', washersByTable, fittedWashers: 'A' })).toBe(
      'New washers on order. Washers by the table: B, 2.500 mm each, measured with A washers',
    )
  })

  it('has one full stop after words that end with one', () => {
    expect(checkNote(en, { note: 'On order.', washersByTable: null })).toBe('On order. Washers: not defined')
  })

  it('says where the table has no washers for such a gap', () => {
    expect(checkNote(en, { note: '', washersByTable: null })).toBe('Washers: not defined')
  })

  it('says which washers were chosen by their thickness, and what it was measured with', () => {
    const washer = (name: string, thickness_nm: number) => ({ name, thickness_nm })
    const thrustPair = {
      first: washer('A', 2_500_000),
      second: washer('B', 2_550_000),
      float_nm: 160_000,
    }
    expect(checkNote(en, { note: '', thrustPair, measuredWith: ['A', 'A'] })).toBe(
      'Washers: A, 2.500 mm, and B, 2.550 mm, for an end float of 0.160 mm, measured with two A washers',
    )
    expect(checkNote(en, { note: '', thrustPair: null, measuredWith: [] })).toBe(
      'Washers: none of the spec fit, measured without washers',
    )
  })

  it('is the note alone in the entry of an earlier version', () => {
    expect(checkNote(en, { note: 'Washers by the table: B, 2.500 mm each' })).toBe(
      'Washers by the table: B, 2.500 mm each',
    )
    expect(checkNote(en, { note: '' })).toBe('')
  })
})
