import { copyFileSync, cpSync, mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import Database from 'better-sqlite3'
import { afterAll, describe, expect, it } from 'vitest'
import { openStore, recordName } from '../../../electron/store/index.ts'
import { append, clock, fitted, folder, startBuild, store } from '../bench.ts'

const running = mkdtempSync(join(tmpdir(), 'bedplate-killed-'))
afterAll(() => rmSync(running, { recursive: true }))
let made: Promise<void> | undefined

async function makeRunning() {
  const writing = folder()
  const record = await store(writing)
  startBuild(record)
  for (let after = 1; after < 300; after += 1) append(record, after, [fitted(`part-${after}`)])
  for (const name of [recordName, `${recordName}-wal`]) copyFileSync(join(writing, name), join(running, name))
  record.close()
}

/** A folder as a killed host leaves it: a record, and beside it a log with what was confirmed last. */
async function killed() {
  await (made ??= makeRunning())
  const inFolder = folder()
  cpSync(running, inFolder, { recursive: true })
  return { inFolder, file: join(inFolder, recordName) }
}

function contents(inFolder: string) {
  return Object.fromEntries(readdirSync(inFolder).map((name) => [name, readFileSync(join(inFolder, name))]))
}

const spoilt: readonly [string, (file: string) => void, string][] = [
  ['a text in its place', (file) => writeFileSync(file, 'Dear Sir,\n'.repeat(900)), 'record-not-a-database'],
  ['nothing in it', (file) => writeFileSync(file, ''), 'record-damaged'],
  [
    'another program’s database in its place',
    (file) => {
      const other = `${file}.other`
      new Database(other).exec('CREATE TABLE invoice (n INTEGER)').close()
      writeFileSync(file, readFileSync(other))
    },
    'record-of-another-program',
  ],
]

describe('a record that is refused is left as it is, and the log beside it too, with', () => {
  it.each(spoilt)('%s', async (_, spoil, code) => {
    const { inFolder, file } = await killed()
    spoil(file)
    const before = contents(inFolder)
    expect(Object.keys(before)).toContain(`${recordName}-wal`)
    const opened = await openStore(inFolder, clock())
    expect(opened).toMatchObject({ ok: false, problem: { code } })
    expect(contents(inFolder)).toEqual(before)
  })

  it('a newer version in the log alone', async () => {
    const { inFolder, file } = await killed()
    const db = new Database(file)
    db.pragma('locking_mode = EXCLUSIVE')
    db.pragma('user_version = 99')
    const images = [recordName, `${recordName}-wal`].map((name) => readFileSync(join(inFolder, name)))
    db.close()
    writeFileSync(file, images[0]!)
    writeFileSync(`${file}-wal`, images[1]!)
    const before = contents(inFolder)
    expect(await openStore(inFolder, clock())).toMatchObject({ ok: false, problem: { code: 'record-newer' } })
    expect(contents(inFolder)).toEqual(before)
  })

  it('nothing wrong, the log is worked in and every entry is there', async () => {
    const { inFolder } = await killed()
    const record = await store(inFolder)
    expect(record.builds()).toMatchObject([{ entries: 300 }])
  })
})
