import { en } from '../../core/words/index.ts'
import { expect } from './bench.ts'
import { Mechanic } from './mechanic.ts'
import { test } from './published-specs.ts'
import { afterPulls, openAt } from './seed.ts'
import { saying, sayingWithNumbers, shown } from './named.ts'

test('a stud is tightened until it is long enough, after a wait that is shortened with a reason', async ({
  unopened: bench,
}) => {
  const { page } = bench
  const mechanic = new Mechanic(page, 'pointer')
  // 14 studs measured and snug.
  await openAt(bench, {
    engine: /Published set F/,
    name: 'Set F',
    person: 'R. Halloran',
    far: afterPulls(28),
  })
  await expect(page.getByRole('timer', { name: en.run.wait.title })).toContainText(
    sayingWithNumbers(() => en.run.wait.left({ seconds: 60 })),
  )
  await mechanic.main.click()
  await page.getByRole('button', { name: en.run.wait.usualReasons[1]! }).click()
  await mechanic.letBounceTimePass()
  await expect(mechanic.main).toContainText(en.run.wait.shorten)
  await mechanic.confirm()

  const next = page.getByRole('status', { name: en.run.next })
  await expect(next).toContainText(en.run.measure.tightenOn)
  await expect(next).toContainText(shown('203.4 to 406.7 N·m'))
  // Every stud measures 250 mm in a seeded build, as much as its grip; 0.019 in are 0.4826 mm.
  await page.getByLabel(saying((any) => en.run.torqueThen({ unit: any, onScale: false }))).fill('220')
  await mechanic.answerReading('250.3')
  await expect(page.getByRole('alert')).toContainText(
    saying((any) =>
      en.problems['stretch-short']({
        fastener: any,
        stretch: any,
        limits: any,
        torque: any,
        torqueLimits: any,
        mostTorque: shown('406.7 N·m'),
      }),
    ),
  )
  await page.getByLabel(saying((any) => en.run.torqueThen({ unit: any, onScale: false }))).fill('290')
  await mechanic.answerReading('250.5')
  await expect(next).toContainText(saying((any) => en.run.pulledInPass({ pulled: any, planned: any })))
  await page.getByLabel(saying((any) => en.run.torqueThen({ unit: any, onScale: false }))).fill('420')
  await mechanic.answerReading('250.5')
  await expect(page.getByRole('alert')).toContainText(
    saying(
      ...(['stretch-torque', 'stretch-torque-replace'] as const).map(
        (code) => (any: never) =>
          en.problems[code]({
            fastener: any,
            stretch: any,
            limits: any,
            torque: any,
            torqueLimits: any,
            mostTorque: any,
            tooMuch: true,
          }),
      ),
    ),
  )
  await expect(mechanic.main).toContainText(saying((any) => en.run.confirm.loose({ number: any })))

  await page.getByRole('button', { name: en.buildWindow.sheet, exact: true }).click()
  await expect(
    page
      .getByText(
        sayingWithNumbers(() =>
          en.sheet.run.waited({ seconds: 60, shortened: en.run.wait.usualReasons[1]! }),
        ),
      )
      .first(),
  ).toBeVisible()
  await expect(
    page.getByText(
      [
        en.sheet.run.longer({ stretch: '0.500 mm' }),
        en.sheet.run.atTorque({ torque: '290 N·m' }),
        en.sheet.run.verdicts.within,
      ].join(', '),
    ),
  ).toBeVisible()
})
