import { describe, expect, it } from 'vitest'
import { folder, store } from '../../bench.ts'
import { asking } from '../asking.ts'
import { exportOf, forged } from './forged.ts'

async function bench() {
  return asking(await store(folder()))
}

const cleaned = { type: 'thread-cleaned', version: 1, with: { tool: 'brush', strokes: 3 } }

/** A build of three entries whose second is of a newer program. */
async function newerBuild() {
  const here = await bench()
  const { line } = await here.begin()
  for (const typed of ['2 2 3 1', '2 2 3 2'])
    await here.act(line.id, typed === '2 2 3 1' ? 1 : 2, { type: 'note-marks', step: 'case-marks', typed })
  const { text } = await here.get('builds.export', { build: line.id })
  return { build: line.id, text: forged(text, (entries) => void (entries[1]!.event = cleaned)), older: text }
}

describe('a build with an entry of a newer program', () => {
  it('is imported whole, and given out again to the byte', async () => {
    const there = await bench()
    const { build, text } = await newerBuild()
    expect(await there.get('builds.import', { text })).toMatchObject({ kind: 'added', line: { entries: 3 } })
    expect((await there.get('builds.export', { build })).text).toBe(text)
    expect(await there.get('builds.import', { text })).toMatchObject({ kind: 'known' })
    await there.get('verification.start', { build })
    await expect.poll(async () => (await there.get('verification.read', {})).state).toBe('done')
    expect(await there.get('verification.read', {})).toMatchObject({ entries: 3, breaks: [] })
  })

  it('opens up to that entry, to be read and not added to', async () => {
    const there = await bench()
    const { build, text } = await newerBuild()
    await there.get('builds.import', { text })
    const opened = await there.get('builds.open', { build })
    expect(opened.events).toHaveLength(1)
    expect(opened.readOnly).toMatchObject({
      code: 'build-newer',
      facts: { entry: 2 },
    })
    const answer = await there.act(build, 3, { type: 'void-build', reason: 'Trial only' })
    expect(answer).toMatchObject({ ok: false, problem: { code: 'build-newer' } })
  })

  it('is shown as a fork of the one that was continued with this program', async () => {
    const there = await bench()
    const { text, older } = await newerBuild()
    await there.get('builds.import', { text: older })
    expect(await there.get('builds.import', { text })).toMatchObject({
      kind: 'fork',
      at: 2,
      here: { event: { typed: '2 2 3 1' } },
      there: { event: null, person: 'Ana Ruiz' },
    })
  })

  it('may begin again after it, as far as this program knows: nothing is read past it', async () => {
    const there = await bench()
    const { text } = await newerBuild()
    const again = forged(text, (entries) => void (entries[2]!.event = entries[0]!.event))
    expect(await there.get('builds.import', { text: again })).toMatchObject({ kind: 'added' })
    expect(there.bugs).toEqual([])
  })

  it('is refused where the entry is nested too deep to be rewritten', async () => {
    const there = await bench()
    const { text } = await newerBuild()
    const [, spec = '', ...bodies] = text.trimEnd().split('\n')
    const deep = `${'['.repeat(50_000)}${']'.repeat(50_000)}`
    const last = (bodies.at(-1) ?? '').replace('"type":"marks-noted"', `"x":${deep},"type":"marks-noted"`)
    const made = exportOf(JSON.parse(spec).spec, [...bodies.slice(0, -1), last])
    expect(await there.ask('builds.import', { text: made })).toMatchObject({
      ok: false,
      problem: { code: 'import-altered' },
    })
    expect(there.bugs).toEqual([])
  })
})
