import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { readMarks } from '../../../../core/bearing/index.ts'
import { sentenceOf } from '../../../../core/problem/index.ts'
import type { MarkedPart } from '../../../../core/engine/index.ts'
import { pumpMains } from '../fits.ts'
import { checkProperty } from '../../../property.ts'

const saddles = pumpMains.positions
const theCase = pumpMains.housing

function partMarked(...marks: string[]): MarkedPart {
  return { name: 'the case', marks: marks.map((mark) => ({ mark })) }
}

function read(typed: string, part = theCase, positions: readonly string[] = saddles) {
  const marks = readMarks(typed, part, positions)
  return marks.ok ? marks.value : sentenceOf(marks.problem)
}

describe('marks typed off a part', () => {
  it.each(['2 2 3 1', '2231', '2,2,3,1', '2, 2; 3 1', '2-2-3-1', '22 31', '  2 2\t3 1 '])(
    'are read from "%s"',
    (typed) => {
      expect(read(typed)).toEqual(['2', '2', '3', '1'])
    },
  )

  it.each(['2 ? 3 1', '2?31', '2 - 3 1', '2 – 3 1', '2,?,3,1'])(
    'may have a worn one, as in "%s"',
    (typed) => {
      expect(read(typed)).toEqual(['2', null, '3', '1'])
    },
  )

  it('take upper and lower case as one', () => {
    expect(read('bAcB', pumpMains.journal)).toEqual(['B', 'A', 'C', 'B'])
  })

  it('tell upper from lower case where the part does', () => {
    expect(read('a A A a', partMarked('A', 'a'))).toEqual(['a', 'A', 'A', 'a'])
  })

  it('may have two characters, cut to the longest', () => {
    expect(read('A1 A B A1', partMarked('A', 'A1', 'B'))).toEqual(['A1', 'A', 'B', 'A1'])
    expect(read('A1ABA1', partMarked('A', 'A1', 'B'))).toEqual(['A1', 'A', 'B', 'A1'])
  })

  it('may be folded that mean something else here', () => {
    expect(read('- + - +', partMarked('-', '+'))).toEqual(['-', '+', '-', '+'])
    expect(read('-+-+', partMarked('-', '+'))).toEqual(['-', '+', '-', '+'])
    expect(read('? X X ?', partMarked('?', 'X'))).toEqual(['?', 'X', 'X', '?'])
  })

  it('are not guessed at where they can be cut in two ways', () => {
    expect(read('III', partMarked('I', 'II'), ['M1', 'M2'])).toBe(
      'the case: “III” can be read as marks in more than one way. Put a space between the marks.',
    )
    expect(read('I II', partMarked('I', 'II'), ['M1', 'M2'])).toEqual(['I', 'II'])
    // II II I, II I II, I II II: three marks in three ways.
    expect(read('IIIII', partMarked('I', 'II'), ['M1', 'M2', 'M3'])).toContain('in more than one way')
  })

  it('say which is not known, where it stands, and which are', () => {
    expect(read('2 2 X 1')).toBe(
      'M3: “X” is not a mark of the case. Known marks are 1, 2, 3; type ? for one that is worn away.',
    )
    expect(read('22x1')).toMatch(/^M3: “x” is not a mark/)
    expect(read('2 2 ABC 1')).toMatch(/^M3: “ABC” is not a mark/)
    // A longer word, or one that begins with a mark, is told by the character that stopped us.
    expect(read('2 2 ABCD')).toMatch(/^M3: “A” is not a mark/)
    expect(read('2 2x')).toMatch(/^M3: “x” is not a mark/)
  })

  it('say how many were read when there are too few or too many', () => {
    expect(read('2 2 3')).toBe(
      'the case: 3 of 4 marks were read. Type one for each place, ? for one that is worn away.',
    )
    expect(read('')).toMatch(/^the case: 0 of 4 marks/)
    expect(read('22311')).toBe(
      'the case: 5 marks were read, but there are 4 places. Take out what is not a mark.',
    )
  })

  it('come back as they were typed, however they are parted', () => {
    const mark = fc.constantFrom('1', '2', '3', null)
    const marks = fc.array(mark, { minLength: 1, maxLength: 40 })
    checkProperty(
      fc.property(marks, fc.constantFrom('', ' ', ',', ', ', ';'), (marks, gap) => {
        const positions = marks.map((_, index) => `M${index + 1}`)
        expect(read(marks.map((each) => each ?? '?').join(gap), theCase, positions)).toEqual(marks)
      }),
    )
  })

  it('never make anything but one known mark for each place out of any text', () => {
    checkProperty(
      fc.property(
        fc.string({ unit: fc.constantFrom('1', '2', '3', '?', '-', ' ', 'x'), maxLength: 12 }),
        (typed) => {
          const marks = readMarks(typed, theCase, saddles)
          if (!marks.ok) {
            expect(sentenceOf(marks.problem)).toMatch(/\.$/)
            return
          }
          expect(marks.value).toHaveLength(4)
          for (const mark of marks.value) expect(['1', '2', '3', null]).toContain(mark)
        },
      ),
    )
  })
})
