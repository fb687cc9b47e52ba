import { describe, expect, it } from 'vitest'
import type { BuildEvent, RecordedEvent } from '../../../core/builds/index.ts'
import type { BuildBenches } from '../../../core/contract/index.ts'
import { done, problem } from '../../../core/problem/index.ts'
import { Bench } from '../../../renderer/bench/bench.svelte.ts'
import { followShop } from '../../../renderer/bench/shop-news.ts'
import { memoryClient } from '../../../renderer/gallery/memory-client.ts'
import { memoryHost } from '../../../renderer/gallery/memory-host.ts'

const here = { id: '0123456789ab', name: 'Bench 2' }
const other = { id: 'ba9876543210', name: 'Bench 1' }

/** A build that the host gives with its benches, and the entries that come to it then. */
async function opened(begunAt: typeof here | null) {
  const host = memoryHost({ preferences: { person: 'Ana Ruiz' } })
  const come: RecordedEvent[] = []
  const benches: BuildBenches = { here, isJoined: true, begunAt, apart: null, asOf: null, cut: null }
  let now = benches
  const client = memoryClient({
    ...host,
    'builds.start': (input) => {
      const started = host['builds.start']!(input)
      if (!started.ok) return started
      return done({
        ...started.value,
        benches: { here, isJoined: true, begunAt, apart: null, asOf: null, cut: null },
      })
    },
    'builds.since': () => done({ events: come, benches: now }),
  })
  const bench = new Bench(client)
  await bench.open()
  await bench.newBuilds.start('skerry-3', 'Ferry, port engine', 'F-201', 'Ana Ruiz', false)
  if (bench.place.at !== 'build') throw new Error('no build is open')
  const { openBuild } = bench.place
  const comes = async (event: BuildEvent) => {
    const seq = openBuild.state.seq + 1
    come.push({ seq, at: '2026-03-09T07:00:00.000Z', person: 'I. Lind', event, hash: 'a'.repeat(64) })
    await openBuild.follow()
  }
  const stands = async (change: Partial<BuildBenches>) => {
    now = { ...now, ...change }
    await openBuild.follow()
  }
  return { openBuild, comes, stands }
}

describe('a build of the shop in the window', () => {
  it('is read-only while another bench has it, and open once it is handed over to this one', async () => {
    const { openBuild, comes } = await opened(other)
    expect(openBuild.readOnly?.code).toBe('build-elsewhere')
    await comes({ type: 'build-handed-over', version: 1, from: other, to: here, note: '' })
    expect(openBuild.readOnly).toBeNull()
  })

  it('becomes read-only when another bench takes it over', async () => {
    const { openBuild, comes } = await opened(null)
    expect(openBuild.readOnly).toBeNull()
    await comes({ type: 'build-taken-over', version: 1, from: null, to: other, reason: 'Bench 2 is dark' })
    expect(openBuild.readOnly?.code).toBe('build-elsewhere')
    expect(openBuild.isElsewhere).toBe(true)
  })

  it('says as of when it is and since when nothing is heard, and is read-only once another line of it comes', async () => {
    const { openBuild, stands } = await opened(null)
    const asOf = '2026-03-09T12:00:00.000Z'
    const cut = {
      since: asOf,
      problem: problem('shop-unreachable', { host: 'server', code: 'ECONNREFUSED' }),
    }
    await stands({ asOf, cut })
    expect(openBuild.benches).toMatchObject({ asOf, cut })
    expect(openBuild.readOnly).toBeNull()
    await stands({
      cut: null,
      apart: problem('build-apart', { name: 'Ferry', bench: 'Bench 1', entry: 2, own: null }),
    })
    expect(openBuild.isApart).toBe(true)
    expect(openBuild.readOnly?.code).toBe('build-apart')
  })
})

describe('the news of a shop', () => {
  it('are heard from the first answer on, until the bench belongs to no shop', async () => {
    const build = '01956f6c-8a00-7000-8000-000000000001'
    const answers = [
      { isJoined: true, number: 4, builds: [build] },
      { isJoined: true, number: 4, builds: [] },
      { isJoined: true, number: 5, builds: [build] },
      { isJoined: false, number: 5, builds: [] },
    ]
    const asked: number[] = []
    const client = memoryClient({
      'shop.news': ({ after }) => {
        asked.push(after)
        return done(answers.shift()!)
      },
    })
    const heard: (readonly string[])[] = []
    await followShop(client, (builds) => heard.push(builds), new AbortController().signal)
    expect(asked).toEqual([0, 4, 4, 5])
    expect(heard).toEqual([[], [build]])
  })
})
