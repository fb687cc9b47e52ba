import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { monitorEventLoopDelay, performance } from 'node:perf_hooks'
import { v7 } from 'uuid'
import { sentenceOf } from '../../core/problem/index.ts'
import { mentionsOf, startBuild, type BuildEvent } from '../../core/builds/index.ts'
import type { Output } from '../../core/contract/index.ts'
import { noNames } from '../../core/engine/index.ts'
import { openStore, recordName, sha256, type Store } from '../../electron/store/index.ts'
import { buildsOn } from '../../electron/store/builds.ts'
import { seal } from '../../electron/store/chain/chain.ts'
import { connect, type Database } from '../../electron/store/file/sqlite.ts'
import { answersOn, engines } from '../electron/answers.ts'
import type { Measure } from './measure.ts'

const entriesEach = 200
const firstDay = Date.parse('2020-01-01T08:00:00Z')
const people = ['Ana Ruiz', 'I. Brandvold', 'R. Halloran', 'Åse Lind']

const engine = engines.find((each) => each.id === 'skerry-3')
if (engine?.kind !== 'sound') throw new Error('the demo engine is not there')
const { spec, text } = engine

/** Fills a record with builds of two hundred entries, from `from` on: as they would lie there after years. */
function fill(folder: string, from: number, upTo: number): void {
  const db = connect(join(folder, recordName))
  const keepSpec = db.prepare('INSERT INTO spec VALUES (?, ?, ?, ?) ON CONFLICT DO NOTHING')
  const insert = db.prepare('INSERT INTO event VALUES (?, ?, ?, ?)')
  const builds = buildsOn(db)
  const build = db.transaction((number: number) => {
    const msecs = firstDay + number * 3_600_000
    const id = v7({ msecs, seq: number })
    const at = new Date(msecs).toISOString()
    const person = people[number % people.length] ?? ''
    const start = { name: `Pump ${number}`, serial: `P-${10_000 + number}`, person, specSha256: sha256(text) }
    const begun = startBuild(spec, start)
    if (!begun.ok) throw new Error('it cannot be started')
    let previous: string | null = null
    for (let seq = 1; seq <= entriesEach; seq += 1) {
      const event = seq === 1 ? begun.value : seq === entriesEach ? finished : eventAt(seq)
      const entry = seal({ build: id, seq, at, person, event, previous })
      insert.run(id, seq, entry.body, entry.sha256)
      previous = entry.sha256
    }
    const entries = [begun.value, finished].map((event) => ({ event, at }))
    builds.follow(id, entries, mentionsOf(spec, noNames, { person, event: begun.value }))
  })
  keepSpec.run(sha256(text), text, spec.name, 1)
  db.pragma('synchronous = OFF')
  db.exec('BEGIN')
  for (let number = from; number < upTo; number += 1) build(number)
  db.exec('COMMIT')
  db.close()
}

/** After the first entry a run is begun; what follows are its pulls. */
function eventAt(seq: number): BuildEvent {
  const procedure = spec.procedures[0]?.id ?? ''
  if (seq === 2) return { type: 'run-started', version: 1, procedure }
  return {
    type: 'fastener-pulled',
    version: 1,
    procedure,
    pull: seq - 2,
    pass: 1,
    fastener: spec.fasteners[0]?.id ?? '',
    reading: { typed: '24.2', value: 24.2, unit: 'N·m' },
    verdict: 'within',
    outOfOrder: null,
  }
}

const finished: BuildEvent = { type: 'build-finished', version: 1 }

function median(times: readonly number[]): number {
  return times.toSorted((a, b) => a - b)[Math.floor(times.length / 2)] ?? 0
}

async function timed(times: number, run: (turn: number) => unknown): Promise<number> {
  const durations: number[] = []
  for (let turn = 0; turn < times; turn += 1) {
    const start = performance.now()
    await run(turn)
    durations.push(performance.now() - start)
  }
  return median(durations)
}

/** The same lines by one bare query, with nothing of the program around it. */
function bare(ids: string): string {
  return `SELECT b.*, spec.engine, spec.demo, last.seq, last.sha256, json_extract(last.body, '$.at')
    FROM (${ids} ORDER BY id DESC LIMIT 51) AS page CROSS JOIN build AS b ON b.id = page.id
    CROSS JOIN spec ON spec.sha256 = b.spec_sha256 CROSS JOIN event AS last ON last.build = b.id
    AND last.seq = (SELECT max(seq) FROM event WHERE build = b.id) ORDER BY b.id DESC`
}
const byWord = 'SELECT id FROM build WHERE id IN (SELECT build FROM mention WHERE word >= @a AND word < @b)'

async function opened(folder: string): Promise<Store> {
  const outcome = await openStore(folder, () => new Date())
  if (!outcome.ok) throw new Error(outcome.problem.code)
  return outcome.value
}

/** Times on a record as it stands: the bare queries first, then the requests. */
async function times(folder: string, builds: number) {
  const db: Database = connect(join(folder, recordName))
  const list = db.prepare(bare('SELECT id FROM build'))
  const search = db.prepare(bare(byWord))
  const bareListMs = await timed(60, () => list.all())
  const bareSearchMs = await timed(600, (turn) => {
    const number = String(10_000 + ((turn * 37) % builds))
    const lines = search.all({ a: `p${number}`, b: `p${number}~` })
    if (lines.length !== 1) throw new Error(`${lines.length} builds have the serial number P-${number}`)
  })
  const bareCommonMs = await timed(30, () => search.all({ a: 'ruiz', b: 'ruiz~' }))
  db.close()

  const store = await opened(folder)
  const { answer, stop } = answersOn(store, { now: () => new Date(), newId: v7 })
  const get = async (name: string, input: unknown): Promise<unknown> => {
    const reply = await answer(name, input)
    if (!reply.ok) throw new Error(sentenceOf(reply.problem))
    return reply.value
  }
  const ids = store.builds({ most: 100 }).map(({ id }) => id)
  const listMs = await timed(60, () => get('builds.find', { words: '' }))
  const searchMs = await timed(600, (turn) =>
    get('builds.find', { words: `P-${10_000 + ((turn * 37) % builds)}` }),
  )
  const commonMs = await timed(30, () => get('builds.find', { words: 'ruiz' }))
  const openMs = await timed(60, (turn) => get('builds.open', { build: ids[turn % ids.length] }))
  await stop()
  store.close()
  return { bareListMs, bareSearchMs, bareCommonMs, listMs, searchMs, commonMs, openMs }
}

/** The longest that anybody was kept waiting while the whole archive was verified. */
async function longestBlock(
  folder: string,
): Promise<{ verifyMs: number; longestBlockMs: number; breaks: number }> {
  const store = await opened(folder)
  const { answer, stop } = answersOn(store, { now: () => new Date(), newId: v7 })
  const delay = monitorEventLoopDelay({ resolution: 1 })
  const start = performance.now()
  await answer('verification.start', { build: null })
  delay.enable()
  for (;;) {
    await new Promise((resolve) => setTimeout(resolve, 20))
    const reply = await answer('verification.read', {})
    if (!reply.ok) throw new Error(sentenceOf(reply.problem))
    const at = reply.value as Output<'verification.read'>
    if (at.state === 'running') continue
    delay.disable()
    await stop()
    store.close()
    const breaks = at.state === 'done' ? at.breaks.length : -1
    return { verifyMs: performance.now() - start, longestBlockMs: delay.max / 1e6, breaks }
  }
}

export const measures: readonly Measure[] = [
  {
    name: 'archive of 10,000 builds, 2 million entries',
    bar: 'list and search at most twice the bare query; opening one at most 1.5 times what it costs among 100; verifying finds all whole',
    take: async () => {
      const folder = mkdtempSync(join(tmpdir(), 'bedplate-bench-'))
      try {
        ;(await opened(folder)).close()
        fill(folder, 0, 100)
        const few = await times(folder, 100)
        fill(folder, 100, 10_000)
        const many = await times(folder, 10_000)
        const verified = await longestBlock(folder)
        const ratios = {
          listRatio: many.listMs / many.bareListMs,
          searchRatio: many.searchMs / many.bareSearchMs,
          commonWordRatio: many.commonMs / many.bareCommonMs,
          openRatio: many.openMs / few.openMs,
        }
        const holds =
          ratios.listRatio <= 2 &&
          ratios.searchRatio <= 2 &&
          ratios.commonWordRatio <= 2 &&
          ratios.openRatio <= 1.5 &&
          verified.breaks === 0
        return { values: { ...many, openAmong100Ms: few.openMs, ...ratios, ...verified }, holds }
      } finally {
        rmSync(folder, { recursive: true, force: true })
      }
    },
  },
]
