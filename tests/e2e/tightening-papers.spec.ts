import { accessFaults } from './accessibility.ts'
import { expect, test } from './bench.ts'
import { Mechanic } from './mechanic.ts'
import { test as published } from './published-specs.ts'
import { backToTheList } from './seed.ts'

test.setTimeout(120_000)

/** The split case three at its case bolts, which wait for others: what they are can be looked at all the same. */
async function atCaseBolts(mechanic: Mechanic) {
  await mechanic.startBuild(/Skerry 3/, 'Papers', 'I. Brandvold')
  await mechanic.page.getByRole('button', { name: 'All steps' }).click()
  await mechanic.page.getByRole('button', { name: /Case bolts/ }).click()
}

test('a procedure on paper and as a clamp map, and the wrenches for it', async ({ bench }) => {
  const { page } = bench
  await test.step('a bench card has the order, the passes, boxes to tick and the angle, on A4 and Letter', async () => {
    await atCaseBolts(new Mechanic(page, 'pointer'))
    await page.getByRole('button', { name: 'Bench card' }).click()
    const card = page.getByRole('main')
    await expect(card.getByRole('heading', { level: 1 })).toHaveText('Case bolts')
    await expect(card.getByRole('img', { name: /Case bolts/ })).toBeVisible()
    await expect(card).toContainText('DEMO')
    await expect(card).toContainText(/angle, 60° \(\d+ to \d+/)
    await expect(card.getByRole('img', { name: /^Turn by/ }).first()).toBeVisible()
    expect(await accessFaults(page)).toEqual([])

    await page.getByRole('group', { name: 'Torque in' }).getByRole('button', { name: 'lbf·ft' }).click()
    await expect(card).toContainText('lbf·ft')
    for (const [paper, width, height] of [
      ['A4', 210, 297],
      ['Letter', 216, 279],
    ] as const) {
      await page.getByRole('button', { name: paper, exact: true }).click()
      const pdf = (await bench.pdf()).toString('latin1')
      const [, points = ''] = /\/MediaBox\s*\[([^\]]*)\]/.exec(pdf) ?? []
      const [, , right, top] = points
        .trim()
        .split(/\s+/)
        .map((each) => Math.round((Number(each) / 72) * 25.4))
      expect([right, top], paper).toEqual([width, height])
    }
  })

  await test.step('the clamp map says first how two orders differ, goes pull by pull, and folds away what it takes for granted', async () => {
    await page.getByRole('button', { name: '← Back' }).click()
    await page.getByRole('button', { name: 'Clamp map' }).click()
    await expect(page.getByText(/^The two orders differ most after pass \d/)).toBeVisible()
    await expect(page.getByRole('img', { name: /^What each fastener holds more or less/ })).toBeVisible()
    await expect(page.getByRole('img', { name: /order as in the spec, after/ })).toBeVisible()
    await page.getByRole('group', { name: 'Order 2' }).getByRole('button', { name: 'spiral' }).click()
    await page.getByRole('group', { name: 'After pass' }).getByRole('button').first().click()
    await expect(page.getByRole('img', { name: /order spiral, after 8 pulls/ })).toBeVisible()

    const slider = page.getByRole('slider', { name: 'Pull by pull' })
    await slider.focus()
    await slider.press('Home')
    const map = page.getByRole('img', { name: /order spiral, after 0 pulls/ })
    await expect(map.locator('[data-id^="fastener/"] text')).toHaveCount(0)
    await slider.press('ArrowRight')
    await expect(
      page.getByRole('img', { name: /order spiral, after 1 / }).locator('[data-id^="fastener/"] text'),
    ).toHaveCount(1)

    await expect(page.getByText('Metal lies on metal')).toBeHidden()
    await page.getByText('What the model assumes').click()
    await expect(page.getByText('Metal lies on metal')).toBeVisible()
    expect(await accessFaults(page)).toEqual([])
  })

  await test.step('the wrenches of the shop can be written down by everybody', async () => {
    await backToTheList(page)
    await page.getByRole('button', { name: 'Wrenches', exact: true }).click()
    await page.getByRole('button', { name: 'Add a wrench' }).click()
    await page.getByRole('button', { name: 'Add an adapter' }).click()
    expect(await accessFaults(page)).toEqual([])
  })
})

published('what is shown beside a pull and a turn can be used by everybody', async ({ bench }) => {
  const { page } = bench
  const mechanic = new Mechanic(page, 'pointer')
  const check = async (screen: string) => expect(await accessFaults(page), screen).toEqual([])
  await mechanic.startBuild(/Published set B/, 'Seen by all', 'I. Brandvold')
  await check('before a run')
  await mechanic.confirm()
  await check('a pull')
  for (const button of ['Wrenches …', 'What this pull does …']) {
    await page.getByRole('button', { name: button }).click()
    await check(button)
    await mechanic.main.click()
    await mechanic.letBounceTimePass()
  }
  for (let made = 0; made < 11; made++) await mechanic.confirm()
  await page.getByRole('group', { name: 'Room' }).getByRole('button', { name: '45°' }).click()
  await check('a turn')
  await page.getByRole('button', { name: 'What this pull does …' }).click()
  await expect(page.getByRole('img', { name: 'Preload against turn' })).toBeVisible()
  await check('preload against turn')
  await mechanic.main.click()
  await mechanic.letBounceTimePass()
  await mechanic.answerReading('131')
  await check('a bolt to be replaced')
})
