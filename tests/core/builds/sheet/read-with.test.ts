import papaparse from 'papaparse'
import { describe, expect, it } from 'vitest'
import { buildSheet, recordedEvent, type BuildCommand } from '../../../../core/builds/index.ts'
import { readWithText, type ReadWith } from '../../../../core/instrument/index.ts'
import { en } from '../../../../core/words/index.ts'
import { tableOf } from '../../../../electron/requests/tables/tables.ts'
import { nextCommand } from '../next-command.ts'
import { demoEngine, Workshop } from '../workshop.ts'

const gauge: ReadWith = {
  ...{ came: 'by-line', name: 'Depth gauge', number: '12', unit: 'mm' },
  ...{ deviation: 0.01, calibratedOn: '2026-05-01' },
}
const wrench: ReadWith = {
  ...{ came: 'by-line', name: 'Torque wrench', number: '', unit: 'N·m' },
  ...{ deviation: 4, calibratedOn: null },
}

/** The command with what its reading was taken with, where it has one. */
function readWith(command: BuildCommand): BuildCommand {
  switch (command.type) {
    case 'pull':
      return { ...command, readWith: wrench }
    case 'turn-crank':
      return { ...command, readWith: wrench }
    case 'answer-check':
    case 'measure-limit':
      return { ...command, readWith: gauge }
    default:
      return command
  }
}

describe('with what a reading was taken', () => {
  const shop = new Workshop(demoEngine('firth-v8'))
  while (shop.state.checks['side-play'] === undefined) shop.does(readWith(nextCommand(shop.spec, shop.state)))
  const sheet = buildSheet(shop.spec, shop.entries)
  const rowsOf = (table: 'pulls' | 'readings') =>
    papaparse.parse<Record<string, string>>(tableOf(sheet, table).replace(/^\u{FEFF}/u, ''), {
      ...{ header: true, skipEmptyLines: true },
    }).data

  it('stands with it in the record, and with nothing that has no reading', () => {
    const withReading = shop.entries.filter(({ event }) => 'reading' in event && event.reading !== null)
    const without = shop.entries.filter(({ event }) => 'reading' in event && event.reading === null)
    const kept = (entries: typeof withReading) =>
      entries.map(({ event }) => ('readWith' in event ? event.readWith : undefined))
    expect(withReading.length).toBeGreaterThan(40)
    expect(without.length).toBeGreaterThan(10)
    expect(kept(withReading).every((each) => each?.came === 'by-line')).toBe(true)
    expect(kept(without).every((each) => each === undefined)).toBe(true)
  })

  it('stands beside every kind of reading on the sheet', () => {
    expect(sheet.checks.filter(({ reading }) => reading !== null).map((row) => row.readWith)).toEqual([
      gauge,
      gauge,
    ])
    expect(new Set(sheet.limits.map((row) => row.readWith))).toEqual(new Set([gauge]))
    expect(sheet.turnings.map((row) => row.readWith)).toEqual([wrench])
    const pulls = sheet.runs.flatMap((run) => run.pulls)
    expect(pulls.filter(({ reading, readWith }) => (reading === null) !== (readWith === null))).toEqual([])
  })

  it('is in both tables, its deviation in the unit that it is of', () => {
    expect(rowsOf('pulls').find(({ reading }) => reading !== '')).toMatchObject({
      ...{ read_with: 'by-line', instrument: 'Torque wrench', instrument_number: '' },
      ...{ deviation: '4', deviation_unit: '%', instrument_calibrated: '' },
    })
    expect(rowsOf('readings').find(({ what }) => what === 'End float')).toMatchObject({
      ...{ read_with: 'by-line', instrument: 'Depth gauge', instrument_number: '12' },
      ...{ deviation: '0.01', deviation_unit: 'mm', instrument_calibrated: '2026-05-01' },
    })
  })

  it('is not asked of an entry of an earlier version', () => {
    const entry = shop.entries.find(({ event }) => event.type === 'limit-measured')!
    const { readWith: _, ...event } = entry.event as Extract<typeof entry.event, { type: 'limit-measured' }>
    const old = { ...entry, event }
    expect(recordedEvent.parse(old)).toEqual(old)
    expect(
      buildSheet(shop.spec, [...shop.entries.slice(0, entry.seq - 1), old]).limits[0]?.readWith,
    ).toBeNull()
  })
})

describe('bores and journals', () => {
  it('keep it cell by cell, and stand in the table of readings', () => {
    const shop = new Workshop(demoEngine('tarn-4'))
    shop.worksUpTo('choose-mains')
    const cells = [
      ['62.005', '62.006', '62.005'],
      ['62.005', '62.007', '62.005'],
    ].map((plane, at) =>
      plane.map((typed, direction) => ({
        ...{ typed, unit: 'mm' as const },
        readWith: at === 0 && direction === 0 ? ({ came: 'by-hand' } as const) : gauge,
      })),
    )
    shop.does({
      ...{ type: 'note-readings', step: 'choose-mains', position: 'M1', part: 'housing', cells },
      ...{ partTemperature: '', gaugeTemperature: '', uncertainty: '', sure: true },
    })
    const text = tableOf(buildSheet(shop.spec, shop.entries), 'readings').replace(/^\u{FEFF}/u, '')
    const rows = papaparse.parse<Record<string, string>>(text, { header: true, skipEmptyLines: true }).data
    expect(rows.map(({ typed, read_with, instrument }) => [typed, read_with, instrument])).toEqual([
      ['62.005', 'by-hand', ''],
      ['62.006', 'by-line', 'Depth gauge'],
      ['62.005', 'by-line', 'Depth gauge'],
      ['62.005', 'by-line', 'Depth gauge'],
      ['62.007', 'by-line', 'Depth gauge'],
      ['62.005', 'by-line', 'Depth gauge'],
    ])
    expect(rows[0]!.what).toBe('Main bearings, M1, Block, plane 1, direction 1')
  })
})

describe('in words', () => {
  it('names the instrument, how far it may be off, and its calibration', () => {
    expect(readWithText(en, gauge)).toBe(
      'read with Depth gauge 12, may be off by ±0.01 mm, calibrated on 1\u00a0May\u00a02026',
    )
    expect(readWithText(en, wrench)).toBe(
      'read with Torque wrench, may be off by ±4.0 %, no calibration is noted',
    )
    expect(readWithText(en, { came: 'typed' })).toBe('sent by an instrument that types')
    expect([null, undefined, { came: 'by-hand' } as const].map((each) => readWithText(en, each))).toEqual([
      '',
      '',
      '',
    ])
  })
})
