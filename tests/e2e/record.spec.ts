import { readdir, readFile, rm, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { expect, test } from './bench.ts'
import { Mechanic } from './mechanic.ts'
import { backToTheList } from './seed.ts'

test('a damaged record is reported, and a backup put in its place; the damaged file is kept', async ({
  bench,
}) => {
  const { page } = bench
  await new Mechanic(page, 'pointer').startBuild(/Skerry 3/, 'Ferry auxiliary', 'R. Halloran')
  await page.getByRole('button', { name: '← All builds' }).click()
  await page.getByRole('button', { name: 'Record and backups' }).click()
  await page.getByRole('button', { name: 'Make a backup now' }).click()
  await page.getByRole('radio').first().waitFor()
  await page.getByRole('button', { name: 'Verify the whole archive' }).click()
  await expect(page.getByText('✓ 1 build with 1 entry: each is as it was confirmed')).toBeVisible()

  await bench.kill()
  const names = await readdir(bench.dataFolder)
  for (const name of names.filter((each) => /-(wal|shm)$/.test(each))) await rm(join(bench.dataFolder, name))
  const record = names.find((name) => /\.(sqlite|db)$/.test(name)) ?? ''
  await writeFile(join(bench.dataFolder, record), 'not a record at all')
  await bench.cutPowerAndStartAgain()

  await expect(page.getByRole('heading', { name: 'The record cannot be used' })).toBeVisible()
  await expect(page.getByRole('button', { name: /Skerry 3/ })).toHaveCount(0)
  await page.getByRole('radio').first().check()
  await page.getByRole('button', { name: 'Restore this backup' }).click()
  await expect(page.getByText('The backup is restored')).toBeVisible()
  await page.getByRole('button', { name: 'Continue with it' }).click()
  await expect(page.getByText('Ferry auxiliary').first()).toBeVisible()
  const kept = (await readdir(bench.dataFolder)).find((name) => /^kept-.*\.sqlite$/.test(name)) ?? ''
  expect(await readFile(join(bench.dataFolder, kept), 'utf8')).toBe('not a record at all')
})

test('an export is imported again, and a build made void says so', async ({ bench }) => {
  const { page } = bench
  await test.step('an export is imported again harmlessly, and refused when it was cut or added to', async () => {
    await new Mechanic(page, 'pointer').startBuild(/Skerry 3/, 'Ferry auxiliary', 'R. Halloran')
    await page.getByRole('button', { name: '← All builds' }).click()
    await page.getByRole('button', { name: 'Archive', exact: true }).click()
    await page.getByLabel('Search for').fill('ferr')
    await page.getByRole('checkbox', { name: /Choose \d{4}-001/ }).check()
    const { bytes: exported } = await bench.save(() =>
      page.getByRole('button', { name: 'Export as one file' }).click(),
    )

    const take = async (bytes: Buffer) =>
      page
        .getByLabel('Exported build')
        .setInputFiles({ name: 'build.bedplate', mimeType: 'application/octet-stream', buffer: bytes })
    await take(exported)
    await expect(page.getByText('is here already, entry for entry')).toBeVisible()
    for (const altered of [
      exported.subarray(0, exported.length / 2),
      Buffer.concat([exported, Buffer.from('x')]),
      Buffer.concat([Buffer.from('\uFEFF'), exported]),
    ]) {
      await take(altered)
      await expect(page.getByRole('alert')).toContainText('Nothing was imported')
    }

    await page.getByLabel('Search for').fill('nobody')
    await expect(page.getByText('No build found.')).toBeVisible()
  })

  await test.step('a build that does not count says so on its sheet, with the reason', async () => {
    await backToTheList(page)
    await new Mechanic(page, 'pointer').startBuild(/^Skerry 3/, 'Ferry auxiliary', 'R. Halloran')
    await page.getByRole('button', { name: 'Sheet', exact: true }).click()
    await page.getByRole('button', { name: 'Void this build' }).click()
    await page.getByLabel('Why is this build void?').fill('Started on the wrong case')
    await page.getByRole('button', { name: 'Void the build' }).click()
    await expect(page.getByText('VOID: Started on the wrong case')).toBeVisible()
    await expect(page.getByRole('img', { name: /^QR code: Bedplate .* 2 [0-9a-f]{16}$/ })).toBeVisible()
  })
})
