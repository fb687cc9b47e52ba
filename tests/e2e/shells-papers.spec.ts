import Papa from 'papaparse'
import type { Locator } from '@playwright/test'
import { readQr } from '../qr/read-qr.ts'
import { en } from '../../core/words/index.ts'
import { expect, test, type Bench } from './bench.ts'
import { Machinist } from './machinist.ts'
import { pagesOf, pageOf } from './pdf.ts'
import { saying } from './named.ts'

test.setTimeout(120_000)

async function csvOf(bench: Bench, button: string) {
  const { name, bytes } = await bench.save(() => bench.page.getByRole('button', { name: button }).click())
  const text = bytes.toString().replace(/^\ufeff/, '')
  const { data } = Papa.parse<Record<string, string>>(text, { header: true, skipEmptyLines: true })
  return { name, rows: data }
}

/** What a reader of codes makes of the square: it is painted by the browser and read module by module. */
async function readSquare(square: Locator): Promise<string> {
  const modules = await square.evaluate(async (element) => {
    const quiet = 2
    const side = Number(element.getAttribute('viewBox')!.split(' ')[2])
    const px = 7
    const drawing = element.cloneNode(true) as SVGElement
    drawing.setAttribute('width', String(side * px))
    drawing.setAttribute('height', String(side * px))
    const image = new Image()
    image.src = `data:image/svg+xml,${encodeURIComponent(new XMLSerializer().serializeToString(drawing))}`
    await image.decode()
    const canvas = document.createElement('canvas')
    canvas.width = canvas.height = side * px
    const context = canvas.getContext('2d')!
    context.drawImage(image, 0, 0)
    const isDark = (column: number, row: number) =>
      context.getImageData(Math.floor((column + 0.5) * px), Math.floor((row + 0.5) * px), 1, 1).data[0]! < 128
    const inside = Array.from({ length: side - 2 * quiet }, (_, at) => at + quiet)
    return inside.map((row) => inside.map((column) => isDark(column, row)))
  })
  return readQr(modules)
}

test('a short shelf: the fewest to order, on paper and as CSV, with a label for every half', async ({
  unopened: bench,
}) => {
  const { page } = bench
  const machinist = new Machinist(bench)
  await machinist.atTheMains('1 2 3 2', 'H G F G')
  await machinist.countTray({ T: '6' })
  await expect(machinist.panel).toContainText(
    en.shells.toOrder({ lines: [{ count: 2, grade: 'T', undersize: null, half: 'either' }] }),
  )
  await page.getByRole('button', { name: en.shells.orderAndLabels }).click()

  const order = await csvOf(bench, 'Order list as CSV')
  expect(order.name).toMatch(/^order-\d{4}-001\.csv$/)
  expect(order.rows).toContainEqual(
    expect.objectContaining({ fit: 'Main bearings', grade: 'T', size: 'standard', count: '2' }),
  )
  const labels = await csvOf(bench, 'Labels as CSV')
  const number = /-(\d{4}-001)\.csv$/.exec(labels.name)![1]
  const ofMains = labels.rows.filter(({ position }) => position?.startsWith('M'))
  expect(ofMains).toHaveLength(8)
  expect(ofMains[0]).toMatchObject({
    position: 'M1',
    half: 'upper',
    grade: 'T',
    code: `BEDPLATE ${number} M1 UPPER`,
  })
  expect(ofMains.filter(({ from }) => from === 'to order')).toHaveLength(2)
  const squares = page.getByRole('img', { name: saying((any) => en.parts.qrCode({ text: any })) })
  const codes = await Promise.all((await squares.all()).map(readSquare))
  const halves = ['M1', 'M2', 'M3', 'M4', 'B1', 'B2', 'B3'].flatMap((each) => [
    `${each} UPPER`,
    `${each} LOWER`,
  ])
  expect(codes).toEqual(['ORDER', ...halves].map((what) => `BEDPLATE ${number} ${what}`))

  for (const paper of ['A4', 'Letter']) {
    await page.getByRole('button', { name: paper }).click()
    const pages = await pagesOf(await bench.pdf())
    const text = pages.join(' ')
    expect(text).toContain(en.tray.order.title)
    expect(text).toMatch(/Main bearings T standard upper or lower 2/)
    for (const position of ['M1 upper', 'M4 lower']) expect(text).toContain(position)
    expect(text).toContain(en.buildWindow.demo)
    expect(text).not.toContain(en.sheet.page.backToBuild)
    pages.forEach((words, index) => expect(words).toContain(pageOf(index + 1, pages.length)))
  }
  await page.getByRole('button', { name: en.sheet.page.backToBuild }).click()
  await machinist.finishStep('Choose mains')
})
