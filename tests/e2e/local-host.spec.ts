import { readFile } from 'node:fs/promises'
import { join } from 'node:path'
import { expect, test } from './bench.ts'
import { Mechanic } from './mechanic.ts'

// What only the local host has: a token in its address, and a page that outlives it.
test.use({ host: 'alone' })

test('the launch token is taken off the address, serves this tab alone, and stands in no log', async ({
  bench,
  context,
}) => {
  const { page } = bench
  const engines = page.getByRole('heading', { name: 'Start on an engine' })
  await expect(engines).toBeVisible()
  const token = await page.evaluate(() => sessionStorage.getItem('bedplate-token') ?? '')
  expect(Buffer.from(token, 'base64url')).toHaveLength(32)
  expect(page.url()).not.toContain('#')
  await page.reload()
  await expect(engines).toBeVisible()

  const other = await context.newPage()
  await other.goto(page.url())
  await expect(other.getByRole('alert')).toBeVisible()
  expect(await readFile(join(bench.dataFolder, 'log/bedplate.log'), 'utf8')).not.toContain(token)
})

test('a pull that was asked for while the host was gone is not shown as done', async ({ bench }) => {
  test.setTimeout(120_000)
  const mechanic = new Mechanic(bench.page, 'pointer')
  await mechanic.startBuild(/Skerry 3/, 'Host gone', 'R. Halloran')
  await bench.kill()
  await bench.page.getByLabel('As stamped, in order from the nose').fill('1 2 2 3')
  await mechanic.main.click()
  await expect(bench.page.getByRole('alert')).toContainText('What was confirmed is on disk')
  await expect(mechanic.heading).toContainText('Case marks')
  expect(await mechanic.entries()).toBe(1)
})
