import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { fieldsFor, instrument, LineWatch, mayFeed, typedAs } from '../../../core/instrument/index.ts'
import { longestLine, nothingPending, readLines } from '../../../core/instrument/line-reader.ts'
import { readSentLine } from '../../../core/instrument/read-line.ts'
import { checkProperty } from '../../property.ts'

const bytes = (text: string): Uint8Array => Uint8Array.from(text, (character) => character.charCodeAt(0))
const utf8 = (text: string): Uint8Array => new TextEncoder().encode(text)

/** What a watch takes from chunks that come two seconds apart. */
function heard(...chunks: readonly Uint8Array[]) {
  const watch = new LineWatch()
  return chunks.flatMap((chunk, index) =>
    watch.take(chunk, index * 2000).sent.map((sent) => typedAs(sent, 'N·m')),
  )
}

describe('lines of a serial line', () => {
  it.each(['\r', '\n', '\r\n'])('end with %j', (end) => {
    expect(heard(bytes(`24.3 Nm${end}25,1 Nm${end}`))).toEqual(['24.3 N·m', '25.1 N·m'])
  })

  it('are put together however they are split', () => {
    const whole = bytes('24.3 Nm\r\n25.1\r\n')
    let cuts = 0
    checkProperty(
      fc.property(fc.array(fc.nat(whole.length), { maxLength: 6 }), (at) => {
        const places = [0, ...at.toSorted((one, other) => one - other), whole.length]
        const chunks = places.slice(1).map((end, index) => whole.subarray(places[index], end))
        cuts += 1
        expect(heard(...chunks)).toEqual(['24.3 N·m', '25.1 N·m'])
      }),
    )
    expect(cuts).toBeGreaterThan(50)
  })

  it('of 1 MB without an end keep no more than a reading is long, and the next line is read', () => {
    const megabyte = new Uint8Array(1_000_000).fill(0x37)
    const first = readLines(nothingPending, megabyte)
    expect(first.lines).toEqual([])
    expect(first.pending.bytes.length).toBeLessThanOrEqual(longestLine)
    const then = readLines(first.pending, bytes('7\r\n24.3\r\n'))
    expect(then.lines).toEqual([null, '24.3'])
    expect(heard(megabyte, bytes('\r\n24.3\r\n'))).toEqual(['24.3 N·m'])
  })

  it('never keep more than that, whatever comes, and never throw', () => {
    let read = 0
    checkProperty(
      fc.property(fc.array(fc.uint8Array({ maxLength: 400 }), { maxLength: 8 }), (chunks) => {
        let pending = nothingPending
        const watch = new LineWatch()
        for (const chunk of chunks) {
          ;({ pending } = readLines(pending, chunk))
          expect(pending.bytes.length).toBeLessThanOrEqual(longestLine)
          watch.take(chunk, 0)
          read += 1
        }
        expect(watch.isMidLine).toBe(pending.bytes.length > 0 || pending.isTooLong)
      }),
    )
    expect(read).toBeGreaterThan(50)
  })
})

describe('one line', () => {
  it.each([
    ['24.3', '24.3', null],
    ['  +0012,50 mm', '12.50', 'mm'],
    ['T = 24.3 Nm', '24.3', 'N·m'],
    ['- 0.02 in', '-0.02', 'in'],
    ['-0.00', '0.00', null],
    ['.5 mm', '0.5', 'mm'],
    ['17.7 ft-lb', '17.7', 'lbf·ft'],
    ['24.3 N m;', '24.3', 'N·m'],
    ['90 deg', '90', '°'],
    ['24.3 Nm OK', '24.3', 'N·m'],
    ['\u000224.3\u0003', '24.3', null],
  ])('%j is %s in %s', (line, number, unit) => {
    expect(readSentLine(line)).toEqual({ kind: 'value', number, unit })
  })

  it('has its unit in UTF-8 or in ISO 8859-1', () => {
    for (const sent of [utf8('35 µm\n'), utf8('35 μm\n'), bytes('35 µm\n')])
      expect(heard(sent)).toEqual(['35 µm'])
    expect(heard(utf8('\u22120.2 N·m\n'))).toEqual(['-0.2 N·m'])
  })

  it.each([
    '',
    'OL',
    'Err 4 5',
    '1,234.5',
    '12.3.4',
    '5e3',
    '12 345',
    'A1',
    '--',
    '24.3 25.1',
    '0x1F',
    '1'.repeat(16),
  ])('%j is no reading: a wrong one would be worse than none', (line) => {
    expect(readSentLine(line)).toEqual({ kind: 'noise' })
  })

  it('in a unit that is not known is reported with that unit', () => {
    expect(readSentLine('3.4 bar')).toEqual({ kind: 'unit-unknown', unit: 'bar' })
  })

  it('is a number that can be read back, or none, whatever the text', () => {
    const part = fc.constantFrom('2', '4', '0', '.', ',', '-', '+', ' ', 'N', 'm', '°', '\u2212', 'x')
    const noise = fc.string({ unit: part, maxLength: 12 })
    const digits = fc.string({ unit: fc.constantFrom('0', '2', '4', '.'), minLength: 1, maxLength: 4 })
    const likely = fc
      .tuple(fc.constantFrom('', '-', ' '), digits, fc.constantFrom('', ' mm', ' N·m', '°'))
      .map((texts) => texts.join(''))
    checkProperty(
      fc.property(fc.oneof(noise, likely), (line) => {
        const read = readSentLine(line)
        if (read.kind !== 'value') return
        expect(read.number).toMatch(/^-?(0|[1-9]\d*)(\.\d+)?$/)
        // Every digit that stands in the line is in the number, in order.
        expect(line.replace(/\D/g, '')).toContain(read.number.replace(/\D/g, '').replace(/^0/, ''))
      }),
      { numRuns: 400 },
    )
  })
})

describe('what a line is listened to for', () => {
  it('is no reading where it comes all the time: nothing says which is meant', () => {
    const watch = new LineWatch()
    const taken = [0, 100, 200, 300, 400].map((at) => watch.take(bytes('24.3\n'), at))
    expect(taken.map(({ state }) => state)).toEqual(['good', 'good', 'good', 'streams', 'streams'])
    expect(taken.at(-1)!.sent).toEqual([])
    expect(watch.take(bytes('24.3\n'), 5000)).toMatchObject({ state: 'good', sent: [{ number: '24.3' }] })
  })

  it('is garbled after twenty lines of noise, and good again with the next reading', () => {
    const watch = new LineWatch()
    expect(watch.take(bytes('?\n'.repeat(19)), 0).state).toBe('good')
    expect(watch.take(bytes('?\n'), 0).state).toBe('garbled')
    expect(watch.take(bytes('24.3\n'), 0).state).toBe('good')
  })

  it('knows when it was cut off in the middle of one', () => {
    const watch = new LineWatch()
    watch.take(bytes('24.3\r\n2'), 0)
    expect(watch.isMidLine).toBe(true)
    watch.take(bytes('5.1\r\n'), 0)
    expect(watch.isMidLine).toBe(false)
  })
})

describe('an instrument', () => {
  const written = {
    ...{
      id: 'a',
      name: 'Depth gauge',
      number: 'G 7',
      unit: 'mm',
      deviation: 0.02,
      calibratedOn: '2026-05-04',
    },
    ...{ serial: { baudRate: 9600, dataBits: 8, parity: 'none', stopBits: 1 } },
    ...{ feeds: ['limits', 'torque'], usb: null },
  }

  it('feeds the fields that its owner lets it, of what it measures', () => {
    const gauge = instrument.parse(written)
    expect(mayFeed(gauge, 'mm', 'limits')).toBe(true)
    expect(mayFeed(gauge, 'mm', 'sizes')).toBe(false)
    expect(mayFeed(gauge, 'mm', 'torque')).toBe(false)
    expect(mayFeed(gauge, 'N·m', 'limits')).toBe(false)
    expect(fieldsFor('°')).toEqual(['angle'])
  })

  it.each([
    ['a name of blanks', { name: '  ' }],
    ['a speed that no line has', { serial: { ...written.serial, baudRate: 9601 } }],
    ['a unit of nothing that is read', { unit: 'bar' }],
    ['a deviation below zero', { deviation: -1 }],
    ['a day that is none', { calibratedOn: '2026-02-30' }],
    ['a field that is not there', { feeds: ['anything'] }],
    ['a part too many', { path: '/dev/ttyUSB0' }],
  ])('is refused with %s', (_, change) => {
    expect(instrument.safeParse({ ...written, ...change }).success).toBe(false)
  })
})
