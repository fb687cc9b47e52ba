import { describe, expect, it } from 'vitest'
import { done, sentenceOf } from '../../../core/problem/index.ts'
import { memoryClient } from '../../../renderer/gallery/memory-client.ts'
import { memoryHost } from '../../../renderer/gallery/memory-host.ts'

async function begun() {
  const client = memoryClient(memoryHost())
  const start = { engine: 'skerry-3', name: 'Port auxiliary', serial: '', person: 'Ada' }
  const started = await client.request('builds.start', start)
  if (!started.ok) throw new Error(sentenceOf(started.problem))
  return { client, build: started.value.line.id }
}

describe('a client in memory', () => {
  it('carries a build on as a host does, and gives it back when it is opened again', async () => {
    const { client, build } = await begun()
    const command = { type: 'note-marks', step: 'case-marks', typed: '1 2 2 3' } as const
    const acted = await client.request('builds.act', { build, after: 1, person: 'Ada', command })
    expect(acted).toMatchObject({ ok: true, value: { events: [{ seq: 2, event: { type: 'marks-noted' } }] } })
    const opened = await client.request('builds.open', { build })
    expect(opened).toMatchObject({ ok: true, value: { line: { number: '2026-001', entries: 2 } } })
  })

  it('refuses in the same words: what core refuses, and what was done elsewhere meanwhile', async () => {
    const { client, build } = await begun()
    const command = { type: 'note-marks', step: 'case-marks', typed: '1 2 9 3' } as const
    const act = (after: number) => client.request('builds.act', { build, after, person: 'Ada', command })
    expect(await act(1)).toMatchObject({ ok: false, problem: { code: 'mark-unknown' } })
    expect(await act(7)).toMatchObject({ ok: false, problem: { code: 'build-moved-on' } })
  })

  it('parses what goes in', async () => {
    const { client } = await begun()
    const answer = await client.request('builds.open', { build: 'the one on the left' })
    expect(answer).toMatchObject({ ok: false, problem: { code: 'request-unreadable', path: 'build' } })
  })

  it('parses what comes out', async () => {
    const broken = memoryClient({ 'engines.read': () => done({ specText: 7 as unknown as string }) })
    const answer = await broken.request('engines.read', { id: 'skerry-3' })
    expect(answer).toMatchObject({ ok: false, problem: { code: 'host-misunderstood' } })
  })

  it('says so when it has no answer to a request', async () => {
    const answer = await memoryClient({}).request('host.read', {})
    expect(answer).toMatchObject({ ok: false, problem: { code: 'request-unknown' } })
  })
})
