import {
  chmodSync,
  closeSync,
  openSync,
  readdirSync,
  readFileSync,
  statSync,
  truncateSync,
  writeFileSync,
  writeSync,
} from 'node:fs'
import { join } from 'node:path'
import Database from 'better-sqlite3'
import { describe, expect, it } from 'vitest'
import { sentenceOf } from '../../../core/problem/index.ts'
import { openStore, recordName } from '../../../electron/store/index.ts'
import { append, clock, fitted, folder, startBuild, store } from '../bench.ts'

/** What a file answers when it is opened as the record of its folder. */
async function refusal(inFolder: string) {
  const outcome = await openStore(inFolder, clock())
  if (outcome.ok) {
    outcome.value.close()
    throw new Error('it was opened')
  }
  return { code: outcome.problem.code, sentence: sentenceOf(outcome.problem) }
}

/** A folder with a closed record of one build of twenty entries. */
async function folderWithRecord() {
  const inFolder = folder()
  const opened = await store(inFolder)
  startBuild(opened)
  append(
    opened,
    1,
    Array.from({ length: 19 }, (_, at) => fitted(`part-${at}`)),
  )
  opened.close()
  return { inFolder, file: join(inFolder, recordName) }
}

function withFile(file: string, change: (db: Database.Database) => void): void {
  const db = new Database(file)
  change(db)
  db.close()
}

describe('the data folder', () => {
  it('is made for its owner alone, and so is every file in it', async () => {
    const inFolder = join(folder(), 'new', 'bench')
    const opened = await store(inFolder)
    startBuild(opened)
    expect(statSync(inFolder).mode & 0o777).toBe(0o700)
    for (const name of [recordName, `${recordName}-wal`])
      expect(statSync(join(inFolder, name)).mode & 0o777, name).toBe(0o600)
  })

  it.each(['nothing', 'notes.txt', recordName])(
    'that was there with %s in it keeps its rights',
    async (name) => {
      const inFolder = folder()
      if (name === recordName) (await store(inFolder)).close()
      else if (name !== 'nothing') writeFileSync(join(inFolder, name), '')
      chmodSync(inFolder, 0o750)
      await store(inFolder)
      expect(statSync(inFolder).mode & 0o777).toBe(0o750)
      expect(statSync(join(inFolder, recordName)).mode & 0o777).toBe(0o600)
    },
  )

  it('that is a file is refused in words', async () => {
    const inFolder = folder()
    writeFileSync(join(inFolder, 'taken'), '')
    const { code, sentence } = await refusal(join(inFolder, 'taken'))
    expect(code).toBe('data-folder-closed')
    expect(sentence).toContain(join(inFolder, 'taken'))
  })
})

describe('a record that cannot be relied on', () => {
  it('of a newer program is refused, and left as it is', async () => {
    const { inFolder, file } = await folderWithRecord()
    withFile(file, (db) => db.pragma('user_version = 99'))
    const before = readFileSync(file)
    const { code, sentence } = await refusal(inFolder)
    expect(code).toBe('record-newer')
    expect(sentence).toContain('99')
    expect(readFileSync(file)).toEqual(before)
  })

  it('that is a text file is refused, and left as it is', async () => {
    const inFolder = folder()
    const file = join(inFolder, recordName)
    const text = 'Dear Sir,\n'.repeat(2000)
    writeFileSync(file, text)
    expect((await refusal(inFolder)).code).toBe('record-not-a-database')
    expect(readFileSync(file, 'utf8')).toBe(text)
  })

  it('that is empty is refused: a record is never seen half made', async () => {
    const { inFolder, file } = await folderWithRecord()
    truncateSync(file, 0)
    expect((await refusal(inFolder)).code).toBe('record-damaged')
    expect(statSync(file).size).toBe(0)
  })

  it('that is the database of another program is refused', async () => {
    const inFolder = folder()
    withFile(join(inFolder, recordName), (db) => db.exec('CREATE TABLE invoice (number INTEGER)'))
    expect((await refusal(inFolder)).code).toBe('record-of-another-program')
  })

  it('that lost its end is refused, and left as it is', async () => {
    const { inFolder, file } = await folderWithRecord()
    truncateSync(file, statSync(file).size - 4096)
    const before = readFileSync(file)
    expect((await refusal(inFolder)).code).toBe('record-damaged')
    expect(readFileSync(file)).toEqual(before)
  })

  it('with a page overwritten is refused, and left as it is', async () => {
    const { inFolder, file } = await folderWithRecord()
    const descriptor = openSync(file, 'r+')
    for (let page = 2; page < statSync(file).size / 4096; page += 1)
      writeSync(descriptor, Buffer.alloc(64, 0xa5), 0, 64, page * 4096)
    closeSync(descriptor)
    const before = readFileSync(file)
    expect((await refusal(inFolder)).code).toBe('record-damaged')
    expect(readFileSync(file)).toEqual(before)
  })

  it('whose guards were dropped is refused', async () => {
    const { inFolder, file } = await folderWithRecord()
    withFile(file, (db) => db.exec('DROP TRIGGER event_is_not_changed'))
    expect((await refusal(inFolder)).code).toBe('record-schema-altered')
  })
})

describe('the record', () => {
  it('is opened by one process at a time, and by the next once that has closed it', async () => {
    const inFolder = folder()
    const first = await store(inFolder)
    startBuild(first)
    const { code, sentence } = await refusal(inFolder)
    expect(code).toBe('record-in-use')
    expect(sentence).toContain(inFolder)
    expect(append(first, 1, [fitted('crank')]).ok).toBe(true)
    first.close()
    const second = await store(inFolder)
    expect(second.builds()).toHaveLength(1)
  })

  it('leaves nothing else behind in its folder when it was made', async () => {
    const inFolder = folder()
    const opened = await store(inFolder)
    opened.close()
    expect(readdirSync(inFolder)).toEqual([recordName, 'record-note.json'])
  })
})
