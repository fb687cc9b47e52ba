import type { Page } from '@playwright/test'
import { en } from '../../core/words/index.ts'
import { expect, type Bench } from './bench.ts'
import { onTheDrawing } from './drawing.ts'
import { atTheFirstPull, atTheStart, sets, test } from './published-specs.ts'
import { backToTheList } from './seed.ts'
import { named, saying, sayingWithNumbers } from './named.ts'

test.setTimeout(120_000)

const bolt = (page: Page, number: number) => onTheDrawing(page, sets.B.spec, 'block', `bolt-${number}`)
const pickedBolt = (page: Page, number: number) =>
  page.getByRole('heading', {
    name: saying((any) => en.run.picked.title({ number: String(number), where: any })),
  })
const drawing = (page: Page) => page.getByRole('region', { name: en.buildWindow.drawing })
/** Says how many times larger than the whole sheet the drawing is; absent while the whole sheet is in sight. */
const zoom = (page: Page) =>
  drawing(page).getByRole('button', {
    name: sayingWithNumbers(() => en.buildWindow.timesLarger({ times: 1 })),
  })
const sign = (page: Page) =>
  drawing(page)
    .getByText(
      saying(
        (any) => en.drawing.view({ face: 'Block', from: { of: 'above' }, nose: any }),
        (any) => en.drawing.view({ face: 'Block', from: { of: 'below' }, nose: any }),
      ),
    )
    .first()

async function zoomed(page: Page): Promise<number> {
  return Number.parseFloat(await zoom(page).innerText())
}

async function letGoOf(page: Page) {
  await page
    .getByRole('button', {
      name: named(
        () => en.parts.cancel,
        () => en.run.picked.back,
      ),
    })
    .click()
}

test('the drawing is handled with the mouse and by keys, saved as vectors, and shown alone at the bench', async ({
  unopened: bench,
}) => {
  const { page } = bench
  await test.step('with the mouse: the wheel comes nearer to where it points, a drag moves the sheet, a tap takes what is there', async () => {
    await atTheFirstPull(bench, 'pointer')
    const at = await bolt(page, 5)
    await page.mouse.move(at.x, at.y)
    await page.mouse.wheel(0, -500)
    await expect(zoom(page)).toContainText('2.1 ×')
    await page.mouse.click(at.x, at.y)
    await expect(pickedBolt(page, 5)).toBeVisible()
    await letGoOf(page)

    await page.mouse.move(at.x, at.y)
    await page.mouse.down()
    await page.mouse.move(at.x + 60, at.y + 30, { steps: 4 })
    await page.mouse.up()
    await expect(pickedBolt(page, 5)).toBeHidden()
    await page.mouse.click(at.x + 60, at.y + 30)
    await expect(pickedBolt(page, 5)).toBeVisible()
    await letGoOf(page)

    await zoom(page).click()
    await expect(zoom(page)).toBeHidden()
    await page.mouse.click(at.x, at.y)
    await expect(pickedBolt(page, 5)).toBeVisible()
  })

  await test.step('with keys: + and −, arrows where the sheet is larger than its window, Home for all of it, F and R', async () => {
    const mechanic = await atTheFirstPull(bench, 'keys')
    const { keyboard } = page
    await keyboard.press('ArrowRight')
    await expect(zoom(page)).toBeHidden()
    await keyboard.press('+')
    await expect(zoom(page)).toContainText('1.4 ×')
    await keyboard.press('+')
    await expect(zoom(page)).toContainText('2.0 ×')
    await keyboard.press('-')
    await expect(zoom(page)).toContainText('1.4 ×')

    // From the middle of the sheet, 1.4 times nearer, and moved by one arrow key.
    const board = (await drawing(page).locator('.board').boundingBox())!
    const middle = { x: board.x + board.width / 2, y: board.y + board.height / 2 }
    const at = await bolt(page, 3)
    await keyboard.press('ArrowRight')
    await page.mouse.click(middle.x + (at.x - middle.x) * 1.4 - 80, middle.y + (at.y - middle.y) * 1.4)
    await expect(pickedBolt(page, 3)).toBeVisible()
    await letGoOf(page)

    await keyboard.press('Home')
    await expect(zoom(page)).toBeHidden()
    // A reading can be typed here: 0 begins one.
    await keyboard.press('+')
    await expect(zoom(page)).toBeVisible()
    // Later than a gauge, whose + would be the sign of what follows.
    await page.waitForTimeout(300)
    await keyboard.press('0')
    await expect(page.getByLabel(en.run.readingIn({ unit: 'N·m', onScale: false }))).toHaveValue('0')
    await expect(zoom(page)).toBeVisible()
    await keyboard.press('Backspace')
    await page.mouse.click(board.x + 5, board.y + board.height - 5)

    await expect(sign(page)).toContainText(
      en.drawing.view({ face: 'Block', from: { of: 'below' }, nose: 'left' }),
    )
    await keyboard.press('f')
    await expect(sign(page)).toContainText(
      en.drawing.view({ face: 'Block', from: { of: 'above' }, nose: 'left' }),
    )
    await keyboard.press('r')
    await expect(sign(page)).toContainText(
      en.drawing.view({ face: 'Block', from: { of: 'above' }, nose: 'top' }),
    )
    for (const key of ['r', 'r', 'r', 'f']) await keyboard.press(key)
    await expect(sign(page)).toContainText(
      en.drawing.view({ face: 'Block', from: { of: 'below' }, nose: 'left' }),
    )
    expect(await mechanic.entries()).toBe(2)
  })

  await test.step('0 brings the whole sheet back where no reading can be typed', async () => {
    await atTheStart(bench, 'pointer')
    await page.keyboard.press('+')
    await expect(zoom(page)).toBeVisible()
    await page.keyboard.press('0')
    await expect(zoom(page)).toBeHidden()
  })

  await test.step('the drawing is saved as vectors that show what the list beside it says', async () => {
    const mechanic = await atTheFirstPull(bench, 'pointer')
    await mechanic.confirm()
    const { name, svg } = await savedDrawing(bench)
    expect(name).toMatch(/^drawing-\d{4}-\d{3}-block\.svg$/)
    const listed = await drawing(page)
      .getByRole('list', { name: en.view.inWords })
      .getByRole('listitem')
      .evaluateAll((items) => items.map((item) => item.getAttribute('data-about') ?? ''))
    const drawn = [...svg.matchAll(/data-id="([^"]+)"/g)].map(([, id]) => id ?? '')
    const bolts = listed.filter((about) => about.startsWith('fastener/'))
    expect(bolts).toHaveLength(10)
    for (const about of bolts)
      expect(
        drawn.some((id) => id.startsWith(`${about}/`)),
        about,
      ).toBe(true)
    expect(svg).toContain(await sign(page).innerText())
    expect(svg).toContain('fill="#ffffff"')
    expect(svg).not.toContain('style=')
  })

  await test.step('the bench view has only what is next, takes every key, and is left by Escape', async () => {
    const mechanic = await atTheFirstPull(bench, 'keys')
    await page.emulateMedia({ reducedMotion: 'reduce' })
    const steps = page.getByRole('navigation', { name: en.buildWindow.stepsOfBuild })
    await page.keyboard.press('b')
    await expect(steps).toBeHidden()
    await expect(page.getByRole('button', { name: en.view.open })).toBeHidden()
    await expect(page.getByRole('list', { name: en.run.orderOfPass })).toBeHidden()
    await expect(page.getByRole('button', { name: en.run.problem })).toBeHidden()
    expect((await mechanic.main.boundingBox())!.height).toBeGreaterThanOrEqual(94)
    expect(await page.evaluate(() => document.getAnimations().length)).toBe(0)

    await expect(page.locator('[data-entries]')).toBeHidden()
    await page.keyboard.press('Enter')
    await expect(mechanic.main).toContainText(en.run.confirm.at({ target: '40.7 N·m', number: '2' }))
    await mechanic.letBounceTimePass()
    await page.keyboard.type('40')
    await expect(mechanic.main).toContainText(en.run.confirm.reads({ number: '2', reading: '40 N·m' }))
    await page.keyboard.press('Enter')
    await expect(mechanic.main).toContainText(en.run.confirm.at({ target: '40.7 N·m', number: '3' }))
    await mechanic.letBounceTimePass()

    await page.mouse.click(5, 5)
    await page.keyboard.press('f')
    await expect(sign(page)).toContainText(
      en.drawing.view({ face: 'Block', from: { of: 'above' }, nose: 'left' }),
    )
    await page.keyboard.press('Backspace')
    await page.getByLabel(en.run.takeBack.why({ number: '2' })).fill('Pressed twice')
    await page.keyboard.press('Enter')
    await expect(mechanic.main).toContainText(en.run.confirm.at({ target: '40.7 N·m', number: '2' }))

    await page.keyboard.press('Escape')
    await expect(steps).toBeVisible()
    await page.getByRole('button', { name: en.buildWindow.benchView }).click()
    await expect(steps).toBeHidden()
    await page.getByRole('button', { name: en.view.leave }).click()
    await expect(steps).toBeVisible()
    await page.emulateMedia({ reducedMotion: 'no-preference' })
    await page.keyboard.press('f')
    await expect(sign(page)).toContainText(
      saying((any) => en.drawing.view({ face: 'Block', from: { of: 'below' }, nose: any })),
    )
  })

  await test.step('keys of one character can be switched off, and the list of keys says so', async () => {
    await atTheFirstPull(bench, 'keys')
    await page.keyboard.press('?')
    const list = page.getByRole('dialog', { name: en.settings.keys })
    await expect(list.getByRole('row', { name: /^B / })).toContainText(en.keys.does.benchView)
    await list.getByRole('button', { name: en.settings.off }).click()
    await expect(list.getByRole('row', { name: /^B / })).toContainText(en.settings.switchedOff)
    await list.getByRole('button', { name: en.parts.close }).click()
    await expect(list).toBeHidden()
    for (const key of ['f', 'r', 'b', '?', '+']) await page.keyboard.press(key)
    await page.clock.fastForward(500)
    await expect(sign(page)).toContainText(
      en.drawing.view({ face: 'Block', from: { of: 'below' }, nose: 'left' }),
    )
    await expect(zoom(page)).toBeHidden()
    await expect(list).toBeHidden()
    await expect(page.getByRole('navigation', { name: en.buildWindow.stepsOfBuild })).toBeVisible()
    // Digits still begin a reading.
    await page.keyboard.type('40')
    await expect(page.getByLabel(en.run.readingIn({ unit: 'N·m', onScale: false }))).toHaveValue('40')
  })
})

test.describe('on a screen that is touched', () => {
  test.use({ hasTouch: true })

  test('a tap takes a bolt, two fingers come nearer, one moves the sheet', async ({ unopened: bench }) => {
    const { page } = bench
    await atTheFirstPull(bench, 'pointer')
    const at = await bolt(page, 6)
    await page.touchscreen.tap(at.x, at.y)
    await expect(pickedBolt(page, 6)).toBeVisible()
    await letGoOf(page)

    const fingers = await bench.protocol()
    const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', places: readonly (readonly number[])[]) =>
      fingers.send('Input.dispatchTouchEvent', {
        type,
        touchPoints: places.map(([x = 0, y = 0], id) => ({ x, y, id })),
      })
    // Each finger 40 px from the bolt, then 100 px: two and a half times nearer, the bolt stays between them.
    await touch('touchStart', [[at.x - 40, at.y]])
    await touch('touchStart', [
      [at.x - 40, at.y],
      [at.x + 40, at.y],
    ])
    for (const apart of [60, 80, 100])
      await touch('touchMove', [
        [at.x - apart, at.y],
        [at.x + apart, at.y],
      ])
    await touch('touchEnd', [])
    expect(await zoomed(page)).toBeCloseTo(2.5, 1)
    await page.touchscreen.tap(at.x, at.y)
    await expect(pickedBolt(page, 6)).toBeVisible()
    await letGoOf(page)

    await touch('touchStart', [[at.x, at.y]])
    for (const by of [20, 40, 60]) await touch('touchMove', [[at.x - by, at.y + by]])
    await touch('touchEnd', [])
    await page.touchscreen.tap(at.x - 60, at.y + 60)
    await expect(pickedBolt(page, 6)).toBeVisible()
  })
})

test('how the bench is set up stays so: the screen measured, the engine turned, read from afar', async ({
  bench,
}) => {
  const { page } = bench
  let measured = 0
  await test.step('the screen is measured against a bank card by keys and by drag', async () => {
    const edge = page.getByRole('slider', { name: en.settings.cardWidth })
    await page.getByRole('button', { name: en.settings.title }).click()
    await expect(page.getByText(en.settings.notMeasured({ pxPerMm: 3.78 }))).toBeVisible()
    await expect(edge).toBeFocused()
    for (let press = 0; press < 8; press++) await page.keyboard.press('ArrowRight')
    for (const key of ['+', '+', '-']) await page.keyboard.press(key)
    // 323.5 px + 9 · 0.25 px over 85.6 mm.
    await expect(edge).toHaveAttribute('aria-valuenow', '3.806')

    const box = (await edge.boundingBox())!
    const from = { x: box.x + box.width / 2, y: box.y + box.height / 2 }
    await page.mouse.move(from.x, from.y)
    await page.mouse.down()
    await page.mouse.move(from.x + 100, from.y, { steps: 4 })
    await page.mouse.up()
    measured = Number(await edge.getAttribute('aria-valuenow'))
    expect(measured).toBeCloseTo(3.806 + 100 / 85.6, 1)
    await page.getByRole('button', { name: en.settings.asLargeAsCard }).click()
    await expect(page.getByText(en.settings.measured({ pxPerMm: measured }))).toBeVisible()
  })

  await test.step('how the engine lies is said in the shop’s words, and is kept with the build', async () => {
    await atTheFirstPull(bench, 'pointer')
    await page.getByRole('button', { name: en.view.open }).click()
    const view = page.getByRole('group', { name: en.view.title, exact: true })
    await view.getByRole('button', { name: en.view.noseSides.bottom }).click()
    await expect(sign(page)).toContainText(
      en.drawing.view({ face: 'Block', from: { of: 'below' }, nose: 'bottom' }),
    )
    await view.getByRole('button', { name: en.drawing.orientations.upright, exact: true }).click()
    await expect(sign(page)).toContainText(
      en.drawing.view({ face: 'Block', from: { of: 'above' }, nose: 'bottom' }),
    )
    await expect(view).toBeHidden()

    await page.getByRole('button', { name: en.buildWindow.allBuilds }).click()
    await page.getByRole('button', { name: /-001 Set B/ }).click()
    await expect(sign(page)).toContainText(
      en.drawing.view({ face: 'Block', from: { of: 'above' }, nose: 'bottom' }),
    )
  })

  await test.step('both are kept over a new start of the host, and the measurement is forgotten when it is asked to', async () => {
    await bench.cutPowerAndStartAgain()
    await expect(sign(page)).toContainText(
      en.drawing.view({ face: 'Block', from: { of: 'above' }, nose: 'bottom' }),
    )
    // 25 mm of this screen.
    const button = (await page.locator('.confirm button').boundingBox())!
    expect(button.height).toBeGreaterThanOrEqual(25 * measured - 0.5)
    await page.getByRole('button', { name: en.buildWindow.allBuilds }).click()
    await page.getByRole('button', { name: en.settings.title }).click()
    await page.getByRole('button', { name: en.settings.forgetMeasured }).click()
    await expect(page.getByText(en.settings.notMeasured({ pxPerMm: 3.78 }))).toBeVisible()
  })

  await test.step('from 2 m the next number, its value and its unit have capitals of 44 px, and so has the drawing', async () => {
    await backToTheList(page)
    await page
      .getByRole('group', { name: en.settings.readFrom })
      .getByRole('button', { name: '2 m', exact: true })
      .click()
    await atTheFirstPull(bench, 'pointer')
    for (const selector of ['.next .disc', '.next .number', '.next .unit'])
      await expect.poll(() => capitals(page, selector), selector).toBeGreaterThanOrEqual(44)
    // None of it is cut off at the edge of the panel.
    const panel = page.getByRole('region', { name: en.steps.frame.title })
    await expect.poll(() => panel.evaluate((element) => element.scrollWidth - element.clientWidth)).toBe(0)
    const board = (await drawing(page).locator('.board').boundingBox())!
    const { svg } = await savedDrawing(bench)
    const texts = textsOf(svg, board.width)
    for (const wanted of ['1', '40.7 N·m']) {
      const drawn = texts
        .filter(({ text }) => text?.replace('\u00a0', ' ') === wanted)
        .map(({ capital }) => capital)
      expect(Math.max(...drawn), wanted).toBeGreaterThanOrEqual(43.9)
    }
  })
})

/** Height of the capitals of a text of the page, in px. */
async function capitals(page: Page, selector: string): Promise<number> {
  const size = await page.locator(selector).evaluate((element) => getComputedStyle(element).fontSize)
  return Number.parseFloat(size) * 0.672
}

async function savedDrawing(bench: Bench): Promise<{ readonly name: string; readonly svg: string }> {
  const { page } = bench
  await page.getByRole('button', { name: en.view.open }).click()
  const { name, bytes } = await bench.save(() => page.getByRole('button', { name: en.view.save }).click())
  await page.getByRole('button', { name: en.view.open }).click()
  return { name, svg: bytes.toString() }
}

/** The texts of an SVG with the height of their capitals, in px of a sheet of a width. */
function textsOf(svg: string, widthPx: number) {
  const width = Number(/viewBox="\S+ \S+ (\S+) /.exec(svg)?.[1])
  return [...svg.matchAll(/<text [^>]*font-size="([^"]+)"[^>]*>([^<]*)</g)].map(([, size, text]) => ({
    text,
    capital: (Number(size) * 0.672 * widthPx) / width,
  }))
}
