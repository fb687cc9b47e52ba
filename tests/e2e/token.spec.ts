import { readFile } from 'node:fs/promises'
import { join } from 'node:path'
import { expect, test } from './bench.ts'

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
