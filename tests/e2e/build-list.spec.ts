import { expect, test } from './bench.ts'
import { Mechanic } from './mechanic.ts'
import { afterPulls, seedBuild } from './seed.ts'

test('the list of builds says where a build was left, and follows what is done', async ({ bench }) => {
  const mechanic = new Mechanic(bench.page, 'pointer')
  const { page } = bench
  await seedBuild(page, {
    engine: /Skerry 3/,
    name: 'Left at the rods',
    person: 'R. Halloran',
    far: afterPulls(6 + 4),
  })
  const line = page.getByRole('button', { name: /Left at the rods/ })
  const toTheList = async () => {
    await page.getByRole('button', { name: /All builds/ }).click()
    await expect(line).toBeVisible()
  }
  await toTheList()
  await expect(line).toContainText('Step 11 of 21 · Rod bolts · next R5, pass 2 of 3')
  await expect(line).not.toContainText('Paused')

  await line.click()
  await mechanic.confirm()
  await page.getByRole('button', { name: '! Problem' }).click()
  await page.getByLabel(/What is the problem/).fill('Thread feels rough')
  await page.getByRole('button', { name: 'Note the problem' }).click()
  await expect(page.getByText('Thread feels rough').first()).toBeVisible()
  await toTheList()
  await expect(line).toContainText('next R6, pass 2 of 3')
  await expect(line).toContainText('! 1 open problem to answer')
})
