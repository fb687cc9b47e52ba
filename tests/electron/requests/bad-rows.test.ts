import { dirname } from 'node:path'
import { describe, expect, it } from 'vitest'
import { sentenceOf } from '../../../core/problem/index.ts'
import { newIds } from '../../../electron/requests/ids.ts'
import { alter } from '../alter.ts'
import { buildId, folder, otherBuildId, startBuild, store } from '../bench.ts'
import { asking } from './asking.ts'
import { sha256 } from './exchange/forged.ts'

/** A record of two builds and two people, one row of it spoilt past its guards. */
async function spoilt(change: string) {
  const record = await store(folder())
  startBuild(record)
  startBuild(record, otherBuildId)
  const ids = ['01956f6c-8a00-7000-8000-0000000000a1', '01956f6c-8a00-7000-8000-0000000000a2'] as const
  record.keepPerson({ id: ids[0], name: 'Ana Ruiz', role: 'mechanic', badge: null, pin: null })
  record.keepPerson({ id: ids[1], name: 'Bo Lind', role: 'mechanic', badge: null, pin: null })
  record.keepPreferences({ theme: 'dark', lengthUnit: 'in' })
  record.close()
  alter(dirname(record.file), change)
  return asking(await store(dirname(record.file)))
}

describe('one bad row', () => {
  it.each([
    [
      'a time that is none',
      `UPDATE build SET started_at_utc = 'yesterday' WHERE id = '${buildId}'`,
      'started',
    ],
    [
      'a year of five digits',
      `UPDATE build SET started_at_utc = '+010240-01-01T00:00:00.000Z', year = 10240 WHERE id = '${buildId}'`,
      'started',
    ],
    ['an id that is none', `UPDATE build SET id = 'zz' WHERE id = '${otherBuildId}'`, 'its id'],
  ])('with %s is shown as such, and the other builds as ever', async (_, change, words) => {
    const { get, bugs } = await spoilt(change)
    for (const lines of [await get('builds.list', {}), (await get('builds.find', { words: '' })).lines]) {
      expect(lines).toHaveLength(2)
      expect(lines.filter(({ fault }) => fault === null)).toHaveLength(1)
      const fault = lines.find(({ fault }) => fault !== null)?.fault
      expect(fault && sentenceOf(fault)).toContain(words)
    }
    expect(bugs).toEqual([])
  })

  it('among the people is passed over', async () => {
    const { get } = await spoilt("UPDATE person SET name = ' ' WHERE name = 'Bo Lind'")
    expect((await get('people.list', {})).map(({ name }) => name)).toEqual(['Ana Ruiz'])
  })

  it('among the preferences gives way to what is usual, and the others stay', async () => {
    const { get } = await spoilt("UPDATE preference SET value_json = '{' WHERE name = 'theme'")
    expect(await get('preferences.read', {})).toMatchObject({ theme: 'as-the-system', lengthUnit: 'in' })
  })

  it('that is an entry of a time that is none opens the build up to there, to be read only', async () => {
    const record = await store(folder())
    const { begin, act } = asking(record)
    const { line } = await begin()
    await act(line.id, 1, { type: 'note-marks', step: 'case-marks', typed: '2 2 3 1' })
    const body = record.entries(line.id)[1]?.body.replace(/"at":"[^"]+"/, '"at":"yesterday"') ?? ''
    record.close()
    alter(dirname(record.file), `UPDATE event SET body = '${body}', sha256 = '${sha256(body)}' WHERE seq = 2`)
    const { get, bugs } = asking(await store(dirname(record.file)))
    expect(await get('builds.open', { build: line.id })).toMatchObject({
      events: [{ seq: 1 }],
      readOnly: { code: 'build-entry-unreadable' },
    })
    expect(bugs).toEqual([])
  })
})

describe('a clock in the year 10240', () => {
  it('has nothing recorded under it', async () => {
    const record = await store(folder())
    const { ask, get } = asking(record, { now: () => new Date('+010240-03-02T07:30:00Z') })
    const started = await ask('builds.start', { engine: 'skerry-3', name: 'F', serial: '', person: 'Ana' })
    expect(started).toMatchObject({ ok: false, problem: { code: 'clock-unusable' } })
    expect(await get('builds.list', {})).toEqual([])
  })
})

describe('the list of builds', () => {
  it('has the one started last first, although the clock was set back in between', () => {
    const times = ['2039-01-01T00:00:00Z', '2026-03-02T07:30:00Z', '2026-03-02T07:29:00Z']
    const next = newIds(null, () => Date.parse(times.shift() ?? ''))
    const ids = [next(), next(), next()]
    expect(ids.toSorted()).toEqual(ids)
    const later = newIds(ids[2] ?? null, () => Date.parse('2026-03-02T07:30:00Z'))
    expect(later() > (ids[2] ?? '')).toBe(true)
  })
})
