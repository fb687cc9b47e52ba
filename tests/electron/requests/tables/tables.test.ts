import papaparse from 'papaparse'
import { describe, expect, it } from 'vitest'
import { buildSheet } from '../../../../core/builds/index.ts'
import { tableOf } from '../../../../electron/requests/tables/tables.ts'
import { nextCommand } from '../../../core/builds/next-command.ts'
import { sumpByStretch } from '../../../core/builds/sump-by-stretch.ts'
import { demoEngine, Workshop } from '../../../core/builds/workshop.ts'
import { folder, store } from '../../bench.ts'
import { finishBuild } from '../../mechanic.ts'
import { asking } from '../asking.ts'

async function finished(name = 'Ferry, port engine', person = 'Ana Ruiz') {
  const { get, act, ask } = asking(await store(folder()))
  const begun = await get('builds.start', { engine: 'skerry-3', name, serial: 'F-201', person })
  await finishBuild({
    build: begun.line.id,
    specText: begun.specText,
    events: begun.events,
    act: (build, after, command) => ask('builds.act', { build, after, person, command }),
  })
  const table = async (which: 'pulls' | 'readings') => {
    const { text, fileName } = await get('builds.csv', { build: begun.line.id, table: which })
    const read = papaparse.parse<Record<string, string>>(text.replace(/^\u{FEFF}/u, ''), {
      header: true,
      skipEmptyLines: true,
    })
    return { text, fileName, rows: read.data, errors: read.errors }
  }
  const { events } = await get('builds.open', { build: begun.line.id })
  return { table, events, act, build: begun.line.id }
}

describe('the table of pulls', () => {
  it('has a row for each pull, in order, and nothing is lost on the way', async () => {
    const { table, events } = await finished()
    const { rows, errors } = await table('pulls')
    const pulls = events.filter(({ event }) => event.type === 'fastener-pulled')
    expect(errors).toEqual([])
    expect(rows).toHaveLength(pulls.length)
    expect(rows.map(({ entry }) => Number(entry)).sort((a, b) => a - b)).toEqual(pulls.map(({ seq }) => seq))
    expect(rows[0]).toMatchObject({ person: 'Ana Ruiz', verdict: 'unread', taken_back: '' })
  })

  it('names the unit of every limit', async () => {
    const { rows } = await (await finished()).table('pulls')
    for (const row of rows.filter(({ target }) => target !== '')) expect(row.limits_unit).toMatch(/^(N·m|°)$/)
    expect(rows.some(({ limits_unit }) => limits_unit === '°')).toBe(true)
  })

  it('has a byte order mark, the line ends of RFC 4180, and a name with number and head code', async () => {
    const { text, fileName } = await (await finished()).table('pulls')
    expect(text.codePointAt(0)).toBe(0xfeff)
    expect(text.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/)
    expect(fileName).toMatch(/^2026-001 ferry-port-engine \d+-[0-9a-f]{16}\.pulls\.csv$/)
  })

  it.each(['=HYPERLINK("http://x.test")', '+1', '-1', '@SUM(A1)', '\t=1'])(
    'is no way to a formula: a person called %s',
    async (person) => {
      const { rows } = await (await finished('Pump', `${person} A`)).table('pulls')
      expect(rows[0]?.person).toBe(`'${person.trim()} A`)
    },
  )
})

/** The pulls of a build in memory, as the table has them. */
function pullsOf(shop: Workshop) {
  const text = tableOf(buildSheet(shop.spec, shop.entries), 'pulls').replace(/^\u{FEFF}/u, '')
  return papaparse.parse<Record<string, string>>(text, { header: true, skipEmptyLines: true }).data
}

describe('beside a pull', () => {
  it('stands the wrench with its number and calibration, where one of the shop was used', () => {
    const shop = new Workshop(demoEngine('skerry-3'))
    shop.worksUpTo('rods-on')
    while ((shop.state.runs['rods']?.pulls.length ?? 0) < 6) shop.goesOn()
    const command = nextCommand(shop.spec, shop.state)
    if (command.type !== 'pull') throw new Error('a pull comes next')
    shop.does({ ...command, held: { wrench: 'Click 60', number: '4711', calibrated: '2026-03-31' } })
    expect(pullsOf(shop).at(-1)).toMatchObject({
      wrench: 'Click 60',
      wrench_number: '4711',
      wrench_calibrated: '2026-03-31',
    })
  })

  it('stands by how much it became longer, in mm, and at which torque', () => {
    const shop = new Workshop(sumpByStretch())
    shop.worksThrough('sump-run')
    const stretched = pullsOf(shop).filter(({ kind }) => kind === 'tighten-to-stretch')
    expect(stretched.length).toBeGreaterThan(10)
    for (const { stretch_mm, torque, torque_unit } of stretched) {
      expect(Number(stretch_mm)).toBeGreaterThanOrEqual(0.02)
      expect(Number(stretch_mm)).toBeLessThanOrEqual(0.04)
      expect(torque_unit).toBe('N·m')
      expect(Number(torque)).toBeGreaterThanOrEqual(5)
    }
  })

  it('stands why it does not count any more', () => {
    const shop = new Workshop(demoEngine('skerry-3'))
    shop.worksUpTo('rods-on')
    while ((shop.state.runs['rods']?.pulls.length ?? 0) < 3) shop.goesOn()
    shop.does({ type: 'restart-run', procedure: 'rods', pass: 0, reason: 'Interrupted' })
    expect(pullsOf(shop).map(({ set_aside }) => set_aside)).toEqual(Array(3).fill('run-restarted'))
  })
})

describe('the table of readings', () => {
  it('has what the gauges showed, in mm, beside what was typed', async () => {
    const { table, events } = await finished()
    const { rows } = await table('readings')
    const readings = events.flatMap(({ seq, event }) =>
      event.type === 'check-answered' && event.reading !== null ? [{ seq, reading: event.reading }] : [],
    )
    expect(readings.length).toBeGreaterThan(0)
    for (const { seq, reading } of readings) {
      const row = rows.find(({ entry }) => Number(entry) === seq)
      expect(row).toMatchObject({ typed: reading.typed, unit: 'mm', counts: 'yes', verdict: 'good' })
      expect(Number(row?.value)).toBeCloseTo(reading.length_nm / 1e6, 6)
    }
  })
})
