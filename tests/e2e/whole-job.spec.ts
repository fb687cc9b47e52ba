import { expect, onDesktopAlone, test } from './bench.ts'
import { Mechanic } from './mechanic.ts'

test('the split-case three from bare case to finished sheet, by pointer', async ({ bench }) => {
  test.setTimeout(240_000)
  const mechanic = new Mechanic(bench.page, 'pointer')
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
  await expect(mechanic.heading).toHaveText('All steps are done')
  await mechanic.confirm()
  await expect(mechanic.heading).toHaveText('Finished')
  await mechanic.main.click()
  await expect(bench.page.getByRole('heading', { name: /^Build sheet \d{4}-001$/ })).toBeVisible()
  await expect(bench.page.getByText('NOT ANSWERED')).toHaveCount(0)
})

test('the single from bare case to finished sheet, by keys alone', onDesktopAlone, async ({ bench }) => {
  test.setTimeout(240_000)
  const mechanic = new Mechanic(bench.page, 'keys')
  await mechanic.startBuild(/Fen 1/, 'Ditch 7', 'I. Brandvold')
  await mechanic.noteMarks('12')
  await mechanic.noteMarks('U W')
  await mechanic.noteMarks('2')
  await mechanic.noteMarks('Y')
  for (const step of [
    'Choose mains',
    'Choose big end',
    'Main shells',
    'Rod shells',
    'Rod bolts',
    'Lay crank',
  ])
    await mechanic.finishStep(step)
  await mechanic.answerReading('0.009 in')
  for (const step of ['Upper bead', 'Lower bead', 'Close case', 'Case bolts', 'Pump cover on'])
    await mechanic.finishStep(step)
  for (const step of ['Cover screws', 'Last check']) await mechanic.finishStep(step)
  await mechanic.confirm()
  await expect(mechanic.heading).toHaveText('Finished')
  await bench.page.keyboard.press('Enter')
  await expect(bench.page.getByRole('heading', { name: /^Build sheet/ })).toBeVisible()
})
