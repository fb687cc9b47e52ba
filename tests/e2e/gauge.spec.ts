import { en } from '../../core/words/index.ts'
import { expect } from './bench.ts'
import { atTheFirstPull, atTheStart, test } from './published-specs.ts'
import { saying } from './named.ts'

test.setTimeout(120_000)

test('what a gauge or a wrench types is what it measured, and nothing else', async ({ unopened: bench }) => {
  const { page } = bench
  await test.step('a wrench that types confirms what is asked for by its own Enter, and nothing else', async () => {
    const mechanic = await atTheFirstPull(bench, 'keys')
    const field = page.getByLabel(en.run.readingIn({ unit: 'N·m', onScale: false }))
    await expect(field).toBeVisible()
    const before = await mechanic.entries()

    // Below its limits: that is for a person to say.
    await mechanic.gaugeSends('30.9')
    await expect(field).toHaveValue('30.9')
    await expect(mechanic.main).toContainText(en.run.confirm.reads({ number: '1', reading: '30.9 N·m' }))
    await mechanic.letBounceTimePass()

    // A second one before the first is confirmed: a person says which counts, and Enter does not.
    await mechanic.gaugeSends('+30.2 lbf.ft')
    await expect(page.getByText(en.run.unasked.which)).toBeVisible()
    await expect(mechanic.main).toHaveCount(0)
    await expect(page.getByText(en.steps.frame.whichReading)).toBeVisible()
    await page.keyboard.press('Enter')
    await page.getByRole('button', { name: en.run.unasked.counts({ sent: '+30.2 lbf.ft' }) }).click()
    await expect(mechanic.main).toContainText(en.run.confirm.reads({ number: '1', reading: '+30.2 lbf.ft' }))
    expect(await mechanic.entries()).toBe(before)
    // The button that was clicked has given the focus back: Enter is the big one's.
    await mechanic.confirm()
    await expect(mechanic.main).toContainText(en.run.confirm.at({ target: '40.7 N·m', number: '2' }))
    await expect(field).toHaveValue('')

    await mechanic.gaugeSends('-40.9')
    await expect(field).toHaveValue('-40.9')
    await mechanic.letBounceTimePass()
    await page.keyboard.press('Enter')
    await expect(page.getByRole('alert')).toContainText('-40.9')
    await field.fill('')
    await mechanic.letBounceTimePass()

    await mechanic.gaugeSends('40.9')
    await expect(mechanic.main).toContainText(en.run.confirm.at({ target: '40.7 N·m', number: '3' }))
    await page.getByRole('button', { name: en.buildWindow.sheet, exact: true }).click()
    await expect(page.getByRole('main')).toContainText(`+30.2 lbf.ft, ${en.sheet.run.verdicts.within}`)
    await expect(page.getByRole('main')).toContainText(`40.9 N·m, ${en.sheet.run.verdicts.within}`)
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
    await expect(mechanic.main).toContainText(en.run.confirm.at({ target: '40.7 N·m', number: '2' }))
    expect(await mechanic.entries()).toBe(before + 1)
  })

  await test.step('half a reading is dropped, and said so; a key held down does not type', async () => {
    const mechanic = await atTheFirstPull(bench, 'keys')
    const field = page.getByLabel(en.run.readingIn({ unit: 'N·m', onScale: false }))
    await expect(field).toBeVisible()

    await mechanic.gaugeSends('40.', 'broken off')
    await expect(page.getByText(en.run.unasked.dropped['broken-off'])).toBeVisible()
    await expect(field).toHaveValue('')
    await expect(mechanic.main).toContainText(en.run.confirm.at({ target: '40.7 N·m', number: '1' }))

    await page.keyboard.down('4')
    await page.keyboard.down('4')
    await page.keyboard.down('4')
    await page.keyboard.up('4')
    await expect(field).toHaveValue('4')
    await expect(page.getByText(en.run.unasked.dropped['broken-off'])).toHaveCount(0)
  })

  await test.step('what a gauge sends where nothing asks for it presses nothing, and is there for what asks next', async () => {
    const mechanic = await atTheStart(bench, 'keys')
    const before = await mechanic.entries()
    await mechanic.gaugeSends('40.9')
    await expect(page.getByText(en.run.unasked.sent({ sent: '40.9' }))).toBeVisible()
    // One that takes 150 ms from key to key is told from hands by what it types.
    await page.keyboard.type('41.1', { delay: 150 })
    await page.keyboard.press('Enter')
    await expect(page.getByText(en.run.unasked.sent({ sent: '41.1' }))).toBeVisible()
    expect(await mechanic.entries()).toBe(before)
    await mechanic.confirm()
    await page.getByRole('button', { name: en.run.unasked.use }).click()
    await mechanic.confirm()
    await expect(mechanic.main).toContainText(en.run.confirm.at({ target: '40.7 N·m', number: '2' }))
  })

  await test.step('what a gauge sends into a reason does not send the reason off', async () => {
    const mechanic = await atTheFirstPull(bench, 'pointer')
    await mechanic.confirm()
    const before = await mechanic.entries()
    await page.getByRole('button', { name: saying((any) => en.run.takeBack.offer({ number: any })) }).click()
    await mechanic.gaugeSends('40.9 Nm')
    await mechanic.letBounceTimePass()
    await expect(page.getByRole('button', { name: en.run.takeBack.takeBack })).toBeVisible()
    expect(await mechanic.entries()).toBe(before)
    // It is no reason either, but kept for the reading that is asked for next.
    const reason = page.getByLabel(en.run.takeBack.why({ number: '1' }))
    await expect(reason).toHaveValue('')
    await expect(page.getByText(en.run.unasked.sent({ sent: '40.9 Nm' }))).toBeVisible()
    await page.getByRole('button', { name: en.parts.cancel }).click()
    await page.getByRole('button', { name: en.run.unasked.use }).click()
    await expect(page.getByLabel(en.run.readingIn({ unit: 'N·m', onScale: false }))).toHaveValue('40.9 Nm')
    await expect(page.getByText(saying((any) => en.run.unasked.sent({ sent: any })))).toHaveCount(0)

    // Into a reason that somebody clicked it goes, as whatever is typed there.
    await page.getByRole('button', { name: saying((any) => en.run.takeBack.offer({ number: any })) }).click()
    await reason.click()
    await mechanic.gaugeSends('41.2')
    await expect(reason).toHaveValue('41.2')
    expect(await mechanic.entries()).toBe(before)
  })
})
