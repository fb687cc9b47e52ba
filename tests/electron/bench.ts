import { mkdirSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { onTestFinished } from 'vitest'
import type { BuildEvent } from '../../core/builds/index.ts'
import { sentenceOf, type Outcome } from '../../core/problem/index.ts'
import { openStore, type Store } from '../../electron/store/index.ts'
import { buildId, spec, started } from './sample.ts'

export { buildId, fitted, otherBuildId, spec, started } from './sample.ts'

/** A folder of its own for one test, gone after it. */
export function folder(): string {
  const around = mkdtempSync(join(tmpdir(), 'bedplate-'))
  onTestFinished(() => rmSync(around, { recursive: true, force: true }))
  const made = join(around, 'data') // beside it stands the note that a record was there
  mkdirSync(made, { mode: 0o700 })
  return made
}

/** A clock that moves on by a second each time it is looked at. */
export function clock(from = '2026-03-02T07:30:00.000Z'): () => Date {
  let at = Date.parse(from) - 1000
  return () => new Date((at += 1000))
}

export function value<Value>(outcome: Outcome<Value>): Value {
  if (!outcome.ok) throw new Error(sentenceOf(outcome.problem))
  return outcome.value
}

/** The store of a folder, closed after the test where the test has not closed it. */
export async function store(inFolder: string): Promise<Store> {
  const opened = value(await openStore(inFolder, clock()))
  onTestFinished(() => opened.close())
  return opened
}

const at = '2026-03-02T07:30:00.000Z'

export function startBuild(store: Store, build = buildId) {
  return value(
    store.start({ build, after: 0, events: [started], person: 'Ana Ruiz', at, mentions: [] }, spec),
  )
}

export function append(store: Store, after: number, events: readonly BuildEvent[], build = buildId) {
  return store.append({ build, after, events, person: 'Ana Ruiz', at, mentions: [] })
}
