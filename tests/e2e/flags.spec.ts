import { en } from '../../core/words/index.ts'
import { expect } from './bench.ts'
import { Mechanic } from './mechanic.ts'
import { atTheFirstPull, test } from './published-specs.ts'
import { afterPulls, openAt } from './seed.ts'
import { saying } from './named.ts'

test('what is out of its limits is answered: later, or by doing it again', async ({ unopened: bench }) => {
  const { page } = bench
  await test.step('a problem whose answer is put off waits in a list, takes no keys, and is answered before the end', async () => {
    const mechanic = await atTheFirstPull(bench, 'keys')
    await expect(mechanic.main).toContainText(
      saying((any) => en.run.confirm.at({ number: '1', target: any })),
    )
    await mechanic.answerReading('10')
    await expect(page.getByRole('alert')).toContainText(
      saying((any) =>
        en.problems['reading-under']({ fastener: any, read: any, limits: any, otherUnit: null }),
      ),
    )

    await page.getByRole('button', { name: en.run.flag.answerLater }).click()
    await mechanic.letBounceTimePass()
    const list = page.getByRole('region', { name: en.run.flag.later })
    await expect(list.getByRole('listitem')).toHaveCount(1)
    await expect(mechanic.main).toContainText(
      saying((any) => en.run.confirm.at({ number: '2', target: any })),
    )
    await mechanic.confirm()
    await expect(mechanic.main).toContainText(
      saying((any) => en.run.confirm.at({ number: '3', target: any })),
    )
    await expect(list.getByRole('listitem')).toHaveCount(1)

    await list.getByRole('button', { name: en.run.flag.answerNow }).click()
    await expect(page.getByRole('alert')).toContainText(
      saying((any) =>
        en.problems['reading-under']({ fastener: any, read: any, limits: any, otherUnit: null }),
      ),
    )
    await page.getByRole('button', { name: en.run.flag.usualAnswers.under[0]! }).click()
    await mechanic.letBounceTimePass()
    await expect(mechanic.main).toContainText(en.run.flag.note)
    await mechanic.confirm()
    await expect(list).toHaveCount(0)
    await expect(mechanic.main).toContainText(
      saying((any) => en.run.confirm.at({ number: '3', target: any })),
    )
  })

  await test.step('a gap out of its limits leads to loosening, seating and measuring it again', async () => {
    const mechanic = new Mechanic(page, 'keys')
    await openAt(bench, {
      engine: /Measured set/,
      name: 'Open joint',
      person: 'R. Halloran',
      far: afterPulls(10 + 10), // ten lengths, ten seated
    })
    const next = page.getByRole('status', { name: en.run.next })
    await expect(next).toContainText(en.run.measure.gap)
    await mechanic.answerReading('0.08')
    await expect(page.getByText(en.run.flag.gapOut)).toBeVisible()
    await expect(mechanic.main).toContainText(en.run.flag.measureAgain({ pass: 2 }))
    await mechanic.confirm()
    for (let seated = 0; seated < 10; seated++) await mechanic.confirm()
    await expect(next).toContainText(en.run.measure.gap)
    await mechanic.answerReading('0.03')
    await expect(next).not.toContainText(en.run.measure.gap)
  })
})
