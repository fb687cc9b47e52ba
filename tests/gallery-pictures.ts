/**
 * A picture of every entry of the gallery, light and dark: `npm run gallery-pictures -- FOLDER [WORD …]`, where each word must
 * be in an entry's name. With `--before FOLDER` they are compared with pictures that were taken earlier: what differs is
 * listed with the number of pixels, each with a picture of the difference in `FOLDER/differences`, and the script exits with 1.
 * `--language de`, `--size 1024x768` and `--look light` say what is taken.
 */
import { mkdir, readdir, readFile, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { parseArgs } from 'node:util'
import type { Page } from '@playwright/test'
import { addressesOnStage, showOnStage, withBrowser, withGallery } from './gallery.ts'
import { differenceOf } from './picture-difference.ts'

const { values, positionals } = parseArgs({
  options: {
    before: { type: 'string' },
    language: { type: 'string', default: 'en' },
    size: { type: 'string', default: '1366x768' },
    look: { type: 'string', multiple: true, default: ['light', 'dark'] },
  },
  allowPositionals: true,
})
const [folder, ...words] = positionals
if (folder === undefined) throw new Error('where to? npm run gallery-pictures -- FOLDER [--before FOLDER]')

const [width = 1366, height = 768] = values.size.split('x').map(Number)

/** Every picture is taken at this moment, so that clocks in it show the same. */
const moment = new Date('2026-03-02T10:00:00Z')

async function take(page: Page, into: string): Promise<readonly string[]> {
  const files: string[] = []
  await withGallery(async (gallery) => {
    await page.clock.setFixedTime(moment)
    for (const address of await addressesOnStage(page, gallery)) {
      const entry = new URLSearchParams(address.slice(1)).get('entry')!
      if (!words.every((word) => entry.includes(word.toLowerCase()))) continue
      for (const look of values.look) {
        const inLook = address.replace('look=light', `look=${look}`)
        await showOnStage(page, inLook.replace('lang=en', `lang=${values.language}`))
        await page.evaluate(() => document.fonts.ready.then(() => undefined))
        await page.waitForTimeout(150) // the drawing is laid out when its size is known
        const file = `${entry.replaceAll('/', '-')}-${look}.png`
        await page.screenshot({ path: join(into, file), fullPage: true, animations: 'disabled' })
        files.push(file)
      }
    }
  })
  return files
}

/** What differs, a line each. */
async function compare(page: Page, before: string, after: string, names: readonly string[]) {
  const lines: string[] = []
  const earlier = new Set((await readdir(before)).filter((name) => name.endsWith('.png')))
  const into = join(after, 'differences')
  await mkdir(into, { recursive: true })
  for (const file of names) {
    if (!earlier.delete(file)) {
      lines.push(`${file}: new`)
      continue
    }
    const both = [await readFile(join(before, file)), await readFile(join(after, file))] as const
    if (both[0].equals(both[1])) continue
    const { pixels, of, picture } = await differenceOf(page, ...both)
    if (pixels === 0) continue
    await writeFile(join(into, file), picture)
    lines.push(`${file}: ${pixels} of ${of} pixels differ`)
  }
  if (words.length === 0) lines.push(...[...earlier].map((file) => `${file}: is gone`))
  return lines
}

await mkdir(folder, { recursive: true })
await withBrowser(async (browser) => {
  const page = await browser.newPage({ viewport: { width, height } })
  const names = await take(page, folder)
  console.log(`${names.length} pictures in ${folder}`)
  if (values.before === undefined) return
  const lines = await compare(await browser.newPage(), values.before, folder, names)
  lines.forEach((line) => console.log(line))
  console.log(`${names.length} compared, ${lines.length} not as before`)
  process.exitCode = lines.length === 0 ? 0 : 1
})
