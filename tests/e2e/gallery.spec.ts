import { readFile, readdir } from 'node:fs/promises'
import { join } from 'node:path'
import { expect, test } from '@playwright/test'
import type { RunOptions } from 'axe-core'
import { sampleBackups, sampleWrenches } from '../../renderer/gallery/sample-record.ts'
import { windowColours } from '../../renderer/look/colours.ts'
import { accessFaults, contrastFaultsOfNewTexts } from './accessibility.ts'
import { emptyStates, fitFaults, isOfHelp, isWithoutHelp, outsideBrackets } from '../fit-faults.ts'
import { addressesOnStage, showOnStage, withGallery } from '../gallery.ts'

/** Sizes do not change with colours. Drawings have their own tests of colour and size. */
const targetSize: RunOptions = { runOnly: { type: 'rule', values: ['target-size'] } }

/** Gives what is shown other colours, as the window does when its theme changes: nothing is drawn again for it. */
function turn(colours: Readonly<Record<string, string>>) {
  for (const [name, colour] of Object.entries(colours))
    document.documentElement.style.setProperty(`--${name}`, colour)
}

/** What is laid out when its size is known is there two frames later. */
const drawnAgain = () =>
  new Promise<void>((done) => requestAnimationFrame(() => requestAnimationFrame(() => done())))

/**
 * In the language that nobody speaks, a third longer than English: what is cut off is seen, and what comes from no table of
 * words. What an entry presses is pressed in English, and stays where the language changes.
 */
test('every entry of the gallery is drawn without a fault, fits, and has its texts from the tables', async ({
  page,
}) => {
  test.setTimeout(600_000)
  const faults: string[] = []
  const note = (fault: string) => faults.push(`${new URL(page.url()).hash}: ${fault}`)
  page.on('console', (message) => message.type() === 'error' && note(message.text()))
  page.on('pageerror', (error) => note(error.message))
  await page.setViewportSize({ width: 1280, height: 800 })

  await withGallery(async (address) => {
    const addresses = await addressesOnStage(page, address)
    expect(addresses.length).toBeGreaterThan(80)
    for (const shown of addresses) {
      await showOnStage(page, shown.replace('lang=en', 'lang=pseudo'))
      await page.evaluate(drawnAgain)
      for (const fault of [...(await page.evaluate(emptyStates)), ...(await page.evaluate(fitFaults))])
        note(fault)
      if (await page.evaluate(isWithoutHelp)) note('no way into the help')
      if (!isOfHelp(shown))
        for (const text of await page.evaluate(outsideBrackets)) note(`from no table: ${text}`)
      if (shown.includes('drawings-of')) continue
      for (const fault of await accessFaults(page, targetSize)) note(fault)
      for (const look of ['light', 'dark'] as const) {
        if (look === 'dark') await page.evaluate(turn, windowColours.dark)
        for (const fault of await contrastFaultsOfNewTexts(page)) note(`${look}: ${fault}`)
      }
      await page.evaluate(turn, windowColours.light)
    }
  })
  expect(faults).toEqual([])
})

/** A panel that scrolls down, with a row as wide as its words. */
const panel = (style: string) => `
  <style>.panel { width: 200px; height: 90px; ${style} } td { white-space: nowrap }</style>
  <div class="panel"><table><tr><td>Grundlagerdeckel</td><td>Maßkennzeichen</td></tr></table></div>`

test('what a panel cuts at its side does not fit, unless its style says that it is scrolled sideways', async ({
  page,
}) => {
  const faultsWith = async (style: string) => {
    await page.setContent(panel(style))
    return page.evaluate(fitFaults)
  }
  expect(await faultsWith('overflow-y: auto')).toEqual([expect.stringMatching(/cut off “Maßkennzeichen”/)])
  expect(await faultsWith('overflow: hidden')).toEqual([expect.stringMatching(/cut off “Maßkennzeichen”/)])
  expect(await faultsWith('overflow-x: auto')).toEqual([])
  expect(await faultsWith('overflow-y: auto; width: 600px')).toEqual([])
})

test('an entry in which nothing is drawn is told from others', async ({ page }) => {
  await page.setContent(`
    <div data-shown="">
      <section aria-label="one"><h2>one</h2><p></p></section>
      <section aria-label="other"><h2>other</h2><p>Lagerdeckel</p></section>
    </div>`)
  expect(await page.evaluate(emptyStates)).toEqual(['one: nothing is drawn'])
  await page.setContent('<div data-shown=""></div>')
  expect(await page.evaluate(emptyStates)).toEqual(['nothing is shown'])
})

test('nothing of the gallery is in what is shipped', async () => {
  const files = await readdir('dist/renderer', { recursive: true, withFileTypes: true })
  const texts = await Promise.all(
    files
      .filter((file) => /\.(html|js)$/.test(file.name))
      .map((file) => readFile(join(file.parentPath, file.name), 'utf8')),
  )
  expect(texts.length).toBeGreaterThan(1)
  const ofGallery = [
    ...sampleWrenches.map(({ name }) => name),
    ...sampleBackups.backups.map(({ name }) => name),
  ]
  for (const word of ofGallery) expect(texts.filter((text) => text.includes(word))).toEqual([])
})
