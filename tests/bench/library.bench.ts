import { cpSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { performance } from 'node:perf_hooks'
import { v7 } from 'uuid'
import { openStore, recordName } from '../../electron/store/index.ts'
import { connect } from '../../electron/store/file/sqlite.ts'
import { answersOn } from '../electron/answers.ts'
import type { Measure } from './measure.ts'

const engines = 1000

/** The same lines by one bare query, and how many builds rest on each. */
const bare = `SELECT one.*, (SELECT count(*) FROM build WHERE spec_sha256 = one.sha256) FROM library_spec AS one
  WHERE revision = (SELECT max(revision) FROM library_spec WHERE engine = one.engine) ORDER BY name, engine`

/** A library as it lies there after years: three revisions of each engine. What is in their texts, the list does not look at. */
function fill(folder: string): void {
  const db = connect(join(folder, recordName))
  const spec = db.prepare('INSERT INTO spec VALUES (?, ?, ?, 0)')
  const revision = db.prepare('INSERT INTO library_spec VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)')
  db.exec('BEGIN')
  for (let engine = 0; engine < engines; engine += 1)
    for (let number = 1; number <= 3; number += 1) {
      const hash = (engine * 3 + number).toString(16).padStart(64, '0')
      const name = `Engine ${(engine * 37) % engines}`
      spec.run(hash, ' '.repeat(40_000), name)
      revision.run(
        ...[`engine-${engine}`, number, hash, '2026-03-02T07:30:00.000Z', 'Ana Ruiz'],
        ...[name, 'caps', 4, String(number), 'Ana Ruiz', number === 3 ? null : 'Åse Lind'],
      )
    }
  db.exec('COMMIT')
  db.close()
}

/** Of two that take turns, so that what else the machine does falls on both. */
async function medians(times: number, runs: readonly (() => unknown)[]): Promise<readonly number[]> {
  const durations = runs.map((): number[] => [])
  for (let turn = 0; turn < times; turn += 1)
    for (const [index, run] of runs.entries()) {
      const start = performance.now()
      await run()
      durations[index]!.push(performance.now() - start)
    }
  return durations.map((each) => each.toSorted((a, b) => a - b)[Math.floor(times / 2)] ?? 0)
}

export const measures: readonly Measure[] = [
  {
    name: 'library of 1,000 engines, three revisions each',
    bar: 'at most twice the bare query',
    take: async () => {
      const folder = mkdtempSync(join(tmpdir(), 'bedplate-bench-'))
      try {
        const first = await openStore(folder, () => new Date())
        if (!first.ok) throw new Error(first.problem.code)
        first.value.close()
        fill(folder)
        // The store holds its file for itself.
        const beside = join(folder, 'beside.sqlite')
        cpSync(join(folder, recordName), beside)
        const db = connect(beside)
        const query = db.prepare(bare)
        const opened = await openStore(folder, () => new Date())
        if (!opened.ok) throw new Error(opened.problem.code)
        const { answer, stop } = answersOn(opened.value, { now: () => new Date(), newId: v7, engines: [] })
        const listed = async () => {
          const reply = await answer('library.list', {})
          if (!reply.ok || (reply.value as unknown[]).length !== engines)
            throw new Error('not all are listed')
        }
        await medians(20, [() => query.all(), listed])
        const [bareMs = 0, listMs = 0] = await medians(100, [() => query.all(), listed])
        await stop()
        opened.value.close()
        db.close()
        const listRatio = listMs / bareMs
        return { values: { bareMs, listMs, listRatio }, holds: listRatio <= 2 }
      } finally {
        rmSync(folder, { recursive: true, force: true })
      }
    },
  },
]
