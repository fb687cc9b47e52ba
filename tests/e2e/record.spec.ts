import { readdir, readFile, rm, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { en } from '../../core/words/index.ts'
import { expect, test } from './bench.ts'
import { Mechanic } from './mechanic.ts'
import { backToTheList } from './seed.ts'
import { saying } from './named.ts'

test('a damaged record is reported, and a backup put in its place; the damaged file is kept', async ({
  bench,
}) => {
  const { page } = bench
  await new Mechanic(page, 'pointer').startBuild(/Skerry 3/, 'Ferry auxiliary', 'R. Halloran')
  await page.getByRole('button', { name: en.buildWindow.allBuilds }).click()
  await page.getByRole('button', { name: en.engines.record }).click()
  await page.getByRole('button', { name: en.record.backup.make }).click()
  await page.getByRole('radio').first().waitFor()
  await page.getByRole('button', { name: en.record.verify.whole }).click()
  await expect(
    page.getByText(en.record.verify.isWhole({ builds: 1, entries: 1, witnesses: 0 })),
  ).toBeVisible()

  await bench.kill()
  const names = await readdir(bench.dataFolder)
  for (const name of names.filter((each) => /-(wal|shm)$/.test(each))) await rm(join(bench.dataFolder, name))
  const record = names.find((name) => /\.(sqlite|db)$/.test(name)) ?? ''
  await writeFile(join(bench.dataFolder, record), 'not a record at all')
  await bench.cutPowerAndStartAgain()

  await expect(page.getByRole('heading', { name: en.record.rescue.cannotBeUsed })).toBeVisible()
  await expect(page.getByRole('button', { name: /Skerry 3/ })).toHaveCount(0)
  await page.getByRole('radio').first().check()
  await page.getByRole('button', { name: en.record.backup.put }).click()
  await expect(page.getByText(en.record.backup.isInPlace)).toBeVisible()
  await page.getByRole('button', { name: en.record.backup.goOn }).click()
  await expect(page.getByText('Ferry auxiliary').first()).toBeVisible()
  const kept = (await readdir(bench.dataFolder)).find((name) => /^kept-.*\.sqlite$/.test(name)) ?? ''
  expect(await readFile(join(bench.dataFolder, kept), 'utf8')).toBe('not a record at all')
})

test('an export is imported again, and a build made void says so', async ({ bench }) => {
  const { page } = bench
  await test.step('an export is imported again harmlessly, and refused when it was cut or added to', async () => {
    await new Mechanic(page, 'pointer').startBuild(/Skerry 3/, 'Ferry auxiliary', 'R. Halloran')
    await page.getByRole('button', { name: en.buildWindow.allBuilds }).click()
    await page.getByRole('button', { name: en.archive.title, exact: true }).click()
    await page.getByLabel(en.archive.search.words).fill('ferr')
    await page
      .getByRole('checkbox', { name: saying((any) => en.archive.table.chooseBuild({ number: any })) })
      .check()
    const { bytes: exported } = await bench.save(() =>
      page.getByRole('button', { name: en.archive.exportOne }).click(),
    )

    const take = async (bytes: Buffer) =>
      page
        .getByLabel(en.archive.import.file)
        .setInputFiles({ name: 'build.bedplate', mimeType: 'application/octet-stream', buffer: bytes })
    await take(exported)
    await expect(
      page.getByText(saying((any) => en.archive.import.known({ number: any, name: any }))),
    ).toBeVisible()
    for (const altered of [
      exported.subarray(0, exported.length / 2),
      Buffer.concat([exported, Buffer.from('x')]),
      Buffer.concat([Buffer.from('\uFEFF'), exported]),
    ]) {
      await take(altered)
      await expect(page.getByRole('alert')).toContainText(
        saying(
          (any) => en.problems['import-altered']({ line: any }),
          () => en.problems['import-not-ours']({}),
        ),
      )
    }

    await page.getByLabel(en.archive.search.words).fill('nobody')
    await expect(page.getByText(en.archive.search.nothingFound)).toBeVisible()
  })

  await test.step('a build that does not count says so on its sheet, with the reason', async () => {
    await backToTheList(page)
    await new Mechanic(page, 'pointer').startBuild(/^Skerry 3/, 'Ferry auxiliary', 'R. Halloran')
    await page.getByRole('button', { name: en.buildWindow.sheet, exact: true }).click()
    await page.getByRole('button', { name: en.steps.afterwards.void }).click()
    await page.getByLabel(en.steps.afterwards.whyVoid).fill('Started on the wrong case')
    await page.getByRole('button', { name: en.steps.afterwards.voidIt }).click()
    await expect(
      page.getByText(saying((any) => en.sheet.voided({ reason: 'Started on the wrong case', stamp: any }))),
    ).toBeVisible()
    await expect(page.getByRole('img', { name: /^QR code: Bedplate .* 2 [0-9a-f]{16}$/ })).toBeVisible()
  })
})
