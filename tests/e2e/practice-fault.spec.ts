import { readFile } from 'node:fs/promises'
import { readSpec, type EngineSpec } from '../../core/engine/index.ts'
import {
  faceOfFault,
  faultDrill,
  faultKinds,
  partsAtFault,
  seedOf,
  type FaultyBuild,
} from '../../core/practice/index.ts'
import { en } from '../../core/words/index.ts'
import { accessFaults } from './accessibility.ts'
import { expect, test } from './bench.ts'
import { onTheDrawing } from './drawing.ts'
import { engineFile } from '../engine-files.ts'

test.use({ engines: ['holm-2', 'rill-5'] })

const specs = new Map<string, EngineSpec>()
for (const id of ['rill-5', 'holm-2']) {
  const read = readSpec(await readFile(engineFile(id), 'utf8'))
  if (!read.ok) throw new Error(`${id} cannot be read`)
  specs.set(id, read.spec)
}
const specOf = (id: string) => specs.get(id)!
const faceName = ({ case: { faces } }: EngineSpec, face: string) => faces.find(({ id }) => id === face)!.name

const engine = 'rill-5'
const spec = specOf(engine)
const texts = en.practice.fault

test('the one thing wrong with a finished build is found, by pointer and by keys, and what it does is said', async ({
  bench,
}) => {
  const { page } = bench
  const drill = faultDrill(spec, seedOf(engine, 'fault', 0), en.engines.sample.mechanic)!
  await page.getByRole('button', { name: en.practice.title, exact: true }).click()
  await page.getByRole('combobox').selectOption(engine)
  await page.getByRole('button', { name: en.practice.begin({ drill: 'fault' }) }).press('Enter')
  await expect(page.getByText(texts.find)).toBeVisible()
  expect(await accessFaults(page)).toEqual([])

  const go = async ({ fault }: FaultyBuild) => {
    const face = spec.case.faces.find(({ id }) => id === faceOfFault(spec, fault))!
    await page.getByRole('button', { name: face.name, exact: true }).press('Enter')
    return face
  }
  const point = (about: string) =>
    page.getByRole('list', { name: en.view.inWords }).locator(`[data-about="${about}"] button`).press('Enter')
  const name = (kind: (typeof faultKinds)[number]) =>
    page.getByRole('button', { name: texts.kinds[kind] }).press('Enter')

  const [first, ...others] = drill.builds
  const face = await go(first!)
  const sound = spec.fasteners.find((each) => {
    const isRight = partsAtFault(first!.fault).includes(`fastener/${each.id}`)
    return each.face === face.id && !isRight
  })!
  const { x, y } = await onTheDrawing(page, engine, face.id, sound.id, 'everything')
  await page.mouse.click(x, y)
  await expect(page.getByRole('status')).toContainText(texts.notThis)
  await point(partsAtFault(first!.fault)[0]!)
  await expect(page.getByText(texts.what)).toBeVisible()
  await name(faultKinds.find((kind) => kind !== first!.fault.kind)!)
  await expect(page.getByRole('status')).toContainText(texts.notThat)
  await name(first!.fault.kind)
  await expect(page.getByText(texts.does[first!.fault.kind])).toBeVisible()

  await page.getByRole('button', { name: texts.showns.sheet }).press('Enter')
  const sheet = page.getByRole('region', { name: texts.sheet })
  await expect(sheet).toContainText(en.practice.banner)
  await expect(sheet).toContainText(en.sheet.results.tightening)
  expect(await accessFaults(page)).toEqual([])
  await page.getByRole('button', { name: texts.showns.drawing }).press('Enter')
  await page.getByRole('button', { name: en.practice.onward, exact: true }).press('Enter')
  for (const build of others) {
    await go(build)
    await point(partsAtFault(build.fault)[0]!)
    await name(build.fault.kind)
    await page.getByRole('button', { name: en.practice.onward, exact: true }).press('Enter')
  }
  const questions = drill.builds.length * 2
  await expect(page.getByText(en.practice.result.errors({ errors: 2, asked: questions }))).toBeVisible()
})

test('two ring gaps that lie in line are found on the clocks of the pistons', async ({ bench }) => {
  const { page } = bench
  const id = 'holm-2'
  const drill = faultDrill(specOf(id), seedOf(id, 'fault', 0), en.engines.sample.mechanic)!
  expect(drill.builds.map(({ fault }) => fault.kind)).toEqual(['shells-swapped', 'gaps-in-line'])
  const [{ fault: swapped }, { fault: inLine }] = drill.builds as [FaultyBuild, FaultyBuild]
  if (inLine.kind !== 'gaps-in-line') throw new Error('another fault')
  await page.getByRole('button', { name: en.practice.title, exact: true }).click()
  await page.getByRole('combobox').selectOption(id)
  await page.getByRole('button', { name: en.practice.begin({ drill: 'fault' }) }).click()
  await page
    .getByRole('button', { name: faceName(specOf(id), faceOfFault(specOf(id), swapped)), exact: true })
    .click()
  await page
    .getByRole('list', { name: en.view.inWords })
    .locator(`[data-about="${partsAtFault(swapped)[0]!}"] button`)
    .press('Enter')
  await page.getByRole('button', { name: texts.kinds['shells-swapped'] }).click()
  await page.getByRole('button', { name: en.practice.onward, exact: true }).click()

  await page.getByRole('button', { name: texts.showns.rings }).click()
  const clock = page.getByRole('region', { name: en.rings.title({ piston: inLine.piston }), exact: true })
  await expect(clock.getByRole('img')).toBeVisible()
  expect(await accessFaults(page)).toEqual([])
  const set = specOf(id).ringSets.find(({ pistons }) =>
    pistons.some(({ cylinder }) => cylinder === inLine.cylinder),
  )!
  const sound = set.rings.findIndex((ring) => !inLine.rings.includes(ring.id))
  const wrong = set.rings.findIndex((ring) => inLine.rings.includes(ring.id))
  await clock.getByRole('button').nth(sound).click()
  await expect(page.getByRole('status')).toContainText(texts.notThis)
  await clock.getByRole('button').nth(wrong).press('Enter')
  await page.getByRole('button', { name: texts.kinds['gaps-in-line'] }).press('Enter')
  await expect(page.getByText(texts.does['gaps-in-line'])).toBeVisible()
  await page.getByRole('button', { name: en.practice.onward, exact: true }).press('Enter')
  await expect(page.getByText(en.practice.result.errors({ errors: 1, asked: 4 }))).toBeVisible()
})
