import { expect, test, type Bench } from './bench.ts'
import { onTheDrawing } from './drawing.ts'
import { Mechanic } from './mechanic.ts'
import { afterPulls, backToTheList, openAt } from './seed.ts'

test('a build is not started without names, nor are marks noted that are none', async ({ bench }) => {
  const { page } = bench
  await test.step('a build without a name or a person is not started', async () => {
    await page.getByRole('button', { name: /Skerry 3/ }).click()
    await page.getByRole('button', { name: 'Start this build' }).click()
    const name = page.getByLabel('Name of this build')
    const person = page.getByLabel('Who is at the bench')
    await expect(name).toBeFocused()
    await expect(name).toHaveAccessibleDescription(/no name/)
    await expect(person).toHaveAccessibleDescription(/Nobody is named/)
    await name.fill('Named now')
    await page.getByRole('button', { name: 'Start this build' }).click()
    await expect(person).toBeFocused()
    await person.fill('R. Halloran')
    // A setting that is kept meanwhile leaves what was typed where it is.
    const pounds = page.getByRole('button', { name: 'lbf·ft' })
    await pounds.click()
    await expect(pounds).toHaveAttribute('aria-pressed', 'true')
    await expect(person).toHaveValue('R. Halloran')
    await page.getByRole('button', { name: 'Start this build' }).click()
    await expect(page.getByRole('region', { name: 'Drawing' })).toBeVisible()
  })

  await test.step('marks that are not in the alphabet, or too few of them, are told at once and not noted', async () => {
    const mechanic = new Mechanic(bench.page, 'pointer')
    await backToTheList(page)
    await mechanic.startBuild(/^Skerry 3/, 'Wrong marks', 'R. Halloran')
    const field = bench.page.getByLabel('As stamped, in order from the nose')
    const refusal = bench.page.locator('#marks-problem')

    await field.fill('1 2 7 3')
    await expect(bench.page.getByRole('group', { name: 'M3' }).getByRole('alert')).toContainText('7')
    await mechanic.main.click()
    // Once, beside its letter, which is chosen to be typed over.
    await expect(mechanic.panel.getByRole('alert')).toHaveCount(1)
    await expect(field).toBeFocused()
    expect(await mechanic.entries()).toBe(1)
    await bench.page.keyboard.type('2')
    await expect(field).toHaveValue('1 2 2 3')
    await expect(mechanic.panel.getByRole('alert')).toHaveCount(0)

    await field.fill('1 2 7 3')
    await bench.page.getByRole('button', { name: 'M3: 1' }).click()
    await expect(field).toHaveValue('1 2 1 3')
    await bench.page.getByRole('button', { name: 'M2: 3' }).click()
    await expect(field).toHaveValue('1 3 1 3')

    await field.fill('')
    await mechanic.letBounceTimePass()
    await mechanic.main.click()
    await expect(refusal).not.toBeEmpty()
    await expect(mechanic.panel.getByRole('alert')).toHaveCount(0)
    expect(await mechanic.entries()).toBe(1)

    await field.fill('1 2 3')
    await expect(refusal).not.toBeEmpty()
    await bench.page.getByRole('button', { name: 'M4: 1' }).click()
    await expect(field).toHaveValue('1 2 3 1')
    await expect(refusal).toBeEmpty()
    await mechanic.letBounceTimePass()
    await mechanic.confirm()
    await expect(mechanic.heading).toHaveText('Crank marks')
  })
})

test.describe('at the main cap bolts', () => {
  test.setTimeout(120_000)

  async function toTheCaps(bench: Bench) {
    await openAt(bench, {
      engine: /Tarn 4/,
      name: 'Refusals',
      person: 'I. Brandvold',
      marks: ['KLLMK', '1 2 2 3 1', 'ABAB', '7878'],
      far: afterPulls(10), // all seated
    })
  }

  test('readings: nonsense is refused, outside is flagged and answered, a comma is a point', async ({
    unopened: bench,
  }) => {
    const mechanic = new Mechanic(bench.page, 'pointer')
    await toTheCaps(bench)
    const { page } = bench
    const reading = page.getByLabel('Reading in N·m')

    const entries = await mechanic.entries()
    for (const typed of ['-5', '1e999', 'abc']) {
      await reading.fill(typed)
      await mechanic.main.click()
      await expect(page.getByRole('alert')).toContainText(typed)
      expect(await mechanic.entries()).toBe(entries)
      await mechanic.letBounceTimePass()
    }

    await reading.fill('34,5')
    await mechanic.confirm()
    await expect(mechanic.main).toContainText('2 is at 35 N·m')

    await reading.fill('41')
    await mechanic.confirm()
    await expect(page.getByRole('alert')).toContainText('Fastener 2: 41 N·m, allowed 32 to 38')
    await expect(page.getByLabel('What was done?')).toHaveCount(0)
    await expect(mechanic.main).toContainText('2 is loose')
    await page.getByRole('button', { name: 'The reading was wrong: read again …' }).click()
    await page.getByLabel('It reads, in N·m').fill('35')
    await page.getByRole('button', { name: 'Note what it reads now' }).click()
    await expect(mechanic.main).toContainText('3 is at 35 N·m')
  })

  test('a fastener out of its turn wants a reason; the last pull is taken back with one', async ({
    unopened: bench,
  }) => {
    const mechanic = new Mechanic(bench.page, 'pointer')
    await toTheCaps(bench)
    const { page } = bench

    const tap = await onTheDrawing(page, 'tarn-4', 'block', 'cap-7')
    await page.mouse.click(tap.x, tap.y)
    await expect(page.getByText('It is not its turn.')).toBeVisible()
    const before = await mechanic.entries()
    await page.getByRole('button', { name: 'Fastener 7 is pulled' }).click()
    await expect(page.getByRole('alert')).toContainText('Say why 7 comes before 1')
    expect(await mechanic.entries()).toBe(before)

    await page.getByLabel(/before its turn: why/).fill('Bridge crane is in the way of 1')
    await mechanic.letBounceTimePass()
    await page.getByRole('button', { name: 'Fastener 7 is pulled' }).click()
    await expect(mechanic.main).toContainText('1 is at 35 N·m')

    await page.keyboard.press('Backspace')
    await page.getByLabel(/Take back fastener 7/).fill('Crane is gone')
    await mechanic.letBounceTimePass()
    await page.keyboard.press('Enter')
    await expect(page.getByRole('button', { name: /Take back 10/ })).toBeVisible()
  })
})
