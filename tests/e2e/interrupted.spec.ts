import { en } from '../../core/words/index.ts'
import { expect, onDesktopToo, test, type Bench } from './bench.ts'
import { Mechanic } from './mechanic.ts'
import { afterPulls, openAt } from './seed.ts'

/** At the rod bolts of the split-case three: seated all six, four at torque, and an angle pass to come. */
async function inTheSecondPass(bench: Bench) {
  await openAt(bench, {
    engine: /Skerry 3/,
    name: 'Interrupted',
    person: 'R. Halloran',
    marks: ['1 2 2 3', 'F G G H', '4 5 4', 'L M L'],
    far: afterPulls(6 + 4),
  })
}

test('a host killed in mid pass comes back at the same bolt', onDesktopToo, async ({ unopened: bench }) => {
  test.setTimeout(120_000)
  const mechanic = new Mechanic(bench.page, 'pointer')
  await inTheSecondPass(bench)

  const entries = await mechanic.entries()
  await expect(mechanic.heading).toContainText(
    en.run.heading({ cap: null, pass: 2, passes: 3, kind: 'torque', step: null, ownOrder: false }),
  )
  await expect(mechanic.main).toContainText(en.run.confirm.at({ target: '15 N·m', number: '5' }))

  await bench.cutPowerAndStartAgain()
  await expect(mechanic.heading).toContainText(
    en.run.heading({ cap: null, pass: 2, passes: 3, kind: 'torque', step: null, ownOrder: false }),
  )
  await expect(mechanic.main).toContainText(en.run.confirm.at({ target: '15 N·m', number: '5' }))
  expect(await mechanic.entries()).toBe(entries)
  await mechanic.confirm()
  await expect(mechanic.main).toContainText(en.run.confirm.at({ target: '15 N·m', number: '6' }))
})
