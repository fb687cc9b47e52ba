import { readFileSync, readdirSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { folder, store } from '../../bench.ts'
import { asking } from '../asking.ts'

const folderOfOld = join(import.meta.dirname, 'old-exports')
const old = (name: string): string => readFileSync(join(folderOfOld, name), 'utf8')

/** Exports as the program wrote them on the day in their name. */
describe('an export of an earlier version', () => {
  it('is kept here for each that a test asks for', () => {
    expect(readdirSync(folderOfOld)).toEqual([
      '2026-11-25-left-as-it-is.bedplate',
      '2026-11-25-whole.bedplate',
    ])
  })

  it('is taken in, and given out again byte for byte', async () => {
    const { get } = asking(await store(folder()))
    const text = old('2026-11-25-whole.bedplate')
    const imported = await get('builds.import', { text })
    expect(imported).toMatchObject({ kind: 'added', line: { finished: true, entries: 84 } })
    if (imported.kind !== 'added') throw new Error('it was not added')
    expect((await get('builds.open', { build: imported.line.id })).readOnly).toBeNull()
    expect((await get('builds.export', { build: imported.line.id })).text).toBe(text)
  })

  it('with what a later rule forbids is taken in to be read only, with the entry, and stays so', async () => {
    const inFolder = folder()
    const record = await store(inFolder)
    const { get, ask } = asking(record)
    const text = old('2026-11-25-left-as-it-is.bedplate')
    const imported = await get('builds.import', { text })
    if (imported.kind !== 'added') throw new Error('it was not added')
    const build = imported.line.id
    const readOnly = { code: 'build-of-earlier-rules', facts: { entry: 43 } }
    expect((await get('builds.open', { build })).readOnly).toMatchObject(readOnly)
    const command = { type: 'amend-build', what: 'note', text: 'Loosened and done again' }
    const act = { build, after: 85, person: 'Ana Ruiz', command } as never
    expect((await ask('builds.act', act)).ok).toBe(false)
    expect((await get('builds.export', { build })).text).toBe(text)
    record.close()
    const again = asking(await store(inFolder))
    expect((await again.get('builds.open', { build })).readOnly).toMatchObject(readOnly)
    expect(await again.get('builds.import', { text })).toMatchObject({ kind: 'known' })
  })

  it('that goes on wrongly after such an entry is refused', async () => {
    const { ask } = asking(await store(folder()))
    const lines = old('2026-11-25-left-as-it-is.bedplate').split('\n')
    const text = [...lines.slice(0, 50), ...lines.slice(51)].join('\n')
    expect((await ask('builds.import', { text })).ok).toBe(false)
  })
})
