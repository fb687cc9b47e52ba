import { Agent, request } from 'node:http'
import { describe, expect, it, onTestFinished } from 'vitest'
import { sentenceOf, type Problem } from '../../../core/problem/index.ts'
import { evolve, replay } from '../../../core/builds/index.ts'
import { contract } from '../../../core/contract/index.ts'
import { readSpec } from '../../../core/engine/index.ts'
import { startLocalHost } from '../../../electron/local/server.ts'
import { newToken } from '../../../electron/local/token.ts'
import { breachesOf } from '../../invariants.ts'
import { folder, store } from '../bench.ts'
import { nextCommand } from '../mechanic.ts'
import { asking } from '../requests/asking.ts'
import { runs } from '../../runs.ts'
import { draws, seed } from './seed.ts'

const requests = runs(2_500, 10_000)

/** A running host, asked over one connection that is kept open. */
async function host() {
  const record = await store(folder())
  const { answer, get, bugs } = asking(record)
  const token = newToken()
  const started = await startLocalHost({ pages: new Map(), answer, token })
  const agent = new Agent({ keepAlive: true, maxSockets: 4 })
  onTestFinished(() => started.close())
  onTestFinished(() => agent.destroy())
  const own = `127.0.0.1:${started.port}`
  const post = (name: string, body: string) =>
    new Promise<{ status: number; text: string }>((resolve, reject) => {
      const headers = {
        origin: `http://${own}`,
        'x-bedplate-token': token,
        'content-type': 'application/json',
        'content-length': Buffer.byteLength(body),
      }
      const sent = request(
        { host: '127.0.0.1', port: started.port, path: `/request/${name}`, method: 'POST', headers, agent },
        (reply) => {
          const parts: Buffer[] = []
          reply.on('data', (part: Buffer) => parts.push(part))
          reply.on('end', () =>
            resolve({ status: reply.statusCode ?? 0, text: Buffer.concat(parts).toString() }),
          )
        },
      )
      sent.on('error', reject)
      sent.end(body)
    })
  return { record, get, bugs, post }
}

/** What would do other work than is looked at here, or end it. */
const leftOut: readonly string[] = [
  'backups.make',
  'backups.keep-in',
  'record.copy',
  'people.keep',
  'people.enter',
]

describe(`requests to the running host (seed ${seed})`, () => {
  it('are all answered, and no build breaks a rule by them', { timeout: 300_000 }, async () => {
    const { get, bugs, post } = await host()
    const by = draws()
    const { line, specText } = await get('builds.start', {
      engine: 'skerry-3',
      name: 'Ferry',
      serial: '',
      person: 'Ana Ruiz',
    })
    const read = readSpec(specText)
    if (!read.ok) throw new Error('the spec cannot be read')
    const { spec } = read
    const names = Object.keys(contract).filter((name) => !leftOut.includes(name))
    const ids = {
      step: spec.steps.map(({ id }) => id),
      procedure: spec.procedures.map(({ id }) => id),
      fastener: spec.fasteners.map(({ id }) => id),
      position: spec.fits.flatMap(({ positions }) => positions),
      group: spec.fastenerGroups.map(({ id }) => id),
    }
    const odd = () => by.oneOf([null, 0, -1, 1e9, '', 'x', '24', true, [], {}, '\0', 'é'.repeat(300)])
    const counts: Record<string, number> = { good: 0, refused: 0, turned: 0 }
    let events = (await get('builds.open', { build: line.id })).events
    let state = replay(events)

    /** The right command now and then, so that the build gets on; mostly one that was bent. */
    const command = (): Record<string, unknown> => {
      const right = nextCommand(spec, state)
      const bent: Record<string, unknown> = { ...(right ?? { type: 'finish-build' }) }
      if (by.random() < 0.3) return bent
      const key = by.oneOf(Object.keys(bent))
      const pool = ids[key as keyof typeof ids] as readonly string[] | undefined
      bent[key] = by.random() < 0.7 && pool !== undefined ? by.oneOf(pool) : odd()
      if (by.random() < 0.1) return { type: 'finish-build' }
      return bent
    }
    const input = (name: string): unknown => {
      if (name === 'builds.act')
        return {
          build: by.random() < 0.95 ? line.id : odd(),
          after: by.random() < 0.9 ? events.length : by.below(400),
          person: by.random() < 0.95 ? 'Ana Ruiz' : odd(),
          command: command(),
        }
      return by.random() < 0.3
        ? odd()
        : { build: line.id, name: odd(), words: odd(), id: odd(), person: odd() }
    }
    for (let each = 0; each < requests; each += 1) {
      const name = by.random() < 0.7 ? 'builds.act' : by.oneOf(names)
      const body = by.random() < 0.02 ? '{"a":' : JSON.stringify(input(name))
      const { status, text } = await post(name, body)
      expect([200, 400], `request ${each}: ${name}`).toContain(status)
      if (status === 400) {
        counts.turned = (counts.turned ?? 0) + 1
        continue
      }
      const reply = JSON.parse(text) as {
        ok: boolean
        value?: { events?: typeof events }
        problem?: Problem
      }
      counts[reply.ok ? 'good' : 'refused'] = (counts[reply.ok ? 'good' : 'refused'] ?? 0) + 1
      if (!reply.ok) expect(sentenceOf(reply.problem!).length, `request ${each}`).toBeGreaterThan(10)
      const more = name === 'builds.act' && reply.ok ? (reply.value?.events ?? []) : []
      events = [...events, ...more]
      state = more.reduce(evolve, state)
    }
    expect(bugs).toEqual([])
    const opened = await get('builds.open', { build: line.id })
    expect(opened.readOnly).toBeNull()
    expect(opened.events).toEqual(events)
    expect(breachesOf(spec, events)).toEqual([])
    expect(events.length).toBeGreaterThan(60)
    expect(counts.refused).toBeGreaterThan(requests / 5)
  })
})
