import { en } from '../../core/words/index.ts'
import { expect, onDesktopAlone, test, type Bench } from './bench.ts'
import { Mechanic } from './mechanic.ts'
import { afterPulls, ask, openAt } from './seed.ts'

test.setTimeout(120_000)

/** At the rod bolts of the split-case three: seated all six, three at torque. */
async function inTheSecondPass(bench: Bench) {
  await openAt(bench, {
    engine: /Skerry 3/,
    name: 'Renderer killed',
    person: 'R. Halloran',
    marks: ['1 2 2 3', 'F G G H', '4 5 4', 'L M L'],
    far: afterPulls(6 + 3),
  })
}

test(
  'a window whose renderer ends in mid pass comes back at the same bolt, with every pull',
  onDesktopAlone,
  async ({ unopened: bench }) => {
    const mechanic = new Mechanic(bench.page, 'pointer')
    await inTheSecondPass(bench)
    await mechanic.confirm() // the fourth, by hand
    await expect(mechanic.main).toContainText(en.run.confirm.at({ target: '15 N·m', number: '5' }))
    const entries = await mechanic.entries()

    await bench.crash()
    await expect(mechanic.heading).toContainText(
      en.run.heading({ cap: null, pass: 2, passes: 3, kind: 'torque', step: null, ownOrder: false }),
    )
    await expect(mechanic.main).toContainText(en.run.confirm.at({ target: '15 N·m', number: '5' }))
    expect(await mechanic.entries()).toBe(entries)
    await mechanic.confirm()
    await expect(mechanic.main).toContainText(en.run.confirm.at({ target: '15 N·m', number: '6' }))
  },
)

test(
  'a pull that is confirmed as the renderer ends is in the record or is asked for again, and never both',
  onDesktopAlone,
  async ({ unopened: bench }) => {
    const mechanic = new Mechanic(bench.page, 'pointer')
    await inTheSecondPass(bench)
    const before = await mechanic.entries()
    await mechanic.main.click()
    await bench.crash()

    await expect(mechanic.heading).toContainText(
      en.run.heading({ cap: null, pass: 2, passes: 3, kind: 'torque', step: null, ownOrder: false }),
    )
    const after = await mechanic.entries()
    expect([before, before + 1]).toContain(after)
    await expect(mechanic.main).toContainText(
      after === before
        ? en.run.confirm.at({ target: '15 N·m', number: '4' })
        : en.run.confirm.at({ target: '15 N·m', number: '5' }),
    )
    const [line] = await ask(bench.page, 'builds.list', {})
    expect(line?.entries).toBe(after)
  },
)
