import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { readMarks } from '../../../../core/bearing/index.ts'
import type { MarkedPart } from '../../../../core/engine/index.ts'
import { pumpMains } from '../fits.ts'
import { checkProperty } from '../../../property.ts'
import { sentenceOf } from '../../../../core/problem/index.ts'
import { lineOf } from '../../../problem-line.ts'

const saddles = pumpMains.positions
const theCase = pumpMains.housing

function partMarked(...marks: string[]): MarkedPart {
  return { name: 'the case', marks: marks.map((mark) => ({ mark })) }
}

function read(typed: string, part = theCase, positions: readonly string[] = saddles) {
  const marks = readMarks(typed, part, positions)
  return marks.ok ? marks.value : lineOf(marks.problem)
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
    expect(read('III', partMarked('I', 'II'), ['M1', 'M2'])).toBe('marks-ambiguous: part=the case, typed=III')
    expect(read('I II', partMarked('I', 'II'), ['M1', 'M2'])).toEqual(['I', 'II'])
    // II II I, II I II, I II II: three marks in three ways.
    expect(read('IIIII', partMarked('I', 'II'), ['M1', 'M2', 'M3'])).toContain('marks-ambiguous')
  })

  it('say which is not known, where it stands, and which are', () => {
    expect(read('2 2 X 1')).toBe('mark-unknown: position=M3, part=the case, mark=X, known=1 2 3')
    expect(read('22x1')).toMatch(/^mark-unknown: position=M3, .*mark=x,/)
    expect(read('2 2 ABC 1')).toMatch(/^mark-unknown: position=M3, .*mark=ABC,/)
    // A longer word, or one that begins with a mark, is told by the character that stopped us.
    expect(read('2 2 ABCD')).toMatch(/^mark-unknown: position=M3, .*mark=A,/)
    expect(read('2 2x')).toMatch(/^mark-unknown: position=M3, .*mark=x,/)
  })

  it('say how many were read when there are too few or too many', () => {
    expect(read('2 2 3')).toBe('marks-too-few: part=the case, read=3, expected=4')
    expect(read('')).toMatch(/^marks-too-few: part=the case, read=0, expected=4/)
    expect(read('22311')).toBe('marks-too-many: part=the case, read=5, expected=4')
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
