import { en } from '../../core/words/index.ts'
import { expect, test } from './bench.ts'
import { typeAsInstrument } from './instrument.ts'
import { Machinist } from './machinist.ts'
import { saying, shown, named } from './named.ts'

test.setTimeout(240_000)

const measured = { by: 'measured', size: '0.25 under' } as const

test('what cannot be taken as it is typed is asked about while shells are chosen', async ({
  unopened: bench,
}) => {
  const { page } = bench
  await test.step('a journal that measures another size than declared: a person decides, with a reason on the sheet', async () => {
    const machinist = new Machinist(bench)
    await machinist.atTheMains('1 2 3 2', 'H G F G')
    await machinist.measure('M2', 'journal', '51.741')
    await expect(machinist.row('M2')).toContainText(en.shells.row.differ.declared)
    await expect(page.locator('[data-about="half/M2/upper"]')).toContainText(
      en.described.bearingFlags['sizes-differ'],
    )
    await expect(machinist.main).toHaveCount(0)
    await expect(machinist.panel).toContainText(
      saying((any) =>
        en.problems['undersize-against-size']({
          place: any,
          declared: null,
          size: shown('51.7410 mm'),
          measured: '0.25 under',
        }),
      ),
    )
    await expect(machinist.panel).toContainText(
      en.shells.dispute.by({ by: 'declared', size: en.engineParts.standardSize }),
    )
    await machinist.panel.getByRole('button', { name: en.shells.dispute.let(measured) }).click()
    await machinist.giveReason(
      saying(() => en.shells.dispute.why({ basis: measured, position: 'M2' })),
      'The crank was ground',
      named(() => en.shells.dispute.let(measured)),
    )
    await expect(machinist.row('M2')).not.toContainText(en.shells.row.differ.declared)
    await expect(machinist.row('M2')).toContainText('0.25 under')
    await machinist.finishStep('Choose mains')
    await page.getByRole('button', { name: en.buildWindow.sheet }).click()
    await expect(page.getByRole('main')).toContainText(
      saying((any) =>
        en.sheet.measured.sizeDecided({
          reason: 'The crank was ground',
          stamp: any,
          undersize: '0.25 under',
        }),
      ),
    )
  })

  await test.step('half a reading of a gauge is dropped with a sentence, and its Enter presses nothing', async () => {
    const machinist = new Machinist(bench)
    await machinist.atTheMains('? 2 3 2', 'H G F G')
    await machinist.openRow('M1')
    await machinist.panel.getByRole('button', { name: en.shells.measure({ position: 'M1' }) }).click()
    await machinist.cells().first().focus()
    const before = await machinist.entries()
    await typeAsInstrument(page, '55.0', 'broken off')
    await expect(machinist.panel).toContainText(en.run.unasked.dropped['broken-off'])
    await expect(machinist.cells().first()).toHaveValue('')
    await page.keyboard.press('Enter')
    await expect(machinist.heading).toContainText(en.shells.measuring.heading({ position: 'M1' }))
    expect(await machinist.entries()).toBe(before)
    await machinist.cells().first().focus()
    await typeAsInstrument(page, '55.003')
    await expect(machinist.cells().first()).toHaveValue('55.003')
    await expect(machinist.panel).not.toContainText(en.run.unasked.dropped['broken-off'])
  })

  await test.step('the width of a plastic gauge is typed with the focus anywhere, and a second one is asked about', async () => {
    const machinist = new Machinist(bench)
    await machinist.atTheMains('1 2 3 2', 'H G F G')
    await machinist.openRow('M1')
    await machinist.panel.getByRole('button', { name: en.shells.measure({ position: 'M1' }) }).click()
    await machinist.panel.getByRole('button', { name: en.shells.measuring.parts.thread }).click()
    const width = machinist.panel.getByLabel(en.shells.measuring.thread.read)
    const before = await machinist.entries()
    await typeAsInstrument(page, '0.038')
    await expect(width).toHaveValue('0.038')
    await typeAsInstrument(page, '0.051')
    await expect(page.getByText(en.run.unasked.which)).toBeVisible()
    expect(await machinist.entries()).toBe(before)
    await page.getByRole('button', { name: en.run.unasked.counts({ sent: '0.051' }) }).click()
    await expect(width).toHaveValue('0.051')
    await machinist.panel.getByLabel(en.shells.measuring.thread.step).click()
    await page.keyboard.type('0.025')
    await machinist.main.click()
    await expect(machinist.panel).toContainText('51 µm')
    await expect(width).toHaveValue('')
  })

  await test.step('a reading that does not go with the others is asked about, and saved once it is said to be right', async () => {
    const machinist = new Machinist(bench)
    await machinist.atTheMains('1 2 3 2', 'H G F G')
    await machinist.openRow('M1')
    await machinist.panel.getByRole('button', { name: en.shells.measure({ position: 'M1' }) }).click()
    await machinist.panel.getByRole('button', { name: en.shells.measuring.parts.journal }).click()
    const cells = await machinist.cells().all()
    for (const cell of cells) await cell.fill('52.000')
    await cells.at(-1)!.fill('52.050')
    const before = await machinist.entries()
    await machinist.main.click()
    await expect(machinist.panel.getByRole('alert')).toContainText('52.050 mm')
    await expect(cells.at(-1)!).toHaveValue('52.050')
    expect(await machinist.entries()).toBe(before)
    await machinist.panel.getByRole('button', { name: en.shells.measuring.allRight }).click()
    await expect.poll(() => machinist.entries()).toBe(before + 1)
    await page.getByRole('button', { name: en.buildWindow.sheet, exact: true }).click()
    await expect(page.getByRole('main')).toContainText(
      saying((any) =>
        en.sheet.measured.readings({
          ...{ part: any, cells: any, partAt: any, gaugeAt: null, sureTo: null, sure: true },
          ...{ least: any, mean: any, greatest: any, outOfRound: any, taper: any },
        }),
      ),
    )
  })

  await test.step('a shell that is to be ordered is not fitted by Enter, only by saying that it has come', async () => {
    const arrived = en.sheet.fit.choice({ by: 'tray', reason: '', label: null, arrived: true })
    const machinist = new Machinist(bench)
    await machinist.atTheMains('1 2 3 2', 'H G F G')
    await machinist.countTray({ T: '0' })
    await machinist.finishStep('Choose mains')
    await machinist.finishStep('Choose big ends')
    await expect(machinist.heading).toContainText('Main shells')
    const before = await machinist.entries()
    for (let press = 0; press < 3; press++) {
      await page.keyboard.press('Enter')
      await machinist.letBounceTimePass()
    }
    await expect(machinist.main).toHaveCount(0)
    expect(await machinist.entries()).toBe(before)
    await machinist.panel
      .getByRole('button', {
        name: saying((any) => en.steps.fitShells.hasCome({ position: any, half: 'upper' })),
      })
      .click()
    await expect.poll(() => machinist.entries()).toBe(before + 1)
    await page.getByRole('button', { name: en.buildWindow.sheet, exact: true }).click()
    await expect(page.getByRole('main')).toContainText(arrived)
  })

  await test.step('what cannot be is reported in a sentence, and nothing typed is lost', async () => {
    const machinist = new Machinist(bench)
    await machinist.atTheMains('? ? ? ?', '? ? ? ?')
    await machinist.measure('M1', 'housing', '54.0')
    await machinist.measure('M1', 'journal', '53.4')
    await expect(machinist.panel).toContainText(
      saying((any) =>
        en.problems['no-pair-inside-limits']({
          ...{ place: 'M1', clearance: any, limits: any },
          pair: { split: 'upper-lower', upper: any, lower: any },
        }),
      ),
    )

    await machinist.panel.getByRole('button', { name: en.shells.measure({ position: 'M1' }) }).click()
    for (const cell of await machinist.cells().all()) await cell.fill('55.003')
    await machinist.panel.getByLabel(en.shells.measuring.partAt).fill('900 °C')
    const before = await machinist.entries()
    await machinist.main.click()
    await expect(machinist.panel.getByRole('alert')).toContainText(
      saying((any) =>
        en.problems['temperature-not-sensible']({
          of: 'measuring',
          temperature: shown('900 °C'),
          least: any,
          most: any,
        }),
      ),
    )
    await expect(machinist.cells().first()).toHaveValue('55.003')
    await machinist.backToShells()

    await bench.page.getByRole('button', { name: en.shells.countTray }).click()
    await machinist.panel.getByRole('button', { name: en.shells.tray.addSingle }).click()
    const wall = machinist.panel.getByLabel(saying((any) => en.shells.tray.wall({ unit: any })))
    await wall.fill('-1.49')
    await bench.page.clock.fastForward(450)
    await machinist.main.click()
    await expect(machinist.panel.getByRole('alert')).toContainText('-1.49')
    await expect(wall).toHaveValue('-1.49')
    expect(await machinist.entries()).toBe(before)
  })

  await test.step('this very shell is pinned to a half, with its measured wall', async () => {
    const machinist = new Machinist(bench)
    await machinist.atTheMains('1 2 3 2', 'H G F G')
    await page.getByRole('button', { name: en.shells.countTray }).click()
    await machinist.panel.getByRole('button', { name: en.shells.tray.halves.alike }).click()
    await machinist.panel.getByLabel(en.shells.tray.shellsOf({ label: 'T' }), { exact: true }).fill('8')
    await machinist.panel.getByRole('button', { name: en.shells.tray.addSingle }).click()
    await machinist.panel.getByRole('combobox').selectOption('T')
    await machinist.panel.getByLabel(saying((any) => en.shells.tray.wall({ unit: any }))).fill('1.4925')
    await machinist.confirm()
    await machinist.openRow('M3')
    await machinist.panel
      .getByRole('button', { name: en.shells.pin.pin({ half: 'lower', position: 'M3' }) })
      .click()
    await machinist.panel.getByRole('button', { name: '#1: T, 1.4925 mm' }).click()
    await machinist.giveReason(
      saying(() => en.shells.pin.whyHalf({ what: '#1', half: 'lower' })),
      'It came from there',
      named(() => en.shells.pin.pinAt({ position: 'M3' })),
    )
    await expect(machinist.panel).toContainText(`${en.shells.pin.pinnedTo({ to: '#1' })} It came from there`)
    await machinist.finishStep('Choose mains')
    await page.getByRole('button', { name: en.buildWindow.sheet }).click()
    await expect(page.getByRole('main')).toContainText(
      en.sheet.measured.trayLine({ count: 1, label: '#1', wall: '1.4925 mm' }),
    )
  })
})
