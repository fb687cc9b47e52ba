import { en } from '../../core/words/index.ts'
import { expect, test } from './bench.ts'
import { Mechanic } from './mechanic.ts'
import { afterPulls, openAt } from './seed.ts'
import { readingField, saying } from './named.ts'

/** At the rod bolts of the split-case three. */
const leftAt = (fastener: string, pass: number) =>
  [
    en.engines.standing.step({ place: 11, of: 21, name: 'Rod bolts' }),
    en.engines.standing.next({ fastener, pass, passes: 3 }),
  ].join(' · ')

test('the list of builds offers a demo, and says where a build was left', async ({ bench }) => {
  const { page } = bench
  await test.step('a bench without builds offers a demo build that is half-way done', async () => {
    const mechanic = new Mechanic(page, 'pointer')
    await page.getByRole('button', { name: en.engines.sample.take['half-way'] }).click()
    await expect(
      page.getByRole('heading', {
        name: `Rod bolts · ${en.run.heading({ ...{ cap: null, step: null, ownOrder: false }, pass: 3, passes: 3, kind: 'angle' })}`,
      }),
    ).toBeVisible()
    await page.getByLabel(readingField).fill('61')
    await mechanic.letBounceTimePass()
    await mechanic.confirm()
    await expect(page.getByText(/R4/).first()).toBeVisible()
    await page.getByRole('button', { name: en.buildWindow.sheet, exact: true }).click()
    await expect(page.getByText(en.engines.sample.problem).first()).toBeVisible()
    await expect(page.getByText(en.engines.sample.machinist).first()).toBeVisible()
    await page.getByRole('button', { name: en.sheet.page.backToBuild }).first().click()
    await page.getByRole('button', { name: en.buildWindow.allBuilds }).click()
    const line = page.getByRole('button', { name: en.engines.sample.name })
    await expect(line).toContainText(leftAt('R4', 3))
    await expect(line).toContainText(
      saying((any) => en.engines.buildLine({ engine: any, demo: true, serial: any })),
    )
    await expect(page.getByRole('button', { name: en.engines.sample.take['half-way'] })).toBeHidden()
  })

  await test.step('the list of builds says where a build was left, and follows what is done', async () => {
    const mechanic = new Mechanic(bench.page, 'pointer')
    await openAt(bench, {
      engine: /Skerry 3/,
      name: 'Left at the rods',
      person: 'R. Halloran',
      far: afterPulls(6 + 4),
    })
    const line = page.getByRole('button', { name: /Left at the rods/ })
    const toTheList = async () => {
      await page.getByRole('button', { name: en.buildWindow.allBuilds }).click()
      await expect(line).toBeVisible()
    }
    await toTheList()
    await expect(line).toContainText(leftAt('R5', 2))
    await expect(line).not.toContainText(en.engines.standing.paused({ reason: '' }))

    await line.click()
    await mechanic.confirm()
    await page.getByRole('button', { name: en.run.problem }).click()
    await page
      .getByLabel(saying((any) => en.run.problemForm.what({ number: any })))
      .fill('Thread feels rough')
    await page.getByRole('button', { name: en.run.problemForm.note }).click()
    await expect(page.getByText('Thread feels rough').first()).toBeVisible()
    await toTheList()
    await expect(line).toContainText(en.engines.standing.next({ fastener: 'R6', pass: 2, passes: 3 }))
    await expect(line).toContainText(en.engines.standing.openProblems({ problems: 1 }))
  })
})
