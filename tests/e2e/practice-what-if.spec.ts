import { en } from '../../core/words/index.ts'
import { accessFaults } from './accessibility.ts'
import { expect, test } from './bench.ts'
import { onTheDrawing } from './drawing.ts'
import { saying } from './named.ts'

const { practice, clampMap, whatIf } = en

test('your own order is tapped and taken on by keys, and the model says where it differs from the spec’s', async ({
  bench,
}) => {
  const { page } = bench
  await page.getByRole('button', { name: practice.title, exact: true }).click()
  await page.getByRole('combobox').selectOption('skerry-3')
  await page.getByRole('button', { name: whatIf.begin }).press('Enter')
  const tapped = page
    .getByRole('status')
    .filter({ hasText: saying((any) => en.whatIf.soFar({ done: any, of: any })) })
  await expect(tapped).toContainText(saying((any) => en.whatIf.soFar({ done: 0, of: any })))
  await page.getByLabel(whatIf.procedure).selectOption({ label: 'Case bolts' })
  const { x, y } = await onTheDrawing(page, 'skerry-3', 'joint', 'case-8', 'tightening')
  await page.mouse.click(x, y)
  await expect(tapped).toContainText(saying((any) => en.whatIf.soFar({ done: 1, of: any })))
  await page.getByRole('button', { name: whatIf.takeBack }).press('Enter')
  await expect(tapped).toContainText(saying((any) => en.whatIf.soFar({ done: 0, of: any })))
  await page.getByRole('button', { name: whatIf.patterns['end-to-end'] }).press('Enter')

  const pulls = page.getByRole('slider', { name: clampMap.pulls })
  await expect(pulls).toBeVisible()
  await expect(page.getByText(practice.banner, { exact: true })).toBeVisible()
  await expect(page.getByRole('status').first()).toContainText(/kN/)
  expect(await accessFaults(page)).toEqual([])
  const before = await pulls.inputValue()
  await pulls.press('ArrowLeft')
  await expect(pulls).not.toHaveValue(before)
  await page.getByRole('button', { name: whatIf.again }).press('Enter')
  await expect(tapped).toContainText(saying((any) => en.whatIf.soFar({ done: 0, of: any })))
})
