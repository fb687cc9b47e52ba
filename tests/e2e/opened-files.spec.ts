import { mkdirSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, onDesktopToo, test as base } from './bench.ts'
import { withDataFolder } from './hosts/host.ts'
import { OtherBench } from './other-bench.ts'

/** An export of a build that another bench has made. */
const test = base.extend<{ exported: string }>({
  exported: async ({}, use) => {
    await withDataFolder(async (folder) => {
      const other = await OtherBench.at(folder)
      const build = await other.start('skerry-3', 'Ferry, port engine', 'F-201', 'Ana Ruiz')
      const text = await other.export(build)
      await other.close()
      await use(text)
    })
  },
})

test(
  'files that the program is started with come into its window, each with what became of it',
  onDesktopToo,
  async ({ bench, exported }) => {
    const folder = join(bench.dataFolder, 'asked for')
    mkdirSync(folder)
    const files = {
      'ferry.bedplate': exported,
      'altered.bedplate': exported.replace('Ferry, port engine', 'Ferry, starboard '),
      'picture.bedplate': 'GIF89a, a picture under another name',
      'notes.txt': 'Nothing of ours',
    }
    for (const [name, text] of Object.entries(files)) writeFileSync(join(folder, name), text)
    await bench.cutPowerAndStartAgain(Object.keys(files).map((name) => join(folder, name)))

    const { page } = bench
    await expect(page.getByText(/Imported as \d{4}-001 “Ferry, port engine”: 1 entry/)).toBeVisible()
    const refused = page.getByRole('alert')
    await expect(refused).toHaveCount(3)
    await expect(refused.nth(0)).toContainText('altered.bedplate: ')
    await expect(refused.nth(1)).toContainText('picture.bedplate: ')
    await expect(refused.nth(1)).toContainText('is not an exported build')
    await expect(refused.nth(2)).toContainText('notes.txt: ')

    await page.getByRole('button', { name: /^Open \d{4}-001/ }).click()
    await expect(page.getByRole('heading', { level: 1 })).toBeVisible()
  },
)

test('a file that is opened a second time says that it is here already', async ({ bench, exported }) => {
  const file = join(bench.dataFolder, 'ferry.bedplate')
  writeFileSync(file, exported)
  await bench.cutPowerAndStartAgain([file, file])
  await expect(bench.page.getByText(/Imported as/)).toBeVisible()
  await expect(bench.page.getByText('is here already, entry for entry. Nothing was changed.')).toBeVisible()
})
