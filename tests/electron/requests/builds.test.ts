import Database from 'better-sqlite3'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { sentenceOf } from '../../../core/problem/index.ts'
import type { Store } from '../../../electron/store/index.ts'
import { recordName } from '../../../electron/store/index.ts'
import { folder, store } from '../bench.ts'
import { asking } from './asking.ts'

const caseMarks = { type: 'note-marks', step: 'case-marks', typed: '2 2 3 1' } as const

/** The store, refusing to write as a full disk does. */
function onFullDisk(record: Store): Store {
  const refusal = {
    ok: false,
    problem: { code: 'record-not-saved', facts: { reason: 'disk-full' }, path: '' },
  } as const
  return { ...record, append: () => refusal }
}

describe('starting a build', () => {
  it('gives it the next number of the year, the spec as it stands, and a first entry', async () => {
    const { get, begin } = asking(await store(folder()))
    const first = await begin()
    const second = await begin()
    expect(first.line).toMatchObject({
      number: '2026-001',
      name: 'Ferry, port engine',
      entries: 1,
      finished: false,
    })
    expect(second.line.number).toBe('2026-002')
    expect(first.events.map(({ event }) => event.type)).toEqual(['build-started'])
    expect(JSON.parse(first.specText).id).toBe('skerry-3')
    expect((await get('builds.list', {})).map(({ number }) => number)).toEqual(['2026-002', '2026-001'])
  })

  it.each([
    ['an empty name', { name: '  ' }, 'build-name-missing', 'name'],
    ['nobody named', { person: '' }, 'person-missing', 'person'],
    ['a name of a page', { name: 'a'.repeat(120) }, 'text-too-long', 'name'],
    ['an engine that is not there', { engine: 'other' }, 'engine-unknown', 'engine'],
  ])('is refused with %s', async (_, change, code, path) => {
    const { ask, get } = asking(await store(folder()))
    const good = { engine: 'skerry-3', name: 'Ferry', serial: '', person: 'Ana Ruiz' }
    expect(await ask('builds.start', { ...good, ...change })).toMatchObject({
      ok: false,
      problem: { code, path },
    })
    expect(await get('builds.list', {})).toEqual([])
  })
})

describe('what another window has confirmed', () => {
  it('is the entries after the last one that this window has', async () => {
    const { get, begin, act } = asking(await store(folder()))
    const { line } = await begin()
    await act(line.id, 1, caseMarks)
    const { events } = await get('builds.since', { build: line.id, after: 1 })
    expect(events).toMatchObject([{ seq: 2, event: { type: 'marks-noted' } }])
    expect(await get('builds.since', { build: line.id, after: 2 })).toMatchObject({ events: [] })
  })

  it('is refused where the build has no such entry, or is not there', async () => {
    const { ask, begin } = asking(await store(folder()))
    const { line } = await begin()
    expect(await ask('builds.since', { build: line.id, after: 7 })).toMatchObject({
      ok: false,
      problem: { code: 'build-moved-on', facts: { last: 1 } },
    })
    const other = line.id.replace(/.$/, '9')
    expect(await ask('builds.since', { build: other, after: 0 })).toMatchObject({
      ok: false,
      problem: { code: 'build-unknown' },
    })
  })
})

describe('acting on a build', () => {
  it('is refused with the names that the spec has in the language of the window', async () => {
    const { get, ask, begin } = asking(await store(folder()))
    const { line } = await begin()
    const finish = {
      build: line.id,
      after: 1,
      person: 'Ana Ruiz',
      command: { type: 'finish-build' },
    } as const
    const firstOf = { en: 'Case marks', de: 'Gehäusezeichen', es: 'Marcas del cárter' }
    for (const [language, first] of Object.entries(firstOf))
      expect(
        await ask('builds.act', { ...finish, language: language as keyof typeof firstOf }),
      ).toMatchObject({
        problem: { code: 'steps-left', facts: { first } },
      })
    expect(await get('builds.since', { build: line.id, after: 1 })).toMatchObject({ events: [] })
  })

  it('answers with the entries that are now on disk', async () => {
    const record = await store(folder())
    const { begin, act, get } = asking(record)
    const { line } = await begin()
    const answer = await act(line.id, 1, caseMarks)
    expect(answer).toMatchObject({
      ok: true,
      value: { events: [{ seq: 2, event: { type: 'marks-noted' } }] },
    })
    expect(record.entries(line.id)).toHaveLength(2)
    expect((await get('builds.open', { build: line.id })).events.map(({ seq }) => seq)).toEqual([1, 2])
  })

  it('is refused with a sentence where core refuses, and nothing is added', async () => {
    const record = await store(folder())
    const { begin, act } = asking(record)
    const { line } = await begin()
    const answer = await act(line.id, 1, { ...caseMarks, typed: '2 2 9 1' })
    expect(answer.ok ? '' : sentenceOf(answer.problem)).toContain('9')
    expect(record.entries(line.id)).toHaveLength(1)
  })

  it('is refused when the window has not seen the last entry', async () => {
    const { begin, act } = asking(await store(folder()))
    const { line } = await begin()
    await act(line.id, 1, caseMarks)
    expect(await act(line.id, 1, caseMarks)).toMatchObject({ ok: false, problem: { code: 'build-moved-on' } })
  })

  it('does not count as done on a full disk, and works again when there is room', async () => {
    const record = await store(folder())
    const { line } = await asking(record).begin()
    const full = await asking(onFullDisk(record)).act(line.id, 1, caseMarks)
    expect(full).toMatchObject({ ok: false, problem: { code: 'record-not-saved' } })
    expect(full.ok ? '' : sentenceOf(full.problem)).toMatch(/^Not saved: the disk is full/)
    expect((await asking(record).act(line.id, 1, caseMarks)).ok).toBe(true)
  })

  it('on a build that is not there is refused', async () => {
    const { act } = asking(await store(folder()))
    expect(await act('01956f6c-8a00-7000-8000-00000000ffff', 0, caseMarks)).toMatchObject({
      ok: false,
      problem: { code: 'build-unknown' },
    })
  })

  it('goes on from where the record stands after the program was started again', async () => {
    const inFolder = folder()
    const before = await store(inFolder)
    const { line } = await asking(before).begin()
    await asking(before).act(line.id, 1, caseMarks)
    before.close()
    const { act } = asking(await store(inFolder))
    const answer = await act(line.id, 2, { type: 'note-marks', step: 'crank-marks', typed: 'F G H F' })
    expect(answer).toMatchObject({ ok: true, value: { events: [{ seq: 3 }] } })
  })

  it('orders by number where the clock was set back', async () => {
    const times = ['2026-03-02T08:00:00.000Z', '2026-03-02T07:00:00.000Z', '2026-03-02T07:00:00.000Z']
    const { begin, act, get } = asking(await store(folder()), { now: () => new Date(times.shift() ?? 0) })
    const { line } = await begin()
    await act(line.id, 1, caseMarks)
    await act(line.id, 2, { type: 'note-marks', step: 'crank-marks', typed: 'F G H F' })
    const { events } = await get('builds.open', { build: line.id })
    expect(events.map(({ seq, at }) => [seq, at.slice(11, 13)])).toEqual([
      [1, '08'],
      [2, '07'],
      [3, '07'],
    ])
  })
})

describe('opening a build', () => {
  /** A build of three entries, of which the last was changed past the guards. */
  async function tamperedWith(change: string) {
    const inFolder = folder()
    const record = await store(inFolder)
    const { begin, act } = asking(record)
    const { line } = await begin()
    await act(line.id, 1, caseMarks)
    await act(line.id, 2, { type: 'note-marks', step: 'crank-marks', typed: 'F G H F' })
    record.close()
    const db = new Database(join(inFolder, recordName))
    const guard = db
      .prepare("SELECT sql FROM sqlite_schema WHERE name = 'event_is_not_changed'")
      .pluck()
      .get()
    db.exec('DROP TRIGGER event_is_not_changed')
    db.exec(change)
    db.exec(String(guard))
    db.close()
    return { ...asking(await store(inFolder)), line }
  }

  it('whose entry was altered shows what can be relied on, and takes nothing more', async () => {
    const { get, act, line } = await tamperedWith(
      `UPDATE event SET body = replace(body, '"F"', '"H"') WHERE seq = 3`,
    )
    const opened = await get('builds.open', { build: line.id })
    expect(opened.events.map(({ seq }) => seq)).toEqual([1, 2])
    expect(opened.readOnly).toMatchObject({
      code: 'build-chain-broken',
      facts: { entry: 3 },
    })
    const answer = await act(line.id, 2, caseMarks)
    expect(answer).toMatchObject({ ok: false, problem: { code: 'build-chain-broken' } })
  })

  it('with an entry of a newer program shows what came before, and takes nothing more', async () => {
    const inFolder = folder()
    const record = await store(inFolder)
    const { line } = await asking(record).begin()
    const newer = { type: 'thread-cleaned', version: 1 } as never
    record.append({
      build: line.id,
      after: 1,
      events: [newer],
      person: 'Ana Ruiz',
      at: '2026-03-02T07:30:00.000Z',
      mentions: [],
    })
    const { get, act } = asking(record)
    const opened = await get('builds.open', { build: line.id })
    expect(opened.events).toHaveLength(1)
    expect(opened.readOnly).toMatchObject({
      code: 'build-newer',
      facts: { entry: 2 },
    })
    expect((await act(line.id, 1, caseMarks)).ok).toBe(false)
  })
})
