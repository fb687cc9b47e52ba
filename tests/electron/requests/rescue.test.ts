import {
  copyFileSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  truncateSync,
  writeFileSync,
} from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import Database from 'better-sqlite3'
import { afterAll, describe, expect, it, onTestFinished } from 'vitest'
import { sentenceOf } from '../../../core/problem/index.ts'
import { contract, type Answer, type Input, type RequestName } from '../../../core/contract/index.ts'
import { openRequests } from '../../../electron/requests/index.ts'
import { recordName } from '../../../electron/store/index.ts'
import { folder, value } from '../bench.ts'
import { engineFile } from '../../engine-files.ts'

/** Each start reads every spec of its folder: here one. */
const specs = mkdtempSync(join(tmpdir(), 'bedplate-engines-'))
copyFileSync(engineFile('skerry-3'), join(specs, 'skerry-3.json'))
afterAll(() => rmSync(specs, { recursive: true }))

async function started(inFolder: string) {
  const facts = {
    host: 'local',
    why: { code: 'hostByItself', facts: {} },
    version: '0.1.0',
    dataFolder: inFolder,
  } as const
  const bugs: string[] = []
  const { answer, close } = value(await openRequests(facts, specs, (line) => bugs.push(line)))
  onTestFinished(close)
  const ask = async <Name extends RequestName>(name: Name, input: Input<Name>) =>
    (await answer(name, input)) as Answer<Name>
  const get = async <Name extends RequestName>(name: Name, input: Input<Name>) => {
    const reply = await ask(name, input)
    if (!reply.ok) throw new Error(`${name}: ${sentenceOf(reply.problem)}`)
    return reply.value
  }
  return { ask, get, close, bugs }
}

const ferry = { engine: 'skerry-3', name: 'Ferry', serial: 'F-201', person: 'Ana Ruiz' }

/** A folder with a closed record of two builds, and a backup from when it had one. */
async function folderWithBackup() {
  const inFolder = folder()
  const { get, close } = await started(inFolder)
  await get('builds.start', ferry)
  await get('backups.make', {})
  await get('builds.start', { ...ferry, name: 'Pump' })
  await close()
  return { inFolder, file: join(inFolder, recordName) }
}

const damages: readonly [string, string, (file: string) => void][] = [
  ['is a text', 'record-not-a-database', (file) => writeFileSync(file, 'Dear Sir,\n'.repeat(900))],
  ['is empty', 'record-damaged', (file) => truncateSync(file, 0)],
  ['is cut off', 'record-damaged', (file) => truncateSync(file, 4096 * 3)],
  ['is gone', 'record-missing', (file) => rmSync(file)],
  [
    'lost its guards',
    'record-schema-altered',
    (file) => {
      const db = new Database(file)
      db.exec('DROP TRIGGER event_is_not_changed')
      db.close()
    },
  ],
  [
    'is another program’s',
    'record-of-another-program',
    (file) => {
      rmSync(file)
      new Database(file).exec('CREATE TABLE invoice (n INTEGER)').close()
    },
  ],
]

describe('a start on a record that', () => {
  it.each(damages)('%s says so, offers the backups, and touches nothing', async (_, code, damage) => {
    const { inFolder, file } = await folderWithBackup()
    damage(file)
    const before = readdirSync(inFolder).map((name) => [
      name,
      ['backups', 'log'].includes(name) ? '' : readFileSync(join(inFolder, name)),
    ])
    const { get, ask } = await started(inFolder)
    const { problem } = await get('host.read', {})
    expect(problem?.code).toBe(code)
    const sick = (await get('host.doctor', {})).find(({ subject }) => subject === 'record')
    expect(sick).toMatchObject({ state: 'bad', says: { code: 'record-closed', facts: { why: problem } } })
    expect((await get('backups.list', {})).backups).toMatchObject([{ builds: 1, entries: 1 }])
    expect(await ask('builds.start', ferry)).toMatchObject({ ok: false, problem: { code } })
    const after = readdirSync(inFolder).map((name) => [
      name,
      ['backups', 'log'].includes(name) ? '' : readFileSync(join(inFolder, name)),
    ])
    expect(after).toEqual(before)
  })

  it.each(damages)('%s goes on from a backup, and keeps the damaged file', async (_, code, damage) => {
    const { inFolder, file } = await folderWithBackup()
    damage(file)
    const damaged = code === 'record-missing' ? null : readFileSync(file)
    const { get, bugs } = await started(inFolder)
    const [backup] = (await get('backups.list', {})).backups
    const { kept } = await get('backups.restore', { name: backup?.name ?? '' })
    expect(kept === null ? null : readFileSync(join(inFolder, kept))).toEqual(damaged)
    expect((await get('host.read', {})).problem).toBeNull()
    expect((await get('builds.list', {})).map(({ name }) => name)).toEqual(['Ferry'])
    await get('builds.start', ferry)
    expect(bugs).toEqual([])
  })

  it('is damaged refuses every other request with the same sentence', async () => {
    const { inFolder, file } = await folderWithBackup()
    truncateSync(file, 0)
    const { ask, get } = await started(inFolder)
    const { problem } = await get('host.read', {})
    const inputs: Partial<Record<RequestName, unknown>> = {
      'preferences.keep': {},
      'engines.read': { id: 'skerry-3' },
      'builds.start': ferry,
      'backups.keep-in': { folder: null },
      'verification.start': { build: null },
    }
    const answered = ['host.read', 'host.doctor', 'backups.list', 'backups.restore']
    let withSentence = 0
    for (const name of Object.keys(contract) as RequestName[]) {
      if (answered.includes(name)) continue
      const reply = await ask(name, (inputs[name] ?? {}) as never)
      expect(reply.ok, name).toBe(false)
      if (reply.ok || reply.problem.code === 'request-unreadable') continue
      withSentence += 1
      expect(reply.problem, name).toEqual(problem)
    }
    expect(withSentence).toBeGreaterThan(12)
  })
})

describe('restoring while the program runs', () => {
  it('goes back to the backup and keeps what was there since', async () => {
    const { inFolder } = await folderWithBackup()
    const { get } = await started(inFolder)
    const [backup] = (await get('backups.list', {})).backups
    const { kept } = await get('backups.restore', { name: backup?.name ?? '' })
    expect((await get('builds.list', {})).map(({ name }) => name)).toEqual(['Ferry'])
    const db = new Database(join(inFolder, kept ?? ''))
    expect(db.prepare('SELECT count(*) FROM build').pluck().get()).toBe(2)
    db.close()
  })

  it('from a backup that was spoilt meanwhile is refused, and the record goes on', async () => {
    const { inFolder } = await folderWithBackup()
    const { get, ask } = await started(inFolder)
    const [backup] = (await get('backups.list', {})).backups
    writeFileSync(join(inFolder, 'backups', backup?.name ?? ''), 'spoilt')
    expect(await ask('backups.restore', { name: backup?.name ?? '' })).toMatchObject({
      ok: false,
      problem: { code: 'backup-unusable' },
    })
    expect(await get('builds.list', {})).toHaveLength(2)
  })

  it.each(['', 'bedplate.sqlite', '../bedplate.sqlite', '/etc/passwd'])(
    'takes only what is listed, not “%s”',
    async (name) => {
      const { inFolder } = await folderWithBackup()
      const { ask } = await started(inFolder)
      expect(await ask('backups.restore', { name })).toMatchObject({
        ok: false,
        problem: { code: 'backup-unknown' },
      })
    },
  )

  it('lets nothing be confirmed in between', async () => {
    const { inFolder } = await folderWithBackup()
    const { get, ask } = await started(inFolder)
    const [backup] = (await get('backups.list', {})).backups
    const restoring = get('backups.restore', { name: backup?.name ?? '' })
    expect(await ask('builds.start', ferry)).toMatchObject({
      ok: false,
      problem: { code: 'record-being-replaced' },
    })
    await restoring
    expect((await ask('builds.start', ferry)).ok).toBe(true)
  })
})

describe('a start that cannot go on', () => {
  it('on the record of a newer program ends with the sentence: a backup would be the older state', async () => {
    const { inFolder, file } = await folderWithBackup()
    const db = new Database(file)
    db.pragma('user_version = 99')
    db.close()
    const copy = join(folder(), 'copy')
    copyFileSync(file, copy)
    const facts = {
      host: 'local',
      why: { code: 'hostByItself', facts: {} },
      version: '0.1.0',
      dataFolder: inFolder,
    } as const
    expect(await openRequests(facts, specs, () => undefined)).toMatchObject({
      ok: false,
      problem: { code: 'record-newer' },
    })
    expect(readFileSync(file)).toEqual(readFileSync(copy))
  })
})

describe('a record that is taken away while the program runs', () => {
  async function takenAway() {
    const inFolder = folder()
    const host = await started(inFolder)
    await host.get('builds.start', ferry)
    rmSync(inFolder, { recursive: true })
    return { inFolder, ...host }
  }

  it('is reported at the next press and at the next sign of life, and by the doctor', async () => {
    const { get, ask } = await takenAway()
    const refusal = { code: 'record-not-in-place' }
    expect(await ask('builds.start', ferry)).toMatchObject({ ok: false, problem: refusal })
    expect((await get('host.read', {})).problem).toMatchObject(refusal)
    expect((await get('host.doctor', {})).find(({ subject }) => subject === 'record')).toMatchObject({
      state: 'bad',
    })
  })

  it('is written out of memory into another folder', async () => {
    const { get } = await takenAway()
    const elsewhere = folder()
    const { file, builds, entries } = await get('record.copy', { folder: elsewhere })
    expect({ builds, entries }).toEqual({ builds: 1, entries: 1 })
    const db = new Database(file, { readonly: true })
    expect(db.prepare('SELECT name FROM build').pluck().get()).toBe('Ferry')
    db.close()
  })

  it('is written among the backups, put in place from there, and goes on', async () => {
    const { get, ask } = await takenAway()
    await get('record.copy', { folder: null })
    const [backup] = (await get('backups.list', {})).backups
    await get('backups.restore', { name: backup?.name ?? '' })
    expect((await get('host.read', {})).problem).toBeNull()
    expect((await get('builds.list', {})).map(({ name }) => name)).toEqual(['Ferry'])
    expect((await ask('builds.start', ferry)).ok).toBe(true)
  })

  it('is missed at the next start, which begins an empty one only when it is asked to', async () => {
    const { inFolder, close } = await takenAway()
    await close()
    const { get, ask } = await started(inFolder)
    expect((await get('host.read', {})).problem).toMatchObject({ code: 'record-missing' })
    expect((await ask('builds.start', ferry)).ok).toBe(false)
    await get('record.begin-empty', {})
    expect((await get('host.read', {})).problem).toBeNull()
    expect(await get('builds.list', {})).toEqual([])
    expect(await ask('record.begin-empty', {})).toMatchObject({ ok: false })
  })

  it('has its backups found in the second folder, although nothing of the data folder is left', async () => {
    const inFolder = folder()
    const second = folder()
    const first = await started(inFolder)
    await first.get('builds.start', ferry)
    await first.get('backups.keep-in', { folder: second })
    await first.get('backups.make', {})
    await first.close()
    rmSync(inFolder, { recursive: true })
    const { get } = await started(inFolder)
    const { backups, secondFolder } = await get('backups.list', {})
    expect(secondFolder).toBe(second)
    expect(backups).toMatchObject([{ own: true, place: 'second-folder', builds: 1 }])
    await get('backups.restore', { name: backups[0]?.name ?? '' })
    expect((await get('builds.list', {})).map(({ name }) => name)).toEqual(['Ferry'])
  })
})
