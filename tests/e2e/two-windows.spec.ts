import type { Page } from '@playwright/test'
import { en } from '../../core/words/index.ts'
import { expect, test, type Bench } from './bench.ts'
import { Mechanic } from './mechanic.ts'
import { afterPulls, ask, atStep, openAt, type Far } from './seed.ts'
import { readingField, saying } from './named.ts'
import { stepName } from './spec-of.ts'

const seed = (far: Far) => ({ engine: /Skerry 3/, name: 'On two screens', person: 'R. Halloran', far })

/** The same program in one more window of the browser, with the build that lies open. */
async function secondWindow({ page }: Bench): Promise<Page> {
  const token = await page.evaluate(() => sessionStorage.getItem('bedplate-token'))
  const second = await page.context().newPage()
  await second.clock.install()
  await second.goto(`${new URL(page.url()).origin}/#${token}`)
  await expect(second.getByRole('region', { name: en.buildWindow.drawing })).toBeVisible()
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
    await expect(other.main).toContainText(en.run.confirm.at({ target: '15 N·m', number: 'R5' }))

    await one.confirm()
    await expect(other.main).toContainText(en.run.confirm.at({ target: '15 N·m', number: 'R6' }))
    await expect(
      second.getByText(saying((any) => en.steps.elsewhere.confirmed({ entries: 1, person: any }))),
    ).toBeVisible()

    await other.letBounceTimePass()
    await second.getByRole('button', { name: en.run.takeBack.offer({ number: 'R5' }) }).click()
    await second.getByRole('button', { name: en.run.takeBack.usualReasons[0]! }).click()
    await second.getByRole('button', { name: en.run.takeBack.takeBack }).click()
    await expect(one.main).toContainText(en.run.confirm.at({ target: '15 N·m', number: 'R5' }))

    await one.letBounceTimePass()
    for (let left = 2 + 6; left > 0; left -= 1) await one.confirm()
    await expect(second.getByRole('heading', { name: /Rods free/ })).toBeVisible()
    await actElsewhere(second, { type: 'void-build', reason: 'Wrong engine' })
    await second.evaluate(() => window.dispatchEvent(new Event('focus')))
    await expect(second.getByRole('heading', { name: en.steps.finish.void })).toBeVisible()
    await second.close()
  })

  await test.step('what is typed stays while another window confirms, and is asked about before it counts', async () => {
    await openAt(bench, seed(afterPulls(6 + 4)))
    const one = new Mechanic(bench.page, 'pointer')
    const second = await secondWindow(bench)
    const other = new Mechanic(second, 'pointer')
    await second.getByLabel(readingField).click()
    await second.keyboard.type('15.1', { delay: 90 })
    await one.confirm()
    await expect(second.getByText(en.steps.elsewhere.look)).toBeVisible()
    await expect(second.getByLabel(readingField)).toHaveValue('15.1')
    const before = await other.entries()
    await other.letBounceTimePass()
    await expect(other.main).toContainText(en.steps.elsewhere.goOn)
    await other.main.click()
    await expect(other.main).toContainText(en.run.confirm.reads({ number: 'R6', reading: '15.1 N·m' }))
    expect(await other.entries()).toBe(before)
    await other.letBounceTimePass()
    await other.confirm()
    await expect(one.main).toContainText(saying((any) => en.run.confirm.turned({ number: any, target: any })))
    await second.close()
  })

  await test.step('a window that is out of date is refused in words, and shows what is there now', async () => {
    await openAt(bench, seed(atStep('Lay crank')))
    const mechanic = new Mechanic(page, 'pointer')
    const before = await mechanic.entries()
    await actElsewhere(page, { type: 'fit-part', step: 'lay-crank' })
    await mechanic.main.click()
    await expect(page.getByText(saying((any) => en.problems['build-moved-on']({ last: any })))).toBeVisible()
    await expect.poll(() => mechanic.entries()).toBe(before + 1)
    await expect(page.getByRole('heading', { name: stepName('skerry-3', 'end-float') })).toBeVisible()
  })
})
