import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { performance } from 'node:perf_hooks'
import { setTimeout as delay } from 'node:timers/promises'
import { chromium, type Page } from '@playwright/test'
import postgres from 'postgres'
import { sentenceOf } from '../../core/problem/index.ts'
import type { AnswerRequest } from '../../electron/requests/index.ts'
import { noServer } from '../electron/shop/server.ts'
import { chromiumToTest } from '../run/chromium.ts'
import type { Measure } from './measure.ts'
import { answersAt } from './port.ts'
import { emptyArchive } from './shop/archive.ts'
import { typedAddress, withBench } from './shop/bench.ts'
import { watchEntries } from './shop/watch-entries.ts'
import { withHost } from './with-host.ts'
import { Worker } from './worker.ts'

const pulls = 60
/** The first are those of a window that is still being set up. */
const settling = 5
/** A person takes longer between two bolts. */
const betweenMs = 300

const now = () => performance.timeOrigin + performance.now()

async function mustAnswer(answer: AnswerRequest, name: Parameters<AnswerRequest>[0], input: unknown) {
  const reply = await answer(name, input)
  if (!reply.ok) throw new Error(`${name}: ${sentenceOf(reply.problem)}`)
}

/** Opens the build at a bench once the archive has it, as one that was left open. */
async function withWindow<Result>(
  address: string,
  build: string,
  work: (tab: Page) => Promise<Result>,
): Promise<Result> {
  const answer = answersAt(address)
  while (!(await answer('shop.open', { build })).ok) await delay(50)
  await mustAnswer(answer, 'preferences.keep', { atBuild: build, person: 'R. Halloran' })
  const executablePath = await chromiumToTest()
  const browser = await chromium.launch({
    ...(executablePath === undefined ? {} : { executablePath }),
    args: ['--disable-gpu', ...(process.getuid?.() === 0 ? ['--no-sandbox'] : [])],
  })
  try {
    const tab = await browser.newPage({ viewport: { width: 1280, height: 800 } })
    await tab.goto(address)
    await tab.locator('[data-entries]').waitFor({ state: 'attached' })
    await tab.evaluate(watchEntries)
    return await work(tab)
  } finally {
    await browser.close()
  }
}

function share(times: readonly number[], part: number): number {
  return times.toSorted((a, b) => a - b)[Math.floor(times.length * part)] ?? 0
}

/** What a bare line hears, and when: the least that any follower waits. */
async function hearing(server: { folder: string; port: number; password: string }) {
  const sql = postgres({
    ...{ host: server.folder, port: server.port, user: 'owner', password: server.password },
    ...{ database: 'postgres', max: 1, onnotice: () => {} },
  })
  const heard: number[] = []
  await sql.listen('bedplate_shop', () => void heard.push(now()))
  return { heard, close: () => sql.end({ timeout: 1 }) }
}

async function followed(there: string, typed: string, server: Parameters<typeof hearing>[0]) {
  return withBench(typed, async (here) => {
    const worker = new Worker(here)
    const first = await worker.untilPull()
    return withWindow(there, first.build.id, async (tab) => {
      const bare = await hearing(server)
      const [painted, heard]: [number[], number[]] = [[], []]
      for (let done = 0; done < pulls; done += 1) {
        const { build, pull } = await worker.untilPull()
        if (build.id !== first.build.id) throw new Error('the build has too few pulls')
        await delay(betweenMs)
        const before = now()
        await worker.act(build, pull)
        const confirmedAt = now()
        const seq = String(build.state.seq)
        await tab.waitForFunction((entry) => paintedAt[entry] !== undefined, seq)
        const at = await tab.evaluate((entry) => paintedAt[entry] ?? 0, seq)
        if (done < settling) continue
        painted.push(at - confirmedAt)
        heard.push((bare.heard.find((when) => when > before) ?? confirmedAt) - confirmedAt)
      }
      await bare.close()
      return { painted, heard }
    })
  })
}

export const measures: readonly Measure[] = [
  {
    name: 'shop-follow',
    bar: 'what is confirmed at one bench is painted at another within a second (p95)',
    async take() {
      const why = noServer()
      if (why !== null) {
        console.error(`Skipped: ${why}`)
        return { values: {} }
      }
      const { server, roles, close } = await emptyArchive(2)
      const [here, there] = roles.map(({ address, password }) => typedAddress(address, password))
      const folder = mkdtempSync(join(tmpdir(), 'bedplate-follow-'))
      const host = [process.execPath, 'dist/local/main.js', '--no-window', '--data', folder]
      try {
        const { painted, heard } = await withHost(host, async (address) => {
          await mustAnswer(answersAt(address), 'shop.join', { address: there, password: '', authority: '' })
          return followed(address, here ?? '', server)
        })
        return {
          values: {
            medianMs: share(painted, 0.5),
            p95Ms: share(painted, 0.95),
            heardMedianMs: share(heard, 0.5),
            heardP95Ms: share(heard, 0.95),
            pulls: painted.length,
          },
        }
      } finally {
        rmSync(folder, { recursive: true, force: true })
        await close()
      }
    },
  },
]
