import type { Page } from '@playwright/test'
import { expect, test } from './bench.ts'
import { Mechanic } from './mechanic.ts'

/** How much wider the page is than its window, in px. */
const tooWide = (page: Page) =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)

test('at 320 px, as at 400 % zoom, the page is read without scrolling sideways', async ({ bench }) => {
  const { page } = bench
  await page.setViewportSize({ width: 320, height: 640 })
  const mechanic = new Mechanic(page, 'pointer')
  await page.getByRole('button', { name: /Tarn 4/ }).waitFor()
  expect(await tooWide(page), 'engines').toBeLessThanOrEqual(0)
  await mechanic.startBuild(/Tarn 4/, 'Narrow', 'I. Brandvold')
  expect(await tooWide(page), 'marks').toBeLessThanOrEqual(0)
})

test('forced colours keep what is chosen apart from what is not', async ({ bench }) => {
  const { page } = bench
  await page.emulateMedia({ forcedColors: 'active' })
  const unit = page.getByRole('group', { name: 'Torque in' })
  const ground = (pressed: boolean) =>
    unit
      .getByRole('button', { pressed })
      .first()
      .evaluate((button) => getComputedStyle(button).backgroundColor)
  expect(await ground(true)).not.toBe(await ground(false))
})

test('the first stop of the Tab key leads past the other pages to the step', async ({ bench }) => {
  const { page } = bench
  const mechanic = new Mechanic(page, 'pointer')
  await mechanic.startBuild(/Tarn 4/, 'Skipped to', 'I. Brandvold')
  const skip = page.getByRole('link', { name: 'Skip to what this page is about' })
  await skip.focus()
  await expect(skip).toBeInViewport()
  await page.keyboard.press('Enter')
  await expect(page.getByRole('region', { name: 'What to do' })).toBeFocused()
})

test('the drawing in words is one stop of the Tab key, and arrows go through its lines', async ({
  bench,
}) => {
  const { page } = bench
  const mechanic = new Mechanic(page, 'pointer')
  await mechanic.startBuild(/Tarn 4/, 'By arrows', 'I. Brandvold')
  const lines = page.getByRole('list', { name: 'The drawing in words' }).getByRole('button')
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

test('Escape leaves a form, and what was open before it is there', async ({ bench }) => {
  const { page } = bench
  await page.getByRole('button', { name: /Tarn 4/ }).click()
  await expect(page.getByRole('form', { name: /New build of/ })).toBeVisible()
  await page.keyboard.press('Escape')
  await expect(page.getByRole('form', { name: /New build of/ })).toHaveCount(0)

  await page.getByRole('button', { name: 'Wrenches', exact: true }).click()
  await page.getByRole('button', { name: 'Add a wrench' }).click()
  await expect(page.getByRole('form', { name: 'Wrench' })).toBeVisible()
  await page.keyboard.press('Escape')
  await expect(page.getByRole('form', { name: 'Wrench' })).toHaveCount(0)
  await expect(page.getByRole('button', { name: 'Add a wrench' })).toBeVisible()
})

test('the unit µm has its letter from a font that ships', async ({ bench }) => {
  const faces = await bench.page.evaluate(async () => {
    const loaded = await document.fonts.load('17px "Atkinson Hyperlegible Next"', 'µ')
    return loaded.map(({ unicodeRange, status }) => `${unicodeRange} ${status}`)
  })
  expect(faces).toContain('U+B5 loaded')
})
