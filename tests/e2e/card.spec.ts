import type { Page } from '@playwright/test'
import { expect, test, type Bench } from './bench.ts'
import { onTheDrawing } from './drawing.ts'
import { Mechanic } from './mechanic.ts'
import { atStep, openAt, type Far } from './seed.ts'

test.setTimeout(120_000)

const cardOf = (page: Page) => page.getByRole('region', { name: 'What this is' })

/** Opens the bench with the split-case three. */
async function openThree(bench: Bench, far: Far) {
  const marks = ['1 2 3 1', 'F G H F', '4 5 4', 'L M L']
  await openAt(bench, { engine: /Skerry 3/, name: 'Told', person: 'R. Halloran', marks, far })
}

const atTheMains = (bench: Bench) => openThree(bench, atStep('Main shells'))

test('a tap on the drawing opens a card that says what is there', async ({ unopened: bench }) => {
  const { page } = bench
  await test.step('a tap tells what it is beside it, and what is recorded next closes the card', async () => {
    const mechanic = new Mechanic(page, 'pointer')
    await atTheMains(bench)
    const bolt = await onTheDrawing(page, 'skerry-3', 'joint', 'case-1', 'everything')
    await page.mouse.click(bolt.x, bolt.y)
    const card = cardOf(page)
    await expect(card.getByRole('heading')).toHaveText('Fastener 1, saddle 2, pump side')
    await expect(card).toContainText('Case bolts: M10 × 1.25, 10.9, oiled, 92 mm clamped')
    await expect(card).toContainText('Pass 2, torque: 15 N·m (13.5 to 16.5)')
    const { x, y, width, height } = (await card.boundingBox())!
    const covers = bolt.x > x && bolt.x < x + width && bolt.y > y && bolt.y < y + height
    expect(covers).toBe(false)
    const main = (await mechanic.main.boundingBox())!
    const apart = x + width <= main.x || y + height <= main.y
    expect(apart).toBe(true)
    await mechanic.confirm()
    await expect(card).toBeHidden()
  })

  await test.step('a tap on a half makes it the next one on the drawing and in the panel, and tells of it', async () => {
    const mechanic = new Mechanic(page, 'pointer')
    await atTheMains(bench)
    const row = (half: string) => page.locator(`[data-about="half/${half}"]`)
    await expect(row('M1/upper')).toHaveAttribute('data-state', 'next')
    await expect(mechanic.main).toContainText('M1 upper is in')
    await row('M3/lower').getByRole('button').press('Enter')
    await expect(row('M3/lower')).toHaveAttribute('data-state', 'next')
    await expect(mechanic.main).toContainText('M3 lower is in')
    const card = cardOf(page)
    await expect(card.getByRole('heading')).toHaveText('Saddle M3, lower half')
    await expect(card).toContainText('Grade V')
    // The card alone goes: what was chosen to be fitted stays.
    await page.keyboard.press('Escape')
    await expect(card).toBeHidden()
    await expect(mechanic.main).toContainText('M3 lower is in')
    await expect(row('M3/lower').getByRole('button')).toBeFocused()
  })

  await test.step('by keys the card has the focus, so that Enter closes it and confirms nothing', async () => {
    const mechanic = new Mechanic(page, 'keys')
    await atTheMains(bench)
    const entries = await mechanic.entries()
    const nose = page.locator('[data-about="nose"]').getByRole('button')
    await nose.focus()
    await page.keyboard.press('Enter')
    const card = cardOf(page)
    await expect(card.getByRole('heading')).toHaveText('Nose')
    await expect(card.getByRole('button', { name: 'Close' })).toBeFocused()
    await page.keyboard.press('Enter')
    await expect(card).toBeHidden()
    await expect(nose).toBeFocused()
    expect(await mechanic.entries()).toBe(entries)
  })

  await test.step('while a case is closed a tap tells of the fastener, and the panel still asks why it is before its turn', async () => {
    await openThree(bench, (_, { runs }) => runs['case']?.pulls.length === 0)
    const panel = page.getByRole('region', { name: 'What to do' })
    const row = page.locator('[data-state="waiting"][data-about^="fastener/"]').first()
    await row.getByRole('button').press('Enter')
    await expect(cardOf(page)).toContainText('Pass 1, seat by hand')
    await expect(panel).toContainText('It is not its turn')
    const why = page.getByLabel(/before its turn: why/)
    await expect(why).toBeFocused()
    await page.keyboard.press('Escape')
    await expect(cardOf(page)).toBeHidden()
    await expect(why).toBeFocused()
  })
})
