import { expect } from './bench.ts'
import { Mechanic } from './mechanic.ts'
import { test } from './published-specs.ts'
import { afterPulls, openAt } from './seed.ts'

test('a stud is tightened until it is long enough, after a wait that is shortened with a reason', async ({
  unopened: bench,
}) => {
  const { page } = bench
  const mechanic = new Mechanic(page, 'pointer')
  // 14 studs measured and snug.
  await openAt(bench, {
    engine: /Published set F/,
    name: 'Set F',
    person: 'R. Halloran',
    far: afterPulls(28),
  })
  await expect(page.getByRole('timer', { name: 'Waiting time' })).toContainText('to wait')
  await mechanic.main.click()
  await page.getByRole('button', { name: 'On the foreman’s instruction' }).click()
  await mechanic.letBounceTimePass()
  await expect(mechanic.main).toContainText('Continue now')
  await mechanic.confirm()

  const next = page.getByRole('status', { name: 'Next' })
  await expect(next).toContainText('Tighten it on until it is long enough')
  await expect(next).toContainText('203.4 to 406.7 N·m')
  // Every stud measures 250 mm in a seeded build, as much as its grip; 0.019 in are 0.4826 mm.
  await page.getByLabel(/^Its torque then/).fill('220')
  await mechanic.answerReading('250.3')
  await expect(page.getByRole('alert')).toContainText(
    'tighten it on to no more than 406.7 N·m, and measure it again',
  )
  await page.getByLabel(/^Its torque then/).fill('290')
  await mechanic.answerReading('250.5')
  await expect(next).toContainText('in this pass')
  await page.getByLabel(/^Its torque then/).fill('420')
  await mechanic.answerReading('250.5')
  await expect(page.getByRole('alert')).toContainText('do not tighten it further')
  await expect(mechanic.main).toContainText('is loose')

  await page.getByRole('button', { name: 'Sheet', exact: true }).click()
  await expect(page.getByText('! shortened: On the foreman’s instruction').first()).toBeVisible()
  await expect(page.getByText('0.500 mm longer, at 290 N·m, within')).toBeVisible()
})
