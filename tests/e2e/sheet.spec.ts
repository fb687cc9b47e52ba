import { alter } from '../electron/alter.ts'
import { expect, test } from './bench.ts'
import { Mechanic } from './mechanic.ts'
import { pagesOf } from './pdf.ts'
import { afterPulls, openAt } from './seed.ts'

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
  await page.getByRole('button', { name: 'Sheet' }).click()

  for (const paper of ['A4', 'Letter'] as const) {
    await page.getByRole('button', { name: paper }).click()
    const pages = await pagesOf(await bench.pdf())
    const text = pages.join(' ')

    expect(pages.length).toBeGreaterThan(1)
    pages.forEach((words, index) => {
      expect(words).toContain(`page ${index + 1} of ${pages.length}`)
      expect(words).toMatch(new RegExp(`${entries} entries, head [0-9a-f]{16}`))
    })
    expect(text).toContain('Pump set 7 (“north”)')
    expect(text).toContain('I. Brandvold')
    expect(text).toContain('DEMO')
    expect(text).toContain('block K, crank 1')
    expect(text).toContain('Main cap bolts: under way')
    expect(text).toContain('35 N·m (32 to 38)')
    expect(text).toContain('NOTICE')
    expect(text).not.toContain('Back to the build')
  }
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
  await page.getByRole('button', { name: 'Sheet' }).click()
  await expect(page.locator('main').getByRole('alert')).toContainText('is not what was once confirmed')
  const pages = await pagesOf(await bench.pdf())
  expect(pages.length).toBeGreaterThan(0)
  for (const words of pages) {
    expect(words).toMatch(/NOT AS CONFIRMED\. Entry \d+ of this build is not what was once confirmed/)
    expect(words).toContain('NOT AS CONFIRMED · Bedplate build sheet')
    expect(words.match(/NOT AS CONFIRMED/g)?.length).toBeGreaterThanOrEqual(2) // at the head and at the foot
  }
})
