import papaparse from 'papaparse'
import {
  checkNote,
  gapTexts,
  measureName,
  type BuildSheet,
  type SheetPull,
} from '../../../core/builds/index.ts'
import { isolated } from '../../../core/problem/index.ts'
import { amountsIn, degrees, inMillimetres, nanometres } from '../../../core/quantity/index.ts'
import { torqueAtFastener } from '../../../core/tightening/index.ts'
import type { BuildTable } from '../../../core/contract/index.ts'
import { en } from '../../../core/words/index.ts'
import { partFields, partRows } from './part-rows.ts'
import { sizeRows } from './size-rows.ts'
import { takenWith, takenWithFields } from './taken-with.ts'

type Cell = string | number | null
export type Row = Readonly<Record<string, Cell>>

/** A table for a spreadsheet: RFC 4180, with a byte order mark, by which spreadsheet programs know UTF-8. */
export function tableOf(sheet: BuildSheet, table: BuildTable): string {
  const { fields, rowsOf } = tables[table]
  const rows = rowsOf(sheet)
  const data = rows.map((row) =>
    Object.fromEntries(Object.entries(row).map(([field, cell]) => [field, asText(cell)])),
  )
  const text = papaparse.unparse({ fields: [...fields], data }, { newline: '\r\n', escapeFormulae: formula })
  return `\u{FEFF}${text}\r\n`
}

/**
 * A cell that begins like a formula would be carried out by the program that opens the file; some take the full-width
 * forms of the signs for the signs, and pass over what cannot be seen before them.
 */
const formula = /^[\s\p{Z}\p{Cf}]*[=+\-@\t\r＝＋－＠﹢﹣﹦﹫]/u

/** Text from right to left keeps to its cell, where the file is looked at as plain text. */
function asText(cell: Cell): Cell {
  return typeof cell === 'string' ? isolated(cell) : cell
}

const pullFields = [
  'entry',
  'time_utc',
  'person',
  'procedure',
  'pull',
  'pass',
  'kind',
  'fastener',
  'where',
  'target',
  'least',
  'most',
  'limits_unit',
  'reading_typed',
  'reading',
  'reading_unit',
  'wrench',
  'wrench_number',
  'wrench_calibrated',
  'adapter',
  'reading_at_fastener',
  'verdict',
  'out_of_order',
  'taken_back',
  'torque',
  'torque_unit',
  'waited_s',
  'wait_shortened',
  'stretch_mm',
  'set_aside',
  'cap',
  'turning_rise_Nm',
  ...takenWithFields,
] as const

function pulls({ runs }: BuildSheet): Row[] {
  return runs.flatMap(({ name, pulls }) =>
    pulls.map((pull) => ({
      entry: pull.seq,
      time_utc: pull.at,
      person: pull.person,
      procedure: name,
      pull: pull.number,
      pass: pull.pass,
      kind: pull.kind,
      fastener: pull.fastener,
      cap: pull.cap,
      where: pull.where ?? pull.instruction,
      ...limitsOf(pull.window),
      reading_typed: pull.reading?.typed ?? null,
      reading: pull.reading?.value ?? null,
      reading_unit: pull.reading?.unit ?? null,
      wrench: pull.held?.wrench ?? null,
      wrench_number: pull.held?.number ?? null,
      wrench_calibrated: pull.held?.calibrated ?? null,
      adapter: pull.held?.adapter === undefined ? null : adapterText(pull.held.adapter),
      reading_at_fastener: pull.reading && torqueAtFastener(pull.reading),
      verdict: pull.verdict,
      out_of_order: pull.outOfOrder,
      taken_back: pull.takenBack?.reason ?? null,
      torque: pull.torque && torqueAtFastener(pull.torque),
      torque_unit: pull.torque?.unit ?? null,
      waited_s: pull.waited?.seconds ?? null,
      wait_shortened: pull.waited?.shortened ?? null,
      stretch_mm: pull.stretch && inMillimetres(pull.stretch),
      set_aside: pull.setAside,
      turning_rise_Nm: pull.turning?.rise ?? null,
      ...takenWith(pull.readWith),
    })),
  )
}

const readingFields = [
  'entry',
  'time_utc',
  'person',
  'what',
  'typed',
  'value',
  'unit',
  'least',
  'most',
  'limits_unit',
  'verdict',
  'counts',
  'note',
  ...takenWithFields,
] as const

/** What was read off a gauge or a wrench, in the order in which it was recorded. */
function readings(sheet: BuildSheet): Row[] {
  const { checks, limits, rings, turnings, runs } = sheet
  const gauges = checks.flatMap((check) => {
    const { step, reading, limits, verdict, counts, seq, at, person } = check
    return reading === null
      ? []
      : [
          {
            entry: seq,
            time_utc: at,
            person,
            what: step,
            typed: reading.typed,
            value: reading.length_nm / 1e6,
            unit: 'mm',
            least: limits && inMillimetres(limits.least),
            most: limits && inMillimetres(limits.most),
            limits_unit: limits && 'mm',
            verdict,
            counts: counts ? 'yes' : 'no',
            note: checkNote(en, check),
            ...takenWith(check.readWith),
          },
        ]
  })
  const measured = limits.map((limit) => ({
    entry: limit.seq,
    time_utc: limit.at,
    person: limit.person,
    what: en.limits.title({ name: measureName(en, limit.measure), at: limit.place }),
    typed: limit.reading.typed,
    value: limit.reading.length_nm / 1e6,
    unit: 'mm',
    least: limit.measure.new.least === undefined ? null : inMillimetres(limit.measure.new.least),
    most: limit.measure.new.most === undefined ? null : inMillimetres(limit.measure.new.most),
    limits_unit: 'mm',
    verdict: limit.verdict,
    counts: limit.counts ? 'yes' : 'no',
    note: limit.accepted ?? limit.replaced ?? '',
    ...takenWith(limit.readWith),
  }))
  const clocks = rings.flatMap(({ seq, at, person, set, piston, gaps, takenOff }) =>
    set.rings.flatMap((ring) => {
      const gap = gaps.find((each) => each.ring === ring.id)
      if (gap === undefined) return []
      const [text] = gapTexts(en, { ...set, rings: [ring] }, [gap])
      return [
        {
          ...{ entry: seq, time_utc: at, person, what: en.rings.title({ piston: piston.name.text }) },
          ...{
            typed: en.rings.gap(text!),
            value: gap.degrees,
            unit: '°',
            least: null,
            most: null,
            limits_unit: null,
          },
          ...{ verdict: '', counts: takenOff === null ? 'yes' : 'no', note: takenOff ?? '' },
          ...takenWith(null),
        },
      ]
    }),
  )
  const turned = turnings.flatMap((turning) =>
    turning.reading === null
      ? []
      : [
          {
            ...{ entry: turning.seq, time_utc: turning.at, person: turning.person, what: turning.step },
            ...{ typed: turning.reading.typed, value: turning.reading.value, unit: turning.reading.unit },
            ...{
              least: turning.limits?.least ?? null,
              most: turning.limits?.most ?? null,
              limits_unit: 'N·m',
            },
            ...{ verdict: turning.verdict, counts: turning.counts ? 'yes' : 'no' },
            note: turning.accepted ?? turning.voided ?? turning.note,
            ...takenWith(turning.readWith),
          },
        ],
  )
  const wrenches = runs.flatMap(({ name, pulls }) =>
    pulls.flatMap(
      ({ pass, fastener, reading, readWith, window, verdict, takenBack, setAside, seq, at, person }) =>
        reading === null
          ? []
          : [
              {
                entry: seq,
                time_utc: at,
                person,
                what: en.record.tables.pull({ procedure: name, pass, fastener: fastener ?? '' }),
                typed: reading.typed,
                value: torqueAtFastener(reading),
                unit: reading.unit,
                least: limitsOf(window).least,
                most: limitsOf(window).most,
                limits_unit: limitsOf(window).limits_unit,
                verdict,
                counts: takenBack === null && setAside === null ? 'yes' : 'no',
                note: takenBack?.reason ?? '',
                ...takenWith(readWith),
              },
            ],
    ),
  )
  const all = [...sizeRows(sheet), ...gauges, ...measured, ...clocks, ...turned, ...wrenches]
  return all.sort((a, b) => Number(a.entry) - Number(b.entry))
}

const tables: {
  readonly [Table in BuildTable]: {
    readonly fields: readonly string[]
    readonly rowsOf: (sheet: BuildSheet) => Row[]
  }
} = {
  pulls: { fields: pullFields, rowsOf: pulls },
  readings: { fields: readingFields, rowsOf: readings },
  parts: { fields: partFields, rowsOf: partRows },
}

type Adapter = NonNullable<NonNullable<SheetPull['held']>['adapter']>

/** `Crowfoot, 101.6 mm at 0°`. */
function adapterText({ name, offset_nm, angle_deg }: Adapter): string {
  return en.record.tables.adapter({
    ...{ name, offset: amountsIn(en).length(nanometres(offset_nm), 'mm', 1) },
    angle: amountsIn(en).angle(degrees(angle_deg)),
  })
}

/** What was to be reached, in the unit it is computed in; reading and limits of a torque may differ in unit. */
function limitsOf(window: SheetPull['window']) {
  switch (window?.kind) {
    case 'torque':
    case 'angle': {
      const { target, least, most, kind } = window
      return { target, least, most, limits_unit: kind === 'angle' ? '°' : 'N·m' }
    }
    case 'length':
      return {
        target: null,
        least: inMillimetres(window.least),
        most: inMillimetres(window.most),
        limits_unit: 'mm',
      }
    case 'turning': {
      const { least, most } = window
      return { target: null, least, most, limits_unit: 'N·m' }
    }
    case 'free-length':
    case null:
    case undefined:
      return { target: null, least: null, most: null, limits_unit: null }
    default:
      return window satisfies never
  }
}
