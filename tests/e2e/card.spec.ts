import type { Page } from '@playwright/test'
import { en } from '../../core/words/index.ts'
import { expect, test, type Bench } from './bench.ts'
import { onTheDrawing } from './drawing.ts'
import { Mechanic } from './mechanic.ts'
import { atStep, openAt, type Far } from './seed.ts'
import { saying } from './named.ts'

test.setTimeout(120_000)

const cardOf = (page: Page) => page.getByRole('region', { name: en.buildWindow.whatThisIs })

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
    await expect(card.getByRole('heading')).toHaveText(
      en.described.fastener({ number: '1', where: 'saddle 2, pump side' }),
    )
    await expect(card).toContainText(
      en.described.group({
        group: 'Case bolts',
        thread: 'M10 × 1.25, 10.9, oiled',
        grip: '92 mm',
        hasWasher: false,
      }),
    )
    await expect(card).toContainText(
      en.described.pass({
        pass: 2,
        kind: en.passes.kinds.torque,
        limits: en.sheet.run.window({ target: '15 N·m', least: '13.5', most: '16.5' }),
      }),
    )
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
    await expect(mechanic.main).toContainText(en.steps.fitShells.isIn({ position: 'M1', half: 'upper' }))
    await row('M3/lower').getByRole('button').press('Enter')
    await expect(row('M3/lower')).toHaveAttribute('data-state', 'next')
    await expect(mechanic.main).toContainText(en.steps.fitShells.isIn({ position: 'M3', half: 'lower' }))
    const card = cardOf(page)
    await expect(card.getByRole('heading')).toHaveText(
      en.described.half({ bearing: 'main', position: 'M3', half: 'lower' }),
    )
    await expect(card).toContainText(
      en.described.shell({ isChosen: true, grade: 'V', undersize: null, pattern: 'grid' }),
    )
    // The card alone goes: what was chosen to be fitted stays.
    await page.keyboard.press('Escape')
    await expect(card).toBeHidden()
    await expect(mechanic.main).toContainText(en.steps.fitShells.isIn({ position: 'M3', half: 'lower' }))
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
    await expect(card.getByRole('heading')).toHaveText(en.described.nose)
    await expect(card.getByRole('button', { name: en.parts.close })).toBeFocused()
    expect(await card.evaluate(({ scrollTop }) => scrollTop)).toBe(0)
    await page.keyboard.press('Enter')
    await expect(card).toBeHidden()
    await expect(nose).toBeFocused()
    expect(await mechanic.entries()).toBe(entries)
  })

  await test.step('while a case is closed a tap tells of the fastener, and the panel still asks why it is before its turn', async () => {
    await openThree(bench, (_, { runs }) => runs['case']?.pulls.length === 0)
    const panel = page.getByRole('region', { name: en.steps.frame.title })
    const row = page.locator('[data-state="waiting"][data-about^="fastener/"]').first()
    await row.getByRole('button').press('Enter')
    await expect(cardOf(page)).toContainText(
      en.described.pass({ pass: 1, kind: en.passes.kinds.seat, limits: null }),
    )
    expect(await cardOf(page).evaluate(({ scrollTop }) => scrollTop)).toBe(0)
    await expect(panel).toContainText(
      saying(() => en.run.picked.notItsTurn({ pass: 1, kind: 'seat', target: null })),
    )
    const why = page.getByLabel(en.run.picked.why)
    await expect(why).toBeFocused()
    await page.keyboard.press('Escape')
    await expect(cardOf(page)).toBeHidden()
    await expect(why).toBeFocused()
  })
})
