import { en } from '../../core/words/index.ts'
import { chooseDay } from './choose-day.ts'
import { whenKept } from './ask.ts'
import { expect, type Bench } from './bench.ts'
import { pixelsLeftBehind, protractorKnobs } from './drawing.ts'
import { Mechanic } from './mechanic.ts'
import { sets, test } from './published-specs.ts'
import { afterPulls, backToTheList, openAt } from './seed.ts'
import { readingField, saying, shown } from './named.ts'

test.setTimeout(120_000)

async function at(mechanic: Mechanic, set: string) {
  await mechanic.startBuild(new RegExp(`^Published set ${set}`), `Set ${set}`, 'R. Halloran')
  await mechanic.confirm()
}

test('sets A and D run as printed', async ({ bench }) => {
  /** A new build of a set, with that many pulls and actions of its run made. */
  const inTheRun = (set: string, made: number) =>
    openAt(bench, {
      engine: new RegExp(`Published set ${set}`),
      name: `Set ${set}`,
      person: 'R. Halloran',
      far: afterPulls(made),
    })

  await test.step('set A runs as printed: 12, tap, 40, 110 and 100 lbf·ft, turn, end float', async () => {
    const mechanic = new Mechanic(bench.page, 'keys')
    await bench.page.getByRole('button', { name: 'lbf·ft' }).click()
    await at(mechanic, 'A')
    await expect(mechanic.main).toContainText(
      saying((any) => en.run.confirm.at({ number: any, target: '12 lbf·ft' })),
    )
    await mechanic.confirm()
    await inTheRun('A', 20 - 1)
    await expect(mechanic.main).toContainText(
      saying((any) => en.run.confirm.at({ number: any, target: '12 lbf·ft' })),
    )
    await mechanic.confirm()
    await expect(bench.page.getByText('Tap the crank back and forward.')).toBeVisible()
    await mechanic.confirm()
    await expect(mechanic.main).toContainText(
      saying((any) => en.run.confirm.at({ number: any, target: '40 lbf·ft' })),
    )
    await mechanic.confirm()
    await inTheRun('A', 20 + 1 + 20 - 1)
    await expect(mechanic.main).toContainText(
      saying((any) => en.run.confirm.at({ number: any, target: '40 lbf·ft' })),
    )
    await mechanic.confirm()
    const values = { long: 0, short: 0 }
    const isAt = (target: string) => saying((any) => en.run.confirm.at({ number: any, target }))
    for (let made = 0; made < 20; made++) {
      const text = await mechanic.main.innerText()
      if (isAt('110 lbf·ft').test(text)) values.long++
      else if (isAt('100 lbf·ft').test(text)) values.short++
      await mechanic.confirm()
      if (made < 3) expect(await pixelsLeftBehind(bench.page)).toBe(0)
    }
    expect(values).toEqual({ long: 10, short: 10 })
    await mechanic.confirm() // turn the crank
    await mechanic.answerReading('0.007 in')
    await expect(mechanic.main).toContainText(en.steps.finish.finish)
  })

  await test.step('set D runs as printed: up, up, loose, up, up, then twice 30°', async () => {
    const mechanic = new Mechanic(bench.page, 'pointer')
    const { at, loose, turned } = en.run.confirm
    const passes: readonly ((number: string) => string)[] = [
      (number) => at({ number, target: '155 lbf·ft' }),
      (number) => at({ number, target: '345 lbf·ft' }),
      (number) => loose({ number }),
      (number) => at({ number, target: '87.5 lbf·ft' }),
      (number) => at({ number, target: '175 lbf·ft' }),
      (number) => turned({ number, target: '30°' }),
      (number) => turned({ number, target: '30°' }),
    ]
    for (const [pass, text] of passes.entries()) {
      await inTheRun('D', 10 * pass + 9)
      await expect(mechanic.main).toContainText(text('10'))
      await mechanic.confirm()
      const then = passes[pass + 1]
      if (then === undefined)
        await expect(mechanic.main).not.toContainText(
          saying((any) => en.run.confirm.turned({ number: any, target: any })),
        )
      else await expect(mechanic.main).toContainText(saying((any) => then(any)))
    }
  })
})

/** Set B up to its turn of 120° ± 5°. */
async function toTheTurn(bench: Bench, by: 'pointer' | 'keys' = 'pointer') {
  const mechanic = new Mechanic(bench.page, by)
  await openAt(bench, {
    engine: /Published set B/,
    name: 'Set B',
    person: 'R. Halloran',
    far: afterPulls(10 + 1), // ten torques, and every head marked
  })
  await expect(mechanic.main).toContainText(en.run.confirm.turned({ target: '120°', number: '1' }))
  return mechanic
}

test('the angle of a turn is set by keys and by dragging, and split where there is little room', async ({
  unopened: bench,
}) => {
  await test.step('the angle by keys: where the handle starts, and what was reached', async () => {
    const mechanic = await toTheTurn(bench, 'keys')
    const guide = bench.page.getByRole('group', { name: en.run.angle.title })
    await expect(guide).toContainText(
      saying((any) => en.run.angle.fromTo({ flats: any, start: '0°', end: '120°', least: any, most: any })),
    )
    await bench.page.keyboard.press('ArrowRight')
    await bench.page.keyboard.press('ArrowRight')
    await bench.page.keyboard.press('Shift+ArrowRight')
    await expect(guide).toContainText(
      saying((any) =>
        en.run.angle.fromTo({ flats: any, start: '31°', end: '151°', least: '146°', most: '156°' }),
      ),
    )
    await bench.page.keyboard.press('Shift+ArrowUp')
    await bench.page.keyboard.press('Shift+ArrowUp')
    await expect(mechanic.main).toContainText(en.run.confirm.reads({ number: '1', reading: '122°' }))
    await mechanic.confirm()
    await expect(guide).toContainText(
      saying((any) => en.run.angle.fromTo({ flats: any, start: '31°', end: '151°', least: any, most: any })),
    )
    await expect(mechanic.main).toContainText(en.run.confirm.turned({ target: '120°', number: '2' }))
  })

  await test.step('the angle by dragging the knobs of the protractor', async () => {
    const mechanic = await toTheTurn(bench)
    const knobs = () => protractorKnobs(bench.page, sets.B.spec, 'block', 'bolt-1')
    const { middle, start, end, at: place } = await knobs()
    const to = place(90)
    await bench.page.mouse.move(start.x, start.y)
    await bench.page.mouse.down()
    await bench.page.mouse.move(middle.x + 50, middle.y - 50, { steps: 4 })
    await bench.page.mouse.move(to.x, to.y, { steps: 4 })
    await bench.page.mouse.up()
    const guide = bench.page.getByRole('group', { name: en.run.angle.title })
    await expect(guide).toContainText(
      saying((any) => en.run.angle.fromTo({ flats: any, start: '90°', end: '210°', least: any, most: any })),
    )
    expect(end).not.toEqual(start)

    const reachedAt = place(210)
    const further = place(200)
    await bench.page.mouse.move(reachedAt.x, reachedAt.y)
    await bench.page.mouse.down()
    await bench.page.mouse.move(further.x, further.y, { steps: 4 })
    await bench.page.mouse.up()
    await expect(mechanic.main).toContainText(en.run.confirm.reads({ number: '1', reading: '110°' }))
    await mechanic.confirm()
    await expect(bench.page.getByRole('alert')).toContainText(
      saying((any) =>
        en.problems['turn-short']({ fastener: '1', read: any, limits: any, left: any, from: any, to: any }),
      ),
    )
  })

  await test.step('little room splits the turn into swings that are counted off', async () => {
    const mechanic = await toTheTurn(bench)
    await bench.page
      .getByRole('group', { name: en.run.angle.room })
      .getByRole('button', { name: '45°' })
      .click()
    await expect(
      bench.page.getByRole('list', { name: en.run.angle.swings }).getByRole('listitem'),
    ).toHaveText(['45°', '45°', '30°'])
    const entries = await mechanic.entries()
    for (const text of [1, 2].map((swing) => en.run.confirm.swing({ swing, swings: 3, angle: '45°' }))) {
      await expect(mechanic.main).toContainText(text)
      await mechanic.main.click()
      await mechanic.letBounceTimePass()
    }
    expect(await mechanic.entries()).toBe(entries)
    await expect(mechanic.main).toContainText(en.run.confirm.turned({ target: '120°', number: '1' }))
    await whenKept(bench.page, ({ handle }) => handle.swings === 2)
    await bench.cutPowerAndStartAgain()
    await expect(mechanic.main).toContainText(en.run.confirm.turned({ target: '120°', number: '1' }))
    expect(await mechanic.entries()).toBe(entries)
    await mechanic.confirm()
    await bench.page
      .getByRole('group', { name: en.run.angle.with })
      .getByRole('button', { name: en.run.angle.grips.hexagon, exact: true })
      .click()
    await expect(bench.page.getByRole('group', { name: en.run.angle.title })).toContainText('!')
  })
})

test('a wrench with an adapter, and one that does not read so low', async ({ bench }) => {
  const { page } = bench
  await test.step('a wrench that does not read that low is refused, and replaced by one that does', async () => {
    const mechanic = new Mechanic(page, 'pointer')
    async function addWrench(name: string, least: string, most: string) {
      await page.getByRole('button', { name: en.wrenches.add }).click()
      await page.getByLabel(en.wrenches.form.name).fill(name)
      await page.getByLabel(saying((any) => en.wrenches.form.lowest({ unit: any }))).fill(least)
      await page.getByLabel(saying((any) => en.wrenches.form.highest({ unit: any }))).fill(most)
      await page.getByLabel(saying((any) => en.wrenches.form.step({ unit: any }))).fill('0.5')
      await page.getByRole('button', { name: en.wrenches.form.keep }).click()
    }
    await page.getByRole('button', { name: en.engines.wrenches, exact: true }).click()
    await addWrench('Back to front', '300', '60')
    await expect(page.getByRole('alert')).toContainText('300')
    await page.getByRole('button', { name: en.parts.cancel }).click()
    await addWrench('Long one', '60', '300')
    await page.getByRole('button', { name: /^←/ }).click()

    await at(mechanic, 'B')
    const line = page.getByLabel(en.run.wrench.title, { exact: true })
    await expect(line).toContainText('!')
    await page.getByRole('button', { name: en.run.wrench.offer }).click()
    await expect(page.getByRole('list', { name: en.run.wrench.notUsable })).toContainText('Long one')
    await page.getByRole('button', { name: en.wrenches.title }).click()
    // Wider than the wrench that the next step adds, which is therefore the better one there.
    await addWrench('Short one', '10', '100')
    await page.getByRole('button', { name: /^←/ }).click()
    await expect(line).toContainText(
      saying(() =>
        en.run.wrench.set({ wrench: 'Short one', adapter: null, setting: '40.5 N·m', torque: null }),
      ),
    )
  })

  await test.step('a reading off a wrench with an adapter is brought to the bolt, and both values are kept', async () => {
    await backToTheList(page)
    const mechanic = new Mechanic(page, 'pointer')
    await page.getByRole('button', { name: en.engines.wrenches, exact: true }).click()
    await page.getByRole('button', { name: en.wrenches.add }).click()
    await page.getByLabel(en.wrenches.form.name).fill('Click 60')
    await page.getByLabel(saying((any) => en.wrenches.form.lowest({ unit: any }))).fill('10')
    await page.getByLabel(saying((any) => en.wrenches.form.highest({ unit: any }))).fill('60')
    await page.getByLabel(saying((any) => en.wrenches.form.step({ unit: any }))).fill('0.5')
    await page.getByPlaceholder(saying(() => en.wrenches.form.lengthExample)).fill('12 in')
    await page.getByLabel(en.wrenches.form.number).fill('4711')
    const calibrated = new Date().toISOString().slice(0, 10)
    await chooseDay(page, en.wrenches.form.calibratedOn, calibrated)
    await page.getByRole('button', { name: en.wrenches.form.addAdapter }).click()
    await page.getByLabel(en.wrenches.form.adapter, { exact: true }).fill('Crow foot')
    await page.getByLabel(en.wrenches.form.offset).fill('4 in')
    await page.getByRole('button', { name: en.wrenches.form.keep }).click()
    await page.getByRole('button', { name: /^←/ }).click()

    await at(mechanic, 'B')
    const line = page.getByLabel(en.run.wrench.title, { exact: true })
    await expect(line).toContainText(
      saying(() =>
        en.run.wrench.set({ wrench: 'Click 60', adapter: null, setting: '40.5 N·m', torque: null }),
      ),
    )
    await page.getByRole('button', { name: en.run.wrench.offer }).click()
    await page
      .getByRole('button', {
        name: en.run.wrench.take({ angle: 0, wrench: 'Click 60', adapter: 'Crow foot' }),
      })
      .click()
    await expect(line).toContainText(
      saying((any) =>
        en.run.wrench.set({ wrench: any, adapter: any, setting: '30.5 N·m', torque: '40.7 N·m' }),
      ),
    )
    await page.getByLabel(readingField).fill('30.5')
    await expect(
      page.getByText(
        en.phrases.reading({ onScale: shown('30.5 N·m'), atFastener: shown('40.7 N·m'), clamping: null }),
      ),
    ).toBeVisible()
    await mechanic.confirm()
    await expect(mechanic.main).toContainText(en.run.confirm.at({ target: '40.7 N·m', number: '2' }))
    await page.getByRole('button', { name: en.buildWindow.sheet, exact: true }).click()
    await expect(
      page.getByText(
        `${en.sheet.run.scaleAndFastener({ scale: '30.5 N·m', fastener: '40.7 N·m' })}, ${en.sheet.run.verdicts.within}`,
      ),
    ).toBeVisible()
    // Once for the pass on the page of results, and once at the pull itself.
    const wrenchText = `Click 60 with Crow foot, 101.6 mm at 0°, no. 4711, calibrated ${en.dates.day(calibrated)}`
    await expect(page.getByRole('cell', { name: wrenchText, exact: true })).toBeVisible()
    const pull = page.getByRole('row').filter({
      hasText: saying((any) => en.sheet.run.scaleAndFastener({ scale: '30.5 N·m', fastener: any })),
    })
    await expect(pull).toContainText(wrenchText)
  })
})
