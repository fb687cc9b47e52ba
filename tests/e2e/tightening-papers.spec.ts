import { en } from '../../core/words/index.ts'
import { accessFaults } from './accessibility.ts'
import { expect, test } from './bench.ts'
import { Mechanic } from './mechanic.ts'
import { test as published } from './published-specs.ts'
import { backToTheList } from './seed.ts'
import { saying } from './named.ts'

test.setTimeout(120_000)

const { clampMap } = en
/** What is said first of two orders, whatever the pass is. */
const differMost = saying(
  ...(Object.keys(en.passes.kinds) as (keyof typeof en.passes.kinds)[]).map(
    (kind) => (any: never) =>
      clampMap
        .differMost({
          ...{ first: 'spec' as const, second: 'spec' as const, pass: any, kind, step: null },
          ...{ fastener: any, firstLoad: any, secondLoad: any, atLast: any },
        })
        .slice(0, 1),
  ),
)
const orders = Object.keys(clampMap.orders) as (keyof typeof clampMap.orders)[]
const mapOfDifference = saying(
  ...orders.map((second) => (any: never) => clampMap.difference({ first: 'spec', second, pull: any })),
)
const mapIn = (order: keyof typeof clampMap.orders, pull?: number) =>
  saying((any) => clampMap.picture({ face: any, order, pull: pull ?? any }))

/** The split case three at its case bolts, which wait for others: what they are can be looked at all the same. */
async function atCaseBolts(mechanic: Mechanic) {
  await mechanic.startBuild(/Skerry 3/, 'Papers', 'I. Brandvold')
  await mechanic.page.getByRole('button', { name: en.buildWindow.allSteps }).click()
  await mechanic.page.getByRole('button', { name: /Case bolts/ }).click()
}

test('a procedure on paper and as a clamp map, and the wrenches for it', async ({ bench }) => {
  const { page } = bench
  await test.step('a bench card has the order, the passes, boxes to tick and the angle, on A4 and Letter', async () => {
    await atCaseBolts(new Mechanic(page, 'pointer'))
    await page.getByRole('button', { name: en.run.benchCard }).click()
    const card = page.getByRole('main')
    await expect(card.getByRole('heading', { level: 1 })).toHaveText('Case bolts')
    await expect(card.getByRole('img', { name: /Case bolts/ })).toBeVisible()
    await expect(card).toContainText(en.buildWindow.demo)
    await expect(card).toContainText(new RegExp(`${en.passes.kinds.angle}, 60° \\(`))
    await expect(
      card.getByRole('img', { name: saying((any) => en.benchCard.turnBy({ angle: any })) }).first(),
    ).toBeVisible()
    expect(await accessFaults(page)).toEqual([])

    await page
      .getByRole('group', { name: en.settings.torqueIn })
      .getByRole('button', { name: 'lbf·ft' })
      .click()
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
    await page.getByRole('button', { name: en.sheet.page.backToBuild }).click()
    await page.getByRole('button', { name: en.run.clampMap }).click()
    await expect(page.getByText(differMost)).toBeVisible()
    await expect(page.getByRole('img', { name: mapOfDifference })).toBeVisible()
    await expect(page.getByRole('img', { name: mapIn('spec') })).toBeVisible()
    await page
      .getByRole('group', { name: en.clampMap.whichOrder({ place: 2 }) })
      .getByRole('button', { name: en.clampMap.orders.spiral })
      .click()
    await page.getByRole('group', { name: en.clampMap.afterPass }).getByRole('button').first().click()
    await expect(page.getByRole('img', { name: mapIn('spiral', 8) })).toBeVisible()

    const slider = page.getByRole('slider', { name: en.clampMap.pulls })
    await slider.focus()
    await slider.press('Home')
    const map = page.getByRole('img', { name: mapIn('spiral', 0) })
    await expect(map.locator('[data-id^="fastener/"] text')).toHaveCount(0)
    await slider.press('ArrowRight')
    await expect(
      page.getByRole('img', { name: mapIn('spiral', 1) }).locator('[data-id^="fastener/"] text'),
    ).toHaveCount(1)

    await expect(page.getByText(en.flangeAssumptions.metal)).toBeHidden()
    await page.getByText(en.clampMap.assumptions).click()
    await expect(page.getByText(en.flangeAssumptions.metal)).toBeVisible()
    expect(await accessFaults(page)).toEqual([])
  })

  await test.step('the wrenches of the shop can be written down by everybody', async () => {
    await backToTheList(page)
    await page.getByRole('button', { name: en.engines.wrenches, exact: true }).click()
    await page.getByRole('button', { name: en.wrenches.add }).click()
    await page.getByRole('button', { name: en.wrenches.form.addAdapter }).click()
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
  for (const button of [en.run.wrench.offer, en.run.explained.offer]) {
    await page.getByRole('button', { name: button }).click()
    await check(button)
    await mechanic.main.click()
    await mechanic.letBounceTimePass()
  }
  for (let made = 0; made < 11; made++) await mechanic.confirm()
  await page.getByRole('group', { name: en.run.angle.room }).getByRole('button', { name: '45°' }).click()
  await check('a turn')
  await page.getByRole('button', { name: en.run.explained.offer }).click()
  await expect(page.getByRole('img', { name: en.run.explained.plot.title })).toBeVisible()
  await check('preload against turn')
  await mechanic.main.click()
  await mechanic.letBounceTimePass()
  await mechanic.answerReading('131')
  await check('a bolt to be replaced')
})
