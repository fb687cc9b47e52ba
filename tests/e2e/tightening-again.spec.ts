import { expect, type Bench } from './bench.ts'
import { Mechanic } from './mechanic.ts'
import { test } from './published-specs.ts'
import { afterPulls, openAt } from './seed.ts'

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
  await expect(mechanic.main).toContainText('1 is turned 120°')
  return mechanic
}

test('what went wrong in a run is put right: too much, too little, broken off', async ({
  unopened: bench,
}) => {
  const { page } = bench
  await test.step('too much on a bolt that is turned leads through loosen, replace, begin again', async () => {
    const mechanic = await toTheTurn(bench)
    await mechanic.answerReading('126')
    await expect(bench.page.getByRole('alert')).toContainText('allowed 115 to 125: too much')
    await expect(mechanic.main).toContainText('1 is loose')
    await mechanic.confirm()
    await expect(mechanic.main).toContainText('A new 1 is in')
    await mechanic.confirm()
    await expect(mechanic.main).toContainText('1 is at 40.7 N·m')
    await mechanic.confirm()
    await expect(mechanic.main).toContainText('1 is turned 120°')
    await mechanic.confirm()
    await expect(mechanic.main).toContainText('2 is turned 120°')

    await bench.page.getByRole('button', { name: 'Sheet' }).click()
    await expect(bench.page.getByText('no longer counts: the fastener was loosened')).toHaveCount(2)
    await expect(bench.page.getByText('replaced by a new one').first()).toBeVisible()
  })

  await test.step('a turn that came short is turned on by what is left, and is not taken back', async () => {
    const mechanic = await toTheTurn(bench)
    await mechanic.answerReading('70')
    await expect(page.getByRole('alert')).toContainText('turn it on by 50° (45° to 55°)')
    await expect(mechanic.main).toContainText('1 is turned 50°')
    await page.getByRole('button', { name: /Take back/ }).click()
    await page.getByRole('button', { name: 'Yes: it has to begin again …' }).click()
    await expect(page.getByText('A turn stays turned.')).toBeVisible()
    await page.getByRole('button', { name: 'Cancel' }).click()
    await mechanic.answerReading('50')
    await expect(mechanic.main).toContainText('2 is turned 120°')
    await page.getByRole('button', { name: 'Sheet' }).click()
    await expect(page.getByText('50° on, 120° in all, within')).toBeVisible()
  })

  await test.step('a run that was broken off begins again with a reason, and the sheet says so', async () => {
    const mechanic = new Mechanic(page, 'pointer')
    await openAt(bench, {
      engine: /Published set B/,
      name: 'Set B',
      person: 'R. Halloran',
      far: afterPulls(3),
    })
    await page.getByRole('button', { name: 'Pause' }).click()
    await page.getByRole('button', { name: 'Pause here' }).click()
    await mechanic.letBounceTimePass()
    await page.getByRole('button', { name: 'Begin again instead …' }).click()
    await page.getByRole('button', { name: 'The pass was interrupted' }).click()
    await page.getByRole('button', { name: 'Begin again with pass 1' }).click()
    await expect(mechanic.main).toContainText('1 is at 40.7 N·m')

    await page.getByRole('button', { name: 'Sheet', exact: true }).click()
    await expect(page.getByText('no longer counts: the run was begun again')).toHaveCount(3)
    await expect(
      page.getByText('run begun again, As printed, from pass 1: The pass was interrupted'),
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
  await expect(page.getByRole('alert')).toContainText('Note what the gauge shows')
  await mechanic.letBounceTimePass()
  for (let made = 0; made < 10; made++) await mechanic.answerReading('110.00')
  for (let made = 0; made < 10; made++) await mechanic.confirm() // seated
  await expect(page.getByRole('status', { name: 'Next' })).toContainText('gap of the joint face')
  await mechanic.answerReading('0.03')
  for (let made = 0; made < 10; made++) await mechanic.confirm()
  await expect(page.getByRole('status', { name: 'Next' })).toContainText('longer by 0.100 mm to 0.150 mm')
  for (let made = 0; made < 9; made++) await mechanic.answerReading('110.12')
  await mechanic.answerReading('110.16')
  await expect(page.getByRole('alert')).toContainText(
    'Fastener 10: 0.160 mm, allowed 0.100 mm to 0.150 mm: too much',
  )
  await expect(mechanic.main).toContainText('10 is loose')
  await page.getByRole('button', { name: 'The reading was wrong: read again …' }).click()
  await page.getByLabel('It reads, in mm').fill('110.14')
  await page.getByRole('button', { name: 'Note what it reads now' }).click()
  await mechanic.letBounceTimePass()
  await mechanic.answerReading('0.15')
  await expect(mechanic.main).toContainText('1 holds 70 N·m')
  await page.getByRole('button', { name: 'It moved' }).click()
  await expect(mechanic.main).toContainText('2 holds 70 N·m')
  await mechanic.letBounceTimePass()
  await mechanic.confirm()
  await expect(mechanic.main).toContainText('1 holds 70 N·m')
  await mechanic.confirm()
  await mechanic.confirm()
  await expect(mechanic.main).not.toContainText('holds')

  await page.getByRole('button', { name: 'Sheet', exact: true }).click()
  await expect(page.getByText('no longer counts: the pass was repeated')).toHaveCount(2)
  await expect(page.getByText('0.120 mm longer, within').first()).toBeVisible()
})
