import { en } from '../../core/words/index.ts'
import { expect, type Bench } from './bench.ts'
import { Mechanic } from './mechanic.ts'
import { test } from './published-specs.ts'
import { afterPulls, openAt } from './seed.ts'
import { saying, shown } from './named.ts'

test.setTimeout(120_000)

/** Set B up to its turn of 120° ± 5°. */
async function toTheTurn(bench: Bench, by: 'pointer' | 'keys' = 'pointer') {
  const mechanic = new Mechanic(bench.page, by)
  await openAt(bench, {
    engine: /Published set B/,
    name: 'Set B',
    person: 'R. Halloran',
    far: afterPulls(10 + 1), // ten torques, and every head marked
  })
  await expect(mechanic.main).toContainText(en.run.confirm.turned({ target: '120°', number: '1' }))
  return mechanic
}

test('what went wrong in a run is put right: too much, too little, broken off', async ({
  unopened: bench,
}) => {
  const { page } = bench
  await test.step('too much on a bolt that is turned leads through loosen, replace, begin again', async () => {
    const mechanic = await toTheTurn(bench)
    await mechanic.answerReading('126')
    await expect(bench.page.getByRole('alert')).toContainText(
      saying((any) =>
        en.problems['reading-over-replace']({
          fastener: '1',
          read: any,
          limits: shown('115 to 125'),
          otherUnit: null,
        }),
      ),
    )
    await expect(mechanic.main).toContainText(en.run.confirm.loose({ number: '1' }))
    await mechanic.confirm()
    await expect(mechanic.main).toContainText(en.run.confirm.newIn({ number: '1' }))
    await mechanic.confirm()
    await expect(mechanic.main).toContainText(en.run.confirm.at({ target: '40.7 N·m', number: '1' }))
    await mechanic.confirm()
    await expect(mechanic.main).toContainText(en.run.confirm.turned({ target: '120°', number: '1' }))
    await mechanic.confirm()
    await expect(mechanic.main).toContainText(en.run.confirm.turned({ target: '120°', number: '2' }))

    await bench.page.getByRole('button', { name: en.buildWindow.sheet }).click()
    await expect(bench.page.getByText(en.sheet.run.setAside.loosened)).toHaveCount(2)
    await expect(bench.page.getByText(en.flags.deeds.replaced).first()).toBeVisible()
  })

  await test.step('a turn that came short is turned on by what is left, and is not taken back', async () => {
    const mechanic = await toTheTurn(bench)
    await mechanic.answerReading('70')
    await expect(page.getByRole('alert')).toContainText(
      saying((any) =>
        en.problems['turn-short']({
          fastener: '1',
          read: any,
          limits: any,
          left: shown('50°'),
          from: shown('45°'),
          to: shown('55°'),
        }),
      ),
    )
    await expect(mechanic.main).toContainText(en.run.confirm.turned({ target: '50°', number: '1' }))
    await page.getByRole('button', { name: saying((any) => en.run.takeBack.offer({ number: any })) }).click()
    await page.getByRole('button', { name: en.run.takeBack.turned }).click()
    await expect(page.getByText(en.run.takeBack.staysTurned({ number: '1' }))).toBeVisible()
    await page.getByRole('button', { name: en.parts.cancel }).click()
    await mechanic.answerReading('50')
    await expect(mechanic.main).toContainText(en.run.confirm.turned({ target: '120°', number: '2' }))
    await page.getByRole('button', { name: en.buildWindow.sheet }).click()
    await expect(
      page.getByText(
        `${en.sheet.run.turnedOn({ read: '50°', whole: '120°' })}, ${en.sheet.run.verdicts.within}`,
      ),
    ).toBeVisible()
  })

  await test.step('a run that was broken off begins again with a reason, and the sheet says so', async () => {
    const mechanic = new Mechanic(page, 'pointer')
    await openAt(bench, {
      engine: /Published set B/,
      name: 'Set B',
      person: 'R. Halloran',
      far: afterPulls(3),
    })
    await page.getByRole('button', { name: en.run.pause }).click()
    await page.getByRole('button', { name: en.run.pauseForm.pause }).click()
    await mechanic.letBounceTimePass()
    await page.getByRole('button', { name: en.run.restart.offerInstead }).click()
    await page.getByRole('button', { name: en.run.restart.usualReasons[1]! }).click()
    await page.getByRole('button', { name: en.run.restart.beginAgain({ pass: 1 }) }).click()
    await expect(mechanic.main).toContainText(en.run.confirm.at({ target: '40.7 N·m', number: '1' }))

    await page.getByRole('button', { name: en.buildWindow.sheet, exact: true }).click()
    await expect(page.getByText(en.sheet.run.setAside['run-restarted'])).toHaveCount(3)
    await expect(
      page.getByText(
        `${en.sheet.corrections.kinds['run-restarted']}, ${en.phrases.fromPassOf({ procedure: 'As printed', pass: 1 })}: ${en.run.restart.usualReasons[1]}`,
      ),
    ).toBeVisible()
  })
})

test('lengths, gap, stretch and end float are measured; a recheck goes round until none moves', async ({
  bench,
}) => {
  const { page } = bench
  const mechanic = new Mechanic(page, 'pointer')
  await mechanic.startBuild(/Measured set/, 'Measured', 'R. Halloran')
  await mechanic.confirm()
  await mechanic.main.click()
  await expect(page.getByRole('alert')).toContainText(en.run.confirm.writeDown({ number: null }))
  await mechanic.letBounceTimePass()
  for (let made = 0; made < 10; made++) await mechanic.answerReading('110.00')
  for (let made = 0; made < 10; made++) await mechanic.confirm() // seated
  await expect(page.getByRole('status', { name: en.run.next })).toContainText(en.sheet.run.gap)
  await mechanic.answerReading('0.03')
  for (let made = 0; made < 10; made++) await mechanic.confirm()
  await expect(page.getByRole('status', { name: en.run.next })).toContainText(
    `${en.run.longerBy} 0.100 mm to 0.150 mm`,
  )
  for (let made = 0; made < 9; made++) await mechanic.answerReading('110.12')
  await mechanic.answerReading('110.16')
  await expect(page.getByRole('alert')).toContainText(
    saying(
      ...(['reading-over-begin-again', 'reading-over-replace'] as const).map(
        (code) => () =>
          en.problems[code]({
            fastener: '10',
            read: shown('0.160 mm'),
            limits: shown('0.100 mm to 0.150 mm'),
            otherUnit: null,
          }),
      ),
    ),
  )
  await expect(mechanic.main).toContainText(en.run.confirm.loose({ number: '10' }))
  await page.getByRole('button', { name: en.run.readAgain.offer }).click()
  await page.getByLabel(en.run.readAgain.reads({ unit: 'mm' })).fill('110.14')
  await page.getByRole('button', { name: en.run.readAgain.note }).click()
  await mechanic.letBounceTimePass()
  await mechanic.answerReading('0.15')
  await expect(mechanic.main).toContainText(en.run.confirm.holds({ target: '70 N·m', number: '1' }))
  await page.getByRole('button', { name: en.run.confirm.moved }).click()
  await expect(mechanic.main).toContainText(en.run.confirm.holds({ target: '70 N·m', number: '2' }))
  await mechanic.letBounceTimePass()
  await mechanic.confirm()
  await expect(mechanic.main).toContainText(en.run.confirm.holds({ target: '70 N·m', number: '1' }))
  await mechanic.confirm()
  await mechanic.confirm()
  await expect(mechanic.main).not.toContainText(
    saying((any) => en.run.confirm.holds({ number: any, target: any })),
  )

  await page.getByRole('button', { name: en.buildWindow.sheet, exact: true }).click()
  await expect(page.getByText(en.sheet.run.setAside['pass-repeated'])).toHaveCount(2)
  await expect(
    page
      .getByText(`${en.sheet.run.longer({ stretch: '0.120 mm' })}, ${en.sheet.run.verdicts.within}`)
      .first(),
  ).toBeVisible()
})
