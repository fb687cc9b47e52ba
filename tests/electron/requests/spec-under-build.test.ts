import { dirname } from 'node:path'
import { describe, expect, it } from 'vitest'
import { sha256 } from '../../../electron/store/index.ts'
import { alter } from '../alter.ts'
import { folder, store } from '../bench.ts'
import { asking } from './asking.ts'

/** A build of an engine pulled to 24 N·m, and the text of a spec that is the same but for the torques. */
async function built() {
  const record = await store(folder())
  const { begin } = asking(record)
  const { line, specText } = await begin()
  record.close()
  return {
    inFolder: dirname(record.file),
    build: line.id,
    specText,
    other: specText.replaceAll('N·m', 'lbf·ft'),
  }
}

/** Puts another spec under the build, all of it past the guards. */
async function swapped() {
  const { inFolder, build, specText, other } = await built()
  const hash = sha256(other)
  alter(
    inFolder,
    `INSERT INTO spec SELECT '${hash}', replace(text, 'N·m', 'lbf·ft'), engine, demo FROM spec`,
    `UPDATE build SET spec_sha256 = '${hash}'`,
  )
  return { build, specText, ...asking(await store(inFolder)) }
}

describe('a build that the list has rest on another spec', () => {
  it('opens with the spec its first entry names, to be read only, and says why', async () => {
    const { get, act, build, specText } = await swapped()
    const opened = await get('builds.open', { build })
    expect(opened.specText).toBe(specText)
    expect(opened.readOnly).toMatchObject({ code: 'build-spec-swapped' })
    expect(await act(build, 1, { type: 'note-marks', step: 'case-marks', typed: '2 2 3 1' })).toMatchObject({
      ok: false,
      problem: { code: 'build-spec-swapped' },
    })
  })

  it('is found by verifying, and named', async () => {
    const { get } = await swapped()
    await get('verification.start', { build: null })
    await expect.poll(async () => (await get('verification.read', {})).state).toBe('done')
    expect(await get('verification.read', {})).toMatchObject({
      breaks: [{ number: '2026-001', problem: { code: 'build-spec-swapped' } }],
      lists: true,
    })
  })

  it('is neither exported nor put in a table', async () => {
    const { ask, build } = await swapped()
    const refusal = { ok: false, problem: { code: 'build-spec-swapped' } }
    expect(await ask('builds.export', { build })).toMatchObject(refusal)
    expect(await ask('builds.csv', { build, table: 'pulls' })).toMatchObject(refusal)
  })

  it('goes on when the lists were made again from the entries', async () => {
    const { get, act, build } = await swapped()
    expect(await get('record.rebuild-lists', {})).toEqual({ changed: 1 })
    expect((await get('builds.open', { build })).readOnly).toBeNull()
    expect((await act(build, 1, { type: 'note-marks', step: 'case-marks', typed: '2 2 3 1' })).ok).toBe(true)
  })
})

describe('a spec whose text was altered', () => {
  it('opens to be read only, and is not given out', async () => {
    const { inFolder, build } = await built()
    alter(inFolder, "UPDATE spec SET text = replace(text, 'N·m', 'lbf·ft')")
    const { get, ask } = asking(await store(inFolder))
    expect((await get('builds.open', { build })).readOnly).toMatchObject({ code: 'build-spec-altered' })
    expect(await ask('builds.export', { build })).toMatchObject({
      ok: false,
      problem: { code: 'build-spec-altered' },
    })
  })
})
