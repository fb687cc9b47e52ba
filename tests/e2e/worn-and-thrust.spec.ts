import { en } from '../../core/words/index.ts'
import { expect, test } from './bench.ts'
import { Machinist } from './machinist.ts'
import { atStep, openAt } from './seed.ts'
import { readingField, saying, shown } from './named.ts'

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
    await machinist.panel.getByRole('button', { name: en.shells.measure({ position: 'M1' }) }).click()
    await machinist.panel.getByRole('button', { name: en.shells.measuring.parts.housing }).click()
    await expect(machinist.panel).toContainText(
      saying((any) =>
        en.shells.measuring.taperPer({ taper: '5 µm', per: '25 mm', apart: any, allowed: any }),
      ),
    )
    const cells = await machinist.cells().all()
    for (const [index, cell] of cells.entries())
      await cell.fill(index < cells.length / 2 ? '60.013' : '60.017')
    await machinist.confirm()
    await expect(machinist.panel).toContainText(
      saying((any) =>
        en.problems.tapered({
          what: 'bore',
          reading: shown('4.0 µm'),
          allowed: shown('3.0 µm'),
          place: any,
        }),
      ),
    )
    await machinist.backToShells()
  })

  await test.step('shells of an undersize have the walls that are printed for it', async () => {
    await machinist.openRow('M2')
    await machinist.panel.getByRole('button', { name: '0.25 under', exact: true }).click()
    await machinist.letBounceTimePass()
    await expect(machinist.panel).toContainText(
      saying((any) =>
        en.shells.undersize.walls({
          undersize: '0.25 under',
          walls: [{ grade: any, least: any, most: any }],
        }),
      ),
    )
    await machinist.measure('M2', 'housing', '60.015')
    await machinist.measure('M2', 'journal', '55.749')
    // 60.015 − 55.749 − 2 × 2.116: the middle of D as it is printed.
    await expect(machinist.row('M2')).toContainText('34 µm')
  })

  await test.step('a used shell that is worn is not counted', async () => {
    await page.getByRole('button', { name: en.shells.countTray }).click()
    await expect(machinist.panel).toContainText(
      saying(() => en.shells.tray.worn({ undersize: '0.25 under', wall: '2.095 mm' })),
    )
    await machinist.panel.getByRole('button', { name: en.shells.tray.addSingle }).click()
    await machinist.panel.getByLabel(en.shells.tray.wall({ unit: 'mm' })).fill('2.094')
    await machinist.main.click()
    await expect(page.getByRole('alert')).toContainText(
      saying((any) => en.problems['shell-worn']({ label: any, wall: shown('2.094 mm'), least: any })),
    )
    await machinist.letBounceTimePass()
    await machinist.panel.getByLabel(en.shells.tray.wall({ unit: 'mm' })).fill('2.110')
    await machinist.confirm()
  })

  await test.step('thrust washers are chosen by their thickness, two that differ where the spec allows it', async () => {
    await openAt(bench, {
      engine: /^Rill 5/,
      name: 'Float',
      person: 'R. Halloran',
      far: atStep('End float'),
    })
    await machinist.panel.getByLabel(readingField).fill('0.30')
    await expect(machinist.panel).toContainText(en.steps.check.sayMeasuredWith)
    await machinist.panel
      .getByRole('group', { name: en.steps.check.measuredWith })
      .getByRole('button', { name: 'STD' })
      .click()
    await expect(machinist.panel.getByRole('status').first()).toContainText('+0.05')
    await page.getByRole('button', { name: en.steps.check.isNotGood }).click()
    await machinist.panel.getByLabel(en.steps.check.whatIsWrong).fill('Float too large')
    await machinist.confirm()
    // Other washers go in: what it is measured with then is to be said again.
    await expect(machinist.panel).toContainText('two STD')
    await machinist.panel.getByLabel(readingField).fill('0.30')
    await expect(machinist.panel).toContainText(en.steps.check.sayMeasuredWith)
    await page.getByRole('button', { name: en.buildWindow.sheet, exact: true }).click()
    await expect(page.getByRole('main')).toContainText('two STD')
  })
})
