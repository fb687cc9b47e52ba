import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { chromium } from '@playwright/test'
import { sentenceOf } from '../../core/problem/index.ts'
import type { Output } from '../../core/contract/index.ts'
import { noStrace } from '../faults/trace.ts'
import { chromiumToTest } from '../run/chromium.ts'
import type { Measure } from './measure.ts'
import { answersAt } from './port.ts'
import { specOfMany } from './press/spec.ts'
import { watchPresses } from './press/watch.ts'
import { withHost } from './with-host.ts'

const fasteners = 300
const presses = 60
/** The first presses are those of a window that is still being set up. */
const settling = 5
const diskMs = 30
/** A press sooner than 400 ms after the last is taken for the same one bouncing. */
const betweenMs = 450

/** A build on many fasteners lies open at its first pull, so that the window shows it at once. */
async function layOpen(address: string): Promise<void> {
  const answer = answersAt(address)
  const begun = await answer('builds.start', { engine: 'many', name: 'Many', serial: '', person: 'Ana Ruiz' })
  if (!begun.ok) throw new Error(sentenceOf(begun.problem))
  const { line, events } = begun.value as Output<'builds.start'>
  const command = { type: 'start-run', procedure: 'all' }
  const begins = { build: line.id, after: events.length, person: 'Ana Ruiz', command }
  const started = await answer('builds.act', begins)
  if (!started.ok) throw new Error(sentenceOf(started.problem))
  await answer('preferences.keep', { atBuild: line.id, person: 'Ana Ruiz' })
}

/** How long each press took until the next fastener was painted, in ms. */
async function pressed(address: string): Promise<readonly number[]> {
  const executablePath = await chromiumToTest()
  const browser = await chromium.launch({
    ...(executablePath === undefined ? {} : { executablePath }),
    args: ['--disable-gpu', ...(process.getuid?.() === 0 ? ['--no-sandbox'] : [])],
  })
  try {
    const tab = await browser.newPage({ viewport: { width: 1920, height: 1080 } })
    await tab.goto(address)
    await tab.locator('.next .disc').waitFor()
    await tab.evaluate(watchPresses)
    for (let press = 0; press < presses; press += 1) {
      await tab.waitForTimeout(betweenMs)
      await tab.keyboard.press('Enter')
      await tab.waitForFunction((least) => pressTimes.length > least, press)
    }
    return (await tab.evaluate(() => pressTimes)).slice(settling)
  } finally {
    await browser.close()
  }
}

function share(times: readonly number[], part: number): number {
  return times.toSorted((a, b) => a - b)[Math.floor(times.length * part)] ?? 0
}

async function measured(host: readonly string[]): Promise<readonly number[]> {
  const folder = mkdtempSync(join(tmpdir(), 'bedplate-press-'))
  try {
    const specs = join(folder, 'specs')
    mkdirSync(specs)
    writeFileSync(join(specs, 'many.json'), specOfMany(fasteners))
    const words = [
      ...host,
      'dist/local/main.js',
      '--no-window',
      '--data',
      join(folder, 'data'),
      '--specs',
      specs,
    ]
    return await withHost(words, async (address) => {
      await layOpen(address)
      return pressed(address)
    })
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}

export const measures: readonly Measure[] = [
  {
    name: 'key press to the next fastener painted, 300 fasteners, a late disk',
    bar: `p95 at most 100 ms, ${diskMs} ms of them the disk’s (0 where there is no strace to delay it)`,
    take: async () => {
      const canDelay = noStrace() === null
      const late = `inject=fsync,fdatasync:delay_enter=${diskMs * 1000}`
      const delayed = [
        'strace',
        '-f',
        '--seccomp-bpf',
        '-e',
        'trace=fsync,fdatasync',
        '-e',
        late,
        '-o',
        '/dev/null',
      ]
      const times = await measured([...(canDelay ? delayed : []), process.execPath])
      const values = { medianMs: share(times, 0.5), p95Ms: share(times, 0.95), diskMs: canDelay ? diskMs : 0 }
      return { values: { ...values, presses: times.length } }
    },
  },
]
