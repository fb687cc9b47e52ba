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

test(
  'the four with separate caps from block to finished sheet, by keys alone',
  onDesktopAlone,
  async ({ bench }) => {
    test.setTimeout(240_000)
    const mechanic = new Mechanic(bench.page, 'keys')
    await mechanic.startBuild(/Tarn 4/, 'Pump set 7', 'I. Brandvold')
    await mechanic.noteMarks('kllmk')
    await mechanic.noteMarks('1 2 2 3 1')
    await mechanic.noteMarks('A,B,A,B')
    await mechanic.noteMarks('7 8 7 8')
    for (const step of ['Choose mains', 'Choose big ends', 'Main shells', 'Lay crank', 'Main cap bolts'])
      await mechanic.finishStep(step)
    await mechanic.answerReading('0.2')
    for (const step of ['Rod shells', 'Rod bolts']) await mechanic.finishStep(step)
    await mechanic.answerReading('0.009 in')
    for (const step of ['Turn crank', 'Sump bead', 'Sump on', 'Sump bolts', 'Last check'])
      await mechanic.finishStep(step)
    await mechanic.confirm()
    await expect(mechanic.heading).toHaveText('Finished')
    await bench.page.keyboard.press('Enter')
    await expect(bench.page.getByRole('heading', { name: /^Build sheet/ })).toBeVisible()
  },
)
