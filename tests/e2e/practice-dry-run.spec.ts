import { en } from '../../core/words/index.ts'
import { accessFaults } from './accessibility.ts'
import { expect, test } from './bench.ts'

const { practice } = en

test('a dry run is the real window under the word PRACTICE, on paper too, and leaves nothing behind', async ({
  bench,
}) => {
  const { page } = bench
  await page.getByRole('button', { name: practice.title, exact: true }).click()
  await page.getByRole('combobox').selectOption('skerry-3')
  await page.getByRole('button', { name: practice.dryRun.start }).press('Enter')
  const band = page.getByText(practice.dryRun.band)
  await expect(band).toBeVisible()
  await expect(page.getByRole('region', { name: en.buildWindow.drawing })).toBeVisible()
  const title = `${practice.dryRun.number} ${practice.dryRun.build}`
  await expect(page.getByText(title, { exact: true })).toBeVisible()
  expect(await accessFaults(page)).toEqual([])

  await page.getByRole('button', { name: en.buildWindow.sheet, exact: true }).press('Enter')
  await expect(page.getByRole('heading', { level: 1 })).toContainText(practice.dryRun.number)
  await expect(band).toBeVisible()
  await page.emulateMedia({ media: 'print' })
  await expect(page.getByText(practice.banner, { exact: true })).toBeVisible()
  await page.emulateMedia({ media: 'screen' })

  await page.getByRole('button', { name: practice.dryRun.end }).press('Enter')
  await expect(page.getByText(practice.dryRun.notFinished)).toBeVisible()
  await page.getByRole('button', { name: practice.back }).press('Enter')
  await page.getByRole('button', { name: en.parts.enginesAndBuilds }).click()
  await expect(page.getByText(practice.dryRun.number, { exact: true })).toHaveCount(0)
})
