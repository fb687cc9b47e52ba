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
import { saying } from './named.ts'

const engine = 'skerry-3'
const read = readSpec(await readFile(engineFile(engine), 'utf8'))
if (!read.ok) throw new Error(`${engine} cannot be read`)
const { spec } = read

test.setTimeout(120_000)

/** A person in the list, who is at the bench. */
async function comeToTheBench(page: Page, name: string) {
  await page.getByRole('button', { name: en.engines.people, exact: true }).click()
  await page.getByRole('button', { name: en.people.add }).click()
  const form = page.getByRole('form', { name: en.people.form.new })
  await form.getByLabel(en.people.form.name).fill(name)
  await form.getByRole('button', { name: en.people.roles.mechanic }).click()
  await form.getByRole('button', { name: en.people.form.keep }).click()
  await page.getByRole('button', { name: en.parts.enginesAndBuilds }).click()
  await page.getByRole('button', { name: /Skerry 3/ }).click()
  await page.getByLabel(en.engines.buildName).fill('A build of its own')
  await page.getByLabel(en.engines.person).fill(name)
  await page.getByRole('button', { name: en.engines.start }).click()
  await page.getByRole('button', { name: en.buildWindow.allBuilds }).click()
}

async function practise(page: Page) {
  await page.getByRole('button', { name: en.practice.title, exact: true }).click()
  await page.getByRole('combobox').selectOption(engine)
}

const begin = (page: Page, drill: DrillKind) =>
  page.getByRole('button', { name: en.practice.begin({ drill }) }).press('Enter')
const inWords = (page: Page, fastener: string) =>
  page.getByRole('list', { name: en.view.inWords }).locator(`[data-about="fastener/${fastener}"] button`)

test('the order of a pass by pointer: a slip is answered with the joint, kept, and shown at its place', async ({
  bench,
}) => {
  const { page } = bench
  await comeToTheBench(page, 'Ana Ruiz')
  await practise(page)
  await expect(page.getByText(en.practice.keptFor({ name: 'Ana Ruiz' }))).toBeVisible()
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
  await expect(page.getByRole('status')).toContainText(
    saying(...Object.values(en.practice.order.reasons).map((reason) => () => reason({ number }))),
  )
  await expect(
    page.getByText(
      saying(
        (any) => en.practice.order.consequence({ early: any, number: any, right: any, wrong: any }),
        () => en.practice.order.hardlyAny,
      ),
    ),
  ).toBeVisible()
  for (const [place, fastener] of drill.key.entries()) {
    await tap(fastener)
    await expect(page.getByText(en.practice.soFar({ done: place + 1, of: drill.key.length }))).toBeVisible()
  }
  await page.getByRole('button', { name: en.practice.order.complete }).click()
  await expect(page.getByRole('heading', { name: en.practice.order.whatNext })).toBeVisible()
  const choices = drill.after!.choices
  await page.locator('.choices button').nth(choices.indexOf(drill.after!.key)).click()
  await expect(
    page.getByText(en.practice.result.errors({ errors: 1, asked: drill.key.length + 2 })),
  ).toBeVisible()
  await expect(page.getByText(en.practice.result.speedLater)).toBeVisible()
  await page.getByRole('button', { name: en.practice.back, exact: true }).click()
  await expect(
    page.getByText(saying((any) => en.practice.standing({ rounds: 1, faultless: 0, dueAt: any }))),
  ).toBeVisible()
  await expect(page.getByRole('region', { name: en.practice.errors })).toContainText(
    en.practice.errorsAt({ errors: 1, asked: 1 }),
  )
  expect(await accessFaults(page)).toEqual([])
})

test('every drill by keys alone, without a person', async ({ bench }) => {
  const { page } = bench
  await practise(page)
  await expect(page.getByText(en.practice.notKept({ name: '' }))).toBeVisible()

  const order = orderDrill(spec, seedOf(engine, 'order', 0))!
  await begin(page, 'order')
  for (const fastener of order.key) await inWords(page, fastener).press('Enter')
  await page.getByRole('button', { name: en.practice.order.complete }).press('Enter')
  await page.locator('.choices button').nth(order.after!.choices.indexOf(order.after!.key)).press('Enter')
  await expect(page.getByText(en.practice.result.faultless)).toBeVisible()
  await page.getByRole('button', { name: en.practice.back, exact: true }).press('Enter')

  const chart = chartDrill(spec, seedOf(engine, 'chart', 0))!
  await begin(page, 'chart')
  expect(await accessFaults(page)).toEqual([])
  for (const { key } of chart.questions) {
    for (const half of ['upper', 'lower'] as const)
      await page
        .getByRole('group', { name: en.engineParts.halves[half] })
        .getByRole('button', { name: key[half], exact: true })
        .press('Enter')
    await page.getByRole('button', { name: en.practice.check }).press('Enter')
    await page.getByRole('button', { name: en.practice.onward, exact: true }).press('Enter')
  }
  await expect(page.getByText(en.practice.result.faultless)).toBeVisible()
  await page.getByRole('button', { name: en.practice.back, exact: true }).press('Enter')

  const values = valuesDrill(spec, seedOf(engine, 'values', 0), trainingRack(en), 'N·m', '2026-11-28')!
  await begin(page, 'values')
  expect(await accessFaults(page)).toEqual([])
  for (const { key } of values.questions) {
    await page.locator('.choices button').nth(key[0]!).press('Enter')
    await page.getByRole('button', { name: en.practice.onward, exact: true }).press('Enter')
  }
  await expect(page.getByText(en.practice.result.faultless)).toBeVisible()
  await page.getByRole('button', { name: en.practice.back, exact: true }).press('Enter')

  const angle = angleDrill(spec, seedOf(engine, 'angle', 0))!
  await begin(page, 'angle')
  expect(await accessFaults(page)).toEqual([])
  for (const { window, room } of angle.turns) {
    for (let turned = 0, off = 0; turned < window.target; turned += 5, off += 5) {
      if (room !== null && off + 5 > room) {
        await page.getByRole('button', { name: en.practice.angle.grip }).press('Enter')
        off = 0
      }
      await page.keyboard.press('ArrowRight')
    }
    await page.getByRole('button', { name: en.practice.angle.here }).press('Enter')
    await expect(
      page.getByText(
        saying((any) => en.practice.angle.judged({ reached: any, off: any, least: any, most: any })),
      ),
    ).toBeVisible()
    await page.getByRole('button', { name: en.practice.onward, exact: true }).press('Enter')
  }
  await expect(page.getByRole('heading', { name: en.practice.result.title })).toBeVisible()
})

test('chart, values and angle by pointer: a wrong answer says what it would do', async ({ bench }) => {
  const { page } = bench
  await practise(page)
  const { fit, questions } = chartDrill(spec, seedOf(engine, 'chart', 0))!
  const { key } = questions[0]!
  const other = fit.grades.find(({ grade }) => grade !== key.upper)!.grade
  await page.getByRole('button', { name: en.practice.begin({ drill: 'chart' }) }).click()
  const choose = (half: 'upper' | 'lower', grade: string) =>
    page
      .getByRole('group', { name: en.engineParts.halves[half] })
      .getByRole('button', { name: grade, exact: true })
      .click()
  await choose('upper', other)
  await choose('lower', key.lower)
  await page.getByRole('button', { name: en.practice.check }).click()
  await expect(page.getByRole('status')).toContainText(
    saying((any) => en.practice.chart.wouldBe({ clearance: any, allowed: any })),
  )
  await expect(
    page.getByRole('img', { name: saying((any) => en.shells.clearance.picture({ cold: any, hot: null })) }),
  ).toBeVisible()
  await page.getByRole('button', { name: en.practice.back }).click()

  const values = valuesDrill(spec, seedOf(engine, 'values', 0), trainingRack(en), 'N·m', '2026-11-28')!
  const [value] = values.questions
  await page.getByRole('button', { name: en.practice.begin({ drill: 'values' }) }).click()
  const wrong = value!.choices.findIndex((_, place) => !value!.key.includes(place))
  await page.locator('.choices button').nth(wrong).click()
  await expect(page.getByRole('status')).toContainText(
    saying((any) => en.practice.values.gives({ value: any, byValue: any, times: any, target: any })),
  )
  await page.getByRole('button', { name: en.practice.back }).click()

  const { procedure, turns } = angleDrill(spec, seedOf(engine, 'angle', 0))!
  const [turn] = turns
  await page.getByRole('button', { name: en.practice.begin({ drill: 'angle' }) }).click()
  const knobs = await protractorKnobs(page, spec, procedure.face, turn!.fastener)
  const from = knobs.at(turn!.start)
  await page.mouse.move(from.x, from.y)
  await page.mouse.down()
  for (let on = 5; on <= 40; on += 5) {
    const { x, y } = knobs.at(turn!.start + on)
    await page.mouse.move(x, y)
  }
  await page.mouse.up()
  await page.getByRole('button', { name: en.practice.angle.here }).click()
  await expect(page.getByRole('status')).toContainText(/!\s+(39|40|41)°: /)
})

test('a minimum is set by a mechanic, and who has less is told so at the start and not barred', async ({
  bench,
}) => {
  const { page } = bench
  await comeToTheBench(page, 'Ana Ruiz')
  await practise(page)
  await page.getByRole('group', { name: en.practice.minimum }).getByRole('button', { name: '2' }).click()
  const ready = page.getByRole('group', { name: en.practice.ready.title })
  await expect(ready.getByRole('row', { name: /Ana Ruiz/ })).toContainText(en.practice.ready.notYet)
  await page.getByRole('button', { name: en.parts.enginesAndBuilds }).click()
  await page
    .getByRole('button', { name: /Skerry 3/ })
    .last()
    .click()
  const lacks = { name: 'Ana Ruiz', least: 2 }
  const missing = [{ drill: 'order', faultless: 0 }] as const
  const upToTheFirst = en.practice.missing({ ...lacks, missing }).replace(/\. [^.]*\.$/, '')
  await expect(page.getByText(saying(() => upToTheFirst))).toBeVisible()
  await page.getByLabel(en.engines.buildName).fill('Ferry, port engine')
  await page.getByRole('button', { name: en.engines.start }).click()
  await expect(page.getByRole('region', { name: en.buildWindow.drawing })).toBeVisible()
})
