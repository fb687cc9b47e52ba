import { expect, test } from './bench.ts'
import { Mechanic } from './mechanic.ts'
import { afterPulls, openAt } from './seed.ts'

test('the list of builds offers a demo, and says where a build was left', async ({ bench }) => {
  const { page } = bench
  await test.step('a bench without builds offers a demo build that is half-way done', async () => {
    const mechanic = new Mechanic(page, 'pointer')
    await page.getByRole('button', { name: 'Try it' }).click()
    await expect(page.getByRole('heading', { name: /Rod bolts · pass 3 of 3/ })).toBeVisible()
    await page.getByLabel(/^Reading/).fill('61')
    await mechanic.letBounceTimePass()
    await mechanic.confirm()
    await expect(page.getByText(/R4/).first()).toBeVisible()
    await page.getByRole('button', { name: 'Sheet', exact: true }).click()
    await expect(page.getByText('Scored under the head of R4').first()).toBeVisible()
    await expect(page.getByText('Mara Holt (demo)').first()).toBeVisible()
    await page
      .getByRole('button', { name: /Back to the build|←/ })
      .first()
      .click()
    await page.getByRole('button', { name: /All builds/ }).click()
    const line = page.getByRole('button', { name: /Demo: ferry, port engine/ })
    await expect(line).toContainText('Step 11 of 21 · Rod bolts · next R4, pass 3 of 3')
    await expect(line).toContainText('demo')
    await expect(page.getByRole('button', { name: 'Try it' })).toBeHidden()
  })

  await test.step('the list of builds says where a build was left, and follows what is done', async () => {
    const mechanic = new Mechanic(bench.page, 'pointer')
    await openAt(bench, {
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
})
