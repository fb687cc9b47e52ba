import { expect } from './bench.ts'
import { Mechanic } from './mechanic.ts'
import { atTheFirstPull, test } from './published-specs.ts'
import { afterPulls, openAt } from './seed.ts'

test('what is out of its limits is answered: later, or by doing it again', async ({ unopened: bench }) => {
  const { page } = bench
  await test.step('a problem whose answer is put off waits in a list, takes no keys, and is answered before the end', async () => {
    const mechanic = await atTheFirstPull(bench, 'keys')
    await expect(mechanic.main).toContainText('1 is at')
    await mechanic.answerReading('10')
    await expect(page.getByRole('alert')).toContainText('too little')

    await page.getByRole('button', { name: /^Answer later/ }).click()
    await mechanic.letBounceTimePass()
    const list = page.getByRole('region', { name: 'To be answered before the end' })
    await expect(list.getByRole('listitem')).toHaveCount(1)
    await expect(mechanic.main).toContainText('2 is at')
    await mechanic.confirm()
    await expect(mechanic.main).toContainText('3 is at')
    await expect(list.getByRole('listitem')).toHaveCount(1)

    await list.getByRole('button', { name: 'Answer now' }).click()
    await expect(page.getByRole('alert')).toContainText('too little')
    await page.getByRole('button', { name: 'Pulled again until it clicked' }).click()
    await mechanic.letBounceTimePass()
    await expect(mechanic.main).toContainText('Note what was done')
    await mechanic.confirm()
    await expect(list).toHaveCount(0)
    await expect(mechanic.main).toContainText('3 is at')
  })

  await test.step('a gap out of its limits leads to loosening, seating and measuring it again', async () => {
    const mechanic = new Mechanic(page, 'keys')
    await openAt(bench, {
      engine: /Measured set/,
      name: 'Open joint',
      person: 'R. Halloran',
      far: afterPulls(10 + 10), // ten lengths, ten seated
    })
    const next = page.getByRole('status', { name: 'Next' })
    await expect(next).toContainText('gap of the joint face')
    await mechanic.answerReading('0.08')
    await expect(page.getByText('Loosen every fastener of the joint')).toBeVisible()
    await expect(mechanic.main).toContainText('All are loose: measure again from pass 2')
    await mechanic.confirm()
    for (let seated = 0; seated < 10; seated++) await mechanic.confirm()
    await expect(next).toContainText('gap of the joint face')
    await mechanic.answerReading('0.03')
    await expect(next).not.toContainText('gap of the joint face')
  })
})
