import type { Page } from '@playwright/test'
import { en } from '../../core/words/index.ts'
import { whenKept } from './ask.ts'
import { expect } from './bench.ts'
import { onTheDrawing } from './drawing.ts'
import { atTheStart, sets, test } from './published-specs.ts'

test.setTimeout(120_000)

const { spec } = sets.B
const [procedure] = spec.procedures
const sequence = procedure!.orders[0]!.sequence

async function tap(page: Page, fastener: string) {
  const { x, y } = await onTheDrawing(page, spec, procedure!.face, fastener)
  await page.mouse.click(x, y)
}

const numbers = (page: Page) => page.getByLabel('Tap the fasteners one after another')
const listed = (page: Page) => page.getByRole('list', { name: 'The drawing in words' })

test('an order of its own is tapped, typed, or left', async ({ unopened: bench }) => {
  const { page } = bench
  await test.step('the maker’s order is kept when the own one is left', async () => {
    const mechanic = await atTheStart(bench, 'pointer')
    await page.getByRole('button', { name: 'Own order' }).click()
    await page.getByRole('button', { name: 'Spiral' }).click()
    await page.getByRole('button', { name: 'Cancel' }).click()
    await page.getByRole('button', { name: 'Bench card' }).click()
    await expect(page.getByRole('main')).not.toContainText('Own order')
    await page.getByRole('button', { name: '← Back' }).click()
    await mechanic.confirm()
    await expect(mechanic.main).toContainText('1 is at 40.7 N·m')
    await page.getByRole('button', { name: 'Sheet', exact: true }).click()
    await expect(page.getByRole('main')).not.toContainText('Own order')
  })

  await test.step('fasteners tapped one after another make an order; it is run, recorded and printed', async () => {
    const mechanic = await atTheStart(bench, 'pointer')
    await page.getByRole('button', { name: 'Own order' }).click()
    await expect(page.getByRole('region', { name: 'Own order' })).toContainText(en.order.own.caution)

    await tap(page, sequence[9]!)
    await tap(page, sequence[0]!)
    await expect(numbers(page)).toHaveValue('10 1')
    await expect(listed(page).locator('[data-about="fastener/bolt-10"]')).toHaveAttribute(
      'data-state',
      'done',
    )
    await page.getByRole('button', { name: 'Undo the last' }).click()
    await expect(numbers(page)).toHaveValue('10')
    await expect(page.getByText('Not in the order yet: 1, 2, 3, 4, 5, 6, 7, 8, 9')).toBeVisible()
    await expect(mechanic.main).toHaveCount(0)
    for (const fastener of sequence.toReversed().slice(1)) await tap(page, fastener)
    await expect(page.getByText('All 10 are in the order')).toBeVisible()
    const pulls = (pass: number) =>
      page.getByRole('list', { name: `Pulls of pass ${pass}` }).getByRole('listitem')
    await expect(pulls(1)).toHaveText(['110', '29', '38', '47', '56', '65', '74', '83', '92', '101'])
    await expect(pulls(2)).toHaveText(['11once'])
    await expect(pulls(3).first()).toHaveText('1210')

    await page.getByRole('button', { name: /^Compare clamp maps/ }).click()
    await expect(page.getByRole('region', { name: 'Order own order' })).toBeVisible()
    await page.getByRole('button', { name: '← Back to the build' }).click()
    await expect(numbers(page)).toHaveValue('10 9 8 7 6 5 4 3 2 1')

    await page.getByRole('button', { name: 'Bench card' }).click()
    await expect(page.getByRole('main')).toContainText('Own order, not the maker’s. It is not recorded yet.')
    await expect(page.getByRole('main').locator('.boxes').first()).toHaveText(/^\s*10\s+9\s+8/)
    await page.getByRole('button', { name: '← Back' }).click()

    await mechanic.main.click()
    await mechanic.letBounceTimePass()
    await page.getByRole('button', { name: 'Start in this order' }).click()
    await expect(page.getByRole('alert')).toContainText('Say why another order than the maker’s is used')
    await mechanic.letBounceTimePass()
    await page.getByLabel('Why this order').fill('The hoist is in the way at 1')
    await page.getByRole('button', { name: 'Start in this order' }).click()
    await expect(mechanic.heading).toContainText('own order')
    await expect(mechanic.main).toContainText('10 is at 40.7 N·m')
    await mechanic.letBounceTimePass()
    await mechanic.confirm()
    await expect(mechanic.main).toContainText('9 is at 40.7 N·m')

    await page.getByRole('button', { name: 'Sheet', exact: true }).click()
    const deviation =
      'Own order, not the maker’s: 10, 9, 8, 7, 6, 5, 4, 3, 2, 1. Why: The hoist is in the way at 1'
    await expect(page.getByRole('main')).toContainText(deviation)
    await expect(page.getByRole('main')).toContainText('The maker’s order: 1, 2, 3, 4, 5, 6, 7, 8, 9, 10.')
  })

  await test.step('by keys alone: numbers typed, a slip reported, a pattern taken, and the sheet says so', async () => {
    const mechanic = await atTheStart(bench, 'keys')
    const own = page.getByRole('button', { name: 'Own order' })
    await own.focus()
    await page.keyboard.press('Enter')
    await numbers(page).click()
    await page.keyboard.type('5 6 5', { delay: 60 })
    await expect(page.getByText('Fastener 5 stands in the order twice')).toBeVisible()
    await page.getByRole('button', { name: 'Undo the last' }).focus()
    await page.keyboard.press('Enter')
    await numbers(page).click()
    await page.keyboard.press('End')
    await page.keyboard.type(' 11', { delay: 60 })
    await expect(page.getByText('No fastener “11” is in this order')).toBeVisible()

    await page.getByRole('button', { name: 'End to end' }).focus()
    await page.keyboard.press('Enter')
    await expect(page.getByText('This is the maker’s order')).toBeVisible()
    await page.getByRole('button', { name: 'Spiral' }).focus()
    await page.keyboard.press('Enter')
    await expect(page.getByText('All 10 are in the order')).toBeVisible()
    await expect(page.getByText('These fasteners hold 5 caps')).toBeVisible()
    await whenKept(page, ({ order }) =>
      Object.values(order?.typed ?? {}).some((typed) => typed.split(' ').length === 10),
    )
    await bench.cutPowerAndStartAgain()
    await expect(page.getByText('All 10 are in the order')).toBeVisible()
    await page.getByText('For the spec file').focus()
    await page.keyboard.press('Enter')
    await expect(page.getByLabel('For the spec file')).toHaveValue(/^"sequence": \["bolt-\d+", "bolt-/)

    await mechanic.main.focus()
    await page.keyboard.press('Enter')
    await mechanic.letBounceTimePass()
    await page.getByLabel('Why this order').fill('For practice')
    await page.keyboard.press('Enter')
    await expect(mechanic.heading).toContainText('own order')
    await page.getByRole('button', { name: 'Sheet', exact: true }).click()
    await expect(page.getByRole('main')).toContainText('Why: For practice')
  })
})
