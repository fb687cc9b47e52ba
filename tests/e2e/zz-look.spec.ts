import { en } from '../../core/words/index.ts'
import { expect, test } from './bench.ts'
import { Mechanic } from './mechanic.ts'
import { atStep, openAt } from './seed.ts'

test('look', async ({ unopened: bench }) => {
  test.setTimeout(240_000)
  const { page } = bench
  const mechanic = new Mechanic(page, 'pointer')
  const shot = async (name: string) => {
    for (const [width, height] of [
      [1280, 800],
      [1024, 768],
    ] as const)
      for (const scheme of ['light', 'dark'] as const) {
        await page.setViewportSize({ width, height })
        await page.evaluate((theme) => (document.documentElement.dataset.theme = theme), scheme)
        await page.emulateMedia({ colorScheme: scheme })
        await page.waitForTimeout(150)
        await page.screenshot({ path: `/tmp/plan-look/${name}-${width}-${scheme}.png` })
      }
    await page.setViewportSize({ width: 1280, height: 800 })
  }
  await openAt(bench, {
    engine: /Strath 6/,
    name: 'Ferry, port side',
    person: 'R. Halloran',
    far: atStep('Flange run-out'),
  })
  await shot('may-skip')
  await page.getByRole('button', { name: en.plan.skip }).click()
  await page.getByLabel(en.plan.whySkip).fill('Measured on the bare crank')
  await shot('skipping')
  await mechanic.confirm()
  const steps = page.getByRole('button', { name: en.buildWindow.allSteps })
  await steps.click()
  await page.getByRole('button', { name: /Flange bolts/ }).click()
  await page.getByRole('button', { name: en.plan.doAgain }).click()
  await page.getByLabel(en.plan.whyAgain).fill('Bolt 4 was oiled twice')
  await shot('redoing')
  await mechanic.main.click()
  await expect(page.getByRole('alert')).toBeVisible()
  await shot('refused')
  await mechanic.letBounceTimePass()
  await page.getByLabel(en.plan.isUndone).check()
  await mechanic.confirm()
  await shot('again')
  await steps.click()
  await shot('plan')
  await steps.click()
  await page.getByRole('button', { name: en.buildWindow.sheet, exact: true }).click()
  await shot('sheet')
})
