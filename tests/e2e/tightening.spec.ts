import { whenKept } from './ask.ts'
import { expect, type Bench } from './bench.ts'
import { protractorKnobs } from './drawing.ts'
import { Mechanic } from './mechanic.ts'
import { sets, test } from './published-specs.ts'
import { afterPulls, backToTheList, openAt } from './seed.ts'

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
    await expect(mechanic.main).toContainText('is at 12 lbf·ft')
    await mechanic.confirm()
    await inTheRun('A', 20 - 1)
    await expect(mechanic.main).toContainText('is at 12 lbf·ft')
    await mechanic.confirm()
    await expect(bench.page.getByText('Tap the crank back and forward.')).toBeVisible()
    await mechanic.confirm()
    await expect(mechanic.main).toContainText('is at 40 lbf·ft')
    await mechanic.confirm()
    await inTheRun('A', 20 + 1 + 20 - 1)
    await expect(mechanic.main).toContainText('is at 40 lbf·ft')
    await mechanic.confirm()
    const values = { long: 0, short: 0 }
    for (let made = 0; made < 20; made++) {
      const text = await mechanic.main.innerText()
      if (/is at 110\slbf·ft/.test(text)) values.long++
      else if (/is at 100\slbf·ft/.test(text)) values.short++
      await mechanic.confirm()
    }
    expect(values).toEqual({ long: 10, short: 10 })
    await mechanic.confirm() // turn the crank
    await mechanic.answerReading('0.007 in')
    await expect(mechanic.main).toContainText('finish', { ignoreCase: true })
  })

  await test.step('set D runs as printed: up, up, loose, up, up, then twice 30°', async () => {
    const mechanic = new Mechanic(bench.page, 'pointer')
    const torques = [
      'is at 155 lbf·ft',
      'is at 345 lbf·ft',
      'is loose',
      'is at 87.5 lbf·ft',
      'is at 175 lbf·ft',
    ]
    const passes = [...torques, 'is turned 30°', 'is turned 30°']
    for (const [pass, text] of passes.entries()) {
      await inTheRun('D', 10 * pass + 9)
      await expect(mechanic.main).toContainText(`10 ${text}`)
      await mechanic.confirm()
      const then = passes[pass + 1]
      if (then === undefined) await expect(mechanic.main).not.toContainText('is turned')
      else await expect(mechanic.main).toContainText(then)
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
  await expect(mechanic.main).toContainText('1 is turned 120°')
  return mechanic
}

test('the angle of a turn is set by keys and by dragging, and split where there is little room', async ({
  unopened: bench,
}) => {
  await test.step('the angle by keys: where the handle starts, and what was reached', async () => {
    const mechanic = await toTheTurn(bench, 'keys')
    const guide = bench.page.getByRole('group', { name: 'Angle to turn' })
    await expect(guide).toContainText('Handle from 0° to 120°')
    await bench.page.keyboard.press('ArrowRight')
    await bench.page.keyboard.press('ArrowRight')
    await bench.page.keyboard.press('Shift+ArrowRight')
    await expect(guide).toContainText('Handle from 31° to 151°, right between 146° and 156°')
    await bench.page.keyboard.press('Shift+ArrowUp')
    await bench.page.keyboard.press('Shift+ArrowUp')
    await expect(mechanic.main).toContainText('1 reads 122°')
    await mechanic.confirm()
    await expect(guide).toContainText('Handle from 31° to 151°')
    await expect(mechanic.main).toContainText('2 is turned 120°')
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
    const guide = bench.page.getByRole('group', { name: 'Angle to turn' })
    await expect(guide).toContainText('Handle from 90° to 210°')
    expect(end).not.toEqual(start)

    const reachedAt = place(210)
    const further = place(200)
    await bench.page.mouse.move(reachedAt.x, reachedAt.y)
    await bench.page.mouse.down()
    await bench.page.mouse.move(further.x, further.y, { steps: 4 })
    await bench.page.mouse.up()
    await expect(mechanic.main).toContainText('1 reads 110°')
    await mechanic.confirm()
    await expect(bench.page.getByRole('alert')).toContainText('too little')
  })

  await test.step('little room splits the turn into swings that are counted off', async () => {
    const mechanic = await toTheTurn(bench)
    await bench.page.getByRole('group', { name: 'Room' }).getByRole('button', { name: '45°' }).click()
    await expect(bench.page.getByRole('list', { name: 'Swings' }).getByRole('listitem')).toHaveText([
      '45°',
      '45°',
      '30°',
    ])
    const entries = await mechanic.entries()
    for (const text of ['Swing 1 of 3: 45°', 'Swing 2 of 3: 45°']) {
      await expect(mechanic.main).toContainText(text)
      await mechanic.main.click()
      await mechanic.letBounceTimePass()
    }
    expect(await mechanic.entries()).toBe(entries)
    await expect(mechanic.main).toContainText('1 is turned 120°')
    await whenKept(bench.page, ({ handle }) => handle.swings === 2)
    await bench.cutPowerAndStartAgain()
    await expect(mechanic.main).toContainText('1 is turned 120°')
    expect(await mechanic.entries()).toBe(entries)
    await mechanic.confirm()
    await bench.page
      .getByRole('group', { name: 'With' })
      .getByRole('button', { name: 'hexagon', exact: true })
      .click()
    await expect(bench.page.getByRole('group', { name: 'Angle to turn' })).toContainText('!')
  })
})

test('a wrench with an adapter, and one that does not read so low', async ({ bench }) => {
  const { page } = bench
  await test.step('a wrench that does not read that low is refused, and replaced by one that does', async () => {
    const mechanic = new Mechanic(page, 'pointer')
    async function addWrench(name: string, least: string, most: string) {
      await page.getByRole('button', { name: 'Add a wrench' }).click()
      await page.getByLabel('Name').fill(name)
      await page.getByLabel(/Lowest mark/).fill(least)
      await page.getByLabel(/Highest mark/).fill(most)
      await page.getByLabel(/From one mark/).fill('0.5')
      await page.getByRole('button', { name: 'Save this wrench' }).click()
    }
    await page.getByRole('button', { name: 'Wrenches', exact: true }).click()
    await addWrench('Back to front', '300', '60')
    await expect(page.getByRole('alert')).toContainText('300')
    await page.getByRole('button', { name: 'Cancel' }).click()
    await addWrench('Long one', '60', '300')
    await page.getByRole('button', { name: '← Back' }).click()

    await at(mechanic, 'B')
    const line = page.getByLabel('Wrench', { exact: true })
    await expect(line).toContainText('!')
    await page.getByRole('button', { name: 'Wrenches …' }).click()
    await expect(page.getByRole('list', { name: 'Wrenches that cannot be used' })).toContainText('Long one')
    await page.getByRole('button', { name: 'Wrenches of this shop' }).click()
    // Wider than the wrench that the next step adds, which is therefore the better one there.
    await addWrench('Short one', '10', '100')
    await page.getByRole('button', { name: '← Back' }).click()
    await expect(line).toContainText('Short one: set 40.5 N·m')
  })

  await test.step('a reading off a wrench with an adapter is brought to the bolt, and both values are kept', async () => {
    await backToTheList(page)
    const mechanic = new Mechanic(page, 'pointer')
    await page.getByRole('button', { name: 'Wrenches', exact: true }).click()
    await page.getByRole('button', { name: 'Add a wrench' }).click()
    await page.getByLabel('Name').fill('Click 60')
    await page.getByLabel(/Lowest mark/).fill('10')
    await page.getByLabel(/Highest mark/).fill('60')
    await page.getByLabel(/From one mark/).fill('0.5')
    await page.getByPlaceholder(/needed for adapters/).fill('12 in')
    await page.getByLabel('Its number').fill('4711')
    const calibrated = new Date().toISOString().slice(0, 10)
    await page.getByLabel('Calibrated on').fill(calibrated)
    await page.getByRole('button', { name: 'Add an adapter' }).click()
    await page.getByLabel('Adapter', { exact: true }).fill('Crow foot')
    await page.getByLabel('Offset').fill('4 in')
    await page.getByRole('button', { name: 'Save this wrench' }).click()
    await page.getByRole('button', { name: '← Back' }).click()

    await at(mechanic, 'B')
    const line = page.getByLabel('Wrench', { exact: true })
    await expect(line).toContainText('Click 60: set 40.5 N·m')
    await page.getByRole('button', { name: 'Wrenches …' }).click()
    await page.getByRole('button', { name: 'Use Click 60 with Crow foot at 0°' }).click()
    await expect(line).toContainText('set 30.5 N·m, which gives the fastener 40.7 N·m')
    await page.getByLabel(/^Reading/).fill('30.5')
    await expect(page.getByText('30.5 N·m on the scale, 40.7 N·m at the fastener')).toBeVisible()
    await mechanic.confirm()
    await expect(mechanic.main).toContainText('2 is at 40.7 N·m')
    await page.getByRole('button', { name: 'Sheet', exact: true }).click()
    await expect(page.getByText('30.5 N·m on the scale, 40.7 N·m at the fastener, within')).toBeVisible()
    // Once for the pass on the page of results, and once at the pull itself.
    const wrenchText = `Click 60 with Crow foot, 101.6 mm at 0°, no. 4711, calibrated ${calibrated}`
    await expect(page.getByRole('cell', { name: wrenchText, exact: true })).toBeVisible()
    const pull = page.getByRole('row').filter({ hasText: '30.5 N·m on the scale' })
    await expect(pull).toContainText(wrenchText)
  })
})
