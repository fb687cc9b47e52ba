import { chmodSync, truncateSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { textIn } from '../../../core/problem/index.ts'
import { en } from '../../../core/words/index.ts'
import { askDoctor } from '../../../electron/requests/index.ts'
import { folder, startBuild, store } from '../bench.ts'
import { asking } from './asking.ts'

const now = new Date('2026-03-20T08:00:00Z')

async function doctorOutput(dataFolder: string) {
  const facts = {
    host: 'local',
    why: { code: 'noDisplay', facts: {} },
    version: '0.1.0',
    dataFolder,
  } as const
  const lines = await askDoctor(facts, now)
  const texts = lines.map(({ says }) => textIn(en, en.doctor.lines, says))
  return Object.fromEntries(lines.map(({ subject, state }, at) => [subject, `${state}: ${texts[at]}`]))
}

describe('the doctor', () => {
  it('says what runs, in which host and why, where the data lie and what room there is', async () => {
    const lines = await doctorOutput(folder())
    expect(lines.program).toMatch(/^good: Bedplate 0\.1\.0 on Node \d+\.\d+\.\d+, /)
    expect(lines.host).toBe('good: It runs in the local host: there is no display.')
    expect(lines['data-folder']).toContain('can be written')
    expect(lines.disk).toMatch(/\d+ MB are free/)
  })

  it('finds nothing wrong before the first start, and makes nothing', async () => {
    const inFolder = join(folder(), 'new')
    const lines = await doctorOutput(inFolder)
    expect(lines.record).toContain('no record yet')
    expect(lines['data-folder']).toContain('not there yet')
  })

  it('knows a record that is in use for a good one', async () => {
    const record = await store(folder())
    expect((await doctorOutput(dirname(record.file))).record).toBe(
      'good: The record is in use: Bedplate is running.',
    )
  })

  it('counts the builds, and misses the backup', async () => {
    const record = await store(folder())
    startBuild(record)
    record.close()
    const lines = await doctorOutput(dirname(record.file))
    expect(lines.record).toContain('1 build ')
    expect(lines.backup).toBe('bad: There is no backup. No second folder is chosen.')
  })

  it('says how old the last backup is, and what is in it', async () => {
    const record = await store(folder())
    const { get, begin } = asking(record, { now: () => new Date('2026-03-02T12:00:00Z') })
    await begin()
    await get('backups.make', {})
    const lines = await doctorOutput(dirname(record.file))
    expect(lines.backup).toMatch(
      /^look: The last backup is 17 days old \(1 build, 1 entry, head [0-9a-f]{16}\)/,
    )
  })

  it('says what is wrong with a damaged record in the words of the start', async () => {
    const record = await store(folder())
    record.close()
    truncateSync(record.file, 0)
    expect((await doctorOutput(dirname(record.file))).record).toMatch(/^bad: .*damaged/)
  })

  it('sees a folder that others can look into', async () => {
    const inFolder = folder()
    chmodSync(inFolder, 0o755)
    expect((await doctorOutput(inFolder))['data-folder']).toMatch(/^look: /)
  })

  it('answers the window with the same lines', async () => {
    const { get } = asking(await store(folder()))
    const subjects = (await get('host.doctor', {})).map(({ subject }) => subject)
    expect(subjects).toEqual(['program', 'host', 'data-folder', 'disk', 'record', 'backup'])
  })
})

describe('a PDF in the local host', () => {
  it('is the browser’s to make, and the answer says how', async () => {
    const { ask } = asking(await store(folder()))
    expect(await ask('sheet.pdf', { paper: 'A4', fileName: 'sheet' })).toMatchObject({
      ok: false,
      problem: { code: 'pdf-by-browser' },
    })
  })
})
