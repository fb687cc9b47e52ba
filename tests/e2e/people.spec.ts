import type { Page } from '@playwright/test'
import { en } from '../../core/words/index.ts'
import { accessFaults } from './accessibility.ts'
import { expect, test } from './bench.ts'
import { typeAsInstrument } from './instrument.ts'
import { Mechanic } from './mechanic.ts'
import { saying } from './named.ts'

interface Person {
  readonly name: string
  readonly role?: 'mechanic' | 'apprentice'
  readonly pin?: string
  readonly badge?: string
}

/** Fills the list of people from the start page, and goes back to it. */
async function keepPeople(page: Page, people: readonly Person[]) {
  await page.getByRole('button', { name: en.engines.people, exact: true }).click()
  for (const { name, role = 'mechanic', pin, badge } of people) {
    await page.getByRole('button', { name: en.people.add }).click()
    const form = page.getByRole('form', { name: en.people.form.new })
    await form.getByLabel(en.people.form.name).fill(name)
    await form.getByRole('button', { name: en.people.roles[role] }).click()
    if (badge) {
      await form.getByRole('button', { name: en.people.form.teachBadge }).click()
      await typeAsInstrument(page, badge)
      await expect(form).toContainText(badge)
    }
    if (pin) await form.getByLabel(en.people.form.firstPin).fill(pin)
    await form.getByRole('button', { name: en.people.form.keep }).click()
    await expect(page.getByRole('button', { name: en.people.change({ name }) })).toBeVisible()
  }
  await page.getByRole('button', { name: en.parts.enginesAndBuilds }).click()
}

const atTheBench = (page: Page) =>
  page.locator('dl div', { hasText: en.buildWindow.atTheBench }).getByRole('button')

test('who is at the bench is chosen by a tap on the name, typed, or proven by a PIN', async ({ bench }) => {
  const { page } = bench
  await keepPeople(page, [{ name: 'Bo Lind' }, { name: 'Cy Vik' }])
  const mechanic = new Mechanic(page, 'pointer')
  await mechanic.startBuild(/Skerry 3/, 'Ferry', 'Bo Lind')
  await mechanic.noteMarks('1 2 2 1')

  await atTheBench(page).click()
  expect(await accessFaults(page)).toEqual([])
  await page.getByRole('dialog').getByRole('button', { name: 'Cy Vik' }).click()
  await expect(atTheBench(page)).toHaveText('Cy Vik')
  await mechanic.noteMarks('F G G H')

  await atTheBench(page).click()
  await page.getByLabel(en.people.choose.anotherName).fill('A guest')
  await page.getByRole('button', { name: en.people.choose.takeName }).click()
  await expect(atTheBench(page)).toHaveText('A guest')

  await page.getByRole('button', { name: en.buildWindow.allBuilds }).click()
  await keepPeople(page, [{ name: 'Ana Ruiz', pin: '4711' }])
  await page.getByRole('button', { name: /Ferry/ }).first().click()
  await atTheBench(page).focus()
  await page.keyboard.press('Enter')
  await page.getByRole('dialog').getByRole('button', { name: 'Ana Ruiz' }).press('Enter')
  await expect(page.getByRole('dialog')).toContainText(en.problems['pin-wanted']({ name: 'Ana Ruiz' }))
  expect(await accessFaults(page)).toEqual([])
  await page.getByRole('textbox', { name: en.people.pin }).fill('0000')
  await page.keyboard.press('Enter')
  await expect(page.getByRole('alert')).toContainText(
    saying(() => en.problems['pin-wrong']({ name: 'Ana Ruiz' })),
  )
  await page.getByRole('textbox', { name: en.people.pin }).fill('4711')
  await page.keyboard.press('Enter')
  await expect(atTheBench(page)).toHaveText('Ana Ruiz')
  await mechanic.noteMarks('4 4 5')

  await page.getByRole('button', { name: en.buildWindow.sheet, exact: true }).click()
  const steps = page.getByRole('row')
  await expect(steps.filter({ hasText: 'Case marks' })).toContainText('Bo Lind')
  await expect(steps.filter({ hasText: 'Crank marks' })).toContainText('Cy Vik')
  await expect(steps.filter({ hasText: 'Rod marks' })).toContainText('Ana Ruiz')
  await expect(page.getByText('Bo Lind, Cy Vik, Ana Ruiz')).toBeVisible()
})

test('a badge that types changes who is at the bench, and means nothing else', async ({ bench }) => {
  const { page } = bench
  await keepPeople(page, [
    { name: 'Bo Lind', badge: 'FR-0417' },
    { name: 'Cy Vik', badge: '60417' },
    { name: 'Ana Ruiz', badge: 'ANA-9', pin: '4711' },
  ])
  const mechanic = new Mechanic(page, 'pointer')
  await mechanic.startBuild(/Skerry 3/, 'Ferry', 'A guest')
  const before = await mechanic.entries()

  // Into a field that takes marks, and with no open step, where F would flip the drawing.
  await page.getByLabel(en.steps.marks.asStamped).fill('1 2')
  await typeAsInstrument(page, 'FR-0417')
  await expect(atTheBench(page)).toHaveText('Bo Lind')
  await expect(page.getByLabel(en.steps.marks.asStamped)).toHaveValue('1 2')
  await page.getByRole('heading', { level: 1 }).click()
  await typeAsInstrument(page, 'ANA-9')
  await expect(page.getByRole('dialog')).toContainText(en.problems['pin-wanted']({ name: 'Ana Ruiz' }))
  await page.getByRole('button', { name: en.people.choose.somebodyElse }).click()
  await typeAsInstrument(page, '60417')
  await expect(atTheBench(page)).toHaveText('Cy Vik')
  await page.getByRole('heading', { level: 1 }).click()
  await typeAsInstrument(page, 'FR-0417')
  await expect(atTheBench(page)).toHaveText('Bo Lind')
  await expect(page.getByRole('region', { name: en.buildWindow.drawing })).toContainText(
    saying((any) => en.drawing.view({ face: any, from: { of: 'below' }, nose: any })),
  )
  await typeAsInstrument(page, 'X-99')
  await expect(page.getByRole('alert')).toContainText(saying(() => en.problems['badge-unknown']({})))
  await page.keyboard.press('Escape')
  await expect(page.getByRole('dialog')).toBeHidden()
  expect(await mechanic.entries()).toBe(before)

  // A key by hand still means the drawing.
  await mechanic.letBounceTimePass()
  await page.keyboard.press('f')
  await mechanic.letBounceTimePass()
  await expect(page.getByRole('region', { name: en.buildWindow.drawing })).toContainText(
    saying((any) => en.drawing.view({ face: any, from: { of: 'above' }, nose: any })),
  )
})

for (const by of ['pointer', 'keys'] as const)
  test(`an apprentice’s build waits for a second person, by ${by}`, async ({ bench }) => {
    const { page } = bench
    await keepPeople(page, [
      { name: 'Bo Lind', role: 'apprentice' },
      { name: 'Ana Ruiz', badge: 'ANA-1', pin: '4711' },
    ])
    const mechanic = new Mechanic(page, by)
    await mechanic.startBuild(/Skerry 3/, 'Ferry', 'Bo Lind')
    for (const marks of ['1 2 2 1', 'F G G H', '4 4 5', 'L L L']) await mechanic.noteMarks(marks)
    await mechanic.confirm()

    const panel = page.getByRole('region', { name: en.steps.frame.title })
    await expect(mechanic.heading).toHaveText(`Choose mains · ${en.people.second.kicker}`)
    await expect(panel).toContainText(en.people.second.did({ names: ['Bo Lind'] }))
    expect(await accessFaults(page)).toEqual([])
    await page.getByRole('button', { name: en.buildWindow.allSteps }).click()
    await expect(
      page.getByRole('button', { name: `Choose mains ${en.buildWindow.stepStates.unconfirmed}` }),
    ).toBeVisible()
    await page.getByRole('button', { name: en.buildWindow.allSteps }).click()

    const call = async () => {
      if (by === 'keys') await typeAsInstrument(page, 'ANA-1')
      else await panel.getByRole('button', { name: 'Ana Ruiz' }).click()
      await panel.getByLabel(en.problems['pin-wanted']({ name: 'Ana Ruiz' })).fill('4711')
      if (by === 'keys') await page.keyboard.press('Enter')
      else await panel.getByRole('button', { name: en.people.choose.goOn }).click()
      await expect(mechanic.main).toHaveText(saying(() => en.people.second.itIsRight({ name: 'Ana Ruiz' })))
    }
    await call()
    await page.getByRole('button', { name: en.people.second.sendBack }).click()
    await page.getByLabel(en.people.second.whatAgain({ name: 'Ana Ruiz' })).fill('M2 was misread')
    await page.keyboard.press('Enter')
    await expect(page.getByRole('alert')).toContainText(
      en.people.second.sentBack({ name: 'Ana Ruiz', reason: 'M2 was misread' }),
    )
    await call()
    await mechanic.letBounceTimePass()
    await mechanic.confirm()
    await expect(mechanic.heading).not.toContainText(en.people.second.kicker)

    await page.getByRole('button', { name: en.buildWindow.sheet, exact: true }).click()
    const row = page.getByRole('row').filter({ hasText: 'Choose mains' })
    await expect(row).toContainText(
      saying((any) => `Bo Lind${en.sheet.steps.lookedAt({ stamp: any })}Ana Ruiz`),
    )
    await expect(
      page.getByText(
        `${en.sheet.corrections.kinds['step-sent-back']}, ${en.phrases.stepBy({ step: 'Choose mains', person: 'Ana Ruiz' })}: M2 was misread`,
      ),
    ).toBeVisible()
    await expect(
      page.getByText(en.sheet.head.people({ people: ['Bo Lind'], apprentice: true })),
    ).toBeVisible()
  })
