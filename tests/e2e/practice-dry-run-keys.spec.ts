import { readFile } from 'node:fs/promises'
import { readSpec } from '../../core/engine/index.ts'
import { formatNumber, half, inMillimetres, sum } from '../../core/quantity/index.ts'
import { en } from '../../core/words/index.ts'
import { ask } from './ask.ts'
import { expect, test } from './bench.ts'
import { Mechanic } from './mechanic.ts'
import { pagesOf } from './pdf.ts'
import { engineFile } from '../engine-files.ts'
import { saying } from './named.ts'

const { practice, sheet } = en
const read = readSpec(await readFile(engineFile('fen-1'), 'utf8'))
if (!read.ok) throw new Error('fen-1 cannot be read')
const { spec } = read

test.setTimeout(180_000)

test('a whole dry run by keys, from the first mark to a sheet that says PRACTICE on each page, and no record of it', async ({
  bench,
}) => {
  const { page } = bench
  await page.getByRole('button', { name: practice.title, exact: true }).press('Enter')
  await page.getByRole('combobox').selectOption(spec.id)
  await page.getByRole('button', { name: practice.dryRun.start }).press('Enter')
  const band = page.getByText(practice.dryRun.band)
  const titleBlock = page.locator('[data-entries]')
  await expect(titleBlock).toContainText(practice.banner)
  await expect(titleBlock).not.toContainText(en.buildWindow.saved)

  const mechanic = new Mechanic(page, 'keys')
  for (const step of spec.steps) {
    await expect(mechanic.heading).toContainText(step.name)
    await expect(band).toBeVisible()
    if (step.kind === 'note-marks') {
      const fit = spec.fits.find(({ id }) => id === step.fit)!
      await mechanic.noteMarks(fit.positions.map(() => fit[step.part].marks[0]!.mark).join(' '))
    } else if (step.kind === 'check' && step.reading !== undefined) {
      const middle = half(sum(step.reading.least, step.reading.most))
      await mechanic.answerReading(formatNumber(inMillimetres(middle), 3))
    } else {
      await mechanic.finishStep(step.name)
    }
  }
  await expect(mechanic.heading).toContainText(en.buildWindow.allDone)
  await mechanic.confirm()
  await page.keyboard.press('Enter')
  await expect(page.getByRole('heading', { level: 1 })).toContainText(practice.dryRun.number)
  await expect(page.getByText(sheet.practice.noHeadCode)).toBeVisible()
  for (const action of [sheet.verify, en.steps.afterwards.void])
    await expect(page.getByRole('button', { name: action, exact: true })).toHaveCount(0)
  await expect(
    page.getByText(saying((any) => en.sheet.head.entries({ entries: any, code: any }))),
  ).toHaveCount(0)

  // It goes onto paper: nothing of the record is asked for that would refuse it.
  await page.evaluate(() => Object.assign(window, { print: () => (document.title = 'printed') }))
  await page.getByRole('button', { name: sheet.page.print, exact: true }).press('Enter')
  await expect(page).toHaveTitle('printed')
  const pages = await pagesOf(await bench.pdf())
  expect(pages.length).toBeGreaterThan(1)
  // At the foot, and across in letters that are set apart.
  for (const text of pages) {
    expect(text).toContain(sheet.practice.foot)
    expect(text.replaceAll(' ', '').split(practice.banner).length - 1).toBeGreaterThanOrEqual(2)
  }

  await page.getByRole('button', { name: practice.dryRun.end }).press('Enter')
  await expect(page.getByText(practice.result.faultless)).toBeVisible()
  expect(await ask(page, 'builds.list', {})).toEqual([])
})
