import { readFile } from 'node:fs/promises'
import type { Page } from '@playwright/test'
import {
  angleDrill,
  chartDrill,
  orderDrill,
  seedOf,
  trainingRack,
  valuesDrill,
  type DrillKind,
} from '../../core/practice/index.ts'
import { readSpec } from '../../core/engine/index.ts'
import { numberOf } from '../../core/tightening/index.ts'
import { en } from '../../core/words/index.ts'
import { accessFaults } from './accessibility.ts'
import { expect, test } from './bench.ts'
import { onTheDrawing, protractorKnobs } from './drawing.ts'
import { engineFile } from '../engine-files.ts'

const engine = 'skerry-3'
const read = readSpec(await readFile(engineFile(engine), 'utf8'))
if (!read.ok) throw new Error(`${engine} cannot be read`)
const { spec } = read

test.setTimeout(120_000)

/** A person in the list, who is at the bench. */
async function comeToTheBench(page: Page, name: string) {
  await page.getByRole('button', { name: 'People', exact: true }).click()
  await page.getByRole('button', { name: 'Add a person' }).click()
  const form = page.getByRole('form', { name: 'New person' })
  await form.getByLabel('Name, as it goes on the sheet').fill(name)
  await form.getByRole('button', { name: 'mechanic' }).click()
  await form.getByRole('button', { name: 'Save' }).click()
  await page.getByRole('button', { name: '← Engines and builds' }).click()
  await page.getByRole('button', { name: /Skerry 3/ }).click()
  await page.getByLabel('Name of this build').fill('A build of its own')
  await page.getByLabel('Who is at the bench').fill(name)
  await page.getByRole('button', { name: 'Start this build' }).click()
  await page.getByRole('button', { name: '← All builds' }).click()
}

async function practise(page: Page) {
  await page.getByRole('button', { name: 'Practice', exact: true }).click()
  await page.getByRole('combobox').selectOption(engine)
}

const begin = (page: Page, drill: DrillKind) =>
  page.getByRole('button', { name: en.practice.begin({ drill }) }).press('Enter')
const inWords = (page: Page, fastener: string) =>
  page
    .getByRole('list', { name: 'The drawing in words' })
    .locator(`[data-about="fastener/${fastener}"] button`)

test('the order of a pass by pointer: a slip is answered with the joint, kept, and shown at its place', async ({
  bench,
}) => {
  const { page } = bench
  await comeToTheBench(page, 'Ana Ruiz')
  await practise(page)
  await expect(page.getByText('What Ana Ruiz practises is kept')).toBeVisible()
  expect(await accessFaults(page)).toEqual([])
  const drill = orderDrill(spec, seedOf(engine, 'order', 0))!
  const tap = async (fastener: string) => {
    const { x, y } = await onTheDrawing(page, engine, drill.procedure.face, fastener)
    await page.mouse.click(x, y)
  }
  await begin(page, 'order')
  await expect(page.getByText(en.practice.soFar({ done: 0, of: drill.key.length }))).toBeVisible()
  expect(await accessFaults(page)).toEqual([])
  await tap(drill.key.at(-1)!)
  const number = numberOf(spec, drill.key.at(-1)!)!
  await expect(page.getByRole('status')).toContainText(`Not ${number} yet`)
  await expect(page.getByText(/would hold|hardly change/)).toBeVisible()
  for (const [place, fastener] of drill.key.entries()) {
    await tap(fastener)
    await expect(page.getByText(en.practice.soFar({ done: place + 1, of: drill.key.length }))).toBeVisible()
  }
  await page.getByRole('button', { name: 'This pass is complete' }).click()
  await expect(page.getByRole('heading', { name: 'What comes next?' })).toBeVisible()
  const choices = drill.after!.choices
  await page.locator('.choices button').nth(choices.indexOf(drill.after!.key)).click()
  await expect(page.getByText(`1 error in ${drill.key.length + 2} questions.`)).toBeVisible()
  await expect(page.getByText('Time counts once a round has no error.')).toBeVisible()
  await page.getByRole('button', { name: 'Back to practice', exact: true }).click()
  await expect(page.getByText(/^1 round, 0 without an error\. Again on/)).toBeVisible()
  await expect(page.getByRole('region', { name: 'Errors by place' })).toContainText('1 error, asked 1 time')
  expect(await accessFaults(page)).toEqual([])
})

test('every drill by keys alone, without a person', async ({ bench }) => {
  const { page } = bench
  await practise(page)
  await expect(page.getByText('Nobody is at the bench')).toBeVisible()

  const order = orderDrill(spec, seedOf(engine, 'order', 0))!
  await begin(page, 'order')
  for (const fastener of order.key) await inWords(page, fastener).press('Enter')
  await page.getByRole('button', { name: 'This pass is complete' }).press('Enter')
  await page.locator('.choices button').nth(order.after!.choices.indexOf(order.after!.key)).press('Enter')
  await expect(page.getByText('No errors.')).toBeVisible()
  await page.getByRole('button', { name: 'Back to practice', exact: true }).press('Enter')

  const chart = chartDrill(spec, seedOf(engine, 'chart', 0))!
  await begin(page, 'chart')
  expect(await accessFaults(page)).toEqual([])
  for (const { key } of chart.questions) {
    for (const half of ['upper', 'lower'] as const)
      await page
        .getByRole('group', { name: half })
        .getByRole('button', { name: key[half], exact: true })
        .press('Enter')
    await page.getByRole('button', { name: 'Check' }).press('Enter')
    await page.getByRole('button', { name: 'Next', exact: true }).press('Enter')
  }
  await expect(page.getByText('No errors.')).toBeVisible()
  await page.getByRole('button', { name: 'Back to practice', exact: true }).press('Enter')

  const values = valuesDrill(spec, seedOf(engine, 'values', 0), trainingRack(en), 'N·m', '2026-11-28')!
  await begin(page, 'values')
  expect(await accessFaults(page)).toEqual([])
  for (const { key } of values.questions) {
    await page.locator('.choices button').nth(key[0]!).press('Enter')
    await page.getByRole('button', { name: 'Next', exact: true }).press('Enter')
  }
  await expect(page.getByText('No errors.')).toBeVisible()
  await page.getByRole('button', { name: 'Back to practice', exact: true }).press('Enter')

  const angle = angleDrill(spec, seedOf(engine, 'angle', 0))!
  await begin(page, 'angle')
  expect(await accessFaults(page)).toEqual([])
  for (const { window, room } of angle.turns) {
    for (let turned = 0, off = 0; turned < window.target; turned += 5, off += 5) {
      if (room !== null && off + 5 > room) {
        await page.getByRole('button', { name: 'Grip again' }).press('Enter')
        off = 0
      }
      await page.keyboard.press('ArrowRight')
    }
    await page.getByRole('button', { name: 'It is turned' }).press('Enter')
    await expect(page.getByText('is allowed.')).toBeVisible()
    await page.getByRole('button', { name: 'Next', exact: true }).press('Enter')
  }
  await expect(page.getByRole('heading', { name: 'Done' })).toBeVisible()
})

test('chart, values and angle by pointer: a wrong answer says what it would do', async ({ bench }) => {
  const { page } = bench
  await practise(page)
  const { fit, questions } = chartDrill(spec, seedOf(engine, 'chart', 0))!
  const { key } = questions[0]!
  const other = fit.grades.find(({ grade }) => grade !== key.upper)!.grade
  await page.getByRole('button', { name: 'Begin Chart' }).click()
  const choose = (half: 'upper' | 'lower', grade: string) =>
    page.getByRole('group', { name: half }).getByRole('button', { name: grade, exact: true }).click()
  await choose('upper', other)
  await choose('lower', key.lower)
  await page.getByRole('button', { name: 'Check' }).click()
  await expect(page.getByRole('status')).toContainText('These shells would leave')
  await expect(page.getByRole('img', { name: /^Clearance/ })).toBeVisible()
  await page.getByRole('button', { name: '← Back to practice' }).click()

  const values = valuesDrill(spec, seedOf(engine, 'values', 0), trainingRack(en), 'N·m', '2026-11-28')!
  const [value] = values.questions
  await page.getByRole('button', { name: 'Begin Values and wrench' }).click()
  const wrong = value!.choices.findIndex((_, place) => !value!.key.includes(place))
  await page.locator('.choices button').nth(wrong).click()
  await expect(page.getByRole('status')).toContainText(/would give the fastener .* times the/)
  await page.getByRole('button', { name: '← Back to practice' }).click()

  const { procedure, turns } = angleDrill(spec, seedOf(engine, 'angle', 0))!
  const [turn] = turns
  await page.getByRole('button', { name: 'Begin Angle' }).click()
  const knobs = await protractorKnobs(page, spec, procedure.face, turn!.fastener)
  const from = knobs.at(turn!.start)
  await page.mouse.move(from.x, from.y)
  await page.mouse.down()
  for (let on = 5; on <= 40; on += 5) {
    const { x, y } = knobs.at(turn!.start + on)
    await page.mouse.move(x, y)
  }
  await page.mouse.up()
  await page.getByRole('button', { name: 'It is turned' }).click()
  await expect(page.getByRole('status')).toContainText(/!\s+(39|40|41)°: \d+° too little/)
})

test('a minimum is set by a mechanic, and who has less is told so at the start and not barred', async ({
  bench,
}) => {
  const { page } = bench
  await comeToTheBench(page, 'Ana Ruiz')
  await practise(page)
  await page
    .getByRole('group', { name: /without an error before a person leads/ })
    .getByRole('button', { name: '2' })
    .click()
  const ready = page.getByRole('group', { name: 'Who is ready for this engine' })
  await expect(ready.getByRole('row', { name: /Ana Ruiz/ })).toContainText('not yet')
  await page.getByRole('button', { name: '← Engines and builds' }).click()
  await page
    .getByRole('button', { name: /Skerry 3/ })
    .last()
    .click()
  await expect(page.getByText(/The shop wants 2 rounds of each drill/)).toContainText(
    'Ana Ruiz has 0 of Order',
  )
  await page.getByLabel('Name of this build').fill('Ferry, port engine')
  await page.getByRole('button', { name: 'Start this build' }).click()
  await expect(page.getByRole('region', { name: 'Drawing' })).toBeVisible()
})
