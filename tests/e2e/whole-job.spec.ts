import { readFileSync } from 'node:fs'
import { readSpec } from '../../core/engine/index.ts'
import { en, loadWords, type Language } from '../../core/words/index.ts'
import { expect, onDesktopAlone, test } from './bench.ts'
import { engineFile } from '../engine-files.ts'
import { printedInOthers } from './in-languages.ts'
import { Mechanic } from './mechanic.ts'
import { saying } from './named.ts'

test('the split-case three from bare case to finished sheet, by pointer, with sheet and labels in German and Spanish', async ({
  bench,
}) => {
  test.setTimeout(240_000)
  const { page } = bench
  const mechanic = new Mechanic(page, 'pointer')
  await mechanic.startBuild(/Skerry 3/, 'Ferry auxiliary, port side', 'R. Halloran')
  await mechanic.noteMarks('1 2 2 3')
  await mechanic.noteMarks('F G G H')
  await mechanic.noteMarks('4 5 4')
  await mechanic.noteMarks('L M L')
  for (const step of ['Choose mains', 'Choose big ends', 'Main shells', 'Lay crank'])
    await mechanic.finishStep(step)
  await mechanic.answerReading('0,12')
  for (const step of [
    'Rod shells',
    'Rod bolts',
    'Rods free',
    'Bead pump side',
    'Bead gear side',
    'Close case',
  ])
    await mechanic.finishStep(step)
  for (const step of ['Case bolts', 'Flange bolts', 'Turn crank', 'Sump on', 'Sump screws', 'Last check'])
    await mechanic.finishStep(step)
  await expect(mechanic.heading).toHaveText(en.buildWindow.allDone)
  await mechanic.confirm()
  await expect(mechanic.heading).toHaveText(en.steps.finish.finished)
  await mechanic.main.click()
  await expect(
    page.getByRole('heading', { name: saying((any) => en.sheet.title({ number: any })) }),
  ).toBeVisible()
  await expect(page.getByText(en.sheet.run.notAnswered)).toHaveCount(0)

  const entered = ['Ferry auxiliary, port side', '0,12']
  await printedInOthers(bench, entered, (says, { amounts, dates, sheet, signals }) => {
    const most = amounts.amount({ amount: 13.5, decimals: 1, isShort: true, unit: '' })
    expect(says(`15 N·m (${most}`), 'the limits of a torque').toBe(true)
    for (const sentence of [
      sheet.results.flags,
      sheet.results.noFlags,
      signals.NOTICE,
      `${sheet.page.numbered[0]}1`,
    ])
      expect(says(sentence), sentence).toBe(true)
    const now = Date.now()
    const days = [now, now - 600_000].map((at) => dates.day(new Date(at).toISOString()))
    expect(days.some(says), days.join(' or ')).toBe(true)
  })
  await page.getByRole('button', { name: en.sheet.page.backToBuild }).click()
  await page.getByRole('button', { name: mechanic.words.buildWindow.allSteps }).click()
  await page
    .getByRole('button', { name: /Choose mains/ })
    .first()
    .click()
  await page.getByRole('button', { name: mechanic.words.shells.orderAndLabels }).click()
  await printedInOthers(bench, entered, (says, { tray, engineParts }) => {
    for (const sentence of [tray.order.title, `M1 ${engineParts.halves.upper}`])
      expect(says(sentence), sentence).toBe(true)
  })
})

/** The names of an engine's steps in a language, by their ids. */
function stepsOf(engine: string, language: Language) {
  const read = readSpec(readFileSync(engineFile(engine), 'utf8'), language)
  if (!read.ok) throw new Error(`${engine} cannot be read`)
  return (id: string) => read.spec.steps.find((step) => step.id === id)!.name
}

/** One of them in the desktop host, the other in the local one, which is started sooner. */
for (const [language, where] of [
  ['de', onDesktopAlone],
  ['es', {}],
] as const)
  test(
    `the single from bare case to finished sheet, by keys alone, in ${language}`,
    where,
    async ({ unopened: bench }) => {
      test.setTimeout(240_000)
      await bench.open(async (ask) => {
        await ask('preferences.keep', { language })
      })
      const words = await loadWords(language)
      const mechanic = new Mechanic(bench.page, 'keys', words)
      const step = stepsOf('fen-1', language)
      await mechanic.startBuild(/Fen 1/, 'Ditch 7', 'I. Brandvold')
      await mechanic.noteMarks('12')
      await mechanic.noteMarks('U W')
      await mechanic.noteMarks('2')
      await mechanic.noteMarks('Y')
      for (const id of [
        'choose-mains',
        'choose-big-ends',
        'fit-mains',
        'fit-rod-shells',
        'rods-run',
        'lay-crank',
      ])
        await mechanic.finishStep(step(id))
      await mechanic.answerReading('0,23')
      for (const id of [
        'bead-plus',
        'bead-minus',
        'close-case',
        'case-run',
        'cover-on',
        'cover-run',
        'last-look',
      ])
        await mechanic.finishStep(step(id))
      await mechanic.confirm()
      await expect(mechanic.heading).toHaveText(words.steps.finish.finished)
      await bench.page.keyboard.press('Enter')
      await expect(bench.page.locator('html')).toHaveAttribute('lang', language)
      await expect(bench.page.getByRole('heading', { level: 1 })).toHaveText(
        /^(Montageblatt|Hoja de montaje) \d{4}-001$/,
      )
      await expect(bench.page.locator('main')).toContainText(/\b0,23 mm/)
    },
  )
