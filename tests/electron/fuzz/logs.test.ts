import { describe, expect, it } from 'vitest'
import { checkRules, recordedEvent, type RecordedEvent } from '../../../core/builds/index.ts'
import type { EngineSpec } from '../../../core/engine/index.ts'
import { sentenceOf } from '../../../core/problem/index.ts'
import { readExport } from '../../../electron/requests/exchange/export-file.ts'
import { breachesOf } from '../../invariants.ts'
import { folder, store } from '../bench.ts'
import { finishBuild } from '../mechanic.ts'
import { asking } from '../requests/asking.ts'
import { runs } from '../../runs.ts'
import { forged, sha256 } from '../requests/exchange/forged.ts'
import { draws, seed } from './seed.ts'

type Entry = Record<string, unknown>
type Draws = ReturnType<typeof draws>

const logs = runs(500, 2000)
const files = runs(30, 60)

/** Each makes of good entries others that fit together as a chain. */
const changes: readonly ((entries: Entry[], by: Draws) => void)[] = [
  (entries, by) => void entries.splice(1 + by.below(entries.length - 1), 1),
  (entries, by) => {
    const at = 1 + by.below(entries.length - 1)
    entries.splice(at, 0, structuredClone(entries[at]!))
  },
  (entries, by) => {
    const at = 1 + by.below(entries.length - 2)
    entries.splice(at, 2, entries[at + 1]!, entries[at]!)
  },
  (entries, by) => void entries.splice(1 + by.below(entries.length - 1), 1 + by.below(30)),
  (entries, by) => void entries.splice(1 + by.below(entries.length - 1)),
  (entries, by) => {
    const event = by.oneOf(entries).event as Entry
    const key = by.oneOf(Object.keys(event))
    const other = by.oneOf(entries).event as Entry
    event[key] = by.oneOf([other[key], null, '', 0, 1, by.below(9), 'within', 'over', 'under', '15', true])
  },
  (entries, by) => {
    const insert = by.oneOf([
      { type: 'build-finished', version: 1 },
      { type: 'build-voided', version: 1, reason: 'Trial only' },
      { type: 'build-amended', version: 1, text: 'It was so', reason: 'Told later' },
    ])
    const at = 1 + by.below(entries.length)
    entries.splice(at, 0, { ...entries[0]!, event: insert })
  },
]

/** A finished build as it is exported, and its spec. */
async function finished() {
  const { begin, act, get } = asking(await store(folder()))
  const { line, specText, events } = await begin()
  await finishBuild({ build: line.id, specText, events, act })
  const { text } = await get('builds.export', { build: line.id })
  const read = await readExport(text)
  if (!read.ok) throw new Error('the export cannot be read')
  const { spec } = read.value.specs[0]!
  return { text, spec, specText, events: read.value.events }
}

function spoil(entries: Entry[], by: Draws): void {
  for (let times = 1 + by.below(3); times > 0 && entries.length > 3; times -= 1)
    by.oneOf(changes)(entries, by)
  entries.forEach((entry, at) => (entry.seq = at + 1))
}

/** Whether all of it could have been confirmed, by the rules alone. */
function couldBe(spec: EngineSpec, hash: string, entries: readonly RecordedEvent[]): boolean {
  const checking = checkRules(spec, hash, entries)
  for (let step = checking.next(); ; step = checking.next()) if (step.done) return step.value === null
}

describe(`forged logs (seed ${seed})`, () => {
  it('are refused, or are of a build that keeps every rule', { timeout: 300_000 }, async () => {
    const { spec, specText, events } = await finished()
    const hash = sha256(specText)
    const by = draws()
    const found = { taken: 0, refused: 0 }
    for (let log = 0; log < logs; log += 1) {
      const entries = structuredClone(events) as unknown as Entry[]
      spoil(entries, by)
      const read = entries.map((entry) => recordedEvent.safeParse(entry))
      const known = read.flatMap(({ data }) => (data === undefined ? [] : [data]))
      const isTaken = known.length === entries.length && couldBe(spec, hash, known)
      found[isTaken ? 'taken' : 'refused'] += 1
      if (isTaken) expect(breachesOf(spec, known), `log ${log}`).toEqual([])
    }
    expect(found.taken).toBeGreaterThan(logs / 40)
    expect(found.refused).toBeGreaterThan(logs / 4)
  })

  it('are refused as files in the same way, with a sentence', { timeout: 120_000 }, async () => {
    const { text } = await finished()
    const by = draws(seed + 1)
    const found = { taken: 0, refused: 0 }
    for (let log = 0; log < files; log += 1) {
      const read = await readExport(forged(text, (entries) => spoil(entries, by)))
      found[read.ok ? 'taken' : 'refused'] += 1
      if (read.ok) expect(breachesOf(read.value.specs[0]!.spec, read.value.events), `log ${log}`).toEqual([])
      else expect(sentenceOf(read.problem).length).toBeGreaterThan(20)
    }
    expect(found.taken).toBeGreaterThan(0)
    expect(found.refused).toBeGreaterThan(files / 3)
  })

  it('are told apart by the rules: each breach is found where there is one', async () => {
    const { spec, events: whole } = await finished()
    const pulls = whole.filter(({ event }) => event.type === 'fastener-pulled')
    const without = (seq: number) => whole.filter((entry) => entry.seq !== seq)
    expect(breachesOf(spec, whole)).toEqual([])
    expect(breachesOf(spec, [...whole.slice(0, -1), pulls[0]!]).join()).toContain('twice')
    expect(breachesOf(spec, without(pulls[0]!.seq)).join()).toContain('missed')
    expect(breachesOf(spec, without(pulls.at(-1)!.seq)).join()).toContain('missing')
    expect(breachesOf(spec, [...whole, whole[1]!]).join()).toContain('after the build was finished')
  })
})
