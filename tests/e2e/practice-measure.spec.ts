import { readFile } from 'node:fs/promises'
import { readSpec } from '../../core/engine/index.ts'
import { countsText, measureDrill, readingOf, seedOf } from '../../core/practice/index.ts'
import { en } from '../../core/words/index.ts'
import { accessFaults } from './accessibility.ts'
import { expect, test } from './bench.ts'
import { engineFile } from '../engine-files.ts'
import { saying } from './named.ts'

const engine = 'skerry-3'
const read = readSpec(await readFile(engineFile(engine), 'utf8'))
if (!read.ok) throw new Error(`${engine} cannot be read`)
const { questions } = measureDrill(read.spec, seedOf(engine, 'measure', 0))

test('instruments are read by pointer and by keys, and what was misread is said', async ({ bench }) => {
  const { page } = bench
  await page.getByRole('button', { name: en.practice.title, exact: true }).click()
  await page.getByRole('combobox').selectOption(engine)
  await page.getByRole('button', { name: en.practice.begin({ drill: 'measure' }) }).click()
  const field = page.getByLabel(
    saying(
      () => en.practice.measure.reads({ unit: 'mm' }),
      () => en.practice.measure.reads({ unit: 'in' }),
    ),
  )
  await expect(field).toBeVisible()
  expect(await accessFaults(page)).toEqual([])

  for (const [place, question] of questions.entries()) {
    const reading = countsText(en, readingOf(question), question.unit)
    if (question.kind === 'strip')
      await page.getByRole('button', { name: en.practice.measure.moveScale.up }).click()
    if (question.kind === 'bore-gauge') {
      const { ring, larger, unit } = question
      await field.click()
      await page.keyboard.type(countsText(en, ring - larger, unit))
      await page.getByRole('button', { name: en.practice.check }).click()
      await expect(page.getByRole('status')).toContainText(en.practice.measure.misreads.sign)
    }
    await field.click()
    await page.keyboard.press('Control+a')
    // As it is typed where the comma is at home.
    await page.keyboard.type(place % 2 === 0 ? reading : reading.replace('.', ','))
    if (place % 2 === 0) await page.getByRole('button', { name: en.practice.check }).click()
    else await page.keyboard.press('Enter')
    await expect(page.getByRole('status')).toContainText(en.practice.right)
    const next = page.getByRole('button', { name: en.practice.onward, exact: true })
    await (place % 2 === 0 ? next.click() : next.press('Enter'))
  }
  await expect(
    page.getByText(en.practice.result.errors({ errors: 1, asked: questions.length })),
  ).toBeVisible()
})
