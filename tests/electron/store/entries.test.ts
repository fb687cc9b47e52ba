import { createHash } from 'node:crypto'
import { describe, expect, it } from 'vitest'
import { firstBroken } from '../../../electron/store/index.ts'
import type { StoredEntry } from '../../../electron/store/index.ts'
import { append, buildId, fitted, folder, otherBuildId, spec, startBuild, store, value } from '../bench.ts'

describe('adding to a build', () => {
  it('numbers the entries 1, 2, 3 and gives them back as recorded', async () => {
    const record = await store(folder())
    const first = startBuild(record)
    const rest = value(append(record, 1, [fitted('crank'), fitted('oil-seal')]))
    expect([...first, ...rest].map(({ seq }) => seq)).toEqual([1, 2, 3])
    expect(rest[0]).toMatchObject({ person: 'Ana Ruiz', event: { type: 'part-fitted', step: 'crank' } })
  })

  it('is refused when something was added since', async () => {
    const record = await store(folder())
    startBuild(record)
    value(append(record, 1, [fitted('crank')]))
    const late = append(record, 1, [fitted('oil-seal')])
    expect(late).toMatchObject({ ok: false, problem: { code: 'build-moved-on', facts: { last: 2 } } })
    expect(record.entries(buildId)).toHaveLength(2)
  })

  it('is refused ahead of the last entry, so that no number is left out', async () => {
    const record = await store(folder())
    startBuild(record)
    expect(append(record, 5, [fitted('crank')]).ok).toBe(false)
  })

  it('takes all of several entries or none', async () => {
    const record = await store(folder())
    startBuild(record)
    const unwell = fitted('half a surrogate: \ud800')
    expect(() => append(record, 1, [fitted('crank'), unwell])).toThrow()
    expect(record.entries(buildId)).toHaveLength(1)
    expect(record.build(buildId)?.entries).toBe(1)
  })

  it('keeps the list of builds in step', async () => {
    const record = await store(folder())
    startBuild(record)
    const [, last] = value(append(record, 1, [fitted('crank'), { type: 'build-finished', version: 1 }]))
    expect(record.build(buildId)).toMatchObject({
      name: 'Ferry, port engine',
      serial: 'F-201',
      engine: spec.engine,
      demo: 1,
      year: 2026,
      ordinal: 1,
      entries: 3,
      finished: 1,
      head_sha256: last?.hash,
    })
  })

  it('counts builds up within the year', async () => {
    const record = await store(folder())
    startBuild(record)
    startBuild(record, otherBuildId)
    expect(record.builds().map(({ year, ordinal }) => [year, ordinal])).toEqual([
      [2026, 2],
      [2026, 1],
    ])
  })

  it('keeps a spec once, however many builds rest on it', async () => {
    const record = await store(folder())
    const [first] = startBuild(record)
    startBuild(record, otherBuildId)
    const kept = first?.event.type === 'build-started' ? record.specText(first.event.specSha256) : null
    expect(kept).toBe(spec.text)
  })
})

describe('the chain of a build', () => {
  /** Computed here from the stored text alone, with nothing of the program. */
  function recomputed(entries: readonly StoredEntry[]): (string | null)[] {
    return entries.map(({ body }) => createHash('sha256').update(Buffer.from(body, 'utf8')).digest('hex'))
  }

  it('is the SHA-256 of each stored text, and each text holds the hash before it', async () => {
    const record = await store(folder())
    startBuild(record)
    value(append(record, 1, [fitted('crank'), fitted('Öldüse'), fitted('oil-seal')]))
    const entries = record.entries(buildId)
    const hashes = recomputed(entries)
    expect(entries.map(({ sha256 }) => sha256)).toEqual(hashes)
    expect(entries.map(({ body }) => JSON.parse(body).previous)).toEqual([null, ...hashes.slice(0, -1)])
  })

  it('rests on the canonical text: names in order, no spaces', async () => {
    const record = await store(folder())
    startBuild(record)
    value(append(record, 1, [fitted('crank')]))
    const [first, second] = record.entries(buildId)
    expect(second?.body).toBe(
      `{"at":"2026-03-02T07:30:00.000Z","build":"${buildId}","event":{"step":"crank","type":"part-fitted","version":1},` +
        `"person":"Ana Ruiz","previous":"${first?.sha256}","seq":2}`,
    )
  })

  it('tells the first entry that was altered, left out, put in or moved', async () => {
    const record = await store(folder())
    startBuild(record)
    value(append(record, 1, ['a', 'b', 'c', 'd'].map(fitted)))
    const entries = record.entries(buildId)
    const altered = (seq: number, change: (entry: StoredEntry) => StoredEntry) =>
      entries.map((entry) => (entry.seq === seq ? change(entry) : entry))
    const rehashed = (entry: StoredEntry) => {
      const body = entry.body.replace('"b"', '"x"')
      return { ...entry, body, sha256: createHash('sha256').update(body).digest('hex') }
    }
    expect(firstBroken(buildId, entries)).toBeNull()
    expect(
      firstBroken(
        buildId,
        altered(3, (it) => ({ ...it, body: it.body.replace('"b"', '"x"') })),
      ),
    ).toBe(3)
    expect(firstBroken(buildId, altered(3, rehashed))).toBe(4)
    expect(
      firstBroken(
        buildId,
        altered(4, (it) => ({ ...it, sha256: 'f'.repeat(64) })),
      ),
    ).toBe(4)
    expect(
      firstBroken(
        buildId,
        entries.filter(({ seq }) => seq !== 2),
      ),
    ).toBe(2)
    expect(firstBroken(buildId, [...entries.slice(0, 2), ...entries.slice(1)])).toBe(3)
    expect(firstBroken(otherBuildId, entries)).toBe(1)
    const noEntry = { seq: 6, body: 'x', sha256: createHash('sha256').update('x').digest('hex') }
    expect(firstBroken(buildId, [...entries, noEntry])).toBe(6)
  })
})
