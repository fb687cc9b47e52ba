import type { Locator } from '@playwright/test'
import { en } from '../../core/words/index.ts'
import { expect, test } from './bench.ts'
import { Mechanic } from './mechanic.ts'
import { afterPulls, atFirst, atStep, openAt } from './seed.ts'
import { readingField, saying } from './named.ts'
import { stepName } from './spec-of.ts'

test.use({ engines: ['moor-flat-4', 'skerry-3', 'tarn-4'] })

test.setTimeout(120_000)

test('in a pass, Enter presses the big button whatever was used before it, and papers are at hand', async ({
  unopened: bench,
}) => {
  const { page } = bench
  const mechanic = new Mechanic(page, 'keys')
  await openAt(bench, { engine: /Tarn/, name: 'Pump set 7', person: 'Ines Roth', far: afterPulls(12) })
  const button = (name: string | RegExp) =>
    page.getByRole('button', { name, exact: typeof name === 'string' })
  /** Enter, wherever the focus has come to, is a pull in the record. */
  const enterPulls = async (after: string) => {
    const before = await mechanic.entries()
    await mechanic.letBounceTimePass()
    await page.keyboard.press('Enter')
    await expect.poll(() => mechanic.entries(), after).toBe(before + 1)
  }
  await expect(mechanic.main).toContainText(en.run.confirm.at({ target: '35 N·m', number: '3' }))

  await test.step('Enter after a unit was chosen, the drawing was flipped and turned, and lists were opened and closed', async () => {
    await button('lbf·ft').first().click()
    await enterPulls('after a unit')
    await button('N·m').first().click()
    await button(saying(() => en.view.flip)).click()
    await enterPulls('after a flip')
    await button(saying(() => en.view.turn)).click()
    await enterPulls('after a turn')
    await button(en.buildWindow.allSteps).click()
    await button(en.buildWindow.allSteps).click()
    await enterPulls('after the list of steps')
    await button(en.view.open).click()
    await button(en.view.open).click()
    await enterPulls('after the view panel')
  })

  await test.step('Enter leads back from what a pull does and from the wrenches, and confirms nothing there', async () => {
    for (const offer of [en.run.explained.offer, en.run.wrench.offer]) {
      const before = await mechanic.entries()
      await button(offer).click()
      await expect(mechanic.main).toContainText(en.run.confirm.backToPull)
      await mechanic.letBounceTimePass()
      await page.keyboard.press('Enter')
      await expect(mechanic.main).toContainText(
        saying((any) => en.run.confirm.at({ number: any, target: '35 N·m' })),
      )
      expect(await mechanic.entries(), offer).toBe(before)
    }
  })

  await test.step('bench card and clamp map are opened in mid pass, take no confirmation, and lead back to the same pull', async () => {
    const pageText = await mechanic.main.innerText()
    const before = await mechanic.entries()
    const backs = saying(
      () => en.sheet.page.backToBuild,
      () => en.clampMap.backToBuild,
    )
    for (const paper of [en.run.benchCard, en.run.clampMap]) {
      await button(paper).click()
      await expect(mechanic.main).toHaveCount(0)
      await page.keyboard.press('Space')
      await button(backs).click()
      await expect(mechanic.main).toHaveText(pageText)
    }
    expect(await mechanic.entries()).toBe(before)
  })
})

test('a gauge of any speed, a form in sight, and an answer that was not good', async ({
  unopened: bench,
}) => {
  const { page } = bench
  const mechanic = new Mechanic(page, 'keys')

  await test.step('5, 50 and 150 ms from key to key: each is the reading of its fastener', async () => {
    await openAt(bench, { engine: /Tarn/, name: 'Pump set 8', person: 'Ines Roth', far: afterPulls(12) })
    for (const [delay, reading] of [
      [5, '34.5'],
      [50, '35.5'],
      [150, '36.5'],
    ] as const) {
      const before = await mechanic.entries()
      await page.keyboard.type(reading, { delay })
      await page.keyboard.press('Enter', { delay })
      await expect.poll(() => mechanic.entries(), `${delay} ms`).toBe(before + 1)
      await mechanic.letBounceTimePass()
    }
    await page.getByRole('button', { name: en.buildWindow.sheet, exact: true }).click()
    for (const reading of ['34.5', '35.5', '36.5'])
      await expect(page.getByRole('main')).toContainText(`${reading} N·m, ${en.sheet.run.verdicts.within}`)
  })

  await test.step('a form that opens below is scrolled to where all of it is seen', async () => {
    await page.setViewportSize({ width: 1024, height: 600 })
    await openAt(bench, { engine: /Moor/, name: 'Trolley 3', person: 'Ines Roth', far: atStep('Close case') })
    await page.getByRole('button', { name: en.partsList.otherwise }).last().click()
    const panel = page.getByRole('region', { name: en.steps.frame.title })
    const form = (await panel.locator('form').boundingBox())!
    const around = (await panel.boundingBox())!
    expect(form.y).toBeGreaterThanOrEqual(around.y - 1)
    if (form.height <= around.height)
      expect(form.y + form.height).toBeLessThanOrEqual(around.y + around.height + 1)
    await page.keyboard.press('Escape')
    await expect(panel.locator('form')).toHaveCount(0)
    await page.setViewportSize({ width: 1280, height: 800 })
  })

  await test.step('not good, then good: a reason is asked for, and what was said before is gone', async () => {
    await openAt(bench, { engine: /Skerry/, name: 'Ferry 2', person: 'Ines Roth', far: atFirst('check') })
    await page.getByRole('button', { name: en.steps.check.isNotGood }).click()
    const panel = page.getByRole('region', { name: en.steps.frame.title })
    await panel
      .getByRole('textbox', { name: en.steps.check.whatIsWrong })
      .fill('It binds at the third saddle')
    await mechanic.letBounceTimePass()
    await mechanic.main.click()
    await expect(panel).toContainText('It binds at the third saddle')

    const before = await mechanic.entries()
    await panel.getByRole('textbox', { name: readingField }).fill('0.15')
    await mechanic.letBounceTimePass()
    await page.keyboard.press('Enter')
    await expect(mechanic.main).toContainText(en.steps.check.isGoodNow)
    const reason = panel.getByRole('textbox').last()
    await expect(reason).toHaveValue('')
    await mechanic.letBounceTimePass()
    await page.keyboard.press('Enter')
    await expect(page.getByRole('alert')).toContainText(
      saying((any) => en.problems['check-good-why']({ step: any })),
    )
    expect(await mechanic.entries()).toBe(before)
    await reason.fill('Cap 3 turned the right way round')
    await mechanic.letBounceTimePass()
    await mechanic.confirm()
    await expect(mechanic.heading).not.toContainText(stepName('skerry-3', 'end-float'))
  })
})

test.describe('on a screen that is touched', () => {
  test.use({ hasTouch: true })

  test('numbers are typed on a pad of numbers, and a tap on a mark puts its place right', async ({
    unopened: bench,
  }) => {
    const { page } = bench
    const ferry = { engine: /Skerry/, person: 'Ines Roth' }
    const pad = (field: Locator) => expect(field).toHaveAttribute('inputmode', 'decimal')

    await openAt(bench, { ...ferry, name: 'Ferry 5', far: afterPulls(7) })
    const panel = page.getByRole('region', { name: en.steps.frame.title })
    await pad(panel.getByLabel(readingField))
    await openAt(bench, { ...ferry, name: 'Ferry 6', far: atFirst('check') })
    await pad(panel.getByRole('textbox', { name: readingField }))
    await openAt(bench, { ...ferry, name: 'Ferry 7', far: atFirst('choose-shells') })
    await panel.getByRole('button', { name: /^M1 / }).tap()
    await panel.getByRole('button', { name: en.shells.measure({ position: 'M1' }) }).tap()
    const cells = panel.getByRole('table').getByRole('textbox')
    await expect(cells.first()).toBeVisible()
    for (const cell of await cells.all()) await pad(cell)

    await openAt(bench, { ...ferry, name: 'Ferry 8', far: atStep('Case marks') })
    const field = page.getByLabel(en.steps.marks.asStamped)
    await field.fill('1 2 7 3')
    await page.getByRole('button', { name: 'M3: 2' }).tap()
    await expect(field).toHaveValue('1 2 2 3')
    await page.getByRole('button', { name: 'M1: 3' }).tap()
    await expect(field).toHaveValue('3 2 2 3')
  })
})
