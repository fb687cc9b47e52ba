import { en } from '../../core/words/index.ts'
import { expect, test } from './bench.ts'
import { Mechanic } from './mechanic.ts'
import { openAt } from './seed.ts'
import { saying, sayingWithNumbers } from './named.ts'

test('over the open time of the sealant the main button asks first, and to begin again takes the beads with it', async ({
  unopened: bench,
}) => {
  const { page } = bench
  const mechanic = new Mechanic(page, 'keys')
  await openAt(bench, {
    engine: /Skerry/,
    name: 'Open too long',
    person: 'R. Halloran',
    far: (_, { runs }) => runs['case']?.pulls.length === 2,
  })
  await expect(page.getByRole('timer')).toContainText(
    sayingWithNumbers((any) => en.parts.openTimeLeft({ bead: any, seconds: 60 })),
  )
  await page.clock.fastForward('11:00')
  // In the title block, and over the big button until somebody has answered.
  await expect(page.getByRole('timer')).toHaveCount(2)
  await expect(page.getByRole('timer').last()).toContainText(
    sayingWithNumbers((any) => en.parts.openTimeOver({ bead: any, seconds: 60 })),
  )
  await expect(mechanic.main).toContainText(en.run.overTime.goOn)

  const before = await mechanic.entries()
  await page.keyboard.press('Enter')
  await expect(page.getByText(en.run.overTime.why)).toBeVisible()
  expect(await mechanic.entries()).toBe(before)
  await page.getByRole('button', { name: en.run.overTime.usualReasons[0]! }).click()
  await mechanic.letBounceTimePass()
  await expect(mechanic.main).toContainText(en.run.overTime.closed)
  await mechanic.main.click()
  await expect.poll(() => mechanic.entries()).toBe(before + 1)

  await page.getByRole('button', { name: en.run.restart.offer }).click()
  const panel = page.getByRole('region', { name: en.steps.frame.title })
  await expect(panel).toContainText(saying((any) => en.run.restart.opensJoint({ steps: [any] })))
  await panel.getByRole('button', { name: en.run.restart.usualReasons[0]! }).click()
  await mechanic.letBounceTimePass()
  await expect(mechanic.main).toContainText(en.run.restart.beginAgain({ pass: 1 }))
  await mechanic.main.click()
  await expect(mechanic.heading).toContainText('Bead pump side')
  await expect(page.getByRole('timer')).toHaveCount(0)
})
