import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { chromium, type Browser, type Page } from '@playwright/test'
import { build, preview } from 'vite'
import { guardHeaders } from '../electron/pages/index.ts'
import { chromiumToTest } from './run/chromium.ts'

const configFile = join(import.meta.dirname, '../vite.config.ts')

/** Builds the gallery and serves it while the work is done, under the policy that the program's own pages are under. */
export async function withGallery<Result>(work: (address: string) => Promise<Result>): Promise<Result> {
  const outDir = await mkdtemp(join(tmpdir(), 'bedplate-gallery-'))
  const common = { configFile, mode: 'gallery', logLevel: 'error' } as const
  await build({ ...common, build: { outDir, chunkSizeWarningLimit: 5000 } })
  const server = await preview({
    ...common,
    build: { outDir },
    preview: { host: '127.0.0.1', port: 0, headers: { ...guardHeaders } },
  })
  try {
    return await work(server.resolvedUrls!.local[0]!)
  } finally {
    await server.close()
    await rm(outDir, { recursive: true, force: true })
  }
}

/** Starts the browser that the tests use, for a script that takes pictures. */
export async function withBrowser<Result>(work: (browser: Browser) => Promise<Result>): Promise<Result> {
  const executablePath = await chromiumToTest()
  if (executablePath === undefined) throw new Error('no Chromium to take pictures with')
  const asRoot = process.getuid?.() === 0 ? ['--no-sandbox'] : []
  const browser = await chromium.launch({ executablePath, args: ['--disable-gpu', ...asRoot] })
  try {
    return await work(browser)
  } finally {
    await browser.close()
  }
}

/** Where each entry of a stage is found: of the gallery, or with `windows` the moments of every demo engine. */
export async function addressesOnStage(page: Page, gallery: string, of = ''): Promise<readonly string[]> {
  await page.goto(`${gallery}?stage${of}`)
  const links = page.getByRole('link')
  await links.first().waitFor()
  return links.evaluateAll((all) => all.map((link) => (link as HTMLAnchorElement).hash))
}

/** Shows an entry, in the look that its address says, until it is as it should be. */
export async function showOnStage(page: Page, address: string): Promise<void> {
  await page.evaluate((hash) => (location.hash = hash), address)
  await page.locator(`[data-shown="${address}"]`).waitFor({ timeout: 60_000 })
}
