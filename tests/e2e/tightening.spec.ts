import { mkdtemp, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { expect, test as bench } from './bench.ts'
import { Mechanic } from './mechanic.ts'
import { protractorKnobs } from './drawing.ts'
import { setA, setB, setD } from '../published/tightening-sets.ts'

const sets = { A: setA(), B: setB(), D: setD() }

/** Set B with what a manual may ask to be measured in it: lengths, the gap, stretch, end float, and a recheck. */
function measured(): object {
  const spec = JSON.parse(sets.B.specText) as { procedures: { orders: { id: string }[]; passes: object[] }[] }
  const order = spec.procedures[0]!.orders[0]!.id
  spec.procedures[0]!.passes = [
    { kind: 'length', order },
    { kind: 'seat', order, gap: { most: '0.05 mm' } },
    { kind: 'torque', order, target: '70 N·m' },
    { kind: 'stretch', order, least: '0.10 mm', most: '0.15 mm' },
    {
      kind: 'action',
      instruction: 'Measure the end float.',
      reading: { least: '0.10 mm', most: '0.25 mm' },
    },
    { kind: 'recheck', order, target: '70 N·m', only: ['bolt-1', 'bolt-2'], repeat: 'until-none-moves' },
  ]
  return { ...spec, id: 'measured', name: 'Measured set' }
}

/** The published sets as the engines of the bench. */
const test = bench.extend({
  specs: async ({}, use) => {
    const folder = await mkdtemp(join(tmpdir(), 'bedplate-specs-'))
    for (const [name, { specText }] of Object.entries(sets)) {
      const spec = { ...(JSON.parse(specText) as object), name: `Published set ${name}` }
      await writeFile(join(folder, `${name}.json`), JSON.stringify(spec))
    }
    await writeFile(join(folder, 'measured.json'), JSON.stringify(measured()))
    await use(folder)
    await rm(folder, { recursive: true, force: true })
  },
})
test.setTimeout(120_000)

async function at(mechanic: Mechanic, set: string) {
  await mechanic.startBuild(new RegExp(`Published set ${set}`), `Set ${set}`, 'R. Halloran')
  await mechanic.confirm()
}

test('set A runs as printed: 12, tap, 40, 110 and 100 lbf·ft, turn, end float', async ({ bench }) => {
  const mechanic = new Mechanic(bench.page, 'keys')
  await bench.page.getByRole('button', { name: 'lbf·ft' }).click()
  await at(mechanic, 'A')
  for (let made = 0; made < 20; made++) {
    await expect(mechanic.main).toContainText('is at 12 lbf·ft')
    await mechanic.confirm()
  }
  await expect(bench.page.getByText('Tap the crank back and forward.')).toBeVisible()
  await mechanic.confirm()
  for (let made = 0; made < 20; made++) {
    await expect(mechanic.main).toContainText('is at 40 lbf·ft')
    await mechanic.confirm()
  }
  const values = { long: 0, short: 0 }
  for (let made = 0; made < 20; made++) {
    const text = await mechanic.main.innerText()
    if (text.includes('is at 110 lbf·ft')) values.long++
    else if (text.includes('is at 100 lbf·ft')) values.short++
    await mechanic.confirm()
  }
  expect(values).toEqual({ long: 10, short: 10 })
  await mechanic.confirm() // turn the crank
  await mechanic.answerReading('0.007 in')
  await expect(mechanic.main).toContainText('finish', { ignoreCase: true })
})

test('set D runs as printed: up, up, loose, up, up, then twice 30°', async ({ bench }) => {
  const mechanic = new Mechanic(bench.page, 'pointer')
  await bench.page.getByRole('button', { name: 'lbf·ft' }).click()
  await at(mechanic, 'D')
  const asked = ['is at 155 lbf·ft', 'is at 345 lbf·ft', 'is loose', 'is at 87.5 lbf·ft', 'is at 175 lbf·ft']
  for (const text of [...asked, 'is turned 30°', 'is turned 30°'])
    for (let made = 0; made < 10; made++) {
      await expect(mechanic.main).toContainText(text)
      await mechanic.confirm()
    }
  await expect(mechanic.main).not.toContainText('is turned')
})

/** Set B up to its turn of 120° ± 5°. */
async function toTheTurn(mechanic: Mechanic) {
  await at(mechanic, 'B')
  for (let made = 0; made < 11; made++) await mechanic.confirm()
  await expect(mechanic.main).toContainText('1 is turned 120°')
}

test('too much on a bolt that is turned leads through loosen, replace, begin again', async ({ bench }) => {
  const mechanic = new Mechanic(bench.page, 'pointer')
  await toTheTurn(mechanic)
  await mechanic.answerReading('126')
  await expect(bench.page.getByRole('alert')).toContainText('allowed 115 to 125: too much')
  await expect(mechanic.main).toContainText('1 is loose')
  await mechanic.confirm()
  await expect(mechanic.main).toContainText('A new 1 is in')
  await mechanic.confirm()
  await expect(mechanic.main).toContainText('1 is at 40.7 N·m')
  await mechanic.confirm()
  await expect(mechanic.main).toContainText('1 is turned 120°')
  await mechanic.confirm()
  await expect(mechanic.main).toContainText('2 is turned 120°')

  await bench.page.getByRole('button', { name: 'Sheet' }).click()
  await expect(bench.page.getByText('no longer counts: the fastener was loosened')).toHaveCount(2)
  await expect(bench.page.getByText('replaced by a new one')).toBeVisible()
})

test('the angle by keys: where the handle starts, and what was reached', async ({ bench }) => {
  const mechanic = new Mechanic(bench.page, 'keys')
  await toTheTurn(mechanic)
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

test('the angle by dragging the knobs of the protractor', async ({ bench }) => {
  const mechanic = new Mechanic(bench.page, 'pointer')
  await toTheTurn(mechanic)
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

test('little room splits the turn into swings that are counted off', async ({ bench }) => {
  const mechanic = new Mechanic(bench.page, 'pointer')
  await toTheTurn(mechanic)
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
  await mechanic.confirm()
  await bench.page
    .getByRole('group', { name: 'With' })
    .getByRole('button', { name: 'hexagon', exact: true })
    .click()
  await expect(bench.page.getByRole('group', { name: 'Angle to turn' })).toContainText('!')
})

test('a wrench that does not read that low is refused, and replaced by one that does', async ({ bench }) => {
  const { page } = bench
  const mechanic = new Mechanic(page, 'pointer')
  async function addWrench(name: string, least: string, most: string) {
    await page.getByRole('button', { name: 'Add a wrench' }).click()
    await page.getByLabel('What it is called').fill(name)
    await page.getByLabel(/Lowest mark/).fill(least)
    await page.getByLabel(/Highest mark/).fill(most)
    await page.getByLabel(/From one mark/).fill('0.5')
    await page.getByRole('button', { name: 'Keep this wrench' }).click()
  }
  await page.getByRole('button', { name: 'Wrenches', exact: true }).click()
  await addWrench('Back to front', '300', '60')
  await expect(page.getByRole('alert')).toContainText('300')
  await page.getByRole('button', { name: 'Leave it' }).click()
  await addWrench('Long one', '60', '300')
  await page.getByRole('button', { name: '← Back' }).click()

  await at(mechanic, 'B')
  const line = page.getByLabel('Wrench', { exact: true })
  await expect(line).toContainText('!')
  await page.getByRole('button', { name: 'Wrenches …' }).click()
  await expect(page.getByRole('list', { name: 'Wrenches that cannot be used' })).toContainText('Long one')
  await page.getByRole('button', { name: 'Wrenches of this shop' }).click()
  await addWrench('Short one', '10', '60')
  await page.getByRole('button', { name: '← Back' }).click()
  await expect(line).toContainText('Short one: set 40.5 N·m')
})

test('a run that was broken off begins again with a reason, and the sheet says so', async ({ bench }) => {
  const { page } = bench
  const mechanic = new Mechanic(page, 'pointer')
  await at(mechanic, 'B')
  for (let made = 0; made < 3; made++) await mechanic.confirm()
  await page.getByRole('button', { name: 'Pause' }).click()
  await page.getByRole('button', { name: 'Pause here' }).click()
  await page.getByRole('button', { name: 'Begin again instead …' }).click()
  await page.getByRole('button', { name: 'Pass was broken off' }).click()
  await page.getByRole('button', { name: 'Begin again with pass 1' }).click()
  await expect(mechanic.main).toContainText('1 is at 40.7 N·m')

  await page.getByRole('button', { name: 'Sheet', exact: true }).click()
  await expect(page.getByText('no longer counts: the run was begun again')).toHaveCount(3)
  await expect(page.getByText('run begun again, As printed, from pass 1: Pass was broken off')).toBeVisible()
})

test('lengths, gap, stretch and end float are measured; a recheck goes round until none moves', async ({
  bench,
}) => {
  const { page } = bench
  const mechanic = new Mechanic(page, 'pointer')
  await mechanic.startBuild(/Measured set/, 'Measured', 'R. Halloran')
  await mechanic.confirm()
  await mechanic.main.click()
  await expect(page.getByRole('alert')).toContainText('Write down what the gauge shows')
  await mechanic.letBounceTimePass()
  for (let made = 0; made < 10; made++) await mechanic.answerReading('110.00')
  for (let made = 0; made < 10; made++) await mechanic.confirm() // seated
  await expect(page.getByRole('status', { name: 'Next' })).toContainText('gap of the joint face')
  await mechanic.answerReading('0.03')
  for (let made = 0; made < 10; made++) await mechanic.confirm()
  await expect(page.getByRole('status', { name: 'Next' })).toContainText('longer by 0.100 mm to 0.150 mm')
  for (let made = 0; made < 9; made++) await mechanic.answerReading('110.12')
  await mechanic.answerReading('110.16')
  await expect(page.getByRole('alert')).toContainText(
    'Fastener 10: 0.160 mm, allowed 0.100 mm to 0.150 mm: too much',
  )
  await page.getByLabel('What was done?').fill('The foreman lets it pass')
  await page.getByRole('button', { name: 'Note what was done' }).click()
  await mechanic.letBounceTimePass()
  await mechanic.answerReading('0.15')
  await expect(mechanic.main).toContainText('1 holds 70 N·m')
  await page.getByRole('button', { name: 'It moved' }).click()
  await expect(mechanic.main).toContainText('2 holds 70 N·m')
  await mechanic.letBounceTimePass()
  await mechanic.confirm()
  await expect(mechanic.main).toContainText('1 holds 70 N·m')
  await mechanic.confirm()
  await mechanic.confirm()
  await expect(mechanic.main).not.toContainText('holds')

  await page.getByRole('button', { name: 'Sheet', exact: true }).click()
  await expect(page.getByText('no longer counts: the pass was gone through again')).toHaveCount(2)
  await expect(page.getByText('0.120 mm longer, within').first()).toBeVisible()
})
