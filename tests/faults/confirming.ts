import { randomUUID } from 'node:crypto'
import { once } from 'node:events'
import { existsSync } from 'node:fs'
import { join } from 'node:path'
import { evolve, replay } from '../../core/builds/index.ts'
import type { Output } from '../../core/contract/index.ts'
import { sentenceOf } from '../../core/problem/index.ts'
import { readSpec } from '../../core/engine/index.ts'
import { openStore, recordName, type Store } from '../../electron/store/index.ts'
import { connect } from '../../electron/store/file/sqlite.ts'
import { storeOn } from '../../electron/store/store.ts'
import { answersOn } from '../electron/answers.ts'
import { nextCommand } from '../electron/mechanic.ts'

// A host of its own that confirms one thing after another over the contract: `node confirming.ts FOLDER [normal]`.
// For each confirmation it prints `BUILD SEQ`; when one is refused, `refused CODE`, and goes on after a line on its input.
const [folder = '', mode] = process.argv.slice(2)
const store = await opened()
const { answer } = answersOn(store, { now: () => new Date(), newId: randomUUID })
process.stdout.write('open\n')
for (;;) await wholeBuild()

/** With `normal`, SQLite no longer waits for the disk at each commit: the arm that shows that the test can fail. */
async function opened(): Promise<Store> {
  const file = join(folder, recordName)
  if (mode === 'normal' && existsSync(file)) {
    const db = connect(file)
    db.pragma('synchronous = NORMAL')
    return storeOn(db, file)
  }
  const outcome = await openStore(folder, () => new Date())
  if (outcome.ok) return outcome.value
  process.stdout.write(`${sentenceOf(outcome.problem)}\n`)
  process.exit(1)
}

async function wholeBuild(): Promise<void> {
  const start = { engine: 'skerry-3', name: 'Ferry', serial: 'F-201', person: 'Ana Ruiz' }
  const begun = (await confirmed('builds.start', start)) as Output<'builds.start'>
  const build = begun.line.id
  const read = readSpec(begun.specText)
  if (!read.ok) throw new Error('the spec cannot be read')
  let state = replay(begun.events)
  acknowledge(build, state.seq)
  for (let command = nextCommand(read.spec, state); command; command = nextCommand(read.spec, state)) {
    const { events } = (await confirmed('builds.act', {
      build,
      after: state.seq,
      person: 'Ana Ruiz',
      command,
    })) as Output<'builds.act'>
    state = events.reduce(evolve, state)
    acknowledge(build, state.seq)
  }
}

async function confirmed(name: string, input: unknown): Promise<unknown> {
  for (;;) {
    const reply = await answer(name, input)
    if (reply.ok) return reply.value
    process.stdout.write(`refused ${reply.problem.code}\n`)
    await once(process.stdin, 'data')
  }
}

function acknowledge(build: string, seq: number): void {
  process.stdout.write(`${build} ${seq}\n`)
}
