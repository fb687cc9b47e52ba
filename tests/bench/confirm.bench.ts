import { randomUUID } from 'node:crypto'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { BuildCommand } from '../../core/builds/index.ts'
import { migrate } from '../../electron/store/schema.ts'
import { openStore } from '../../electron/store/index.ts'
import type { Store } from '../../electron/store/index.ts'
import { connect } from '../../electron/store/file/sqlite.ts'
import { answersOn } from '../electron/answers.ts'
import type { Measure } from './measure.ts'
import { Worker } from './worker.ts'
import type { OpenBuild } from './worker.ts'

const pulls = 600

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
  const confirm = async (build: OpenBuild, pull: BuildCommand): Promise<void> => {
    const start = performance.now()
    await worker.act(build, pull)
    confirming.push(performance.now() - start)
  }
  const insertLike = (build: OpenBuild): void => {
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
