import { createHash } from 'node:crypto'
import { copyFileSync, existsSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import Database from 'better-sqlite3'
import { describe, expect, it } from 'vitest'
import {
  backupName,
  newerFirst,
  expiredBackups,
  readBackupName,
} from '../../../electron/store/backups/backup-name.ts'
import type { BackupName } from '../../../electron/store/backups/backup-name.ts'
import { checkRecord } from '../../../electron/store/backups/backups.ts'
import { backupsIn, openStore, recordName, restoreRecord } from '../../../electron/store/index.ts'
import { alter } from '../alter.ts'
import { append, buildId, clock, fitted, folder, otherBuildId, store, value } from '../bench.ts'
import { at, going, backUp, twoBuilds } from './backing-up.ts'

const bench = '0123456789ab'

describe('the name of a backup', () => {
  const head = 'f00dfeed'.repeat(8)

  it('says when, how many builds and entries, and the head code', () => {
    const name = backupName(at, { bench, sequence: 7 }, { builds: 12, entries: 214, head, broken: 0 })
    expect(name).toBe('bedplate-0123456789ab-000007-20260419T081502Z-12-214-f00dfeedf00dfeed.sqlite')
    expect(readBackupName(name)).toEqual({
      name,
      bench,
      sequence: 7,
      at: '2026-04-19T08:15:02Z',
      builds: 12,
      entries: 214,
      head: 'f00dfeedf00dfeed',
      broken: 0,
    })
  })

  it('says what was not sound in it', () => {
    const found = { builds: 2, entries: 4, head, broken: 3 }
    const name = backupName(at, { bench, sequence: 1 }, found)
    expect(name).toMatch(/-broken3\.sqlite$/)
    expect(readBackupName(name)).toMatchObject({ broken: 3 })
  })

  it('of an earlier version has no bench, and counts as older than any that has', () => {
    const old = readBackupName('bedplate-20390101T081502Z-12-214-f00dfeedf00dfeed.sqlite')
    const now = readBackupName(
      backupName(at, { bench, sequence: 1 }, { builds: 1, entries: 1, head, broken: 0 }),
    )
    if (old === null || now === null) throw new Error('a name cannot be read')
    expect(old).toMatchObject({ bench: null, sequence: 0 })
    expect([old, now].sort(newerFirst)).toEqual([now, old])
  })

  it.each([
    'bedplate.sqlite',
    'being-made.sqlite',
    'bedplate-20260419T081502Z-12-214-f00dfeedf00dfeed.sqlite.part',
    'bedplate-20261319T081502Z-12-214-f00dfeedf00dfeed.sqlite',
    '../bedplate-20260419T081502Z-12-214-f00dfeedf00dfeed.sqlite',
  ])('is not %s', (name) => {
    expect(readBackupName(name)).toBeNull()
  })
})

describe('a backup', () => {
  it('is the record as it was, verified before it counts', async () => {
    const { record, backups } = await twoBuilds()
    const made = value(await backUp(record, backups, going))
    expect(made).toMatchObject({ at: '2026-04-19T08:15:02Z', builds: 2, entries: 4 })
    expect(readdirSync(backups)).toEqual([made?.name])
    append(record, 3, [fitted('later')])
    const db = new Database(made?.file ?? '', { readonly: true })
    expect(db.prepare('SELECT count(*) FROM event').pluck().get()).toBe(4)
    db.close()
  })

  it('has a code that anybody can compute from the heads of the builds in it', async () => {
    const { record, backups } = await twoBuilds()
    const made = value(await backUp(record, backups, going))
    const lines = [buildId, otherBuildId].map((build) => {
      const entries = record.entries(build)
      return `${build} ${entries.length} ${entries.at(-1)?.sha256}\n`
    })
    const code = createHash('sha256').update(lines.join('')).digest('hex').slice(0, 16)
    expect(made?.head).toBe(code)
  })

  it('is for its owner alone', async () => {
    const { record, backups } = await twoBuilds()
    const made = value(await backUp(record, backups, going))
    expect(statSync(backups).mode & 0o777).toBe(0o700)
    expect(statSync(made?.file ?? '').mode & 0o777).toBe(0o600)
  })

  it('takes in what is added while it is made, whole or not at all', async () => {
    const { record, backups } = await twoBuilds()
    const making = backUp(record, backups, going)
    for (let after = 3; after < 60; after += 1) {
      append(record, after, [fitted(`part-${after}`)])
      if (after % 10 === 0) await new Promise((resolve) => setImmediate(resolve))
    }
    expect(value(await making)?.entries).toBeGreaterThanOrEqual(4)
    expect((await checkRecord(backupsIn(backups)[0]?.file ?? '', going)).ok).toBe(true)
  })

  it('of a record with an altered entry is kept too, marked, beside the sound ones', async () => {
    const { inFolder, record, backups } = await twoBuilds()
    const good = value(await backUp(record, backups, going))
    record.close()
    alter(inFolder, "UPDATE event SET body = replace(body, 'crank', 'cranK') WHERE seq = 2")
    const again = await store(inFolder)
    for (let day = 0; day < 20; day += 1) value(await backUp(again, backups, going))
    const names = backupsIn(backups)
    expect(names.filter(({ broken }) => broken === 0).map(({ name }) => name)).toEqual([good?.name])
    expect(names.filter(({ broken }) => broken === 1)).toHaveLength(3)
  })

  it('that is stopped leaves nothing behind', async () => {
    const { record, backups } = await twoBuilds()
    const stop = new AbortController()
    const making = backUp(record, backups, stop.signal)
    stop.abort()
    expect(value(await making)).toBeNull()
    expect(readdirSync(backups)).toEqual([])
  })

  it('in a folder that cannot be made is refused in words', async () => {
    const { inFolder, record } = await twoBuilds()
    writeFileSync(join(inFolder, 'taken'), '')
    const outcome = await backUp(record, join(inFolder, 'taken'), going)
    expect(outcome).toMatchObject({ ok: false, problem: { code: 'backup-not-saved' } })
  })
})

describe('backups that have outlived themselves', () => {
  function daily(from: string, days: number): BackupName[] {
    return Array.from({ length: days }, (_, day) => {
      const made = new Date(Date.parse(from) + day * 86_400_000)
      const found = { builds: 1, entries: day, head: 'a'.repeat(64), broken: 0 }
      const read = readBackupName(backupName(made, { bench, sequence: day + 1 }, found))
      if (read === null) throw new Error('the name cannot be read')
      return read
    })
  }

  it('are none of the last twelve', () => {
    expect(expiredBackups(daily('2026-01-01T08:00:00Z', 12))).toEqual([])
  })

  it('are all others but the last of each month', () => {
    const all = daily('2026-01-01T08:00:00Z', 100) // until 10 April
    const names = new Set(expiredBackups(all))
    const kept = all.filter((backup) => !names.has(backup)).map(({ at: day }) => day.slice(5, 10))
    expect(kept).toEqual([
      '01-31',
      '02-28',
      ...['30', '31'].map((day) => `03-${day}`),
      ...Array.from({ length: 10 }, (_, day) => `04-${String(day + 1).padStart(2, '0')}`),
    ])
  })

  it('go by their number, whatever the clock said when they were made', () => {
    const all = daily('2026-01-01T08:00:00Z', 40)
    const wrong = daily('2039-01-01T08:00:00Z', 1).map((each) => ({ ...each, sequence: 0 }))
    expect(expiredBackups([...all, ...wrong]).length).toBe(40 - 12)
    expect(expiredBackups(all.map((each) => ({ ...each, at: '2026-03-02T07:30:00Z' })))).toEqual(
      all
        .slice(0, 28)
        .reverse()
        .map((each) => ({ ...each, at: '2026-03-02T07:30:00Z' })),
    )
  })

  it('leave two years of months', () => {
    const all = daily('2020-01-01T08:00:00Z', 2000)
    expect(all.length - expiredBackups(all).length).toBe(12 + 23)
  })
})

describe('restoring a backup', () => {
  it('puts the record as it was then, and keeps the present file', async () => {
    const { inFolder, record, backups } = await twoBuilds()
    const made = value(await backUp(record, backups, going))
    append(record, 3, [fitted('later')])
    record.close()
    const present = readFileSync(join(inFolder, recordName))
    const kept = value(await restoreRecord(inFolder, made?.file ?? '', new Date('2026-04-20T06:00:00Z')))
    expect(kept).toMatch(/^kept-20260420T060000Z-[0-9a-f-]{36}\.sqlite$/)
    expect(readFileSync(join(inFolder, kept ?? ''))).toEqual(present)
    const restored = await store(inFolder)
    expect(restored.entries(buildId)).toHaveLength(3)
    expect(append(restored, 3, [fitted('again')]).ok).toBe(true)
    expect(backupsIn(backups)).toHaveLength(1)
  })

  it('again and again within a second keeps each file that was there', async () => {
    const { inFolder, record, backups } = await twoBuilds()
    const made = value(await backUp(record, backups, going))
    record.close()
    for (let round = 0; round < 6; round += 1) {
      const before = await store(inFolder)
      append(before, 3, [fitted(`later-${round}`)])
      before.close()
      value(await restoreRecord(inFolder, made?.file ?? '', at))
    }
    const kept = readdirSync(inFolder).filter((name) => name.startsWith('kept-'))
    const lasts = kept.map((name) => {
      const db = new Database(join(inFolder, name), { readonly: true })
      const body = db.prepare<[], string>('SELECT body FROM event WHERE seq = 4').pluck().get() ?? ''
      db.close()
      return /later-\d/.exec(body)?.[0]
    })
    expect(lasts.sort()).toEqual(Array.from({ length: 6 }, (_, round) => `later-${round}`))
  })

  it('of another bench under the name of this one is refused', async () => {
    const { inFolder, record, backups } = await twoBuilds()
    const made = value(await backUp(record, backups, going))
    record.close()
    const renamed = join(folder(), (made?.name ?? '').replace(/[0-9a-f]{12}/, bench))
    copyFileSync(made?.file ?? '', renamed)
    expect(await restoreRecord(inFolder, renamed, at)).toMatchObject({ ok: false })
  })

  it.each([
    ['a text', (file: string) => writeFileSync(file, 'Dear Sir,\n'.repeat(900))],
    ['an empty file', (file: string) => writeFileSync(file, '')],
    [
      'another program’s database',
      (file: string) => new Database(file).exec('CREATE TABLE invoice (n INTEGER)').close(),
    ],
    [
      'a backup with a changed entry',
      (file: string, good: string) => {
        writeFileSync(
          file,
          readFileSync(good).toString('latin1').replaceAll('oil-seal', 'oil-sea1'),
          'latin1',
        )
      },
    ],
    [
      'half a backup',
      (file: string, good: string) => writeFileSync(file, readFileSync(good).subarray(0, 30_000)),
    ],
  ])('that is %s is refused, and the record stays', async (_, spoil) => {
    const { inFolder, record, backups } = await twoBuilds()
    const good = value(await backUp(record, backups, going))
    record.close()
    const present = readFileSync(join(inFolder, recordName))
    const bad = join(folder(), 'bad.sqlite')
    spoil(bad, good?.file ?? '')
    const outcome = await restoreRecord(inFolder, bad, at)
    expect(outcome).toMatchObject({ ok: false, problem: { code: 'backup-unusable' } })
    expect(readFileSync(join(inFolder, recordName))).toEqual(present)
    expect(readdirSync(inFolder).sort()).toEqual(['backups', recordName, 'record-note.json'])
  })

  it('that a power cut ended halfway leaves nothing behind after the next start', async () => {
    const { inFolder, record, backups } = await twoBuilds()
    value(await backUp(record, backups, going))
    record.close()
    const id = '01956f6c-8a00-4000-8000-000000000001'
    const halves = [
      join(inFolder, `new-${id}.sqlite`),
      join(inFolder, `new-${id}.sqlite-wal`),
      join(inFolder, 'record-note.json.new'),
      join(backups, 'being-made.sqlite'),
      join(backups, 'being-made.sqlite-wal'),
    ]
    const others = [join(inFolder, 'new-shells.sqlite'), join(inFolder, 'notes.txt.new')]
    for (const each of [...halves, ...others]) writeFileSync(each, 'half')
    ;(await store(inFolder)).close()
    expect(halves.filter((each) => existsSync(each))).toEqual([])
    expect(others.filter((each) => existsSync(each))).toEqual(others)
  })

  it('into a folder that lost its record is what such a folder asks for', async () => {
    const inFolder = folder()
    const backups = join(inFolder, 'backups')
    const elsewhere = await twoBuilds()
    value(await backUp(elsewhere.record, backups, going))
    expect(await openStore(inFolder, clock())).toMatchObject({
      ok: false,
      problem: { code: 'record-missing' },
    })
    expect(existsSync(join(inFolder, recordName))).toBe(false)
    expect(value(await restoreRecord(inFolder, backupsIn(backups)[0]?.file ?? '', at))).toBeNull()
    expect((await store(inFolder)).builds()).toHaveLength(2)
  })
})
