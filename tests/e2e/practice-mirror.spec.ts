import { readFile } from 'node:fs/promises'
import type { Page } from '@playwright/test'
import { readSpec } from '../../core/engine/index.ts'
import type { View } from '../../core/layout/index.ts'
import { asLying, candidatesOf, middleOnSheet, mirrorDrill, seedOf } from '../../core/practice/index.ts'
import { en } from '../../core/words/index.ts'
import { accessFaults } from './accessibility.ts'
import { expect, test } from './bench.ts'
import { sceneOnPage } from './drawing.ts'
import { engineFile } from '../engine-files.ts'
import { saying } from './named.ts'

const engine = 'skerry-3'
const read = readSpec(await readFile(engineFile(engine), 'utf8'))
if (!read.ok) throw new Error(`${engine} cannot be read`)
const { spec } = read
const { questions } = mirrorDrill(spec, seedOf(engine, 'mirror', 0))!

test('places of a case that lies otherwise than printed, by pointer and by keys', async ({ bench }) => {
  const { page } = bench
  await page.getByRole('button', { name: en.practice.title, exact: true }).click()
  await page.getByRole('combobox').selectOption(engine)
  await page.getByRole('button', { name: en.practice.begin({ drill: 'mirror' }) }).click()
  await expect(page.getByText(en.practice.mirror.printed)).toBeVisible()
  expect(await accessFaults(page)).toEqual([])

  const [first] = questions
  const wrong = candidatesOf(spec, first!).find(({ about }) => about !== first!.key)!
  await tap(page, first!, wrong.about)
  await expect(page.getByRole('status')).toContainText(
    saying(...Object.values(en.practice.mirror.slips).map((slip) => () => slip)),
  )
  await expect(page.getByRole('status')).toContainText(en.practice.mirror.shown)
  for (const [place, question] of questions.entries()) {
    if (place % 2 === 0) await tap(page, question, question.key)
    else
      await page
        .getByRole('list', { name: en.view.inWords })
        .locator(`[data-about="${question.key}"] button`)
        .press('Enter')
    if (place + 1 < questions.length)
      await expect(page.getByText(en.practice.soFar({ done: place + 1, of: questions.length }))).toBeVisible()
  }
  await expect(
    page.getByText(en.practice.result.errors({ errors: 1, asked: questions.length })),
  ).toBeVisible()
})

type Question = (typeof questions)[number]

/** Taps the middle of a place on the drawing as it lies. */
async function tap(page: Page, question: Question, about: string) {
  const subject = question.kind === 'shell' ? 'shells' : 'tightening'
  const view: View = question.view
  const { scene, onPage } = await sceneOnPage(page, spec, question.face, view, subject)
  const middle = middleOnSheet(asLying(en, spec, question, scene, null), about)!
  const { x, y } = onPage(middle.x, middle.y)
  await page.mouse.click(x, y)
}
