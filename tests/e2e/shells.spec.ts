import { en } from '../../core/words/index.ts'
import { expect, test } from './bench.ts'
import { typeAsInstrument } from './instrument.ts'
import { Machinist } from './machinist.ts'
import { readingField, saying, named } from './named.ts'

test.setTimeout(120_000)

test('the shells of the mains are chosen by marks, by readings, by both, and by hand', async ({
  unopened: bench,
}) => {
  const { page } = bench
  await test.step('marks only: the chart chooses, and says why and what the clearance will be', async () => {
    const machinist = new Machinist(bench)
    await machinist.atTheMains('1 2 3 2', 'H G F G')
    await machinist.openRow('M1')
    await expect(machinist.panel).toContainText(en.proposals['by-chart']({ housing: '1', journal: 'H' }))
    await expect(machinist.panel).toContainText(en.sheet.results.worstCase)
    await expect(machinist.panel).toContainText(
      saying((any) => en.shells.clearance.hot({ at: '95 °C', clearance: any })),
    )
    await expect(machinist.panel).toContainText(
      en.shells.clearance.serviceLimit({ limit: '80 µm', wear: 'within-service' }),
    )
    await machinist.finishStep('Choose mains')
  })

  await test.step('readings only: worn marks are measured, in mm and in inch, and the sheet shows them', async () => {
    const machinist = new Machinist(bench)
    await machinist.atTheMains('? ? ? ?', '? ? ? ?')
    await expect(machinist.panel).toContainText(en.shells.without({ positions: ['M1', 'M2', 'M3', 'M4'] }))
    for (const position of ['M1', 'M2', 'M3']) {
      await machinist.measure(position, 'housing', '55.009')
      await machinist.measure(position, 'journal', '51.991')
    }
    await machinist.measure('M4', 'housing', '2.16571 in')
    await machinist.measure('M4', 'journal', '2.04689 in')
    for (const position of ['M1', 'M4'])
      await expect(machinist.row(position)).toContainText(en.shells.row.measured)
    await machinist.finishStep('Choose mains')
    await page.getByRole('button', { name: en.buildWindow.sheet }).click()
    await expect(page.getByRole('main')).toContainText('2.16571 in')
    await expect(page.getByRole('main')).toContainText(en.sheet.measured.byReadings)
  })

  await test.step('a reading in the wrong unit is asked about, and none is taken', async () => {
    const machinist = new Machinist(bench)
    await machinist.atTheMains('? 2 3 2', 'H G F G')
    await machinist.openRow('M1')
    await machinist.panel.getByRole('button', { name: en.shells.measure({ position: 'M1' }) }).click()
    for (const cell of await machinist.cells().all()) await cell.fill('2.1654')
    await expect(machinist.panel).toContainText(
      saying((any) =>
        en.problems['reading-in-other-unit']({
          what: 'bore',
          typed: any,
          least: any,
          most: any,
          place: any,
          unit: 'in',
          meant: any,
        }),
      ),
    )
    const before = await machinist.entries()
    await machinist.main.click()
    await expect(machinist.panel.getByRole('alert')).toContainText(
      saying((any) =>
        en.problems['reading-in-other-unit']({
          what: 'bore',
          typed: any,
          least: any,
          most: any,
          place: any,
          unit: 'in',
          meant: any,
        }),
      ),
    )
    expect(await machinist.entries()).toBe(before)
  })

  await test.step('a gauge that types fills cell after cell, and its Enter presses no button', async () => {
    const machinist = new Machinist(bench)
    await machinist.atTheMains('? 2 3 2', 'H G F G')
    await machinist.openRow('M1')
    await machinist.panel.getByRole('button', { name: en.shells.measure({ position: 'M1' }) }).click()
    const before = await machinist.entries()
    for (let reading = 0; reading < 7; reading++) await typeAsInstrument(bench.page, `55.00${reading}`)
    for (const [index, cell] of (await machinist.cells().all()).entries())
      await expect(cell).toHaveValue(`55.00${index}`)
    expect(await machinist.entries()).toBe(before)
  })

  await test.step('a mark and a reading that differ: both choices are shown, a person decides with a reason', async () => {
    const machinist = new Machinist(bench)
    await machinist.atTheMains('1 2 3 2', 'H G F G')
    await machinist.measure('M1', 'journal', '51.997')
    await expect(machinist.row('M1')).toContainText(en.shells.row.differ.mark)
    await expect(machinist.main).toHaveCount(0)
    await expect(page.locator('[data-about="half/M1/upper"]')).toContainText(
      en.described.bearingFlags['mark-differs'],
    )
    await expect(machinist.panel).toContainText(
      en.shells.pair({ split: 'upper-lower', upper: 'T', lower: 'T' }),
    )
    await expect(machinist.panel).toContainText(
      en.shells.pair({ split: 'upper-lower', upper: 'R', lower: 'R' }),
    )
    await machinist.panel.getByRole('button', { name: en.shells.dispute.let({ by: 'readings' }) }).click()
    await machinist.giveReason(
      saying((any) => en.shells.dispute.why({ basis: { by: 'readings' }, position: any })),
      'Measured twice',
      named(() => en.shells.dispute.let({ by: 'readings' })),
    )
    await expect(machinist.row('M1')).not.toContainText(en.shells.row.differ.mark)
    await machinist.finishStep('Choose mains')
    await page.getByRole('button', { name: en.buildWindow.sheet }).click()
    await expect(page.getByRole('main')).toContainText(
      saying((any) =>
        en.sheet.measured.basisDecided({ by: 'readings', reason: 'Measured twice', stamp: any }),
      ),
    )
  })

  await test.step('a reground journal: declared, measured, thicker walls', async () => {
    const machinist = new Machinist(bench)
    await machinist.atTheMains('1 2 3 2', 'H G F G')
    await machinist.openRow('M2')
    await machinist.panel.getByLabel(saying((any) => en.shells.undersize.everywhere({ fit: any }))).uncheck()
    const before = await machinist.entries()
    await machinist.panel.getByRole('button', { name: '0.25 under' }).click()
    await expect.poll(() => machinist.entries()).toBeGreaterThan(before)
    await expect(machinist.row('M2')).toContainText(en.shells.row.noShell)
    await machinist.measure('M2', 'journal', '51.741')
    await expect(machinist.row('M2')).toContainText('0.25 under')
    await expect(machinist.row('M2')).toContainText('35 µm')
    await machinist.finishStep('Choose mains')
  })

  await test.step('from the drawing: a half is tapped, another pair chosen with a reason, and fitted by how it lies', async () => {
    const machinist = new Machinist(bench)
    await machinist.atTheMains('1 2 3 2', 'H G F G')
    await page.locator('[data-about="half/M3/lower"] button').press('Enter')
    await expect(machinist.row('M3')).toHaveAttribute('aria-expanded', 'true')
    await machinist.panel.getByText(en.shells.allowedPairs({ fromTray: false })).click()
    await machinist.panel
      .getByRole('button', {
        name: `M3: ${en.shells.pair({ split: 'upper-lower', upper: 'S', lower: 'T' })}`,
      })
      .click()
    await machinist.giveReason(
      saying(() => en.shells.pin.whyPair({ split: 'upper-lower', upper: 'S', lower: 'T' })),
      'On the shelf',
      named(() => en.shells.pin.pinAt({ position: 'M3' })),
    )
    await expect(machinist.row('M3')).toContainText(en.shells.row.pinned)
    for (const step of ['Choose mains', 'Choose big ends']) await machinist.finishStep(step)
    await page.locator('[data-about="half/M3/upper"] button').press('Enter')
    await expect(machinist.panel).toContainText('its notch')
    await expect(machinist.main).toContainText(en.steps.fitShells.isIn({ position: 'M3', half: 'upper' }))
  })

  await test.step('an end float in a gap of the table is not defined', async () => {
    const machinist = new Machinist(bench)
    await machinist.atTheMains('1 2 3 2', 'H G F G', 'End float')
    const field = page.getByLabel(readingField)
    await field.fill('0.12')
    await expect(machinist.panel).toContainText(
      saying((any) => en.steps.check.washersByTable({ name: en.engineParts.standardSize, thickness: any })),
    )
    await field.fill('9')
    await expect(machinist.panel).toContainText(en.steps.check.washersNotDefined)
  })
})
