import { expect, test } from './bench.ts'
import { Mechanic } from './mechanic.ts'
import { openAt } from './seed.ts'

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
  await expect(page.getByRole('timer')).toContainText('of open time left')
  await page.clock.fastForward('11:00')
  // In the title block, and over the big button until somebody has answered.
  await expect(page.getByRole('timer')).toHaveCount(2)
  await expect(page.getByRole('timer').last()).toContainText('open time over')
  await expect(mechanic.main).toContainText('Close the joint anyway')

  const before = await mechanic.entries()
  await page.keyboard.press('Enter')
  await expect(page.getByText('Why is the joint closed anyway?')).toBeVisible()
  expect(await mechanic.entries()).toBe(before)
  await page.getByRole('button', { name: 'Sealant looked at, still wet' }).click()
  await mechanic.letBounceTimePass()
  await expect(mechanic.main).toContainText('Pull it with this reason')
  await mechanic.main.click()
  await expect.poll(() => mechanic.entries()).toBe(before + 1)

  await page.getByRole('button', { name: 'Begin again …' }).click()
  const panel = page.getByRole('region', { name: 'What to do' })
  await expect(panel).toContainText('its sealant does not seal twice')
  await panel.getByRole('button', { name: 'Sealant open too long' }).click()
  await mechanic.letBounceTimePass()
  await expect(mechanic.main).toContainText('Begin again with pass 1')
  await mechanic.main.click()
  await expect(mechanic.heading).toContainText('Bead pump side')
  await expect(page.getByRole('timer')).toHaveCount(0)
})
