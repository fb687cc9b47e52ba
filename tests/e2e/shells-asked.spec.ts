import { expect, test } from './bench.ts'
import { typeAsInstrument } from './instrument.ts'
import { Machinist } from './machinist.ts'

test.setTimeout(240_000)

test('what cannot be taken as it is typed is asked about while shells are chosen', async ({
  unopened: bench,
}) => {
  const { page } = bench
  await test.step('a journal that measures another size than declared: a person decides, with a reason on the sheet', async () => {
    const machinist = new Machinist(bench)
    await machinist.atTheMains('1 2 3 2', 'H G F G')
    await machinist.measure('M2', 'journal', '51.741')
    await expect(machinist.row('M2')).toContainText('! declared size and readings differ')
    await expect(page.locator('[data-about="half/M2/upper"]')).toContainText(
      'declared size and reading differ',
    )
    await expect(machinist.main).toHaveCount(0)
    await expect(machinist.panel).toContainText(
      'declared standard, but measures 51.7410 mm, which is 0.25 under',
    )
    await expect(machinist.panel).toContainText('By standard (declared)')
    await machinist.panel.getByRole('button', { name: 'Use 0.25 under (measured)' }).click()
    await machinist.giveReason(/Why use 0.25 under \(measured\) at M2/, 'The crank was ground', /^Use/)
    await expect(machinist.row('M2')).not.toContainText('differ')
    await expect(machinist.row('M2')).toContainText('0.25 under')
    await machinist.finishStep('Choose mains')
    await page.getByRole('button', { name: 'Sheet' }).click()
    await expect(page.getByRole('main')).toContainText(
      'the journal counts as 0.25 under: The crank was ground',
    )
  })

  await test.step('half a reading of a gauge is dropped with a sentence, and its Enter presses nothing', async () => {
    const machinist = new Machinist(bench)
    await machinist.atTheMains('? 2 3 2', 'H G F G')
    await machinist.openRow('M1')
    await machinist.panel.getByRole('button', { name: 'Measure M1' }).click()
    await machinist.cells().first().focus()
    const before = await machinist.entries()
    await typeAsInstrument(page, '55.0', 'broken off')
    await expect(machinist.panel).toContainText('The gauge stopped in the middle of a reading')
    await expect(machinist.cells().first()).toHaveValue('')
    await page.keyboard.press('Enter')
    await expect(machinist.heading).toContainText('measure M1')
    expect(await machinist.entries()).toBe(before)
    await machinist.cells().first().focus()
    await typeAsInstrument(page, '55.003')
    await expect(machinist.cells().first()).toHaveValue('55.003')
    await expect(machinist.panel).not.toContainText('The gauge stopped')
  })

  await test.step('the width of a plastic gauge is typed with the focus anywhere, and a second one is asked about', async () => {
    const machinist = new Machinist(bench)
    await machinist.atTheMains('1 2 3 2', 'H G F G')
    await machinist.openRow('M1')
    await machinist.panel.getByRole('button', { name: 'Measure M1' }).click()
    await machinist.panel.getByRole('button', { name: 'Plastic gauge' }).click()
    const width = machinist.panel.getByLabel('Read on the card')
    const before = await machinist.entries()
    await typeAsInstrument(page, '0.038')
    await expect(width).toHaveValue('0.038')
    await typeAsInstrument(page, '0.051')
    await expect(page.getByText('Which one counts?')).toBeVisible()
    expect(await machinist.entries()).toBe(before)
    await page.getByRole('button', { name: '0.051 counts' }).click()
    await expect(width).toHaveValue('0.051')
    await machinist.panel.getByLabel('Step of the card').click()
    await page.keyboard.type('0.025')
    await machinist.main.click()
    await expect(machinist.panel).toContainText('51 µm')
    await expect(width).toHaveValue('')
  })

  await test.step('a reading that does not go with the others is asked about, and saved once it is said to be right', async () => {
    const machinist = new Machinist(bench)
    await machinist.atTheMains('1 2 3 2', 'H G F G')
    await machinist.openRow('M1')
    await machinist.panel.getByRole('button', { name: 'Measure M1' }).click()
    await machinist.panel.getByRole('button', { name: 'Journal' }).click()
    const cells = await machinist.cells().all()
    for (const cell of cells) await cell.fill('52.000')
    await cells.at(-1)!.fill('52.050')
    const before = await machinist.entries()
    await machinist.main.click()
    await expect(machinist.panel.getByRole('alert')).toContainText('52.050 mm')
    await expect(cells.at(-1)!).toHaveValue('52.050')
    expect(await machinist.entries()).toBe(before)
    await machinist.panel.getByRole('button', { name: /^It was taken again and is right/ }).click()
    await expect.poll(() => machinist.entries()).toBe(before + 1)
    await page.getByRole('button', { name: 'Sheet', exact: true }).click()
    await expect(page.getByRole('main')).toContainText('A reading off the others was asked about')
  })

  await test.step('a shell that is to be ordered is not fitted by Enter, only by saying that it has come', async () => {
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
    await machinist.panel.getByRole('button', { name: /^It has come/ }).click()
    await expect.poll(() => machinist.entries()).toBe(before + 1)
    await page.getByRole('button', { name: 'Sheet', exact: true }).click()
    await expect(page.getByRole('main')).toContainText('ordered, and arrived')
  })

  await test.step('what cannot be is told in a sentence, and nothing typed is lost', async () => {
    const machinist = new Machinist(bench)
    await machinist.atTheMains('? ? ? ?', '? ? ? ?')
    await machinist.measure('M1', 'housing', '54.0')
    await machinist.measure('M1', 'journal', '53.4')
    await expect(machinist.panel).toContainText('M1: no allowed pair of shells is sure to stay inside')

    await machinist.panel.getByRole('button', { name: 'Measure M1' }).click()
    for (const cell of await machinist.cells().all()) await cell.fill('55.003')
    await machinist.panel.getByLabel('Part temperature').fill('900 °C')
    const before = await machinist.entries()
    await machinist.main.click()
    await expect(machinist.panel.getByRole('alert')).toContainText(
      '900 °C is not a temperature for measuring at',
    )
    await expect(machinist.cells().first()).toHaveValue('55.003')
    await machinist.backToShells()

    await bench.page.getByRole('button', { name: 'From the tray' }).click()
    await machinist.panel.getByRole('button', { name: 'A single shell' }).click()
    const wall = machinist.panel.getByLabel(/^Wall/)
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
    await page.getByRole('button', { name: 'From the tray' }).click()
    await machinist.panel.getByRole('button', { name: 'the same part' }).click()
    await machinist.panel.getByLabel('Shells of T', { exact: true }).fill('8')
    await machinist.panel.getByRole('button', { name: 'A single shell' }).click()
    await machinist.panel.getByRole('combobox').selectOption('T')
    await machinist.panel.getByLabel(/^Wall/).fill('1.4925')
    await machinist.confirm()
    await machinist.openRow('M3')
    await machinist.panel.getByRole('button', { name: 'Choose the lower shell of M3 by hand' }).click()
    await machinist.panel.getByRole('button', { name: 'Shell 1: T, 1.4925 mm' }).click()
    await machinist.giveReason(/Shell 1\sin the lower half/, 'Was fitted before', /^Use this at M3$/)
    await expect(machinist.panel).toContainText('Chosen by hand, Shell 1: Was fitted before')
    await machinist.finishStep('Choose mains')
    await page.getByRole('button', { name: 'Sheet' }).click()
    await expect(page.getByRole('main')).toContainText('Shell 1 (wall 1.4925 mm)')
  })
})
