import type { Page } from '@playwright/test'
import { expect, test, type Bench } from './bench.ts'
import { Mechanic } from './mechanic.ts'
import { afterPulls, ask, atStep, openAt, type Far } from './seed.ts'

const seed = (far: Far) => ({ engine: /Skerry 3/, name: 'On two screens', person: 'R. Halloran', far })

/** The same program in one more window of the browser, with the build that lies open. */
async function secondWindow({ page }: Bench): Promise<Page> {
  const token = await page.evaluate(() => sessionStorage.getItem('bedplate-token'))
  const second = await page.context().newPage()
  await second.clock.install()
  await second.goto(`${new URL(page.url()).origin}/#${token}`)
  await expect(second.getByRole('region', { name: 'Drawing' })).toBeVisible()
  return second
}

/** A command from elsewhere: no window of this browser tells of it. */
async function actElsewhere(page: Page, command: Parameters<typeof ask<'builds.act'>>[2]['command']) {
  const [line] = await ask(page, 'builds.list', {})
  if (!line) throw new Error('there is no build')
  await ask(page, 'builds.act', { build: line.id, after: line.entries, person: 'Åse Lind', command })
}

test('two windows on one build', async ({ unopened: bench }) => {
  const { page } = bench
  await test.step('two windows on one build follow each other: pull, take back, the end of a step, void', async () => {
    test.setTimeout(120_000)
    await openAt(bench, seed(afterPulls(6 + 4)))
    const one = new Mechanic(bench.page, 'pointer')
    const second = await secondWindow(bench)
    const other = new Mechanic(second, 'pointer')
    await expect(other.main).toContainText('R5 is at 15 N·m')

    await one.confirm()
    await expect(other.main).toContainText('R6 is at 15 N·m')
    await expect(second.getByText('Another window has confirmed 1 entry')).toBeVisible()

    await other.letBounceTimePass()
    await second.getByRole('button', { name: /Take back R5/ }).click()
    await second.getByRole('button', { name: 'Pressed by mistake' }).click()
    await second.getByRole('button', { name: 'Take it back' }).click()
    await expect(one.main).toContainText('R5 is at 15 N·m')

    await one.letBounceTimePass()
    for (let left = 2 + 6; left > 0; left -= 1) await one.confirm()
    await expect(second.getByRole('heading', { name: /Rods free/ })).toBeVisible()
    await actElsewhere(second, { type: 'void-build', reason: 'Wrong engine' })
    await second.evaluate(() => window.dispatchEvent(new Event('focus')))
    await expect(second.getByRole('heading', { name: 'Void' })).toBeVisible()
    await second.close()
  })

  await test.step('what is typed stays while another window confirms, and is asked about before it counts', async () => {
    await openAt(bench, seed(afterPulls(6 + 4)))
    const one = new Mechanic(bench.page, 'pointer')
    const second = await secondWindow(bench)
    const other = new Mechanic(second, 'pointer')
    await second.getByLabel(/^Reading/).click()
    await second.keyboard.type('15.1', { delay: 90 })
    await one.confirm()
    await expect(second.getByText('Does it still belong here?')).toBeVisible()
    await expect(second.getByLabel(/^Reading/)).toHaveValue('15.1')
    const before = await other.entries()
    await other.letBounceTimePass()
    await expect(other.main).toContainText('I have looked: continue')
    await other.main.click()
    await expect(other.main).toContainText('R6 reads 15.1 N·m')
    expect(await other.entries()).toBe(before)
    await other.letBounceTimePass()
    await other.confirm()
    await expect(one.main).toContainText('turned')
    await second.close()
  })

  await test.step('a window that is out of date is refused in words, and shows what is there now', async () => {
    await openAt(bench, seed(atStep('Lay crank')))
    const mechanic = new Mechanic(page, 'pointer')
    const before = await mechanic.entries()
    await actElsewhere(page, { type: 'fit-part', step: 'lay-crank' })
    await mechanic.main.click()
    await expect(page.getByText('Something was added to this build elsewhere')).toBeVisible()
    await expect.poll(() => mechanic.entries()).toBe(before + 1)
    await expect(page.getByRole('heading', { name: /End float/ })).toBeVisible()
  })
})
