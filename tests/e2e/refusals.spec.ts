import { en } from '../../core/words/index.ts'
import { expect, test, type Bench } from './bench.ts'
import { onTheDrawing } from './drawing.ts'
import { Mechanic } from './mechanic.ts'
import { afterPulls, backToTheList, openAt } from './seed.ts'
import { saying, shown } from './named.ts'

test('a build is not started without names, nor are marks noted that are none', async ({ bench }) => {
  const { page } = bench
  await test.step('a build without a name or a person is not started', async () => {
    await page.getByRole('button', { name: /Skerry 3/ }).click()
    await page.getByRole('button', { name: en.engines.start }).click()
    const name = page.getByLabel(en.engines.buildName)
    const person = page.getByLabel(en.engines.person)
    await expect(name).toBeFocused()
    await expect(name).toHaveAccessibleDescription(saying(() => en.problems['build-name-missing']({})))
    await expect(person).toHaveAccessibleDescription(saying(() => en.problems['person-missing']({})))
    await name.fill('Named now')
    await page.getByRole('button', { name: en.engines.start }).click()
    await expect(person).toBeFocused()
    await person.fill('R. Halloran')
    // A setting that is kept meanwhile leaves what was typed where it is.
    const pounds = page.getByRole('button', { name: 'lbf·ft' })
    await pounds.click()
    await expect(pounds).toHaveAttribute('aria-pressed', 'true')
    await expect(person).toHaveValue('R. Halloran')
    await page.getByRole('button', { name: en.engines.start }).click()
    await expect(page.getByRole('region', { name: en.buildWindow.drawing })).toBeVisible()
  })

  await test.step('marks that are not in the alphabet, or too few of them, are reported at once and not noted', async () => {
    const mechanic = new Mechanic(bench.page, 'pointer')
    await backToTheList(page)
    await mechanic.startBuild(/^Skerry 3/, 'Wrong marks', 'R. Halloran')
    const field = bench.page.getByLabel(en.steps.marks.asStamped)
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
    const reading = page.getByLabel(en.run.readingIn({ unit: 'N·m', onScale: false }))

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
    await expect(mechanic.main).toContainText(en.run.confirm.at({ target: '35 N·m', number: '2' }))

    await reading.fill('41')
    await mechanic.confirm()
    await expect(page.getByRole('alert')).toContainText(
      saying(
        ...(['reading-over-begin-again', 'reading-over-replace'] as const).map(
          (code) => () =>
            en.problems[code]({
              fastener: '2',
              read: shown('41 N·m'),
              limits: shown('32 to 38'),
              otherUnit: null,
            }),
        ),
      ),
    )
    await expect(page.getByLabel(en.run.flag.whatWasDone)).toHaveCount(0)
    await expect(mechanic.main).toContainText(en.run.confirm.loose({ number: '2' }))
    await page.getByRole('button', { name: en.run.readAgain.offer }).click()
    await page.getByLabel(en.run.readAgain.reads({ unit: 'N·m' })).fill('35')
    await page.getByRole('button', { name: en.run.readAgain.note }).click()
    await expect(mechanic.main).toContainText(en.run.confirm.at({ target: '35 N·m', number: '3' }))
  })

  test('a fastener out of its turn wants a reason; the last pull is taken back with one', async ({
    unopened: bench,
  }) => {
    const mechanic = new Mechanic(bench.page, 'pointer')
    await toTheCaps(bench)
    const { page } = bench

    const tap = await onTheDrawing(page, 'tarn-4', 'block', 'cap-7')
    await page.mouse.click(tap.x, tap.y)
    await expect(
      page.getByText(saying((any) => en.run.picked.notItsTurn({ pass: any, kind: 'torque', target: any }))),
    ).toBeVisible()
    const before = await mechanic.entries()
    await page.getByRole('button', { name: en.run.picked.isPulled({ number: '7' }) }).click()
    await expect(page.getByRole('alert')).toContainText(
      saying(() =>
        en.problems['reason-missing']({ reasonFor: { what: 'out-of-order', fastener: '7', next: '1' } }),
      ),
    )
    expect(await mechanic.entries()).toBe(before)

    await page.getByLabel(en.run.picked.why).fill('Bridge crane is in the way of 1')
    await mechanic.letBounceTimePass()
    await page.getByRole('button', { name: en.run.picked.isPulled({ number: '7' }) }).click()
    await expect(mechanic.main).toContainText(en.run.confirm.at({ target: '35 N·m', number: '1' }))

    await page.keyboard.press('Backspace')
    await page.getByLabel(en.run.takeBack.why({ number: '7' })).fill('Crane is gone')
    await mechanic.letBounceTimePass()
    await page.keyboard.press('Enter')
    await expect(page.getByRole('button', { name: en.run.takeBack.offer({ number: '10' }) })).toBeVisible()
  })
})
