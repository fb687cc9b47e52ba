import { expect, test } from './bench.ts'
import { Machinist } from './machinist.ts'
import { atStep, openAt } from './seed.ts'

test.use({ engines: ['rill-5'] })

test('a ground crank with printed walls, worn shells, a taper for a length, and thrust washers by thickness', async ({
  unopened: bench,
}) => {
  const { page } = bench
  const machinist = new Machinist(bench)

  await test.step('a taper is allowed for the distance of the planes: 3 µm over 15 mm where 25 mm may have 5', async () => {
    await openAt(bench, {
      engine: /^Rill 5/,
      name: 'Ground',
      person: 'R. Halloran',
      far: atStep('Choose mains'),
    })
    await machinist.openRow('M1')
    await machinist.panel.getByRole('button', { name: 'Measure M1' }).click()
    await machinist.panel.getByRole('button', { name: 'Bore' }).click()
    await expect(machinist.panel).toContainText('Taper: 5 µm for each 25 mm')
    const cells = await machinist.cells().all()
    for (const [index, cell] of cells.entries())
      await cell.fill(index < cells.length / 2 ? '60.013' : '60.017')
    await machinist.confirm()
    await expect(machinist.panel).toContainText('is tapered by 4.0 µm, allowed 3.0 µm')
    await machinist.backToShells()
  })

  await test.step('shells of an undersize have the walls that are printed for it', async () => {
    await machinist.openRow('M2')
    await machinist.panel.getByRole('button', { name: '0.25 under', exact: true }).click()
    await machinist.letBounceTimePass()
    await expect(machinist.panel).toContainText('Shells for 0.25 under as printed')
    await machinist.measure('M2', 'housing', '60.015')
    await machinist.measure('M2', 'journal', '55.749')
    // 60.015 − 55.749 − 2 × 2.116: the middle of D as it is printed.
    await expect(machinist.row('M2')).toContainText('34 µm')
  })

  await test.step('a used shell that is worn is not counted', async () => {
    await page.getByRole('button', { name: /tray/ }).click()
    await expect(machinist.panel).toContainText(
      'A used shell for 0.25 under may go back from a wall of 2.095 mm on',
    )
    await machinist.panel.getByRole('button', { name: 'A single shell with a measured wall' }).click()
    await machinist.panel.getByLabel('Wall, mm').fill('2.094')
    await machinist.main.click()
    await expect(page.getByRole('alert')).toContainText('a wall of 2.094 mm is worn')
    await machinist.letBounceTimePass()
    await machinist.panel.getByLabel('Wall, mm').fill('2.110')
    await machinist.confirm()
  })

  await test.step('thrust washers are chosen by their thickness, two that differ where the spec allows it', async () => {
    await openAt(bench, {
      engine: /^Rill 5/,
      name: 'Float',
      person: 'R. Halloran',
      far: atStep('End float'),
    })
    await machinist.panel.getByLabel(/^Reading/).fill('0.30')
    await expect(machinist.panel).toContainText('Say which washers it was measured with')
    await machinist.panel
      .getByRole('group', { name: 'Measured with' })
      .getByRole('button', { name: 'standard' })
      .click()
    await expect(machinist.panel.getByRole('status').first()).toContainText('first oversize')
    await page.getByRole('button', { name: 'It is not good' }).click()
    await machinist.panel.getByLabel('What is wrong').fill('Float too large')
    await machinist.confirm()
    // Other washers go in: what it is measured with then is to be said again.
    await expect(machinist.panel).toContainText('measured with two standard washers')
    await machinist.panel.getByLabel(/^Reading/).fill('0.30')
    await expect(machinist.panel).toContainText('Say which washers it was measured with')
    await page.getByRole('button', { name: 'Sheet', exact: true }).click()
    await expect(page.getByRole('main')).toContainText('measured with two standard washers')
  })
})
