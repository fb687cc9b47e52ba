import { readFile } from 'node:fs/promises'
import { readSpec } from '../../core/engine/index.ts'
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

const engine = 'tarn-4'
const read = readSpec(await readFile(`specs/${engine}.json`, 'utf8'))
if (!read.ok) throw new Error(`${engine} cannot be read`)
const { spec } = read
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
    page
      .getByRole('list', { name: 'The drawing in words' })
      .locator(`[data-about="${about}"] button`)
      .press('Enter')
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
