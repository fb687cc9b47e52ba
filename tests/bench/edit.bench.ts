import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { chromium } from '@playwright/test'
import { en } from '../../core/words/index.ts'
import { sentenceOf } from '../../core/problem/index.ts'
import { chromiumToTest } from '../run/chromium.ts'
import { watchEdits } from './edit/watch.ts'
import type { Measure } from './measure.ts'
import { answersAt } from './port.ts'
import { specOfMany } from './press/spec.ts'
import { withHost } from './with-host.ts'

const fasteners = 120
const edits = 60
/** The first edits are those of a window that is still being set up. */
const settling = 5

/** How long each move of a fastener by a key took until it was painted, in ms; requests are those of one edit. */
async function edited(address: string): Promise<readonly number[]> {
  const answer = answersAt(address)
  const begun = await answer('drafts.begin', {
    ...{ person: 'Ana Ruiz', name: 'Many edited', from: 'Workshop manual' },
    origin: { kind: 'copy', engine: 'many', revision: 0 },
  })
  if (!begun.ok) throw new Error(sentenceOf(begun.problem))
  await answer('preferences.keep', { person: 'Ana Ruiz' })
  const executablePath = await chromiumToTest()
  const browser = await chromium.launch({
    ...(executablePath === undefined ? {} : { executablePath }),
    args: ['--disable-gpu', ...(process.getuid?.() === 0 ? ['--no-sandbox'] : [])],
  })
  try {
    const tab = await browser.newPage({ viewport: { width: 1920, height: 1080 } })
    await tab.goto(address)
    await tab.getByRole('button', { name: en.library.title }).first().click()
    await tab.getByRole('button', { name: en.library.drafts.open }).first().click()
    await tab.getByRole('button', { name: en.editor.actions.position, exact: true }).click()
    await tab.locator('[data-about="fastener/f50"] button').focus()
    await tab.keyboard.press('Enter')
    await tab.locator('.action .row input').first().waitFor()
    await tab.getByRole('group', { name: en.editor.move.keys }).focus()
    await tab.evaluate(watchEdits)
    for (let edit = 0; edit < edits; edit += 1) {
      await tab.waitForTimeout(120)
      const painted = tab.evaluate(() => editPainted())
      await tab.keyboard.press(edit % 20 < 10 ? 'ArrowRight' : 'ArrowLeft')
      await painted
    }
    return (await tab.evaluate(() => editTimes)).slice(settling)
  } finally {
    await browser.close()
  }
}

function share(times: readonly number[], part: number): number {
  return times.toSorted((a, b) => a - b)[Math.floor(times.length * part)] ?? 0
}

export const measures: readonly Measure[] = [
  {
    name: 'an edit of a face of 120 fasteners to its drawing and its audit painted',
    bar: 'p95 at most 50 ms, on disk too',
    take: async () => {
      const folder = mkdtempSync(join(tmpdir(), 'bedplate-edit-'))
      try {
        const specs = join(folder, 'specs')
        mkdirSync(specs)
        writeFileSync(join(specs, 'many.json'), specOfMany(fasteners))
        const host = [process.execPath, 'dist/local/main.js', '--no-window']
        const times = await withHost([...host, '--data', join(folder, 'data'), '--specs', specs], edited)
        const values = { medianMs: share(times, 0.5), p95Ms: share(times, 0.95), edits: times.length }
        return { values }
      } finally {
        rmSync(folder, { recursive: true, force: true })
      }
    },
  },
]
