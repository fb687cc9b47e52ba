import { readFile } from 'node:fs/promises'
import { join } from 'node:path'
import { en } from '../../core/words/index.ts'
import { expect, test } from './bench.ts'
import { Mechanic } from './mechanic.ts'
import { saying } from './named.ts'

// What only the local host has: a token in its address, and a page that outlives it.
test.use({ host: 'alone' })

test('the launch token is taken off the address, serves this tab alone, and stands in no log', async ({
  bench,
  context,
}) => {
  const { page } = bench
  const engines = page.getByRole('heading', { name: en.engines.startOn })
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
  await bench.page.getByLabel(en.steps.marks.asStamped).fill('1 2 2 3')
  await mechanic.main.click()
  await expect(bench.page.getByRole('alert')).toContainText(saying(() => en.problems['host-lost']({})))
  await expect(mechanic.heading).toContainText('Case marks')
  expect(await mechanic.entries()).toBe(1)
})
