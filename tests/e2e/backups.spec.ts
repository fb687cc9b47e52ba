import { mkdir, readdir, readFile, rm, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { expect, test } from './bench.ts'
import { withDataFolder } from './hosts/host.ts'
import { Mechanic } from './mechanic.ts'

test('a backup is put in place on the page of the record; the present file is kept, whole', async ({
  bench,
}) => {
  const { page } = bench
  const mechanic = new Mechanic(page, 'pointer')
  await mechanic.startBuild(/Skerry 3/, 'Before the backup', 'R. Halloran')
  await page.getByRole('button', { name: '← All builds' }).click()
  await page.getByRole('button', { name: 'Record and backups' }).click()
  await page.getByRole('button', { name: 'Make a backup now' }).click()
  await page.getByRole('radio').first().waitFor()
  await page.getByRole('button', { name: '← Engines and builds' }).click()
  await mechanic.startBuild(/^Skerry 3/, 'After the backup', 'R. Halloran')
  await page.getByRole('button', { name: '← All builds' }).click()
  await page.getByRole('button', { name: 'Record and backups' }).click()

  const forged = 'bedplate-20990101T000000Z-1-1-0123456789abcdef.sqlite'
  await writeFile(join(bench.dataFolder, 'backups', forged), 'no backup at all')
  await page.reload()
  await page.getByRole('button', { name: 'Record and backups' }).click()
  // It names no bench and has no number: whatever date it bears, it is not the newest.
  await page.getByRole('radio').last().check()
  await page.getByRole('button', { name: 'Restore this backup' }).click()
  await expect(page.getByRole('alert')).toContainText('is damaged, so it was not restored')
  await expect(page.getByRole('alert')).toContainText('the record is as it was')

  await page.getByRole('radio').first().check()
  await page.getByRole('button', { name: 'Restore this backup' }).click()
  await expect(page.getByText('The backup is restored')).toBeVisible()
  const kept = await page.locator('.restored code').innerText()
  expect((await readFile(join(bench.dataFolder, kept))).subarray(0, 15).toString()).toBe('SQLite format 3')
  await page.getByRole('button', { name: 'Continue with it' }).click()
  await expect(page.getByText('Before the backup')).toBeVisible()
  await expect(page.getByText('After the backup')).toHaveCount(0)
})

test('copies go to a second folder; one that cannot take them is refused in a sentence', async ({
  bench,
}) => {
  const { page } = bench
  await new Mechanic(page, 'pointer').startBuild(/Skerry 3/, 'Ferry', 'R. Halloran')
  await page.getByRole('button', { name: '← All builds' }).click()
  await page.getByRole('button', { name: 'Record and backups' }).click()
  const field = page.getByLabel('A second copy of each backup')
  const keep = page.getByRole('button', { name: 'Keep a copy there' })
  await withDataFolder(async (share) => {
    await mkdir(join(bench.dataFolder, 'inside'))
    for (const [folder, words] of [
      ['/proc', 'cannot be written'],
      [join(share, 'gone'), 'there is no such folder'],
      [join(bench.dataFolder, 'inside'), 'data folder'],
      ['a share', 'whole path'],
    ] as const) {
      await field.fill(folder)
      await keep.click()
      await expect(page.getByRole('alert')).toContainText(`“${folder}” cannot take backups`)
      await expect(page.getByRole('alert')).toContainText(words)
    }
    await field.fill(share)
    await keep.click()
    await expect(page.getByText(`Copies go to ${share}.`)).toBeVisible()
    await page.getByRole('button', { name: 'Make a backup now' }).click()
    await page.getByRole('radio').first().waitFor()
    const here = (await readdir(join(bench.dataFolder, 'backups'))).filter((name) => name.endsWith('.sqlite'))
    const copies = async () => (await readdir(share)).filter((name) => name.endsWith('.sqlite'))
    await expect.poll(copies).toEqual(here.toSorted())
    await expect.poll(async () => (await readdir(share)).join()).toContain('-witnesses.txt')
  })
})

test('the doctor says how host and window stand, on the page of the record and where the record is lost', async ({
  bench,
}) => {
  const { page } = bench
  await page.getByRole('button', { name: 'Record and backups' }).click()
  const lines = page.locator('dl > div')
  for (const subject of ['program', 'host', 'data folder', 'disk', 'record', 'backup', 'screen', 'voices'])
    await expect(lines.filter({ has: page.getByText(subject, { exact: true }) })).toHaveCount(1)
  await expect(lines.filter({ hasText: 'fonts' })).toContainText('✓ Atkinson Hyperlegible Next is loaded')

  await bench.kill()
  await writeFile(join(bench.dataFolder, 'bedplate.sqlite'), '')
  await bench.cutPowerAndStartAgain()
  await expect(page.getByRole('heading', { name: 'The record cannot be used' })).toBeVisible()
  await expect(lines.filter({ hasText: 'record' }).first()).toContainText('! bad')
  await expect(lines.filter({ hasText: 'fonts' })).toContainText('✓')
})

test('a record that is taken away while the program runs is told, copied out of memory, and put back', async ({
  bench,
}) => {
  const { page } = bench
  const mechanic = new Mechanic(page, 'pointer')
  await mechanic.startBuild(/Skerry 3/, 'Ferry', 'R. Halloran')
  // That the list was gone to must be on disk before the disk is gone, or the build is what is come back to.
  const isKept = page.waitForResponse(
    (response) =>
      response.url().endsWith('/preferences.keep') &&
      response.request().postData()?.includes('"atBuild":null') === true,
  )
  await page.getByRole('button', { name: '← All builds' }).click()
  await isKept
  await rm(join(bench.dataFolder, 'bedplate.sqlite'))
  await rm(join(bench.dataFolder, 'bedplate.sqlite-wal'), { force: true })
  await page.reload()
  await expect(page.getByRole('heading', { name: 'The record cannot be used' })).toBeVisible()
  await expect(page.getByRole('alert')).toContainText('was deleted or moved away')
  await page.getByRole('button', { name: 'Write a copy now' }).click()
  await expect(page.getByText('1 build with 1 entry')).toBeVisible()
  await page.getByRole('radio').first().check()
  await page.getByRole('button', { name: 'Restore this backup' }).click()
  await page.getByRole('button', { name: 'Continue with it' }).click()
  await expect(page.getByRole('button', { name: '2026-001 Ferry' })).toBeVisible()
})

test('a head code is looked for, and a record that was lost begins empty only when it is asked to', async ({
  bench,
}) => {
  const { page } = bench
  await new Mechanic(page, 'pointer').startBuild(/Skerry 3/, 'Ferry', 'R. Halloran')
  await page.getByRole('button', { name: '← All builds' }).click()
  await page.getByRole('button', { name: 'Record and backups' }).click()
  await page.getByLabel('Head code').fill('0123 4567 89ab cdef')
  await page.getByRole('button', { name: 'Find it' }).click()
  await expect(page.getByRole('alert')).toContainText('No entry of any build here has the head code')

  await bench.kill()
  await rm(join(bench.dataFolder, 'bedplate.sqlite'))
  await bench.cutPowerAndStartAgain()
  await expect(page.getByRole('alert')).toContainText('though there was one here')
  await page.getByRole('button', { name: 'There is nothing to restore' }).click()
  await page.getByRole('button', { name: 'Start with an empty record' }).click()
  await expect(page.getByText('Nothing yet. Pick an engine')).toBeVisible()
})
