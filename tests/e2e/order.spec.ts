import type { Page } from '@playwright/test'
import { en } from '../../core/words/index.ts'
import { whenKept } from './ask.ts'
import { expect } from './bench.ts'
import { onTheDrawing } from './drawing.ts'
import { atTheStart, sets, test } from './published-specs.ts'
import { saying } from './named.ts'

test.setTimeout(120_000)

const { spec } = sets.B
const [procedure] = spec.procedures
const sequence = procedure!.orders[0]!.sequence

async function tap(page: Page, fastener: string) {
  const { x, y } = await onTheDrawing(page, spec, procedure!.face, fastener)
  await page.mouse.click(x, y)
}

/** As the head of the panel and the list of passes have it. */
const ownOrder = en.run
  .heading({ ...{ pass: 1, passes: 3, kind: 'torque', step: null, cap: null }, ownOrder: true })
  .split(', ')
  .at(-1)!
const numbers = (page: Page) => page.getByLabel(en.order.own.tapOrType)
const listed = (page: Page) => page.getByRole('list', { name: en.view.inWords })

test('an order of its own is tapped, typed, or left', async ({ unopened: bench }) => {
  const { page } = bench
  await test.step('the maker’s order is kept when the own one is left', async () => {
    const mechanic = await atTheStart(bench, 'pointer')
    await page.getByRole('button', { name: en.order.own.title }).click()
    await page.getByRole('button', { name: en.order.own.patterns.spiral }).click()
    await page.getByRole('button', { name: en.parts.cancel }).click()
    await page.getByRole('button', { name: en.run.benchCard }).click()
    await expect(page.getByRole('main')).not.toContainText(en.order.own.title)
    await page.getByRole('button', { name: en.sheet.page.backToBuild }).click()
    await mechanic.confirm()
    await expect(mechanic.main).toContainText(en.run.confirm.at({ target: '40.7 N·m', number: '1' }))
    await page.getByRole('button', { name: en.buildWindow.sheet, exact: true }).click()
    await expect(page.getByRole('main')).not.toContainText(en.order.own.title)
  })

  await test.step('fasteners tapped one after another make an order; it is run, recorded and printed', async () => {
    const mechanic = await atTheStart(bench, 'pointer')
    await page.getByRole('button', { name: en.order.own.title }).click()
    await expect(page.getByRole('region', { name: en.order.own.title })).toContainText(en.order.own.caution)

    await tap(page, sequence[9]!)
    await tap(page, sequence[0]!)
    await expect(numbers(page)).toHaveValue('10 1')
    await expect(listed(page).locator('[data-about="fastener/bolt-10"]')).toHaveAttribute(
      'data-state',
      'done',
    )
    await page.getByRole('button', { name: en.order.own.undo }).click()
    await expect(numbers(page)).toHaveValue('10')
    await expect(
      page.getByText(
        saying(() =>
          en.problems['order-numbers-missing']({ numbers: ['1', '2', '3', '4', '5', '6', '7', '8', '9'] }),
        ),
      ),
    ).toBeVisible()
    await expect(mechanic.main).toHaveCount(0)
    for (const fastener of sequence.toReversed().slice(1)) await tap(page, fastener)
    await expect(page.getByText(en.order.own.allIn({ count: 10 }))).toBeVisible()
    const pulls = (pass: number) =>
      page.getByRole('list', { name: en.order.own.pullsOfPass({ pass }) }).getByRole('listitem')
    await expect(pulls(1)).toHaveText(['110', '29', '38', '47', '56', '65', '74', '83', '92', '101'])
    await expect(pulls(2)).toHaveText([`11${en.order.own.once}`])
    await expect(pulls(3).first()).toHaveText('1210')

    await page.getByRole('button', { name: en.order.own.compare }).click()
    await expect(page.getByRole('region', { name: en.clampMap.inOrder({ order: 'own' }) })).toBeVisible()
    await page.getByRole('button', { name: en.clampMap.backToBuild }).click()
    await expect(numbers(page)).toHaveValue('10 9 8 7 6 5 4 3 2 1')

    await page.getByRole('button', { name: en.run.benchCard }).click()
    await expect(page.getByRole('main')).toContainText(
      saying((any) => en.benchCard.ownOrder({ reason: null, ofMaker: [[any]] })),
    )
    await expect(page.getByRole('main').locator('.boxes').first()).toHaveText(/^\s*10\s+9\s+8/)
    await page.getByRole('button', { name: en.sheet.page.backToBuild }).click()

    await mechanic.main.click()
    await mechanic.letBounceTimePass()
    await page.getByRole('button', { name: en.run.ownOrderForm.start }).click()
    await expect(page.getByRole('alert')).toContainText(
      saying(() => en.problems['reason-missing']({ reasonFor: { what: 'own-order' } })),
    )
    await mechanic.letBounceTimePass()
    await page.getByLabel(en.run.ownOrderForm.why).fill('The hoist is in the way at 1')
    await page.getByRole('button', { name: en.run.ownOrderForm.start }).click()
    await expect(mechanic.heading).toContainText(ownOrder)
    await expect(mechanic.main).toContainText(en.run.confirm.at({ target: '40.7 N·m', number: '10' }))
    await mechanic.letBounceTimePass()
    await mechanic.confirm()
    await expect(mechanic.main).toContainText(en.run.confirm.at({ target: '40.7 N·m', number: '9' }))

    await page.getByRole('button', { name: en.buildWindow.sheet, exact: true }).click()
    const deviation = saying((any) =>
      en.sheet.run.ownOrder({
        own: sequence.map((_, place) => String(sequence.length - place)),
        ofMaker: sequence.map((_, place) => String(place + 1)),
        ...{ reason: 'The hoist is in the way at 1', stamp: any },
      }),
    )
    await expect(page.getByRole('main')).toContainText(deviation)
  })

  await test.step('by keys alone: numbers typed, a slip reported, a pattern taken, and the sheet says so', async () => {
    const mechanic = await atTheStart(bench, 'keys')
    const own = page.getByRole('button', { name: en.order.own.title })
    await own.focus()
    await page.keyboard.press('Enter')
    await numbers(page).click()
    await page.keyboard.type('5 6 5', { delay: 60 })
    await expect(
      page.getByText(saying(() => en.problems['order-number-twice']({ fastener: '5' }))),
    ).toBeVisible()
    await page.getByRole('button', { name: en.order.own.undo }).focus()
    await page.keyboard.press('Enter')
    await numbers(page).click()
    await page.keyboard.press('End')
    await page.keyboard.type(' 11', { delay: 60 })
    await expect(
      page.getByText(saying((any) => en.problems['order-number-unknown']({ typed: '11', numbers: [any] }))),
    ).toBeVisible()

    await page.getByRole('button', { name: en.order.own.patterns['end-to-end'] }).focus()
    await page.keyboard.press('Enter')
    await expect(page.getByText(en.order.own.isMaker)).toBeVisible()
    await page.getByRole('button', { name: en.order.own.patterns.spiral }).focus()
    await page.keyboard.press('Enter')
    await expect(page.getByText(en.order.own.allIn({ count: 10 }))).toBeVisible()
    await expect(page.getByText(saying(() => en.problems['order-of-caps']({ caps: 5 })))).toBeVisible()
    await whenKept(page, ({ order }) =>
      Object.values(order?.typed ?? {}).some((typed) => typed.split(' ').length === 10),
    )
    await bench.cutPowerAndStartAgain()
    await expect(page.getByText(en.order.own.allIn({ count: 10 }))).toBeVisible()
    await page.getByText(en.order.own.forSpec).focus()
    await page.keyboard.press('Enter')
    await expect(page.getByLabel(en.order.own.forSpec)).toHaveValue(/^"sequence": \["bolt-\d+", "bolt-/)

    await mechanic.main.focus()
    await page.keyboard.press('Enter')
    await mechanic.letBounceTimePass()
    await page.getByLabel(en.run.ownOrderForm.why).fill('To try it out')
    await page.keyboard.press('Enter')
    await expect(mechanic.heading).toContainText(ownOrder)
    await page.getByRole('button', { name: en.buildWindow.sheet, exact: true }).click()
    await expect(page.getByRole('main')).toContainText('To try it out')
  })
})
