import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { en } from '../../core/words/index.ts'
import { accessFaults } from './accessibility.ts'
import { expect, test as base } from './bench.ts'
import { cameraOf } from './camera.ts'
import { withDataFolder } from './hosts/host.ts'
import { OtherBench } from './other-bench.ts'
import { atStep, openAt } from './seed.ts'
import { saying, sayingWithNumbers } from './named.ts'

const { photos } = en
const gears = join(import.meta.dirname, '../photos/gears.png')

/** A bench elsewhere, beside the one with the window. */
const test = base.extend<{ elsewhere: OtherBench }>({
  elsewhere: async ({}, use) => {
    await withDataFolder(async (folder) => {
      const other = await OtherBench.at(folder)
      await use(other)
      await other.close()
    })
  },
})

test.use({ engines: ['holm-2'] })

test('a photo goes in from a file and the camera, onto the sheet, into an export, and is verified elsewhere', async ({
  unopened: bench,
  elsewhere,
}) => {
  const { page } = bench
  await openAt(bench, { engine: /Holm 2/, name: 'Ferry', person: 'Ana Ruiz', far: atStep('Gear photo') })
  const section = page.getByRole('region', { name: photos.title })
  const shown = section.locator('img')
  const add = page.getByRole('dialog', { name: photos.add.title })

  await test.step('what is no picture is refused in a sentence', async () => {
    await page
      .getByLabel(photos.file)
      .setInputFiles({ name: 'notes.jpg', mimeType: 'image/jpeg', buffer: Buffer.from('24 N·m') })
    await expect(section.getByRole('alert')).toContainText(
      saying((any) => en.problems['photo-no-picture']({ name: any })),
    )
  })

  await test.step('a refused camera is said, with what to do', async () => {
    await cameraOf(page, null)
    await section.getByRole('button', { name: photos.fromCamera }).click()
    await expect(section.getByRole('alert')).toContainText(saying(() => en.problems['camera-refused']({})))
  })

  await test.step('a file is looked at, then added with its caption, and the step that asked for it is done', async () => {
    const choosing = page.waitForEvent('filechooser')
    await section.getByRole('button', { name: photos.fromFile }).press('Enter')
    await (await choosing).setFiles(gears)
    await expect(add.locator('img')).toBeVisible()
    expect(await accessFaults(page)).toEqual([])
    await add.getByLabel(photos.add.caption).fill('Lines meet')
    await add.getByRole('button', { name: photos.add.add }).click()
    await expect(add).toBeHidden()
    // What the step asked for is there: the build goes on.
    await expect(page.getByRole('heading', { name: 'Drive end seal' })).toBeVisible()
  })

  await test.step('the camera is asked for its picture alone, and only when the button is pressed', async () => {
    await cameraOf(page, { width: 2000, height: 1500 })
    await section.getByRole('button', { name: photos.fromCamera }).click()
    const camera = page.getByRole('dialog', { name: photos.camera.title })
    await camera.getByRole('button', { name: photos.camera.take }).click()
    await expect(add).toContainText(
      sayingWithNumbers(() => en.photos.add.size({ widthPx: 1600, heightPx: 1200, kilobytes: 1 })),
    )
    await add.getByLabel(photos.add.caption).fill('Before the bead')
    await add.getByRole('button', { name: photos.add.add }).click()
    await expect(shown).toHaveCount(1)
    expect(await page.evaluate(() => Reflect.get(window, 'cameraAskedFor'))).toMatchObject([{ audio: false }])
  })

  await test.step('it is looked at large', async () => {
    const name = /Before the bead/
    await section.getByRole('button', { name }).click()
    const large = page.getByRole('dialog', { name })
    await expect(large.getByRole('img', { name })).toBeVisible()
    await large.getByRole('button', { name: en.parts.close }).click()
  })

  await test.step('both are on the sheet', async () => {
    await page.getByRole('button', { name: en.buildWindow.sheet, exact: true }).click()
    await expect(page.getByText(photos.sheet.count({ photos: 2, skipped: 0 }))).toBeVisible()
    await expect(page.locator('figure img')).toHaveCount(2)
    await expect(page.locator('figure').getByText('Lines meet', { exact: true })).toBeVisible()
  })

  await test.step('they are in the export, and verified in another record', async () => {
    const saved = page.waitForEvent('download')
    await page.getByRole('button', { name: en.archive.exportOne }).click()
    const text = readFileSync(await (await saved).path(), 'utf8')
    const taken = await elsewhere.get('builds.import', { text })
    expect(taken).toMatchObject({ kind: 'added' })
    await elsewhere.get('verification.start', { build: null })
    await expect.poll(async () => (await elsewhere.get('verification.read', {})).state).toBe('done')
    expect(await elsewhere.get('verification.read', {})).toMatchObject({ breaks: [] })
    const { events } = await elsewhere.get('builds.open', { build: taken.line.id })
    const added = events.filter(({ event }) => event.type === 'photo-added')
    expect(added).toHaveLength(2)
    for (const { seq } of added) {
      const { base64 } = await elsewhere.get('photos.read', { build: taken.line.id, entry: seq })
      expect(base64).toMatch(/^\/9j\//)
    }
  })

  await test.step('one that is withdrawn is named, and no longer shown', async () => {
    await page.getByRole('button', { name: /^←/ }).first().click()
    const name = /Before the bead/
    await section.getByRole('button', { name }).click()
    await page.getByRole('button', { name: photos.withdraw }).click()
    await page.getByLabel(photos.whyWithdraw).fill('It shows a face')
    await page.getByRole('button', { name: photos.withdrawIt }).click()
    await expect(section.getByText(/It shows a face/)).toBeVisible()
    await expect(section.getByRole('button', { name })).toHaveCount(0)
  })
})
