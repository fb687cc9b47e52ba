import { readFile } from 'node:fs/promises'
import { isMeasured, measureName, measuresIn } from '../../core/builds/index.ts'
import { readSpec, type StepKind } from '../../core/engine/index.ts'
import { en } from '../../core/words/index.ts'
import { accessFaults } from './accessibility.ts'
import { expect, test } from './bench.ts'
import { Mechanic } from './mechanic.ts'
import { nextPull } from '../../core/tightening/index.ts'
import { atStep, openAt, type Seed } from './seed.ts'
import { saying, named } from './named.ts'

test.use({ engines: ['moor-flat-4', 'tarn-4', 'firth-v8'] })

const { placed, limits, partsList, rings, turning } = en
async function specOfFile(file: string) {
  const read = readSpec(await readFile(file, 'utf8'))
  if (!read.ok) throw new Error(`${file} cannot be read`)
  return read.spec
}
const spec = await specOfFile('specs/moor-flat-4.json')
const tarn = await specOfFile('specs/tarn-4.json')
const stepCalled = (name: string) => {
  const step = spec.steps.find((each) => each.name === name)
  if (step === undefined) throw new Error(`no step is called ${name}`)
  return step
}
const seed = (step: string) => ({
  ...{ engine: /Moor flat 4/, name: `Up to ${step}`, person: 'Ana Ruiz', far: atStep(step) },
})

test.setTimeout(180_000)

const measuredTest = 'rings are measured'
const noted = 'the plate is noted'
/** Where a step of each kind is done by pointer: a kind more does not compile until it is done somewhere too. */
const byPointer = {
  ...{
    'note-marks': 'whole-job',
    'choose-shells': 'whole-job',
    'fit-shells': 'whole-job',
    'fit-part': measuredTest,
  },
  ...{ 'lay-bead': 'whole-job', 'run-procedure': 'whole-job', check: 'whole-job', photo: 'photos' },
  ...{ note: noted, count: noted, align: noted, turn: 'the crank is turned' },
  ...{ 'measure-rings': measuredTest, 'measure-limits': measuredTest, 'fit-rings': measuredTest },
  ...{ lubricate: measuredTest, clean: measuredTest, orient: measuredTest, 'fit-places': measuredTest },
} as const satisfies { readonly [Kind in StepKind]: string }

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

test('by keys, gauge and pointer: rings are measured one after the other, a wide one is replaced, and what is ticked is ticked', async ({
  unopened: bench,
}) => {
  const { page } = bench
  const mechanic = new Mechanic(page, 'keys')
  const pointer = new Mechanic(page, 'pointer')
  const pointed = new Set<StepKind>()
  const finishByPointer = async (steps: readonly string[], of = spec) => {
    for (const name of steps) {
      pointed.add(of.steps.find((each) => each.name === name)!.kind)
      await pointer.finishStep(name)
    }
  }
  await openAt(bench, seed('Rings, pistons'))
  const placesOf = (name: string) => {
    const step = stepCalled(name)
    if (!isMeasured(step)) throw new Error('the step measures nothing')
    return measuresIn(spec, step).flatMap((measure) => measure.at.map(({ text: at }) => ({ measure, at })))
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
  /** All of them by gauge, but the last, which is typed and confirmed by the button. */
  const readAll = async (all: typeof places, kind: StepKind) => {
    for (const each of all) {
      await expect(page.locator('.place')).toHaveText(place(each))
      await mechanic.letBounceTimePass()
      const { least, most } = each.measure.new
      const middle =
        least !== undefined && most !== undefined ? (Number(least) + Number(most)) / 2 : Number(least ?? most)
      const read = (middle / 1e6).toFixed(3)
      if (each === all.at(-1)) {
        await pointer.answerReading(read)
        pointed.add(kind)
        continue
      }
      const before = await mechanic.entries()
      await mechanic.gaugeSends(read)
      await expect.poll(() => mechanic.entries()).toBeGreaterThan(before)
    }
    await mechanic.letBounceTimePass()
  }
  await readAll(places, 'measure-rings')
  await expect(mechanic.heading).toContainText('Piston clearance')
  await readAll(placesOf('Piston clearance'), 'measure-limits')
  await finishByPointer(['Rings on'])

  await openAt(bench, seed('Oil shells'))
  await expect(page.getByRole('img', { name: placed.pictures.dry })).toBeVisible()
  await expect(mechanic.main).toContainText(placed.done.lubricate({ dry: true }))
  await mechanic.confirm()
  await finishByPointer(['Oil shells', 'Lay crank', 'Crank parts'])
  await mechanic.finishStep('Timing marks')

  const clean = {
    engine: /Tarn 4/,
    name: 'Clean, and plugs in',
    person: 'Ana Ruiz',
    far: atStep('Clean block'),
  }
  await openAt(bench, clean)
  await mechanic.confirm()
  await finishByPointer(['Clean block', 'Oil way plugs'], tarn)
  expect([...pointed].toSorted()).toEqual(
    Object.entries(byPointer)
      .flatMap(([kind, where]) => (where === measuredTest ? [kind] : []))
      .toSorted(),
  )
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
