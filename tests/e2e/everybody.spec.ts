import type { Page } from '@playwright/test'
import { en, helpWords, terms } from '../../core/words/index.ts'
import { expect, test } from './bench.ts'
import { Mechanic } from './mechanic.ts'
import { backToTheList } from './seed.ts'

const { page: helpPage } = await helpWords.en()
import { saying } from './named.ts'

/** How much wider the page is than its window, in px. */
const tooWide = (page: Page) =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)

test('the window can be used by everybody', async ({ bench }) => {
  const { page } = bench
  await test.step('forced colours keep what is chosen apart from what is not', async () => {
    await page.emulateMedia({ forcedColors: 'active' })
    const unit = page.getByRole('group', { name: en.settings.torqueIn })
    const ground = (pressed: boolean) =>
      unit
        .getByRole('button', { pressed })
        .first()
        .evaluate((button) => getComputedStyle(button).backgroundColor)
    expect(await ground(true)).not.toBe(await ground(false))
    await page.emulateMedia({ forcedColors: 'none' })
  })

  await test.step('the unit µm has its letter from a font that ships', async () => {
    const faces = await bench.page.evaluate(async () => {
      const loaded = await document.fonts.load('17px "Atkinson Hyperlegible Next"', 'µ')
      return loaded.map(({ unicodeRange, status }) => `${unicodeRange} ${status}`)
    })
    expect(faces).toContain('U+B5 loaded')
  })

  await test.step('Escape leaves a form, and what was open before it is there', async () => {
    await page.getByRole('button', { name: /^Tarn 4/ }).click()
    await expect(
      page.getByRole('form', { name: saying((any) => en.engines.newBuildOf({ engine: any })) }),
    ).toBeVisible()
    await page.keyboard.press('Escape')
    await expect(
      page.getByRole('form', { name: saying((any) => en.engines.newBuildOf({ engine: any })) }),
    ).toHaveCount(0)

    await page.getByRole('button', { name: en.engines.wrenches, exact: true }).click()
    await page.getByRole('button', { name: en.wrenches.add }).click()
    await expect(page.getByRole('form', { name: en.wrenches.form.title })).toBeVisible()
    await page.keyboard.press('Escape')
    await expect(page.getByRole('form', { name: en.wrenches.form.title })).toHaveCount(0)
    await expect(page.getByRole('button', { name: en.wrenches.add })).toBeVisible()
  })

  await test.step('at 320 px, as at 400 % zoom, the page is read without scrolling sideways', async () => {
    await page.setViewportSize({ width: 320, height: 640 })
    await backToTheList(page)
    expect(await tooWide(page), 'engines').toBeLessThanOrEqual(0)
    await new Mechanic(page, 'pointer').startBuild(/^Tarn 4/, 'Narrow', 'I. Brandvold')
    expect(await tooWide(page), 'marks').toBeLessThanOrEqual(0)
    await page.setViewportSize({ width: 1280, height: 800 })
  })

  await test.step('the first stop of the Tab key leads past the other pages to the step', async () => {
    const skip = page.getByRole('link', { name: en.window.skip })
    await skip.focus()
    await expect(skip).toBeInViewport()
    await page.keyboard.press('Enter')
    await expect(page.getByRole('region', { name: en.steps.frame.title })).toBeFocused()
  })

  await test.step('F1 opens the help of the step, which keeps what is typed, and Escape leads back to it', async () => {
    const help = page.getByRole('dialog', { name: en.window.help })
    const marks = page.getByRole('textbox').first()
    await marks.fill('2')
    await page.keyboard.press('F1')
    await expect(help.locator('[data-topic="marks"]')).toBeVisible()
    const found = help.getByRole('navigation').getByRole('status')
    await help.getByRole('searchbox').click()
    await page.keyboard.type('Dichtraupe')
    await expect(found).toContainText(helpPage.found({ topics: 0, terms: 1 }).split(', ')[1]!)
    await help.getByRole('navigation').getByRole('button', { name: terms.bead.en }).click()
    await expect(help.locator('[data-term="bead"]')).toContainText(terms.bead.es)
    await page.keyboard.press('Escape')
    await expect(help).toHaveCount(0)
    await expect(marks).toHaveValue('2')
    await expect(marks).toBeFocused()
    await backToTheList(page)
    await page.keyboard.press('F1')
    await expect(help.locator('[data-topic="engines"]')).toBeVisible()
    await page.keyboard.press('F1')
    await expect(help).toHaveCount(0)
    await page.getByRole('button', { name: /Narrow/ }).click()
  })

  await test.step('the drawing in words is one stop of the Tab key, and arrows go through its lines', async () => {
    const lines = page.getByRole('list', { name: en.view.inWords }).getByRole('button')
    await lines.first().focus()
    await page.keyboard.press('ArrowDown')
    await expect(lines.nth(1)).toBeFocused()
    await page.keyboard.press('End')
    await expect(lines.last()).toBeFocused()
    await page.keyboard.press('Tab')
    await expect(page.locator('[data-about] > button:focus')).toHaveCount(0)
    expect(
      await lines.evaluateAll((all) => all.filter((each) => (each as HTMLElement).tabIndex === 0).length),
    ).toBe(1)
  })

  await test.step('a guided first build has a note that takes no focus, and is put away over a restart', async () => {
    const help = page.getByRole('dialog', { name: en.window.help })
    const note = page.locator('[data-guide="marks"]')
    const marks = page.getByRole('textbox').first()
    await page.keyboard.press('F1')
    await help.getByRole('button', { name: helpPage.guide.title }).click()
    await help.getByRole('button', { name: en.engines.sample.beginGuided }).click()
    await expect(note).toBeVisible()
    await marks.fill('1')
    await note.getByRole('button', { name: helpPage.guide.more }).click()
    await expect(help.locator('[data-topic="marks"]')).toBeVisible()
    await page.keyboard.press('Escape')
    await note.getByRole('button', { name: helpPage.guide.read }).click()
    await expect(note).toHaveCount(0)
    await expect(marks).toBeFocused()
    await page.reload()
    await expect(marks).toBeVisible()
    await expect(note).toHaveCount(0)
  })
})
