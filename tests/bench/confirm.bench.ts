import { randomUUID } from 'node:crypto'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { evolve, replay } from '../../core/build/index.ts'
import type { BuildCommand, BuildState } from '../../core/build/index.ts'
import type { Output } from '../../core/contract.ts'
import { readSpec } from '../../core/spec/index.ts'
import type { EngineSpec } from '../../core/spec/index.ts'
import type { Answering } from '../../electron/requests/index.ts'
import { migrate } from '../../electron/store/form.ts'
import { openStore } from '../../electron/store/index.ts'
import type { Store } from '../../electron/store/index.ts'
import { connect } from '../../electron/store/sqlite.ts'
import { answersOn } from '../electron/answers.ts'
import { nextCommand } from '../electron/mechanic.ts'
import type { Measure } from './measure.ts'

const pulls = 600

/** A build in hand: what the window would hold of it. */
interface InHand {
  readonly id: string
  readonly spec: EngineSpec
  state: BuildState
}

/** Works a build on, over as many builds as are needed, and stops before each pull. */
class Worker {
  readonly #answer: Answering
  #build: InHand | null = null

  constructor(answer: Answering) {
    this.#answer = answer
  }

  /** Does everything up to the next pull, and gives that. */
  async untilPull(): Promise<{ build: InHand; pull: BuildCommand }> {
    for (;;) {
      this.#build ??= await this.#begin()
      const command = nextCommand(this.#build.spec, this.#build.state)
      if (command === null) this.#build = null
      else if (command.type === 'pull') return { build: this.#build, pull: command }
      else await this.act(this.#build, command)
    }
  }

  async act(build: InHand, command: BuildCommand): Promise<void> {
    const input = { build: build.id, after: build.state.seq, person: 'Ana Ruiz', command }
    const answer = await this.#answer('builds.act', input)
    if (!answer.ok) throw new Error(answer.problem.sentence)
    build.state = (answer.value as Output<'builds.act'>).events.reduce(evolve, build.state)
  }

  async #begin(): Promise<InHand> {
    const input = { engine: 'skerry-3', name: 'Ferry', serial: '', person: 'Ana Ruiz' }
    const answer = await this.#answer('builds.start', input)
    if (!answer.ok) throw new Error(answer.problem.sentence)
    const { line, specText, events } = answer.value as Output<'builds.start'>
    const read = readSpec(specText)
    if (!read.ok) throw new Error('the spec cannot be read')
    return { id: line.id, spec: read.spec, state: replay(events) }
  }
}

function median(times: number[]): number {
  return times.sort((a, b) => a - b)[Math.floor(times.length / 2)] ?? 0
}

/** Confirmations and bare inserts of such rows, by turns, so that both meet the same disk. */
async function confirmAgainstInsert(store: Store, folder: string) {
  const { answer, stop } = answersOn(store, { now: () => new Date(), newId: randomUUID })
  await stop() // what is measured is a confirmation, not the backup that a finished build gets
  const bare = connect(join(folder, 'bare.sqlite'))
  migrate(bare)
  const insert = bare.prepare('INSERT INTO event VALUES (?, ?, ?, ?)')
  const worker = new Worker(answer)
  const confirming: number[] = []
  const inserting: number[] = []
  const confirm = async (build: InHand, pull: BuildCommand): Promise<void> => {
    const start = performance.now()
    await worker.act(build, pull)
    confirming.push(performance.now() - start)
  }
  const insertLike = (build: InHand): void => {
    const row = store.entries(build.id).at(-1)
    const start = performance.now()
    insert.run('bare', inserting.length + 1, row?.body, row?.sha256)
    inserting.push(performance.now() - start)
  }
  for (let done = 0; done < pulls; done += 1) {
    const { build, pull } = await worker.untilPull()
    if (done % 2 === 0) insertLike(build) // a disk is quicker the second time, so each comes first by turns
    await confirm(build, pull)
    if (done % 2 === 1) insertLike(build)
  }
  bare.close()
  return { confirmMs: median(confirming), insertMs: median(inserting) }
}

export const measures: readonly Measure[] = [
  {
    name: 'confirm a pull, durably',
    bar: 'at most 1.5 times the bare insert of the same row',
    take: async () => {
      const folder = mkdtempSync(join(tmpdir(), 'bedplate-bench-'))
      const opened = await openStore(folder, () => new Date())
      if (!opened.ok) throw new Error('the record cannot be opened')
      try {
        const { confirmMs, insertMs } = await confirmAgainstInsert(opened.value, folder)
        const ratio = confirmMs / insertMs
        return { values: { confirmMs, insertMs, ratio, pulls }, holds: ratio <= 1.5 }
      } finally {
        opened.value.close()
        rmSync(folder, { recursive: true, force: true })
      }
    },
  },
]
