import { fork } from 'node:child_process'
import type { ChildProcess } from 'node:child_process'
import { once } from 'node:events'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { keepUnchanged, sceneOf } from '../../core/layout/index.ts'
import type { Scene } from '../../core/layout/index.ts'
import type { Measure } from './measure.ts'
import { withPage } from './paint/open.ts'
import { factsAt, manyFasteners } from './paint/scenes.ts'
import { answersAt } from './port.ts'
import { Worker } from './worker.ts'
import { en } from '../../core/words/index.ts'

declare global {
  /** What is drawn in the browser. */
  var scenes: readonly Scene[]
}

const pulls = 2_000
/** Until caches are full, and code that is used often has been compiled. */
const warmUp = 2_000
const megabyte = 1024 * 1024
const most = 5

interface Growth extends Readonly<Record<string, number>> {
  readonly beforeMb: number
  readonly afterMb: number
}

async function messageFrom<Message>(host: ChildProcess): Promise<Message> {
  const [word] = (await once(host, 'message')) as [Message]
  return word
}

async function memoryOf(host: ChildProcess): Promise<{ privateMb: number; inUseMb: number }> {
  host.send('measure')
  const { privateBytes, inUse } = await messageFrom<{ privateBytes: number; inUse: number }>(host)
  return { privateMb: privateBytes / megabyte, inUseMb: inUse / megabyte }
}

async function confirm(worker: Worker, count: number): Promise<void> {
  for (let done = 0; done < count; done += 1) {
    const { build, pull } = await worker.untilPull()
    await worker.act(build, pull)
  }
}

async function hostGrows(): Promise<Growth> {
  const folder = mkdtempSync(join(tmpdir(), 'bedplate-memory-'))
  const script = join(import.meta.dirname, 'memory/host.ts')
  const host = fork(script, [folder], { execArgv: [...process.execArgv, '--expose-gc'] })
  try {
    const worker = new Worker(answersAt(await messageFrom<string>(host)))
    await confirm(worker, warmUp)
    const before = await memoryOf(host)
    await confirm(worker, pulls)
    const after = await memoryOf(host)
    return {
      beforeMb: before.inUseMb,
      afterMb: after.inUseMb,
      privateBeforeMb: before.privateMb,
      privateAfterMb: after.privateMb,
    }
  } finally {
    const ended = once(host, 'exit')
    host.disconnect()
    await ended
    rmSync(folder, { recursive: true, force: true })
  }
}

/** Forty pulls drawn over and over: each is another drawing than the one before. */
function drawingGrows(): Promise<Growth> {
  const sheet = { widthPx: 1400, heightPx: 950, capitalPx: 12 }
  const spec = manyFasteners(300)
  let scene = sceneOf(en, spec, factsAt(spec, 0), { from: 'below', turn: 0 }, sheet)
  const scenes = Array.from({ length: 40 }, (_, done) => {
    scene = keepUnchanged(scene, sceneOf(en, spec, factsAt(spec, done), { from: 'below', turn: 0 }, sheet))
    return scene
  })
  return withPage({ width: sheet.widthPx, height: sheet.heightPx }, async (tab) => {
    const devtools = await tab.context().newCDPSession(tab)
    const heapMb = async (): Promise<number> => {
      await devtools.send('HeapProfiler.collectGarbage')
      return (await devtools.send('Runtime.getHeapUsage')).usedSize / megabyte
    }
    await tab.evaluate((all) => void Object.assign(globalThis, { scenes: all }), scenes)
    const draw = (count: number): Promise<void> =>
      tab.evaluate(async (times) => {
        for (let done = 0; done < times; done += 1) {
          page.show(scenes[done % scenes.length]!, 'light')
          await page.painted()
        }
      }, count)
    await draw(100)
    const beforeMb = await heapMb()
    await draw(pulls)
    return { beforeMb, afterMb: await heapMb() }
  })
}

const measureOf = (name: string, grows: () => Promise<Growth>): Measure => ({
  name,
  bar: `grows by at most ${most} MB over ${pulls.toLocaleString('en')} pulls`,
  take: async () => {
    const found = await grows()
    const growthMb = found.afterMb - found.beforeMb
    return { values: { ...found, growthMb }, holds: growthMb <= most }
  },
})

export const measures: readonly Measure[] = [
  ...(process.platform === 'linux' ? [measureOf('private memory of the host', hostGrows)] : []),
  measureOf('memory of the drawing', drawingGrows),
]
