import { readFile } from 'node:fs/promises'
import { isMeasured, measureName, measuresIn } from '../../core/builds/index.ts'
import { readSpec } from '../../core/engine/index.ts'
import { en } from '../../core/words/index.ts'
import { accessFaults } from './accessibility.ts'
import { expect, test } from './bench.ts'
import { Mechanic } from './mechanic.ts'
import { nextPull } from '../../core/tightening/index.ts'
import { atStep, openAt, type Seed } from './seed.ts'
import { saying, named } from './named.ts'

test.use({ engines: ['moor-flat-4', 'tarn-4', 'firth-v8'] })

const { placed, limits, partsList, rings, turning } = en
const read = readSpec(await readFile('specs/moor-flat-4.json', 'utf8'))
if (!read.ok) throw new Error('moor-flat-4 cannot be read')
const { spec } = read
const stepCalled = (name: string) => {
  const step = spec.steps.find((each) => each.name === name)
  if (step === undefined) throw new Error(`no step is called ${name}`)
  return step
}
const seed = (step: string) => ({
  ...{ engine: /Moor flat 4/, name: `Up to ${step}`, person: 'Ana Ruiz', far: atStep(step) },
})

test.setTimeout(180_000)

test('by pointer: the plate is noted, marks are set and looked at again, one is undone, parts are counted, and the sheet has it', async ({
  unopened: bench,
}) => {
  const { page } = bench
  const mechanic = new Mechanic(page, 'pointer')
  await openAt(bench, seed('Engine plate'))
  await mechanic.main.click()
  await expect(
    page.getByText(
      saying(() =>
        en.problems['reason-missing']({ reasonFor: { what: 'written', place: 'Plate on the left half' } }),
      ),
    ),
  ).toBeVisible()
  await mechanic.letBounceTimePass()
  await page.getByLabel(placed.write).fill('4711, 1987')
  await mechanic.confirm()
  await expect(mechanic.heading).toContainText('Case marks')

  await openAt(bench, seed('Timing marks'))
  await expect(page.getByRole('img', { name: placed.pictures['timing-marks'] })).toBeVisible()
  expect(await accessFaults(page)).toEqual([])
  await mechanic.confirm()
  await mechanic.confirm()
  await expect(page.getByText(placed.turn({ turns: 2 }))).toBeVisible()
  await page.getByRole('button', { name: /✓ Cam wheel to pump wheel/ }).click()
  const form = page.getByRole('textbox', { name: placed.undoWhich({ at: 'Cam wheel to pump wheel' }) })
  await form.fill('one tooth off')
  await page.getByRole('button', { name: placed.undoIt }).click()
  await expect(page.getByRole('button', { name: /✓ Cam wheel to pump wheel/ })).toHaveCount(0)
  await mechanic.letBounceTimePass()
  await mechanic.finishStep('Timing marks')

  await openAt(bench, seed('Count parts'))
  await page
    .getByRole('textbox', {
      name: saying(
        (any) => en.partsList.count.where({ name: any, left: 1, step: any }),
        (any) => en.partsList.count.where({ name: any, left: 2, step: any }),
      ),
    })
    .fill('kept for the next one')
  await page.getByRole('button', { name: partsList.count.noteLeftOver }).click()
  await expect(page.getByText(/kept for the next one/)).toBeVisible()
  const tick = page
    .getByRole('button', {
      name: named(
        () => partsList.inNew({ count: 1 }),
        (any) => partsList.inNew({ count: any }),
      ),
    })
    .first()
  while (await tick.isVisible()) {
    const before = await mechanic.entries()
    await tick.click()
    await expect.poll(() => mechanic.entries()).toBeGreaterThan(before)
  }
  await mechanic.letBounceTimePass()
  await mechanic.confirm()
  await page.getByRole('button', { name: en.buildWindow.sheet, exact: true }).click()
  await expect(page.getByRole('heading', { name: placed.sheet.title })).toBeVisible()
  await expect(
    page.getByRole('rowheader', { name: 'Timing marks: Crank wheel to cam wheel, again' }),
  ).toBeVisible()
  await expect(page.getByText(/kept for the next one/).first()).toBeVisible()
})

test('by keys and gauge: rings are measured one after the other, a wide one is replaced, and what is ticked is ticked by Enter', async ({
  unopened: bench,
}) => {
  const { page } = bench
  const mechanic = new Mechanic(page, 'keys')
  await openAt(bench, seed('Rings, pistons'))
  const placesOf = (name: string) => {
    const step = stepCalled(name)
    if (!isMeasured(step)) throw new Error('the step measures nothing')
    return measuresIn(spec, step).flatMap((measure) => measure.at.map((at) => ({ measure, at })))
  }
  const places = placesOf('Rings, pistons')
  const place = (of: (typeof places)[number]) =>
    limits.title({ name: measureName(en, of.measure), at: of.at })
  // The first ring gapes: it is replaced and measured again.
  await mechanic.gaugeSends('3.5')
  await mechanic.letBounceTimePass()
  await page.keyboard.press('Enter')
  const outside = page.getByText(rings.replace({ by: '3.05 mm', wider: '0.97 mm' }))
  await expect(outside).toBeVisible()
  // To accept it wants a reason; Escape leaves that, and accepts nothing.
  const entries = await mechanic.entries()
  const why = page.getByLabel(
    limits.whyAccepted({ name: measureName(en, places[0]!.measure), at: places[0]!.at }),
  )
  await page.getByRole('button', { name: limits.accept }).press('Enter')
  await expect(why).toBeFocused()
  await mechanic.letBounceTimePass()
  await page.keyboard.press('Enter')
  await expect(page.getByRole('alert')).toBeVisible()
  await page.keyboard.press('Escape')
  await expect(why).toHaveCount(0)
  await expect(outside).toBeVisible()
  expect(await mechanic.entries()).toBe(entries)
  await page.getByRole('button', { name: limits.replace }).press('Enter')
  await page.keyboard.type('another ring', { delay: 60 })
  await page.getByRole('button', { name: limits.replaceIt }).press('Enter')
  await expect(page.getByText(saying((any) => en.rings.replace({ by: any, wider: any })))).toHaveCount(0)
  const readAll = async (all: typeof places) => {
    for (const each of all) {
      await expect(page.locator('.place')).toHaveText(place(each))
      await mechanic.letBounceTimePass()
      const { least, most } = each.measure.new
      const middle =
        least !== undefined && most !== undefined ? (Number(least) + Number(most)) / 2 : Number(least ?? most)
      const before = await mechanic.entries()
      await mechanic.gaugeSends((middle / 1e6).toFixed(3))
      await expect.poll(() => mechanic.entries()).toBeGreaterThan(before)
    }
    await mechanic.letBounceTimePass()
  }
  await readAll(places)
  await expect(mechanic.heading).toContainText('Piston clearance')
  await readAll(placesOf('Piston clearance'))
  await mechanic.finishStep('Rings on')

  await openAt(bench, seed('Oil shells'))
  await expect(page.getByRole('img', { name: placed.pictures.dry })).toBeVisible()
  await expect(mechanic.main).toContainText(placed.done.lubricate({ dry: true }))
  for (const step of ['Oil shells', 'Lay crank', 'Crank parts', 'Timing marks'])
    await mechanic.finishStep(step)

  const clean = {
    engine: /Tarn 4/,
    name: 'Clean, and plugs in',
    person: 'Ana Ruiz',
    far: atStep('Clean block'),
  }
  await openAt(bench, clean)
  for (const step of ['Clean block', 'Oil way plugs']) await mechanic.finishStep(step)
})

test('the crank is turned: by a balance in a step, cap by cap in a run, and a cap after which it jumps is loosened as the advice says', async ({
  unopened: bench,
}) => {
  const { page } = bench
  const mechanic = new Mechanic(page, 'pointer')
  const v8 = { engine: /Firth V8/, person: 'Ana Ruiz' }
  await openAt(bench, { ...v8, name: 'Turned alone', far: atStep('Crank alone') })
  await test.step('force times lever is within the limit, and the sheet has it', async () => {
    await page.getByRole('button', { name: turning.byBalance }).click()
    await page.getByLabel(turning.arm).fill('250')
    await page.getByLabel(turning.force({ unit: 'N' })).fill('8')
    await expect(page.getByText(turning.comesTo({ torque: '2 N·m' }))).toBeVisible()
    expect(await accessFaults(page)).toEqual([])
    await mechanic.finishStep('Crank alone')
  })
  await test.step('after a cap it is read in the run; a jump names the cap, which is loosened and begun again', async () => {
    const turnNext: Seed['far'] = (engine, { runs }) => {
      const rods = engine.procedures.find(({ id }) => id === 'rods')!
      const next = runs['rods'] && nextPull(rods, runs['rods'])
      return next?.fastener === null && next.cap === 'B5'
    }
    await openAt(bench, { ...v8, name: 'Jumps after cap B5', far: turnNext })
    const rose = saying((any) =>
      en.problems['turning-over']({
        ...{ cap: 'B5', read: any, lookAt: { cap: 'B5', fasteners: ['R3', 'R4'] } },
        limits: { least: null, most: any, mostRise: any, rise: any },
      }),
    )
    await expect(
      page.getByText(
        saying(() =>
          en.run.heading({ cap: 'B5', pass: 4, passes: 4, kind: 'action', step: null, ownOrder: false }),
        ),
      ),
    ).toBeVisible()
    await page.getByLabel(turning.reading({ unit: 'N·m' })).fill('5')
    await mechanic.main.click()
    await expect(page.getByText(rose)).toBeVisible()
    await mechanic.letBounceTimePass()
    await page.getByRole('button', { name: turning.capIsLoose({ cap: 'B5' }) }).click()
    await expect(page.getByText(rose)).toHaveCount(0)
    await expect(mechanic.main).toContainText('R3')
  })
})
