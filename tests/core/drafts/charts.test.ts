import { describe, expect, it } from 'vitest'
import {
  chartFromRows,
  checkedChart,
  grownChart,
  positionsFromRows,
  withPositions,
  type Rows,
} from '../../../core/drafts/index.ts'
import { engineSpec, type Fit } from '../../../core/engine/index.ts'
import type { Outcome } from '../../../core/problem/index.ts'
import { readTable, tableText } from '../../../renderer/editor/fields/read-table.ts'
import { documentOf } from './document-of-demo.ts'

const skerry = engineSpec.parse(documentOf('skerry-3'))
const mains = skerry.fits.find(({ id }) => id === 'mains')!
const codeOf = (outcome: Outcome<unknown>) => (outcome.ok ? 'read' : outcome.problem.code)

/**
 * Of the mains of skerry-3: bore 55.003 mm in the middle of mark 1, journal 51.997 mm in the middle of mark F, so 3.006 mm for two
 * walls and 0.035 mm of clearance; two of 1.4855 mm, which is the middle of R, leave just that. Each mark on makes 6 µm more room, and
 * two walls of the next grade take 6 µm more.
 */
const byHand = { F: ['R', 'S', 'T'], G: ['S', 'T', 'U'], H: ['T', 'U', 'V'] } as const

describe('a chart that is grown from bands and walls', () => {
  it('is the one that is counted by hand', () => {
    const { cells, unknown } = grownChart(mains)
    expect(unknown).toEqual([])
    expect(cells).toHaveLength(9)
    for (const { housing, journal, upper, lower } of cells) {
      const grade = byHand[journal as 'F'][Number(housing) - 1]
      expect([upper, lower], housing + journal).toEqual([grade, grade])
    }
  })

  it('says for which marks nothing is known', () => {
    const marks = mains.journal.marks.map((each) => (each.mark === 'G' ? { mark: 'G' } : each))
    const { cells, unknown } = grownChart({ ...mains, journal: { ...mains.journal, marks } })
    expect(cells).toHaveLength(6)
    expect(unknown.map(({ housing, journal }) => housing + journal)).toEqual(['1G', '2G', '3G'])
  })
})

describe('an entered chart', () => {
  const withCell = (upper: string): Fit => ({
    ...mains,
    chart: [{ housing: '1', journal: 'F', upper, lower: upper }],
  })

  it('agrees where it has the pair that is counted by hand', () => {
    const [cell] = checkedChart(withCell('R'))
    expect(cell?.other).toBeNull()
    // 3.000 to 3.012 mm of room (55.000 − 52.000, 55.006 − 51.994) less two walls of 1.484 to 1.487 mm: 26 to 44 µm.
    expect(cell?.judged?.clearance).toMatchObject({ least: 26_000, most: 44_000, nominal: 35_000 })
    expect(cell?.judged?.within).toBe('inside')
  })

  it('names the clearance that a slip would give, and what it should be', () => {
    const [cell] = checkedChart(withCell('V'))
    // Four grades on, two walls are 24 µm thicker together: 35 becomes 11 µm.
    expect(cell?.judged?.clearance.nominal).toBe(11_000)
    expect(cell?.judged?.within).toBe('may-be-tight')
    expect(cell?.other).toEqual({ upper: 'R', lower: 'R' })
  })
})

const pasted = (text: string) => chartFromRows(readTable(text), mains)
const whole = ['\tF\tG\tH', '1\tR\tS\tT', '2\tS\tT\tU', '3\tT\tU\tV']

describe('a chart that is pasted', () => {
  it.each([
    ['from a spreadsheet', whole.join('\n')],
    ['with semicolons and a byte order mark', `\uFEFF${whole.join('\r\n').replaceAll('\t', ';')}`],
    [
      'with commas, quotes and blank lines',
      `${whole.map((row) => row.replaceAll('\t', ',').replace('R', '"R"')).join('\n\n')}\n\n`,
    ],
    ['the other way round', '\t1\t2\t3\nF\tR\tS\tT\nG\tS\tT\tU\nH\tT\tU\tV'],
    ['with two grades in a cell', whole.join('\n').replace('\tR\t', '\tr / r\t')],
  ])('%s is read', (_, text) => {
    const read = pasted(text)
    if (!read.ok) throw new Error(read.problem.code)
    const sorted = read.value
      .map(({ housing, journal, upper }) => [housing, journal, upper].join(''))
      .toSorted()
    expect(sorted).toEqual(['1FR', '1GS', '1HT', '2FS', '2GT', '2HU', '3FT', '3GU', '3HV'])
  })

  it.each([
    ['one row short', whole.slice(0, 3).join('\n'), 'chart-rows-missing'],
    [
      'one column short',
      whole.map((row) => row.slice(0, row.lastIndexOf('\t'))).join('\n'),
      'chart-rows-missing',
    ],
    ['with a row twice', [...whole, '1\tR\tS\tT'].join('\n'), 'chart-row-twice'],
    ['with a row too long', whole.join('\n').replace('R\tS\tT', 'R\tS\tT\tU'), 'chart-row-long'],
    ['with a mark that the fit does not have', [...whole, '4\tR\tS\tT'].join('\n'), 'chart-row-unread'],
    ['without its marks', whole.map((row) => row.slice(2)).join('\n'), 'chart-head-unread'],
    ['with a grade that the fit does not have', whole.join('\n').replace('R', 'Z'), 'chart-cell-unread'],
    ['with an empty cell', whole.join('\n').replace('R', ''), 'chart-cell-unread'],
    ['with a formula', whole.join('\n').replace('R', '=A1&"R"'), 'table-cell-formula'],
    ['with a head alone', whole[0]!, 'table-empty'],
    ['that is empty', '', 'table-empty'],
    [
      'of 5,000 cells',
      Array.from({ length: 71 }, () => Array(71).fill('R').join('\t')).join('\n'),
      'chart-too-large',
    ],
  ])('%s is told so', (_, text, code) => {
    expect(codeOf(pasted(text))).toBe(code)
  })
})

describe('positions from a table', () => {
  const read = (text: string, unit: 'mm' | 'in' = 'mm') => positionsFromRows(readTable(text), unit)
  const mm = 1_000_000

  it.each([
    ['with a head', 'x,y,name,group\n46,-44,7,case-bolts'],
    ['with semicolons and decimal commas', '\uFEFFX;Y;Nummer;Gruppe\n46,0;-44,00;7;case-bolts'],
    ['in another order', 'group\tnumber\ty\tx\ncase-bolts\t7\t-44\t46'],
    ['without a head', '46\t-44\t7\tcase-bolts'],
    ['with units', 'x\ty\tname\tgroup\n46 mm\t-4.4e1'.replace('-4.4e1', '-44 mm\t7\tcase-bolts')],
  ])('%s are read', (_, text) => {
    const rows = read(text)
    expect(rows).toEqual({
      ok: true,
      value: [{ at: { x: 46 * mm, y: -44 * mm }, number: '7', group: 'case-bolts' }],
    })
  })

  it('are in inches where the head or the person says so', () => {
    for (const rows of [read('x (in),y (in)\n2,1.5'), read('x,y\n2,1.5', 'in')])
      expect(rows.ok && rows.value[0]!.at).toEqual({ x: 50_800_000, y: 38_100_000 })
  })

  it.each([
    ['without y', 'x,name\n46,7', 'positions-columns-missing'],
    ['with a word for a number', 'x,y\n46,left', 'table-cell-unread'],
    ['with a formula', 'x,y\n46,=B1', 'table-cell-formula'],
    ['of 5,000 rows', ['x,y', ...Array<string>(5000).fill('1,1')].join('\n'), 'table-too-long'],
    ['of a head alone', 'x,y', 'table-empty'],
  ])('%s are told so', (_, text, code) => {
    expect(codeOf(read(text))).toBe(code)
  })

  it('move the fastener that has the number, and add the others', () => {
    const fen = documentOf('fen-1')
    const rows = read('x,y,number,group\n50,44,1,\n100,90,77,Case bolts\n110,90,,')
    if (!rows.ok) throw new Error(rows.problem.code)
    const where = () => 'between the saddles'
    const placed = withPositions(fen, 'joint', rows.value, { usualGroup: 'case-bolts', where })
    if (!placed.ok) throw new Error(placed.problem.code)
    const { fasteners } = placed.value
    expect(fasteners.find(({ id }) => id === 'case-1')!.at).toEqual(['50 mm', '44 mm'])
    expect(fasteners.slice(fen.fasteners.length).map(({ at, number, group }) => [at, number, group])).toEqual(
      [
        [['100 mm', '90 mm'], '77', 'case-bolts'],
        [['110 mm', '90 mm'], '78', 'case-bolts'],
      ],
    )
    expect(engineSpec.safeParse(placed.value).success).toBe(true)
  })

  it('change nothing where one of them is off the face or of no group', () => {
    const fen = documentOf('fen-1')
    const into = (text: string) => {
      const rows = read(text)
      if (!rows.ok) throw new Error(rows.problem.code)
      return codeOf(
        withPositions(fen, 'joint', rows.value, { usualGroup: 'case-bolts', where: () => 'there' }),
      )
    }
    expect(into('x,y\n100,90\n4000,90')).toBe('draft-off-face')
    expect(into('x,y,group\n100,90,bolts of another engine')).toBe('positions-group-unknown')
    expect(into('x,y,number\n100,90,seven')).toBe('positions-number-unread')
  })
})

it('rows are what they are, whatever is in them', () => {
  const rows: Rows = [['', 'F'], ['1']]
  expect(codeOf(chartFromRows(rows, mains))).toBe('chart-cell-unread')
})

it('a file is read in the code that it was saved in', () => {
  const text = 'x;y\n10,5 mm;25 µm\n'
  const bytes = (of: readonly number[]) => new Uint8Array(of).buffer
  const codes = [...text].map((character) => character.charCodeAt(0))
  expect(tableText(bytes([...new TextEncoder().encode(text)]))).toBe(text)
  expect(tableText(bytes([0xef, 0xbb, 0xbf, ...new TextEncoder().encode(text)]))).toBe(text)
  // µ is 0xB5 in the code of Western Windows, as it is in Unicode.
  expect(tableText(bytes(codes))).toBe(text)
  expect(tableText(bytes([0xff, 0xfe, ...codes.flatMap((code) => [code & 0xff, code >> 8])]))).toBe(text)
  expect(tableText(bytes([0xfe, 0xff, ...codes.flatMap((code) => [code >> 8, code & 0xff])]))).toBe(text)
})
