import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { marksByPlace, readMarks, withMarkAt } from '../../../../core/bearing/index.ts'
import type { MarkedPart } from '../../../../core/engine/index.ts'

const part = (...marks: string[]) => ({ name: 'Crank', marks: marks.map((mark) => ({ mark })) }) as MarkedPart
const digits = part('1', '2', '3')
const positions = ['M1', 'M2', 'M3', 'M4']

describe('where each mark stands in what was typed', () => {
  it('is found with or without spaces, dashes and worn ones', () => {
    expect(marksByPlace('2 1-3 ?', digits).map(({ mark }) => mark)).toEqual(['2', '1', '3', null])
    expect(marksByPlace('2131', digits).map(({ from, to }) => [from, to])).toEqual([
      [0, 1],
      [1, 2],
      [2, 3],
      [3, 4],
    ])
  })

  it('is where it stands in the whole string: after blanks, between dashes, as dashes and with dashes in it', () => {
    const places = (typed: string, known = digits) =>
      marksByPlace(typed, known).map(({ from, to, mark }) => [from, to, mark])
    expect(places('  1-23')).toEqual([
      [2, 3, '1'],
      [4, 5, '2'],
      [5, 6, '3'],
    ])
    expect(places('1 -- 2')).toEqual([
      [0, 1, '1'],
      [2, 4, null],
      [5, 6, '2'],
    ])
    expect(places('3 1-1', part('1-1', '3'))).toEqual([
      [0, 1, '3'],
      [2, 5, '1-1'],
    ])
  })

  it('keeps the places of what comes after a letter that is no mark', () => {
    expect(marksByPlace('22x1', digits).map(({ mark }) => mark)).toEqual(['2', '2', undefined, '1'])
  })

  it('reads small letters for large ones, where the marks are not told apart by that', () => {
    const marks = (typed: string, ...known: string[]) =>
      marksByPlace(typed, part(...known)).map(({ mark }) => mark)
    expect(marks('a B', 'A', 'B')).toEqual(['A', 'B'])
    expect(marks('a A', 'A', 'a')).toEqual(['a', 'A'])
    expect(marks('b', 'A', 'a', 'B')).toEqual([undefined])
  })

  it('takes a dash that stands alone for a worn mark, unless it is one', () => {
    const marks = (...known: string[]) =>
      marksByPlace('1 - 2', part('1', '2', ...known)).map(({ mark }) => mark)
    expect(marks()).toEqual(['1', null, '2'])
    expect(marks('-')).toEqual(['1', '-', '2'])
  })

  it('takes a short word that is no mark as one place, and a longer one letter by letter', () => {
    const places = (typed: string) =>
      marksByPlace(typed, digits).map(({ from, to, mark }) => [from, to, mark])
    expect(places('xyz 2')).toEqual([
      [0, 3, undefined],
      [4, 5, '2'],
    ])
    expect(places('wxyz')).toHaveLength(4)
    // A sign of two units is one character.
    expect(places('1😀2')).toEqual([
      [0, 1, '1'],
      [1, 3, undefined],
      [3, 4, '2'],
    ])
    // After a mark of the same run a letter stands for one place.
    expect(places('1xy')).toEqual([
      [0, 1, '1'],
      [1, 2, undefined],
      [2, 3, undefined],
    ])
  })
})

describe('correcting one place', () => {
  it('leaves the rest of the string as it was typed', () => {
    expect(withMarkAt('2231', digits, 2, '1')).toBe('2211')
    expect(withMarkAt('2,2, x  1', digits, 2, '3')).toBe('2,2, 3  1')
    expect(withMarkAt('22x1', digits, 2, '3')).toBe('2231')
    expect(withMarkAt('2231', digits, 0, '?')).toBe('?231')
  })

  it('says of places that were not typed yet that they are still to read', () => {
    expect(withMarkAt('2', digits, 3, '1')).toBe('2 · · 1')
    expect(withMarkAt('', digits, 0, '1')).toBe('1')
  })

  it('sets it apart where it would run into its neighbours', () => {
    const long = part('1', '11', '2')
    expect(withMarkAt('212', long, 0, '11')).toBe('11 12')
  })

  it('is what is read afterwards, and changes no other place', () => {
    let corrected = 0
    fc.assert(
      fc.property(
        fc.array(fc.constantFrom('1', '2', '3', '?'), { minLength: 4, maxLength: 4 }),
        fc.constantFrom('', ' ', ',', ', '),
        fc.nat(3),
        fc.constantFrom('1', '2', '3', '?'),
        (marks, between, place, mark) => {
          const read = readMarks(withMarkAt(marks.join(between), digits, place, mark), digits, positions)
          const expected = marks
            .map((each, at) => (at === place ? mark : each))
            .map((each) => (each === '?' ? null : each))
          expect(read).toEqual({ ok: true, value: expected })
          corrected++
        },
      ),
    )
    expect(corrected).toBeGreaterThan(50)
  })
})
