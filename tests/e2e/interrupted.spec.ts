import { expect, test } from './bench.ts'
import { Mechanic } from './mechanic.ts'

/** Up to the rod bolts of the split-case three, where a torque pass and an angle pass wait. */
async function toTheRodBolts(mechanic: Mechanic) {
  await mechanic.startBuild(/Skerry 3/, 'Interrupted', 'R. Halloran')
  for (const marks of ['1 2 2 3', 'F G G H', '4 5 4', 'L M L']) await mechanic.noteMarks(marks)
  for (const step of ['Choose mains', 'Choose big ends', 'Main shells', 'Lay crank'])
    await mechanic.finishStep(step)
  await mechanic.answerReading('0.12')
  await mechanic.finishStep('Rod shells')
}

test('a host killed in mid pass comes back at the same bolt', async ({ bench }) => {
  test.setTimeout(120_000)
  const mechanic = new Mechanic(bench.page, 'pointer')
  await toTheRodBolts(mechanic)
  await mechanic.confirm() // start
  await mechanic.confirm() // the bolts are new
  for (let pull = 0; pull < 6 + 4; pull++) await mechanic.confirm() // seated all six, four at torque

  const entries = await mechanic.entries()
  await expect(mechanic.heading).toContainText('pass 2 of 3, torque')
  await expect(mechanic.main).toContainText('5 is at 15 N·m')

  await bench.cutPowerAndStartAgain()
  await expect(mechanic.heading).toContainText('pass 2 of 3, torque')
  await expect(mechanic.main).toContainText('5 is at 15 N·m')
  expect(await mechanic.entries()).toBe(entries)
  await mechanic.confirm()
  await expect(mechanic.main).toContainText('6 is at 15 N·m')
})
