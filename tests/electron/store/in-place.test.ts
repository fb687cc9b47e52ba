import { copyFileSync, existsSync, readdirSync, renameSync, rmSync, statSync, truncateSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { backupsIn, openStore, recordName } from '../../../electron/store/index.ts'
import { append, buildId, clock, fitted, folder, startBuild, store, value } from '../bench.ts'

/** An open record of one entry, and where it lies. */
async function open() {
  const inFolder = folder()
  const record = await store(inFolder)
  startBuild(record)
  return { inFolder, record, file: join(inFolder, recordName), log: join(inFolder, `${recordName}-wal`) }
}

type Opened = Awaited<ReturnType<typeof open>>

/** What somebody, or another program, may do to the files while the record is open. */
const takenAway: readonly [string, (record: Opened) => void][] = [
  ['the record is deleted', ({ file }) => rmSync(file)],
  ['the log is deleted', ({ log }) => rmSync(log)],
  ['the folder is deleted', ({ inFolder }) => rmSync(inFolder, { recursive: true })],
  ['the record is moved', ({ file }) => renameSync(file, `${file}.old`)],
  ['the log is moved', ({ log }) => renameSync(log, `${log}.old`)],
  ['the folder is moved', ({ inFolder }) => renameSync(inFolder, `${inFolder}.old`)],
  [
    'a copy stands in the place of the record',
    ({ file }) => {
      copyFileSync(file, `${file}.copy`)
      renameSync(`${file}.copy`, file)
    },
  ],
  ['the log is emptied', ({ log }) => truncateSync(log, 0)],
  ['the log is cut short', ({ log }) => truncateSync(log, statSync(log).size - 100)],
  ['the record is emptied', ({ file }) => truncateSync(file, 0)],
]

describe('while the program runs and', () => {
  it.each(takenAway)('%s, nothing is confirmed any more', async (_, change) => {
    const opened = await open()
    change(opened)
    for (let press = 0; press < 20; press += 1)
      expect(append(opened.record, 1, [fitted('crank')])).toMatchObject({
        ok: false,
        problem: { code: 'record-not-in-place' },
      })
    const person = { id: buildId, name: 'Ana Ruiz', role: 'mechanic', badge: null, pin: null } as const
    expect(opened.record.keepPerson(person).ok).toBe(false)
    expect(opened.record.keepPreferences({ theme: 'dark' }).ok).toBe(false)
  })

  it('the folder is moved and brought back, it goes on', async () => {
    const { inFolder, record } = await open()
    renameSync(inFolder, `${inFolder}.old`)
    expect(append(record, 1, [fitted('crank')]).ok).toBe(false)
    renameSync(`${inFolder}.old`, inFolder)
    expect(value(append(record, 1, [fitted('crank')]))).toMatchObject([{ seq: 2 }])
  })

  it('thousands of entries are added, the log may begin again from its start', async () => {
    const { record } = await open()
    for (let after = 1; after < 3000; after += 50)
      value(
        append(
          record,
          after,
          Array.from({ length: 50 }, (_, at) => fitted(`part-${after + at}`)),
        ),
      )
    expect(record.problem()).toBeNull()
  })

  it('the record is deleted, what is in memory can be written elsewhere', async () => {
    const { record, file, log } = await open()
    rmSync(file)
    rmSync(log)
    const elsewhere = folder()
    const place = { folder: elsewhere, at: new Date(), after: 0, rotate: false }
    const copy = value(await record.backUp({ ...place, signal: new AbortController().signal }))
    expect(copy).toMatchObject({ builds: 1, entries: 1, broken: 0 })
    expect(backupsIn(elsewhere)).toHaveLength(1)
  })
})

describe('a data folder that once held a record', () => {
  it.each([
    ['the record is deleted', (file: string) => rmSync(file)],
    ['all in it is deleted', (file: string) => rmSync(dirname(file), { recursive: true })],
  ])('does not begin an empty one by itself when %s', async (_, remove) => {
    const { inFolder, record, file } = await open()
    record.close()
    remove(file)
    const opened = await openStore(inFolder, clock())
    expect(opened).toMatchObject({ ok: false, problem: { code: 'record-missing' } })
    expect(existsSync(file)).toBe(false)
  })

  it('begins an empty one when it is asked to, and works no old log into it', async () => {
    const { inFolder, record, file, log } = await open()
    append(record, 1, [fitted('crank')])
    copyFileSync(log, `${log}.copy`)
    record.close()
    rmSync(file)
    renameSync(`${log}.copy`, log)
    expect((await openStore(inFolder, clock())).ok).toBe(false)
    const begun = value(await openStore(inFolder, clock(), { beginEmpty: true }))
    expect(begun.builds()).toEqual([])
    begun.close()
    const kept = readdirSync(inFolder).filter((name) => name.startsWith('kept-'))
    expect(kept).toHaveLength(1)
    expect(kept[0]).toMatch(/-wal$/)
  })
})
