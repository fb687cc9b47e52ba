import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { specFileOf } from '../../../core/drafts/index.ts'
import { engineFile } from '../../engine-files.ts'
import { folder, store } from '../bench.ts'
import { asking } from './asking.ts'
import { sha256 } from './exchange/forged.ts'

const person = 'Ana Ruiz'
const skerry = readFileSync(engineFile('skerry-3'), 'utf8')

/** A revision of an engine of the shop, as a file; in the second one the bearings of the mains are tighter. */
function file(revision: 1 | 2): string {
  const document = JSON.parse(skerry) as { fits: { clearance: { most: string } }[] }
  if (revision === 2) document.fits[0]!.clearance.most = '48 µm'
  const source = { kind: 'entered', from: 'Heron manual', enteredBy: 'Ana Ruiz', on: '2026-03-02' }
  const text = JSON.stringify({
    ...document,
    id: 'heron-3',
    name: 'Heron 3',
    revision: String(revision),
    source,
  })
  return specFileOf(text, sha256)
}

/** A build of the first revision with the marks of case and crank noted, and shells chosen. */
async function begun() {
  const inFolder = folder()
  const record = await store(inFolder)
  const host = asking(record)
  await host.get('library.import', { text: file(1), person })
  const { line } = await host.get('builds.start', { engine: 'heron-3', name: 'Ferry', serial: '', person })
  const build = line.id
  await host.act(build, 1, { type: 'note-marks', step: 'case-marks', typed: '2 2 3 1' })
  await host.act(build, 2, { type: 'note-marks', step: 'crank-marks', typed: 'F G H F' })
  await host.act(build, 3, { type: 'choose-shells', step: 'choose-mains', others: [] })
  return { ...host, record, inFolder, build }
}

const said = { revision: 2, reason: 'The maker’s bulletin 4', opens: ['choose-mains'], person }

describe('a build and the revisions of its spec', () => {
  it('keeps the one it was begun with, and is told of a newer one', async () => {
    const { get, build } = await begun()
    const before = await get('builds.open', { build })
    expect(before.newer).toBeUndefined()
    await get('library.import', { text: file(2), person })
    const after = await get('builds.open', { build })
    expect(after.newer).toMatchObject({ engine: 'heron-3', revision: 2, revisionName: '2' })
    expect(after).toMatchObject({ specText: before.specText, events: before.events })
    expect(after.earlier).toBeUndefined()
  })

  it('is told of a newer one while it lies open, once, and not any more once it goes by it', async () => {
    const { get, build } = await begun()
    expect((await get('builds.since', { build, after: 4 })).newer).toBeUndefined()
    await get('library.import', { text: file(2), person })
    const told = { events: [], newer: { engine: 'heron-3', revision: 2 } }
    expect(await get('builds.since', { build, after: 4 })).toMatchObject(told)
    const behind = await get('builds.since', { build, after: 3 })
    expect(behind.newer?.revision).toBe(2)
    expect(behind.events).toHaveLength(1)
    const { events } = await get('builds.take-revision', { build, after: 4, ...said })
    expect((await get('builds.since', { build, after: events.length })).newer).toBeUndefined()
  })

  it('goes on by the newer one once it was taken over, also after a restart', async () => {
    const { get, act, record, inFolder, build } = await begun()
    await get('library.import', { text: file(2), person })
    const taken = await get('builds.take-revision', { build, after: 4, ...said })
    expect(taken.events.map(({ event }) => event.type).slice(4)).toEqual([
      'revision-taken-over',
      'step-reopened',
    ])
    expect(JSON.parse(taken.specText)).toMatchObject({ revision: '2' })
    expect(taken.earlier).toMatchObject([{ until: 6 }])
    expect(taken.newer).toBeUndefined()
    // Decided by the newer revision from here on.
    expect(await act(build, 6, { type: 'choose-shells', step: 'choose-mains', others: [] })).toMatchObject({
      ok: true,
    })
    record.close()
    const again = asking(await store(inFolder))
    const opened = await again.get('builds.open', { build })
    expect(opened).toMatchObject({ specText: taken.specText, earlier: taken.earlier, readOnly: null })
    expect(opened.events).toHaveLength(7)
    await again.get('verification.start', { build: null })
    await expect.poll(() => again.get('verification.read', {})).toMatchObject({ breaks: [] })
    expect(await again.get('record.rebuild-lists', {})).toEqual({ changed: 0 })
  })

  it('is not taken over by somebody who saw another list, nor by one who is behind, nor twice', async () => {
    const { get, ask, build } = await begun()
    const code = async (input: Partial<typeof said> & { readonly after?: number }) => {
      const answer = await ask('builds.take-revision', { build, after: 4, ...said, ...input })
      return answer.ok ? 'taken' : answer.problem.code
    }
    expect(await code({})).toBe('revision-none')
    await get('library.import', { text: file(2), person })
    expect(await code({ after: 3 })).toBe('build-moved-on')
    expect(await code({ opens: [] })).toBe('revision-opens-others')
    expect(await code({ reason: '' })).toBe('reason-missing')
    expect(await code({ person: '' })).toBe('person-missing')
    expect(await code({ revision: 1 })).toBe('revision-none')
    expect((await get('builds.open', { build })).events).toHaveLength(4)
    expect(await code({})).toBe('taken')
    expect(await code({ after: 6 })).toBe('revision-none')
  })

  it('goes into one file with all its specs, and out of it elsewhere, where the spec is not in the library', async () => {
    const { get, build } = await begun()
    await get('library.import', { text: file(2), person })
    await get('builds.take-revision', { build, after: 4, ...said })
    const { text } = await get('builds.export', { build })
    expect(JSON.parse(text.split('\n')[0]!)).toMatchObject({
      bedplateBuild: 3,
      specs: 2,
      photos: 0,
      entries: 6,
    })
    const there = asking(await store(folder()))
    expect(await there.get('builds.import', { text })).toMatchObject({ kind: 'added' })
    const opened = await there.get('builds.open', { build })
    expect(opened).toMatchObject({ readOnly: null, earlier: [{ until: 6 }] })
    expect((await there.get('builds.export', { build })).text).toBe(text)
    expect((await there.get('builds.csv', { build, table: 'pulls' })).text).not.toBe('')

    const lines = text.split('\n')
    const refusal = async (changed: readonly string[]) => {
      const answer = await asking(await store(folder())).ask('builds.import', { text: changed.join('\n') })
      return answer.ok ? 'taken' : answer.problem
    }
    expect(await refusal(lines.with(2, lines[1]!))).toMatchObject({
      code: 'import-altered',
      facts: { line: 3 },
    })
    expect(await refusal(lines.with(2, lines[2]!.replace('48 µm', '49 µm')))).toMatchObject({
      facts: { line: 3 },
    })
    expect(await refusal(lines.toSpliced(2, 1))).toMatchObject({ code: 'import-altered' })
  })
})
