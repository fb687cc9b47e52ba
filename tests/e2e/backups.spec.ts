import { mkdir, readdir, readFile, rm, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { en } from '../../core/words/index.ts'
import { expect, test } from './bench.ts'
import { ask } from './ask.ts'
import { withDataFolder, type Ask } from './hosts/host.ts'
import { Mechanic } from './mechanic.ts'
import { saying } from './named.ts'

/** A build is begun by its request: how one is begun in the window is no subject of these. */
const begun = (name: string) => async (ask: Ask) => {
  await ask('builds.start', { engine: 'skerry-3', name, serial: '', person: 'R. Halloran' })
}

test('a backup is put in place on the page of the record; the present file is kept, whole', async ({
  unopened: bench,
}) => {
  await bench.open(begun('Before the backup'))
  const { page } = bench
  await page.getByRole('button', { name: en.engines.record }).click()
  await page.getByRole('button', { name: en.record.backup.make }).click()
  // The program keeps backups by itself too: this one is made once it can be made again.
  await expect(page.getByRole('button', { name: en.record.backup.make })).toBeEnabled()
  await page.getByRole('radio').first().waitFor()
  await begun('After the backup')((name, input) => ask(page, name, input))

  const forged = 'bedplate-20990101T000000Z-1-1-0123456789abcdef.sqlite'
  await writeFile(join(bench.dataFolder, 'backups', forged), 'no backup at all')
  await page.reload()
  await page.getByRole('button', { name: en.engines.record }).click()
  // It names no bench and has no number: whatever date it bears, it is not the newest.
  await page.getByRole('radio').last().check()
  await page.getByRole('button', { name: en.record.backup.put }).click()
  await expect(page.getByRole('alert')).toContainText(
    saying((any) => en.problems['backup-unusable']({ name: any })),
  )
  await expect(page.getByRole('alert')).toContainText(
    saying((any) => en.problems['backup-unusable']({ name: any })),
  )

  await page.getByRole('radio').first().check()
  await page.getByRole('button', { name: en.record.backup.put }).click()
  await expect(page.getByText(en.record.backup.isInPlace)).toBeVisible()
  const kept = await page.locator('.restored code').innerText()
  expect((await readFile(join(bench.dataFolder, kept))).subarray(0, 15).toString()).toBe('SQLite format 3')
  await page.getByRole('button', { name: en.record.backup.goOn }).click()
  await expect(page.getByText('Before the backup')).toBeVisible()
  await expect(page.getByText('After the backup')).toHaveCount(0)
})

test('copies go to a second folder; one that cannot take them is refused in a sentence', async ({
  bench,
}) => {
  const { page } = bench
  await new Mechanic(page, 'pointer').startBuild(/Skerry 3/, 'Ferry', 'R. Halloran')
  await page.getByRole('button', { name: en.buildWindow.allBuilds }).click()
  await page.getByRole('button', { name: en.engines.record }).click()
  const field = page.getByLabel(en.record.backup.secondFolder)
  const keep = page.getByRole('button', { name: en.record.backup.keepThere })
  await withDataFolder(async (share) => {
    await mkdir(join(bench.dataFolder, 'inside'))
    for (const [folder, fault] of [
      ['/proc', 'closed'],
      [join(share, 'gone'), 'missing'],
      [join(bench.dataFolder, 'inside'), 'own'],
      ['a share', 'relative'],
    ] as const) {
      await field.fill(folder)
      await keep.click()
      await expect(page.getByRole('alert')).toContainText(
        saying(() => en.problems['backup-folder-wrong']({ folder, fault })),
      )
    }
    await field.fill(share)
    await keep.click()
    await expect(page.getByText(en.record.backup.copiesGoTo({ folder: share }))).toBeVisible()
    await page.getByRole('button', { name: en.record.backup.make }).click()
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
  await page.getByRole('button', { name: en.engines.record }).click()
  const lines = page.locator('dl > div')
  const { program, host, disk, record, backup, screen, voices, 'data-folder': folder } = en.doctor.subjects
  for (const subject of [program, host, folder, disk, record, backup, screen, voices])
    await expect(lines.filter({ has: page.getByText(subject, { exact: true }) })).toHaveCount(1)
  await expect(lines.filter({ hasText: en.doctor.subjects.fonts })).toContainText(
    '✓ Atkinson Hyperlegible Next',
  )

  await bench.kill()
  await writeFile(join(bench.dataFolder, 'bedplate.sqlite'), '')
  await bench.cutPowerAndStartAgain()
  await expect(page.getByRole('heading', { name: en.record.rescue.cannotBeUsed })).toBeVisible()
  await expect(lines.filter({ hasText: en.doctor.subjects.record }).first()).toContainText(
    en.doctor.signs.bad,
  )
  await expect(lines.filter({ hasText: en.doctor.subjects.fonts })).toContainText('✓')
})

test('a record that is taken away while the program runs is reported, copied out of memory, and put back', async ({
  unopened: bench,
}) => {
  await bench.open(begun('Ferry'))
  const { page } = bench
  await page.getByRole('button', { name: '2026-001 Ferry' }).waitFor()
  await rm(join(bench.dataFolder, 'bedplate.sqlite'))
  await rm(join(bench.dataFolder, 'bedplate.sqlite-wal'), { force: true })
  await page.reload()
  await expect(page.getByRole('heading', { name: en.record.rescue.cannotBeUsed })).toBeVisible()
  await expect(page.getByRole('alert')).toContainText(
    saying((any) => en.problems['record-not-in-place']({ file: any, fault: 'gone' })),
  )
  await page.getByRole('button', { name: en.record.rescue.write }).click()
  await expect(
    page.getByText(
      saying((any) => en.record.rescue.written({ builds: 1, entries: 1, file: any }).slice(0, 1)),
    ),
  ).toBeVisible()
  await page.getByRole('radio').first().check()
  await page.getByRole('button', { name: en.record.backup.put }).click()
  await page.getByRole('button', { name: en.record.backup.goOn }).click()
  await expect(page.getByRole('button', { name: '2026-001 Ferry' })).toBeVisible()
})

test('a head code is looked for, and a record that was lost begins empty only when it is asked to', async ({
  unopened: bench,
}) => {
  await bench.open(begun('Ferry'))
  const { page } = bench
  await page.getByRole('button', { name: en.engines.record }).click()
  await page.getByLabel(en.record.compare.headCode).fill('0123 4567 89ab cdef')
  await page.getByRole('button', { name: en.record.compare.lookForIt }).click()
  await expect(page.getByRole('alert')).toContainText(
    saying((any) => en.problems['verify-code-unknown']({ code: any })),
  )

  await bench.kill()
  await rm(join(bench.dataFolder, 'bedplate.sqlite'))
  await bench.cutPowerAndStartAgain()
  await expect(page.getByRole('alert')).toContainText(
    saying((any) => en.problems['record-missing']({ file: any })),
  )
  await page.getByRole('button', { name: en.record.rescue.nothingToBring }).click()
  await page.getByRole('button', { name: en.record.rescue.beginEmpty }).click()
  await expect(page.getByText(en.engines.noBuilds)).toBeVisible()
})
