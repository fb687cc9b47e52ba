/** Takes the README's pictures, from the running program and from the gallery: `npm run screenshots`. */
import { mkdir, readdir, readFile } from 'node:fs/promises'
import type { Page } from '@playwright/test'
import { readSpec } from '../core/engine/index.ts'
import { en } from '../core/words/index.ts'
import { withDataFolder } from './e2e/hosts/host.ts'
import { startLocalProcess } from './e2e/hosts/local-process.ts'
import { entryId } from '../renderer/gallery/entry.ts'
import { addressOf, shownAt } from '../renderer/gallery/shown.ts'
import { showOnStage, withBrowser, withGallery } from './gallery.ts'
import { Mechanic } from './e2e/mechanic.ts'
import { readingField } from './e2e/named.ts'

const folder = 'assets/pictures'
const sizes = { small: { width: 1366, height: 768 }, large: { width: 1920, height: 1080 } } as const

async function picture(page: Page, name: string, size: keyof typeof sizes = 'small') {
  await page.setViewportSize(sizes[size])
  await page.waitForTimeout(300) // the drawing is laid out again for the new size
  await page.screenshot({ path: `${folder}/${name}.png` })
}

async function takePictures(page: Page, address: string) {
  const mechanic = new Mechanic(page, 'pointer')
  const confirm = async (times: number) => {
    for (let time = 0; time < times; time++) await mechanic.confirm()
  }
  await page.clock.install()
  await page.goto(address)
  await page.getByRole('button', { name: /Skerry 3/ }).waitFor()

  await mechanic.startBuild(/Skerry 3/, 'Port auxiliary, second rebuild', 'R. Halloran')
  await mechanic.noteMarks('1 2 2 3')
  await page.getByLabel(en.steps.marks.asStamped).fill('F G 7')
  await picture(page, 'marks')
  for (const marks of ['F G G H', '4 5 4', 'L M L']) await mechanic.noteMarks(marks)

  await page.getByRole('button', { name: /^M2/ }).click()
  await picture(page, 'shells')
  await mechanic.finishStep('Choose mains')
  await mechanic.finishStep('Choose big ends')
  await confirm(3)
  await mechanic.finishStep('Main shells')
  await mechanic.finishStep('Lay crank')
  await mechanic.answerReading('0.12')
  await mechanic.finishStep('Rod shells')
  await confirm(2 + 6 + 2)
  for (const step of ['Rod bolts', 'Rods free']) await mechanic.finishStep(step)
  for (const step of ['Bead pump side', 'Bead gear side', 'Close case']) await mechanic.finishStep(step)
  await confirm(2 + 8 + 8 + 5)
  await picture(page, 'torque-from-below')
  await page.emulateMedia({ colorScheme: 'dark' })
  await confirm(3 + 1 + 3)
  await picture(page, 'angle-dark')
  await page.emulateMedia({ colorScheme: 'light' })
  await page.getByLabel(readingField).fill('66')
  await mechanic.confirm()
  await page.getByRole('button', { name: en.buildWindow.sheet, exact: true }).click()
  await picture(page, 'sheet')
}

/** A sheet with room for its labels, shown on 640 px: ten of them are read together. */
const demoSheet = { viewport: { width: 800, height: 540 }, deviceScaleFactor: 0.8 } as const

/** Each demo engine's main joint in the middle of a pass, as it is worked on. */
async function takeDemoPictures(page: Page, gallery: string) {
  for (const file of (await readdir('specs')).filter((name) => name.endsWith('.json'))) {
    const read = readSpec(await readFile(`specs/${file}`, 'utf8'))
    if (!read.ok) throw new Error(`${file} cannot be read`)
    const { id, name, case: engineCase } = read.spec
    const face = engineCase.faces[0]!
    await page.goto(`${gallery}?stage#distance=0.5&from=${face.workedFrom}`)
    await page.getByRole('link', { name: entryId(`Drawings of ${name}`, face.name), exact: true }).click()
    const state = page.getByRole('region', { name: 'run in mid pass' }).first()
    await state.getByRole('img').screenshot({ path: `${folder}/engines/${id}.png` })
  }
}

/** Pages that take long to fill by hand, as the gallery has them. */
async function takePages(page: Page, gallery: string) {
  const pages = {
    editor: ['Specs', 'Editor: passes', 'small'],
    wall: ['Shop', 'Wall view', 'large'],
  } as const
  for (const [name, [group, entry, size]] of Object.entries(pages)) {
    await page.setViewportSize(sizes[size])
    await page.goto(`${gallery}?stage`)
    await showOnStage(page, addressOf({ ...shownAt(''), entry: entryId(group, entry) }))
    await picture(page, name, size)
  }
}

await mkdir(`${folder}/engines`, { recursive: true })
await withBrowser(async (browser) => {
  await withDataFolder(async (data) => {
    const host = await startLocalProcess(data)
    try {
      await takePictures(await browser.newPage(), host.address)
    } finally {
      await host.kill()
    }
  })
  const page = await browser.newPage(demoSheet)
  await withGallery(async (address) => {
    await takeDemoPictures(page, address)
    await takePages(await browser.newPage(), address)
  })
})
