/**
 * Pictures of the window at every moment of a build of every demo engine, in several sizes, and one page on which they stand
 * together: `npm run contact-sheet -- [WORD …]`, where each word must be in an engine's or a moment's name, or is a size such
 * as `1280x800`. They are written to `dist/contact-sheet`; open its `index.html`.
 */
import { mkdir, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import type { Page } from '@playwright/test'
import { addressesOnStage, showOnStage, withBrowser, withGallery } from './gallery.ts'

const folder = join(import.meta.dirname, '../dist/contact-sheet')

interface Shot {
  readonly name: string
  readonly width: number
  readonly height: number
  /** Half of that many pixels a side are there at 200 % zoom. */
  readonly zoom?: number
  readonly look?: 'dark'
  /** Keys that are pressed first: F flips, R turns. */
  readonly keys?: readonly string[]
}

const shots: readonly Shot[] = [
  { name: '1024x768', width: 1024, height: 768 },
  { name: '1280x800', width: 1280, height: 800 },
  { name: '1366x768', width: 1366, height: 768 },
  { name: '1920x1080', width: 1920, height: 1080 },
  { name: '720x900', width: 720, height: 900 },
  { name: '1366x768-zoomed', width: 1366, height: 768, zoom: 2 },
  { name: '1280x800-flipped', width: 1280, height: 800, keys: ['f'] },
  { name: '1280x800-quarter', width: 1280, height: 800, keys: ['r'] },
  { name: '1280x800-half', width: 1280, height: 800, keys: ['r', 'r'] },
  { name: '1280x800-dark', width: 1280, height: 800, look: 'dark' },
]

const words = process.argv.slice(2).map((word) => word.toLowerCase())
const sizes = words.filter((word) => shots.some(({ name }) => name.startsWith(word)))
const chosen = sizes.length === 0 ? shots : shots.filter(({ name }) => sizes.some((size) => name === size))
const isMeant = (entry: string) => words.every((word) => sizes.includes(word) || entry.includes(word))

async function take(page: Page, address: string, entry: string, shot: Shot): Promise<string> {
  const { width, height, zoom = 1, look = 'light', keys = [] } = shot
  await page.setViewportSize({ width: Math.round(width / zoom), height: Math.round(height / zoom) })
  await showOnStage(page, address.replace('look=light', `look=${look}`))
  for (const key of keys) await page.keyboard.press(key)
  await page.waitForTimeout(120) // the drawing is laid out for the new size
  const file = `${entry.replaceAll('/', '-')}-${shot.name}.png`
  await page.screenshot({ path: join(folder, file) })
  await page.evaluate(() => (location.hash = ''))
  return file
}

function pageOf(rows: readonly { readonly entry: string; readonly files: readonly string[] }[]): string {
  const cells = rows.map(
    ({ entry, files }) =>
      `<h2>${entry}</h2><p>${files.map((file) => `<a href="${file}"><img src="${file}" alt="${file}" height="260"></a>`).join(' ')}</p>`,
  )
  return `<!doctype html><meta charset="utf-8"><title>Contact sheet</title>${cells.join('\n')}`
}

await mkdir(folder, { recursive: true })
await withBrowser((browser) =>
  withGallery(async (gallery) => {
    const page = await browser.newPage()
    const rows = []
    for (const address of await addressesOnStage(page, gallery, '&windows')) {
      const entry = new URLSearchParams(address.slice(1)).get('entry')!
      if (!isMeant(entry)) continue
      const files = []
      for (const shot of chosen) files.push(await take(page, address, entry, shot))
      rows.push({ entry, files })
    }
    await writeFile(join(folder, 'index.html'), pageOf(rows))
    console.log(`${rows.length} moments in ${chosen.length} sizes: ${join(folder, 'index.html')}`)
  }),
)
