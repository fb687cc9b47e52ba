import { mkdtempSync, rmSync } from 'node:fs'
import { readFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { extname, join } from 'node:path'
import { chromium, type Page as Tab } from '@playwright/test'
import { build } from 'vite'
import { chromiumToTest } from '../../run/chromium.ts'
import type { Page } from './page.ts'

declare global {
  /** What `page.ts` offers in the browser. */
  var page: Page
}

const kinds: Readonly<Record<string, string>> = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.woff2': 'font/woff2',
}

/** Builds the page, opens it in Chromium at the size of a drawing, and closes all when the work is done. */
export async function withPage<Result>(
  { width, height }: { readonly width: number; readonly height: number },
  work: (tab: Tab) => Promise<Result>,
): Promise<Result> {
  const outDir = mkdtempSync(join(tmpdir(), 'bedplate-paint-'))
  const executablePath = await chromiumToTest()
  await build({
    ...{ root: import.meta.dirname, configFile: false, logLevel: 'error', base: './' },
    build: { outDir, emptyOutDir: true, rollupOptions: { input: join(import.meta.dirname, 'page.html') } },
  })
  const asRoot = process.getuid?.() === 0 ? ['--no-sandbox'] : []
  const browser = await chromium.launch({
    ...(executablePath === undefined ? {} : { executablePath }),
    args: ['--disable-gpu', ...asRoot],
  })
  try {
    const tab = await browser.newPage({ viewport: { width, height } })
    await tab.route('http://paint.test/**', async (route) => {
      const path = new URL(route.request().url()).pathname
      const contentType = kinds[extname(path)] ?? 'application/octet-stream'
      await route.fulfill({ contentType, body: await readFile(join(outDir, path)) })
    })
    await tab.goto('http://paint.test/page.html')
    await tab.evaluate(([w, h]) => page.size(w, h), [width, height] as const)
    await tab.evaluate(() => page.fonts())
    return await work(tab)
  } finally {
    await browser.close()
    rmSync(outDir, { recursive: true, force: true })
  }
}
