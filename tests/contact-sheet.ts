/** Placeholder */
import { mkdir } from 'node:fs/promises'
import { chromium } from '@playwright/test'
import { withGallery } from './gallery.ts'
import { chromiumToTest } from './run/chromium.ts'
const out = process.argv[2]!,
  only = new RegExp(process.argv[3] ?? '.'),
  sizes = (process.argv[4] ?? '1280x800').split(','),
  keys = (process.argv[5] ?? '').split(','),
  extra = process.argv[6] ?? ''
await mkdir(out, { recursive: true })
const executablePath = await chromiumToTest()
const browser = await chromium.launch({
  executablePath: executablePath!,
  args: ['--disable-gpu', '--no-sandbox'],
})
const page = await browser.newPage()
await withGallery(async (address) => {
  await page.goto(`${address}?stage&windows`)
  await page.getByRole('link').first().waitFor()
  const addresses = await page
    .getByRole('link')
    .evaluateAll((links) => links.map((link) => (link as HTMLAnchorElement).hash))
  for (const a of addresses) {
    const hash = a + extra
    const id = new URLSearchParams(hash.slice(1)).get('entry')!
    if (!only.test(id)) continue
    for (const size of sizes) {
      const [width, height] = size.split('x').map(Number) as [number, number]
      await page.setViewportSize({ width, height })
      await page.evaluate((h) => (location.hash = h), hash)
      await page.locator(`[data-shown="${hash}"]`).waitFor()
      for (const key of keys) if (key) await page.keyboard.press(key)
      await page.waitForTimeout(150)
      await page.screenshot({ path: `${out}/${id.replace(/\//g, '-')}-${size}${keys.join('')}.png` })
    }
    await page.evaluate(() => (location.hash = ''))
  }
})
await browser.close()
