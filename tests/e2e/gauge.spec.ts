import { expect } from './bench.ts'
import { atTheFirstPull, atTheStart, test } from './published-specs.ts'

test.setTimeout(120_000)

test('what a gauge or a wrench types is what it measured, and nothing else', async ({ unopened: bench }) => {
  const { page } = bench
  await test.step('a wrench that types confirms what is asked for by its own Enter, and nothing else', async () => {
    const mechanic = await atTheFirstPull(bench, 'keys')
    const field = page.getByLabel('Reading in N·m')
    await expect(field).toBeVisible()
    const before = await mechanic.entries()

    // Below its limits: that is for a person to say.
    await mechanic.gaugeSends('30.9')
    await expect(field).toHaveValue('30.9')
    await expect(mechanic.main).toContainText('1 reads 30.9 N·m')
    await mechanic.letBounceTimePass()

    // A second one before the first is confirmed: a person says which counts, and Enter does not.
    await mechanic.gaugeSends('+30.2 lbf.ft')
    await expect(page.getByText('Which one counts?')).toBeVisible()
    await expect(mechanic.main).toHaveCount(0)
    await expect(page.getByText('First say which of the two readings counts.')).toBeVisible()
    await page.keyboard.press('Enter')
    await page.getByRole('button', { name: '+30.2 lbf.ft counts' }).click()
    await expect(mechanic.main).toContainText('1 reads +30.2 lbf.ft')
    expect(await mechanic.entries()).toBe(before)
    // The button that was clicked has given the focus back: Enter is the big one's.
    await mechanic.confirm()
    await expect(mechanic.main).toContainText('2 is at 40.7 N·m')
    await expect(field).toHaveValue('')

    await mechanic.gaugeSends('-40.9')
    await expect(field).toHaveValue('-40.9')
    await mechanic.letBounceTimePass()
    await page.keyboard.press('Enter')
    await expect(page.getByRole('alert')).toContainText('-40.9')
    await field.fill('')
    await mechanic.letBounceTimePass()

    await mechanic.gaugeSends('40.9')
    await expect(mechanic.main).toContainText('3 is at 40.7 N·m')
    await page.getByRole('button', { name: 'Sheet', exact: true }).click()
    await expect(page.getByRole('main')).toContainText('+30.2 lbf.ft, within')
    await expect(page.getByRole('main')).toContainText('40.9 N·m, within')
  })

  await test.step('a pedal that is held down confirms once', async () => {
    const mechanic = await atTheFirstPull(bench, 'pointer')
    const before = await mechanic.entries()
    // The button that was clicked last still has the focus of a mouse, and must not be pressed by the keys that repeat.
    await mechanic.main.focus()
    for (let press = 0; press < 6; press++) {
      await page.keyboard.down('Enter')
      await mechanic.letBounceTimePass()
    }
    await page.keyboard.up('Enter')
    await expect(mechanic.main).toContainText('2 is at 40.7 N·m')
    expect(await mechanic.entries()).toBe(before + 1)
  })

  await test.step('half a reading is dropped, and said so; a key held down does not type', async () => {
    const mechanic = await atTheFirstPull(bench, 'keys')
    const field = page.getByLabel('Reading in N·m')
    await expect(field).toBeVisible()

    await mechanic.gaugeSends('40.', 'broken off')
    await expect(page.getByText('The gauge stopped in the middle of a reading')).toBeVisible()
    await expect(field).toHaveValue('')
    await expect(mechanic.main).toContainText('1 is at 40.7 N·m')

    await page.keyboard.down('4')
    await page.keyboard.down('4')
    await page.keyboard.down('4')
    await page.keyboard.up('4')
    await expect(field).toHaveValue('4')
    await expect(page.getByText('The gauge stopped')).toHaveCount(0)
  })

  await test.step('what a gauge sends where nothing asks for it presses nothing, and is there for what asks next', async () => {
    const mechanic = await atTheStart(bench, 'keys')
    const before = await mechanic.entries()
    await mechanic.gaugeSends('40.9')
    await expect(page.getByText('The gauge sent 40.9 while nothing asked')).toBeVisible()
    // One that takes 150 ms from key to key is told from hands by what it types.
    await page.keyboard.type('41.1', { delay: 150 })
    await page.keyboard.press('Enter')
    await expect(page.getByText('The gauge sent 41.1 while nothing asked')).toBeVisible()
    expect(await mechanic.entries()).toBe(before)
    await mechanic.confirm()
    await page.getByRole('button', { name: 'Use it here' }).click()
    await mechanic.confirm()
    await expect(mechanic.main).toContainText('2 is at 40.7 N·m')
  })

  await test.step('what a gauge sends into a reason does not send the reason off', async () => {
    const mechanic = await atTheFirstPull(bench, 'pointer')
    await mechanic.confirm()
    const before = await mechanic.entries()
    await page.getByRole('button', { name: /Take back/ }).click()
    await mechanic.gaugeSends('40.9 Nm')
    await mechanic.letBounceTimePass()
    await expect(page.getByRole('button', { name: 'Take it back' })).toBeVisible()
    expect(await mechanic.entries()).toBe(before)
    // It is no reason either, but kept for the reading that is asked for next.
    const reason = page.getByLabel(/Take back fastener 1/)
    await expect(reason).toHaveValue('')
    await expect(page.getByText('The gauge sent 40.9 Nm while nothing asked')).toBeVisible()
    await page.getByRole('button', { name: 'Cancel' }).click()
    await page.getByRole('button', { name: 'Use it here' }).click()
    await expect(page.getByLabel('Reading in N·m')).toHaveValue('40.9 Nm')
    await expect(page.getByText('The gauge sent')).toHaveCount(0)

    // Into a reason that somebody clicked it goes, as whatever is typed there.
    await page.getByRole('button', { name: /Take back/ }).click()
    await reason.click()
    await mechanic.gaugeSends('41.2')
    await expect(reason).toHaveValue('41.2')
    expect(await mechanic.entries()).toBe(before)
  })
})
