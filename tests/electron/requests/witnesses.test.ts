import { readFileSync, readdirSync } from 'node:fs'
import { dirname, join } from 'node:path'
import canonicalize from 'canonicalize'
import { describe, expect, it } from 'vitest'
import { sentenceOf } from '../../../core/problem/index.ts'
import { recordName } from '../../../electron/store/index.ts'
import { alter } from '../alter.ts'
import { folder, store } from '../bench.ts'
import { asking } from './asking.ts'
import { sha256 } from './exchange/forged.ts'

/** A build with two kinds of marks noted, its head given out in each way there is, and a second folder. */
async function givenOut() {
  const record = await store(folder())
  const host = asking(record)
  const second = folder()
  await host.get('backups.keep-in', { folder: second })
  const { line } = await host.begin()
  await host.act(line.id, 1, { type: 'note-marks', step: 'case-marks', typed: '2 2 3 1' })
  await host.get('verification.keep-head', { build: line.id })
  const exported = await host.get('builds.export', { build: line.id })
  const { backups } = await host.get('backups.make', {})
  const inFolder = dirname(record.file)
  const backup = join(inFolder, 'backups', backups[0]?.name ?? '')
  await host.act(line.id, 2, { type: 'note-marks', step: 'crank-marks', typed: 'F G H F' })
  return { record, inFolder, second, build: line.id, exported, backup, ...host }
}

/** The whole record written again with other marks: every hash fits, and so does every list within it. */
function writeAgain(inFolder: string, build: string, bodies: readonly string[]): void {
  let previous: string | null = null
  const changes = bodies.flatMap((body, at) => {
    const changed: string =
      canonicalize({ ...(JSON.parse(body.replaceAll('2 2 3 1', '3 2 3 1')) as object), previous }) ?? ''
    previous = sha256(changed)
    const text = changed.replaceAll("'", "''")
    return `UPDATE event SET body = '${text}', sha256 = '${previous}' WHERE build = '${build}' AND seq = ${at + 1}`
  })
  alter(inFolder, ...changes, 'DELETE FROM witness')
}

async function verifiedBy({ get }: Pick<ReturnType<typeof asking>, 'get'>) {
  await get('verification.start', { build: null })
  await expect.poll(async () => (await get('verification.read', {})).state).toBe('done')
  const outcome = await get('verification.read', {})
  if (outcome.state !== 'done') throw new Error('it is not done')
  return outcome
}

describe('a head that was given out', () => {
  it('is kept in the record and in the second folder, and is the build’s own still', async () => {
    const exported = await givenOut()
    expect(await verifiedBy(exported)).toMatchObject({ breaks: [], witnesses: 6 })
    const list = readdirSync(exported.second).find((name) => name.endsWith('-witnesses.txt'))
    const kinds = readFileSync(join(exported.second, list ?? ''), 'utf8').match(/^\w+/gm)
    expect(kinds?.sort()).toEqual(['backup', 'export', 'sheet'])
  })

  it('tells a record that was written again as a whole, by the list in the second folder', async () => {
    const exported = await givenOut()
    const bodies = exported.record.entries(exported.build).map(({ body }) => body)
    exported.record.close()
    writeAgain(exported.inFolder, exported.build, bodies)
    const { breaks } = await verifiedBy(asking(await store(exported.inFolder)))
    expect(breaks.map(({ problem }) => problem.code)).toEqual(['witness-differs', 'witness-differs'])
    expect(sentenceOf(breaks[0]!.problem)).toContain('after entry 2')
  })

  it('tells a build whose last entries were cut off', async () => {
    const exported = await givenOut()
    exported.record.close()
    alter(exported.inFolder, 'DELETE FROM event WHERE seq > 1')
    const { breaks } = await verifiedBy(asking(await store(exported.inFolder)))
    expect(breaks.map(({ problem }) => problem.code)).toContain('witness-differs')
  })
})

describe('what somebody brings', () => {
  const base64 = (file: string) => readFileSync(file).toString('base64')

  it('fits the record it came from, and what was added since is reported', async () => {
    const { get, exported, backup } = await givenOut()
    const text = Buffer.from(exported.text).toString('base64')
    for (const [name, content] of [
      [exported.fileName, text],
      ['old.sqlite', base64(backup)],
    ] as const) {
      const { lines } = await get('verification.compare', { name, base64: content })
      expect(lines).toEqual([
        { good: true, says: { code: 'same-entries', facts: { name: '2026-001', entries: 2, since: 1 } } },
      ])
    }
  })

  it('is looked for by the code in its name, or as it was typed from a sheet', async () => {
    const { get, exported, build, record } = await givenOut()
    const code = record.entries(build)[1]?.sha256.slice(0, 16) ?? ''
    for (const name of [
      exported.fileName,
      `Build sheet 2026-001 2-${code}.pdf`,
      code,
      ` ${code.toUpperCase()}`,
    ])
      expect((await get('verification.compare', { name, base64: null })).lines).toMatchObject([
        { good: true, says: { code: 'entry-has-code', facts: { name: '2026-001', entry: 2, since: 1 } } },
      ])
  })

  it('tells a record that was written again, whatever of it was given out', async () => {
    const { inFolder, build, exported, backup, record } = await givenOut()
    const bodies = record.entries(build).map(({ body }) => body)
    const old = { export: Buffer.from(exported.text).toString('base64'), backup: base64(backup) }
    record.close()
    writeAgain(inFolder, build, bodies)
    const { get, ask } = asking(await store(inFolder))
    for (const content of [old.export, old.backup]) {
      const { lines } = await get('verification.compare', { name: 'old', base64: content })
      expect(lines[0]).toMatchObject({
        good: false,
        says: { code: 'not-same', facts: { why: { code: 'verify-build-differs', facts: { entry: 2 } } } },
      })
    }
    expect(await ask('verification.compare', { name: exported.fileName, base64: null })).toMatchObject({
      ok: false,
      problem: { code: 'verify-code-unknown' },
    })
  })

  it.each([
    ['a letter', 'letter.txt', null, 'verify-file-unknown'],
    ['a code that is none of ours', 'ffffffffffffffff', null, 'verify-code-unknown'],
    [
      'a spoilt backup',
      'old.sqlite',
      Buffer.from('SQLite format 3\0 and no more').toString('base64'),
      'backup-unusable',
    ],
    [
      'a spoilt export',
      'a.bedplate',
      Buffer.from('{"bedplateBuild":1}').toString('base64'),
      'import-altered',
    ],
  ])('is refused where it is %s', async (_, name, content, code) => {
    const { ask } = await givenOut()
    expect(await ask('verification.compare', { name, base64: content })).toMatchObject({
      ok: false,
      problem: { code },
    })
  })

  it('leaves the record as it was', async () => {
    const { get, exported, inFolder } = await givenOut()
    const before = readFileSync(join(inFolder, recordName))
    await get('verification.compare', { name: 'a', base64: Buffer.from(exported.text).toString('base64') })
    expect(readFileSync(join(inFolder, recordName))).toEqual(before)
  })

  it('is none of a build that is not as confirmed: its head vouches for nothing', async () => {
    const exported = await givenOut()
    exported.record.close()
    alter(exported.inFolder, "UPDATE event SET body = replace(body, '2 2 3 1', '3 2 3 1') WHERE seq = 2")
    const record = await store(exported.inFolder)
    const before = record.witnesses()
    const again = asking(record)
    expect(await again.get('verification.keep-head', { build: exported.build })).toEqual({})
    expect(record.witnesses()).toEqual(before)
  })
})
