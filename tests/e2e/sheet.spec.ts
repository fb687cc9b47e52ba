import { en } from '../../core/words/index.ts'
import { alter } from '../electron/alter.ts'
import { expect, test } from './bench.ts'
import { Mechanic } from './mechanic.ts'
import { pagesOf, pageOf } from './pdf.ts'
import { afterPulls, atStep, openAt } from './seed.ts'
import { saying } from './named.ts'

test.use({ engines: ['strath-6', 'tarn-4'] })

test('the sheet prints on A4 and Letter with marks, shells, pulls, head code and page numbers', async ({
  unopened: bench,
}) => {
  test.setTimeout(120_000)
  const { page } = bench
  const mechanic = new Mechanic(page, 'pointer')
  await openAt(bench, {
    engine: /Tarn 4/,
    name: 'Pump set 7 (“north”)',
    person: 'I. Brandvold',
    marks: ['KLLMK', '1 2 2 3 1', 'ABAB', '7878'],
    far: afterPulls(12),
  })
  const entries = await mechanic.entries()
  await page.getByRole('button', { name: en.buildWindow.sheet }).click()

  for (const paper of ['A4', 'Letter'] as const) {
    await page.getByRole('button', { name: paper }).click()
    const pages = await pagesOf(await bench.pdf())
    const text = pages.join(' ')

    expect(pages.length).toBeGreaterThan(1)
    pages.forEach((words, index) => {
      expect(words).toContain(pageOf(index + 1, pages.length))
      expect(words).toMatch(saying((any) => en.sheet.foot({ number: any, entries, code: any })))
    })
    expect(text).toContain('Pump set 7 (“north”)')
    expect(text).toContain('I. Brandvold')
    expect(text).toContain(en.buildWindow.demo)
    expect(text).toContain('block K, crank 1')
    expect(text).toContain(`Main cap bolts: ${en.sheet.run.states.started}`)
    expect(text).toContain(en.sheet.run.window({ target: '35 N·m', least: '32', most: '38' }))
    expect(text).toContain(en.signals.NOTICE)
    expect(text).not.toContain(en.sheet.page.backToBuild)
  }
})

test('what is skipped and done again is said before, in the plan, and on the sheet', async ({
  unopened: bench,
}) => {
  test.setTimeout(120_000)
  const { page } = bench
  const mechanic = new Mechanic(page, 'pointer')
  const far = atStep('Flange run-out')
  await openAt(bench, { engine: /Strath 6/, name: 'Ferry, port side', person: 'R. Halloran', far })
  const plan = page.getByRole('button', { name: en.buildWindow.allSteps })
  /** A row begins with its sign; its own name may stand in another row too, as what that one comes after. */
  const inPlan = (name: string) => page.getByRole('button', { name: new RegExp(`^\\S+ ${name}`) })

  await page.getByRole('button', { name: en.plan.skip }).click()
  await page.getByLabel(en.plan.whySkip).fill('Measured on the bare crank')
  await mechanic.confirm()

  await plan.click()
  await expect(inPlan('Flange run-out')).toContainText('Measured on the bare crank')
  await inPlan('Flange bolts').click()
  await page.getByRole('button', { name: en.plan.doAgain }).click()
  const again = page.getByRole('region', { name: en.plan.doAgain })
  await expect(again.getByRole('list').first().getByRole('listitem')).toHaveText([
    /Turn crank/,
    /Flange run-out/,
  ])
  await expect(again.getByText(en.plan.deeds.loosen({ step: 'Flange bolts' }))).toBeVisible()
  await page.getByLabel(en.plan.whyAgain).fill('Bolt 4 was oiled twice')
  await mechanic.main.click()
  await expect(page.getByRole('alert')).toContainText(
    saying((any) => en.problems['redo-not-taken-apart']({ step: any, first: any })),
  )
  await mechanic.letBounceTimePass()
  await page.getByLabel(en.plan.isUndone).check()
  await mechanic.confirm()

  await expect(page.getByText(en.plan.again({ reason: 'Bolt 4 was oiled twice', other: null }))).toBeVisible()
  await plan.click()
  await expect(inPlan('Flange bolts')).toContainText(en.buildWindow.stepStates.again)
  await expect(inPlan('Turn crank')).toContainText(
    en.buildWindow.stepStates.againLater({ after: ['Flange bolts'] }),
  )
  await plan.click()
  await page.getByRole('button', { name: en.buildWindow.sheet, exact: true }).click()
  const section = (title: string) => page.locator('section').filter({ hasText: title })
  await expect(section(en.plan.sheet.skipped)).toContainText('Measured on the bare crank')
  await expect(section(en.plan.sheet.redone).first()).toContainText('Bolt 4 was oiled twice')
})

test('the sheet of a build that was altered says so on each page, and its head is not kept', async ({
  unopened: bench,
}) => {
  test.setTimeout(120_000)
  const { page } = bench
  await openAt(bench, {
    engine: /Tarn 4/,
    name: 'Pump set 7',
    person: 'I. Brandvold',
    marks: ['KLLMK', '1 2 2 3 1', 'ABAB', '7878'],
    far: afterPulls(12),
  })
  await bench.kill()
  alter(bench.dataFolder, "UPDATE event SET body = replace(body, 'KLLMK', 'KLLML') WHERE body LIKE '%KLLMK%'")
  await bench.cutPowerAndStartAgain()
  await page.getByRole('button', { name: en.buildWindow.sheet }).click()
  await expect(page.locator('main').getByRole('alert')).toContainText(
    saying((any) => en.problems['build-chain-broken']({ entry: any })),
  )
  const pages = await pagesOf(await bench.pdf())
  expect(pages.length).toBeGreaterThan(0)
  const mark = en.sheet.flaw.altered
  for (const words of pages) {
    expect(words).toMatch(
      saying((any) =>
        en.sheet.flawed({ mark, reason: en.problems['build-chain-broken']({ entry: any }).split(',')[0]! }),
      ),
    )
    expect(words).toMatch(
      saying((any) =>
        en.sheet.flawedFoot({ mark, foot: en.sheet.foot({ number: any, entries: any, code: any }) }),
      ),
    )
    expect(words.split(mark).length - 1).toBeGreaterThanOrEqual(2) // at the head and at the foot
  }
})
