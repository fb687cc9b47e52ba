import type { Page } from '@playwright/test'
import { accessFaults } from './accessibility.ts'
import { expect, test } from './bench.ts'
import { typeAsInstrument } from './instrument.ts'
import { Mechanic } from './mechanic.ts'

interface Person {
  readonly name: string
  readonly role?: 'mechanic' | 'apprentice'
  readonly pin?: string
  readonly badge?: string
}

/** Fills the list of people from the start page, and goes back to it. */
async function keepPeople(page: Page, people: readonly Person[]) {
  await page.getByRole('button', { name: 'People', exact: true }).click()
  for (const { name, role = 'mechanic', pin, badge } of people) {
    await page.getByRole('button', { name: 'Add a person' }).click()
    const form = page.getByRole('form', { name: 'New person' })
    await form.getByLabel('Name, as it goes on the sheet').fill(name)
    await form.getByRole('button', { name: role }).click()
    if (badge) {
      await form.getByRole('button', { name: 'Set a badge' }).click()
      await typeAsInstrument(page, badge)
      await expect(form).toContainText(`Badge: ${badge}`)
    }
    if (pin) await form.getByLabel('PIN, empty for none').fill(pin)
    await form.getByRole('button', { name: 'Save' }).click()
    await expect(page.getByRole('button', { name: `Change ${name}` })).toBeVisible()
  }
  await page.getByRole('button', { name: '← Engines and builds' }).click()
}

const atTheBench = (page: Page) => page.locator('dl div', { hasText: 'at the bench' }).getByRole('button')

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
  await page.getByLabel('Another name').fill('A guest')
  await page.getByRole('button', { name: 'Use this name' }).click()
  await expect(atTheBench(page)).toHaveText('A guest')

  await page.getByRole('button', { name: '← All builds' }).click()
  await keepPeople(page, [{ name: 'Ana Ruiz', pin: '4711' }])
  await page.getByRole('button', { name: /Ferry/ }).first().click()
  await atTheBench(page).focus()
  await page.keyboard.press('Enter')
  await page.getByRole('dialog').getByRole('button', { name: 'Ana Ruiz' }).press('Enter')
  await expect(page.getByRole('dialog')).toContainText('Ana Ruiz has a PIN. Type it.')
  expect(await accessFaults(page)).toEqual([])
  await page.getByRole('textbox', { name: /PIN/ }).fill('0000')
  await page.keyboard.press('Enter')
  await expect(page.getByRole('alert')).toContainText('That is not the PIN of Ana Ruiz.')
  await page.getByRole('textbox', { name: /PIN/ }).fill('4711')
  await page.keyboard.press('Enter')
  await expect(atTheBench(page)).toHaveText('Ana Ruiz')
  await mechanic.noteMarks('4 4 5')

  await page.getByRole('button', { name: 'Sheet', exact: true }).click()
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
  await page.getByLabel('As stamped, in order from the nose').fill('1 2')
  await typeAsInstrument(page, 'FR-0417')
  await expect(atTheBench(page)).toHaveText('Bo Lind')
  await expect(page.getByLabel('As stamped, in order from the nose')).toHaveValue('1 2')
  await page.getByRole('heading', { level: 1 }).click()
  await typeAsInstrument(page, 'ANA-9')
  await expect(page.getByRole('dialog')).toContainText('Ana Ruiz has a PIN. Type it.')
  await page.getByRole('button', { name: 'Another person' }).click()
  await typeAsInstrument(page, '60417')
  await expect(atTheBench(page)).toHaveText('Cy Vik')
  await page.getByRole('heading', { level: 1 }).click()
  await typeAsInstrument(page, 'FR-0417')
  await expect(atTheBench(page)).toHaveText('Bo Lind')
  await expect(page.getByRole('region', { name: 'Drawing' })).toContainText('seen from below')
  await typeAsInstrument(page, 'X-99')
  await expect(page.getByRole('alert')).toContainText('Nobody in the list has this badge.')
  await page.keyboard.press('Escape')
  await expect(page.getByRole('dialog')).toBeHidden()
  expect(await mechanic.entries()).toBe(before)

  // A key by hand still means the drawing.
  await mechanic.letBounceTimePass()
  await page.keyboard.press('f')
  await mechanic.letBounceTimePass()
  await expect(page.getByRole('region', { name: 'Drawing' })).toContainText('seen from above')
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

    const panel = page.getByRole('region', { name: 'What to do' })
    await expect(mechanic.heading).toHaveText('Choose mains · a second person')
    await expect(panel).toContainText('Bo Lind did this.')
    expect(await accessFaults(page)).toEqual([])
    await page.getByRole('button', { name: 'All steps' }).click()
    await expect(page.getByRole('button', { name: /Choose mains waits for a second person/ })).toBeVisible()
    await page.getByRole('button', { name: 'All steps' }).click()

    const call = async () => {
      if (by === 'keys') await typeAsInstrument(page, 'ANA-1')
      else await panel.getByRole('button', { name: 'Ana Ruiz' }).click()
      await panel.getByLabel('Ana Ruiz has a PIN. Type it.').fill('4711')
      if (by === 'keys') await page.keyboard.press('Enter')
      else await panel.getByRole('button', { name: 'Continue' }).click()
      await expect(mechanic.main).toHaveText(/Ana Ruiz: it is right/)
    }
    await call()
    await page.getByRole('button', { name: '! Send it back' }).click()
    await page.getByLabel('Ana Ruiz: what has to be done again?').fill('M2 was misread')
    await page.keyboard.press('Enter')
    await expect(page.getByRole('alert')).toContainText('Ana Ruiz sent it back: M2 was misread.')
    await call()
    await mechanic.letBounceTimePass()
    await mechanic.confirm()
    await expect(mechanic.heading).not.toContainText('second person')

    await page.getByRole('button', { name: 'Sheet', exact: true }).click()
    const row = page.getByRole('row').filter({ hasText: 'Choose mains' })
    await expect(row).toContainText(/Bo Lind; looked at .*Ana Ruiz/)
    await expect(page.getByText('sent back, Choose mains, by Ana Ruiz: M2 was misread')).toBeVisible()
    await expect(page.getByText('Bo Lind (an apprentice’s build)')).toBeVisible()
  })
