import { en } from '../../core/words/index.ts'
import { accessFaults, measuredToo } from './accessibility.ts'
import { expect, test } from './bench.ts'
import { Mechanic } from './mechanic.ts'
import { readingField, sayingWithNumbers } from './named.ts'

test('every screen on the way to a pull can be used by everybody, in the look of the system', async ({
  bench,
}) => {
  test.setTimeout(300_000)
  const { page } = bench
  const mechanic = new Mechanic(page, 'pointer')
  const check = async (screen: string) => expect(await accessFaults(page, measuredToo), screen).toEqual([])

  await page.getByRole('button', { name: /Fen 1/ }).waitFor()
  for (const colorScheme of ['dark', 'light'] as const) {
    await page.emulateMedia({ colorScheme })
    await expect(page.locator('html')).toHaveCSS('color-scheme', colorScheme)
    await check(`engines, ${colorScheme}`)
  }
  await page.getByRole('button', { name: en.settings.title }).click()
  await check('screen and keys')
  await page.getByRole('button', { name: en.parts.enginesAndBuilds }).click()
  await mechanic.startBuild(/Fen 1/, 'Seen by all', 'I. Brandvold')
  await check('marks')
  for (const marks of ['1 2', 'U W', '2', 'Y']) await mechanic.noteMarks(marks)
  await page.getByRole('button', { name: /^M2/ }).first().click()
  await check('shells')
  await mechanic.finishStep('Choose mains')
  await mechanic.finishStep('Choose big end')
  await check('fitting')
  await mechanic.finishStep('Main shells')
  await mechanic.finishStep('Rod shells')
  await check('before a run')
  // Begun, its bolts new, both by hand.
  for (let press = 0; press < 4; press++) await mechanic.confirm()
  await check('a pull')
  await page.getByRole('button', { name: en.view.open }).click()
  await page.keyboard.press('+')
  await expect(
    page
      .getByRole('button', { name: sayingWithNumbers(() => en.buildWindow.timesLarger({ times: 1 })) })
      .first(),
  ).toBeVisible()
  await check('the view of the drawing')
  await page.keyboard.press('?')
  await check('the list of keys')
  await page.getByRole('button', { name: en.parts.close }).click()
  await page.keyboard.press('Home')
  await page.keyboard.press('Escape')
  await page.keyboard.press('b')
  await check('a pull, from the bench')
  await page.keyboard.press('b')
  await page.getByLabel(readingField).fill('60')
  await mechanic.confirm()
  await check('a flag')
  await page.getByRole('button', { name: en.buildWindow.sheet, exact: true }).click()
  await check('sheet')
})
