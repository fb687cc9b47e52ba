import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { chromium } from '@playwright/test'
import { sentenceOf } from '../../core/problem/index.ts'
import type { Output } from '../../core/contract/index.ts'
import { chromiumToTest } from '../run/chromium.ts'
import type { Measure } from './measure.ts'
import { answersAt } from './port.ts'
import { withHost } from './with-host.ts'

const rounds = 5

/** From the first command to a page on which there is a canvas that has been painted, in ms. */
async function timeToDrawing(words: readonly string[], executablePath: string | undefined): Promise<number> {
  const from = performance.now()
  return withHost(words, async (address) => {
    const browser = await chromium.launch({
      ...(executablePath === undefined ? {} : { executablePath }),
      args: ['--disable-gpu', ...(process.getuid?.() === 0 ? ['--no-sandbox'] : [])],
    })
    try {
      const tab = await browser.newPage({ viewport: { width: 1366, height: 768 } })
      await tab.goto(address)
      await tab.locator('canvas').first().waitFor()
      await tab.evaluate(
        () => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(() => done(null)))),
      )
      return performance.now() - from
    } finally {
      await browser.close()
    }
  })
}

/** A build lies open, so that the next start shows its drawing at once. */
async function layOpen(address: string): Promise<void> {
  const answer = answersAt(address)
  const start = { engine: 'skerry-3', name: 'Ferry', serial: '', person: 'Ana Ruiz' }
  const begun = await answer('builds.start', start)
  if (!begun.ok) throw new Error(sentenceOf(begun.problem))
  await answer('preferences.keep', { atBuild: (begun.value as Output<'builds.start'>).line.id })
}

function median(values: readonly number[]): number {
  return values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] ?? 0
}

export const measures: readonly Measure[] = [
  {
    name: 'second start, to the drawing on the screen',
    bar: 'at most 2 times the same Chromium with an empty page served the same way',
    take: async () => {
      const folder = mkdtempSync(join(tmpdir(), 'bedplate-start-'))
      const ours = ['npm', 'start', '--silent', '--', '--local', '--no-window', '--data', folder]
      const empty = [process.execPath, join(import.meta.dirname, 'start/empty.ts')]
      try {
        const executablePath = await chromiumToTest()
        await withHost(ours, layOpen)
        const [startMs, emptyMs]: [number[], number[]] = [[], []]
        for (let round = 0; round < rounds; round += 1) {
          startMs.push(await timeToDrawing(ours, executablePath))
          emptyMs.push(await timeToDrawing(empty, executablePath))
        }
        const values = { startMs: median(startMs), emptyMs: median(emptyMs) }
        const ratio = values.startMs / values.emptyMs
        return { values: { ...values, ratio }, holds: ratio <= 2 }
      } finally {
        rmSync(folder, { recursive: true, force: true })
      }
    },
  },
]
