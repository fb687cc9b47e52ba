import type { Instrument } from '../../core/instrument/index.ts'
import { en } from '../../core/words/index.ts'
import { expect, test } from './bench.ts'
import { Mechanic } from './mechanic.ts'
import { readingField, saying } from './named.ts'
import { afterPulls, openAt } from './seed.ts'
import { plug, saidSince, send, sendMegabyte, standInPlug, withStandIns } from './stand-ins.ts'

const wrench: Instrument = {
  ...{ id: 'bench-wrench', name: 'Bench wrench', number: '7', unit: 'N·m', deviation: 2 },
  ...{ serial: { baudRate: 9600, dataBits: 8, parity: 'none', stopBits: 1 } },
  ...{ calibratedOn: '2026-10-01', feeds: ['torque'], usb: standInPlug },
}
const keeps = { instruments: [wrench] }
const { instruments, spoken, settings } = en

test('a wrench on a cable is read in the page, and the next pull is said aloud where a person wants it', async ({
  page: blank,
  unopened: bench,
}) => {
  test.setTimeout(120_000)
  await withStandIns(blank)
  const { page } = bench
  // Seated: the first rod bolt is to be torqued.
  const at = { engine: /Skerry 3/, name: 'On the cable', person: 'R. Halloran', far: afterPulls(6), keeps }
  await openAt(bench, at)
  const mechanic = new Mechanic(page, 'pointer')
  const field = page.getByLabel(readingField)
  /** What came is the very reading that is asked for: it is recorded by itself. */
  const goesOnTo = async (bolt: string) => {
    await expect(mechanic.main).toContainText(en.run.confirm.at({ target: '15 N·m', number: bolt }))
    await mechanic.letBounceTimePass()
  }

  await test.step('a line comes in pieces and ends in CR and LF, or in LF alone; noise is nothing', async () => {
    await goesOnTo('R1')
    for (const piece of ['1', '5.1 N', 'm\r', '\n']) await send(page, piece)
    await goesOnTo('R2')
    await send(page, '\u0000\u00ff~~ OK\r\n')
    await send(page, '14.9\n')
    await goesOnTo('R3')
  })

  await test.step('a megabyte without an end is nothing, and what comes after it counts', async () => {
    await sendMegabyte(page)
    await expect(field).toHaveValue('')
    await send(page, '\r\n15.2\r\n')
    await goesOnTo('R4')
  })

  await test.step('what does not go into this field is kept, and said', async () => {
    await send(page, '0.12 mm\r\n')
    await expect(page.getByText(instruments.otherField({ name: wrench.name, sent: '0.12 mm' }))).toBeVisible()
    await expect(field).toHaveValue('')
    await page.getByRole('button', { name: instruments.seen, exact: true }).click()
  })

  await test.step('half a line at the pulled plug is dropped, and once plugged in it is read again', async () => {
    await send(page, '15')
    await plug(page, 'unplug')
    await expect(page.getByText(instruments.unpluggedMidLine(wrench))).toBeVisible()
    await expect(field).toHaveValue('')
    await plug(page, 'plugIn')
    await expect(page.getByText(instruments.pluggedIn(wrench))).toBeVisible()
    await send(page, '15.0\r\n')
    await goesOnTo('R5')
  })

  await test.step('nothing was said so far; switched on, the next pull is, again and slower, beside what is shown', async () => {
    expect(await saidSince(page)).toEqual([])
    await page.getByRole('button', { name: en.buildWindow.allBuilds }).click()
    await page.getByRole('button', { name: instruments.title }).click()
    await expect(
      page.getByText(saying(() => en.instruments.offBy({ deviation: 2, unit: '', isShare: true }))),
    ).toBeVisible()
    await page.getByRole('group', { name: spoken.say }).getByText(settings.on, { exact: true }).click()
    await page.getByRole('button', { name: /^←/ }).click()
    await page.getByRole('button', { name: /On the cable/ }).click()
    await expect(mechanic.main).toContainText(en.run.confirm.at({ target: '15 N·m', number: 'R5' }))
    const heard: { readonly text: string; readonly rate: number }[] = []
    await expect.poll(async () => heard.push(...(await saidSince(page)))).toBeGreaterThan(0)
    expect(heard).toEqual([{ text: 'R five, fifteen newton metres', rate: 1 }])
    await mechanic.confirm()
    await expect(mechanic.main).toContainText(en.run.confirm.at({ target: '15 N·m', number: 'R6' }))
    const pull = 'R six, fifteen newton metres'
    expect(await saidSince(page)).toEqual([{ text: pull, rate: 1 }])
    await page.getByRole('button', { name: spoken.again }).click()
    await page.getByRole('button', { name: spoken.slower }).click()
    expect(await saidSince(page)).toEqual([
      { text: pull, rate: 1 },
      { text: pull, rate: 0.6 },
    ])
  })
})
