import { mkdirSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { en } from '../../core/words/index.ts'
import { expect, onDesktopToo, test as base } from './bench.ts'
import { withDataFolder } from './hosts/host.ts'
import { OtherBench } from './other-bench.ts'
import { named, saying } from './named.ts'

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
    await expect(
      page.getByText(
        saying((any) => en.archive.import.added({ number: any, name: 'Ferry, port engine', entries: 1 })),
      ),
    ).toBeVisible()
    const refused = page.getByRole('alert')
    await expect(refused).toHaveCount(3)
    await expect(refused.nth(0)).toContainText('altered.bedplate: ')
    await expect(refused.nth(1)).toContainText('picture.bedplate: ')
    await expect(refused.nth(1)).toContainText(saying(() => en.problems['import-not-ours']({})))
    await expect(refused.nth(2)).toContainText('notes.txt: ')

    await page.getByRole('button', { name: named((any) => en.archive.import.open({ number: any })) }).click()
    await expect(page.getByRole('heading', { level: 1 })).toBeVisible()
  },
)

test('a file that is opened a second time says that it is here already', async ({ bench, exported }) => {
  const file = join(bench.dataFolder, 'ferry.bedplate')
  writeFileSync(file, exported)
  await bench.cutPowerAndStartAgain([file, file])
  await expect(
    bench.page.getByText(saying((any) => en.archive.import.added({ number: any, name: any, entries: 1 }))),
  ).toBeVisible()
  await expect(
    bench.page.getByText(saying((any) => en.archive.import.known({ number: any, name: any }))),
  ).toBeVisible()
})
