import { en } from '../../core/words/index.ts'
import { chooseDay } from './choose-day.ts'
import { expect, onDesktopToo, test as base } from './bench.ts'
import type { Bench } from './bench.ts'
import { withDataFolder } from './hosts/host.ts'
import { OtherBench } from './other-bench.ts'
import { pagesOf } from './pdf.ts'
import { forged } from '../electron/requests/exchange/forged.ts'
import { named, saying, sayingWithNumbers } from './named.ts'

/** A bench elsewhere, beside the one with the window. */
const test = base.extend<{ elsewhere: OtherBench }>({
  elsewhere: async ({}, use) => {
    await withDataFolder(async (folder) => {
      const other = await OtherBench.at(folder)
      await use(other)
      await other.close()
    })
  },
})

/** Opens the bench on a record of which something was made already, and goes to the archive. */
async function archiveAfter(bench: Bench, work: (here: OtherBench) => Promise<void>) {
  const here = await OtherBench.at(bench.dataFolder)
  await work(here)
  await here.close()
  await bench.open()
  await bench.page.getByRole('button', { name: en.archive.title, exact: true }).click()
}

/** Lets go of a file over the page, as one drags it from a folder. */
async function drop({ page }: Bench, text: string, name = 'build.bedplate') {
  const data = await page.evaluateHandle(
    ([text, name]) => {
      const transfer = new DataTransfer()
      transfer.items.add(new File([text], name))
      return transfer
    },
    [text, name] as const,
  )
  await page.dispatchEvent('main', 'dragover', { dataTransfer: data })
  await expect(page.getByRole('region', { name: en.archive.import.title })).toHaveClass(/over/)
  await page.dispatchEvent('main', 'drop', { dataTransfer: data })
}

function lines({ page }: Bench) {
  return page.getByRole('row').filter({ has: page.getByRole('checkbox') })
}

test('what is dropped on the archive is imported once and whole, or refused', async ({
  bench,
  elsewhere,
}) => {
  const { page } = bench
  await test.step('files that are no whole export are refused in a sentence, and nothing is imported', async () => {
    const text = await elsewhere.export(await elsewhere.start('skerry-3', 'Ferry', 'F-201', 'Ana Ruiz'))
    await page.getByRole('button', { name: en.archive.title, exact: true }).click()
    const refusal = page.getByRole('region', { name: en.archive.import.title }).getByRole('alert')
    const isAltered = saying((any) => en.problems['import-altered']({ line: any }))
    for (const [what, sentence] of [
      [text.slice(0, text.length / 2), isAltered],
      [`${text}x`, isAltered],
      ['GIF89a, a picture renamed', en.problems['import-not-ours']({})],
    ] as const) {
      await drop(bench, what)
      await expect(refusal).toContainText(sentence)
    }
    await expect(lines(bench)).toHaveCount(0)
    await drop(bench, text, 'renamed by hand.txt')
    await expect(page.locator('.outcome')).toContainText(
      saying((any) => en.archive.import.added({ number: any, name: any, entries: 1 })),
    )
  })

  await test.step('a build from elsewhere is dropped on the archive: once, again, longer, and as a fork', async () => {
    const build = await elsewhere.start('skerry-3', 'Ferry, port engine', 'F-201', 'Ana Ruiz')
    const first = await elsewhere.export(build)
    await elsewhere.goOn(build, ({ seq }) => seq >= 4)
    const longer = await elsewhere.export(build)
    const forkOf = await withDataFolder(async (folder) => {
      const third = await OtherBench.at(folder)
      await third.get('builds.import', { text: first })
      await third.act(build, { type: 'void-build', reason: 'Tried on the wrong case' }, 'I. Brandvold')
      const text = await third.export(build)
      await third.close()
      return text
    })

    const outcome = page.locator('.outcome')
    await drop(bench, first)
    await expect(outcome).toContainText(
      saying((any) => en.archive.import.added({ number: any, name: 'Ferry, port engine', entries: 1 })),
    )
    await drop(bench, first)
    await expect(outcome).toContainText(saying((any) => en.archive.import.known({ number: any, name: any })))
    await drop(bench, longer)
    await expect(outcome).toContainText(
      saying((any) => en.archive.import.continued({ number: any, name: any, added: 3, entries: 4 })),
    )
    await drop(bench, forkOf)
    await expect(outcome).toContainText(
      saying((any) => en.archive.import.fork({ number: any, name: any, at: 2 })),
    )
    const sides = outcome.getByRole('row')
    await expect(sides.nth(1)).toContainText(en.archive.entries['marks-noted'])
    await expect(sides.nth(2)).toContainText(en.archive.entries['build-voided'])
    await expect(sides.nth(2)).toContainText('I. Brandvold')
    await expect(sides.nth(2)).toContainText('Tried on the wrong case')
    await expect(lines(bench)).toHaveCount(2)

    await outcome
      .getByRole('button', { name: named((any) => en.archive.import.open({ number: any })) })
      .click()
    await expect(page.getByRole('region', { name: en.buildWindow.drawing })).toBeVisible()
    await expect(
      page.getByText(saying((any) => en.buildWindow.stepPlace({ place: 4, steps: any, name: any }))),
    ).toBeVisible()
  })

  await test.step('a build with an entry of a newer program is imported, and opens to be read', async () => {
    const build = await elsewhere.start('skerry-3', 'Ferry', 'F-201', 'Ana Ruiz')
    await elsewhere.goOn(build, ({ seq }) => seq >= 3)
    const newer = forged(await elsewhere.export(build), (entries) => {
      entries[2]!['event'] = { type: 'thread-cleaned', version: 1 }
    })
    await page.getByRole('button', { name: `← ${en.archive.title}` }).click()
    await drop(bench, newer)
    await page.getByRole('button', { name: named((any) => en.archive.import.open({ number: any })) }).click()
    await expect(page.getByRole('alert')).toContainText(
      saying(() => en.problems['build-newer']({ entry: 3 })),
    )
    await expect(page.locator('.confirm button')).toBeDisabled()
    await page.getByRole('button', { name: en.buildWindow.sheet, exact: true }).click()
    await expect(page.getByRole('alert')).toContainText(
      saying(() => en.problems['build-newer']({ entry: 3 })),
    )
    await expect(page.getByRole('button', { name: en.steps.afterwards.void })).toHaveCount(0)
  })
})

test('the archive is paged and searched by engine, serial number, person, day, part and flag', async ({
  unopened: bench,
}) => {
  const { page } = bench
  await archiveAfter(bench, async (here) => {
    for (let count = 1; count <= 52; count += 1)
      await here.start('skerry-3', `Ferry ${count}`, `F-${200 + count}`, 'Ana Ruiz')
    const pump = await here.start('tarn-4', 'Lower lock', 'P7', 'I. Brandvold')
    const { runs } = await here.goOn(pump, ({ runs }) => Object.keys(runs).length > 0)
    const [procedure = ''] = Object.keys(runs)
    await here.act(pump, { type: 'note-problem', procedure, fastener: null, text: 'Thread galled' })
  })
  await expect(lines(bench)).toHaveCount(50)
  await page.getByRole('button', { name: en.archive.older }).click()
  await expect(lines(bench)).toHaveCount(3)
  await expect(page.getByText(en.archive.page({ page: 2 }))).toBeVisible()
  await page.getByRole('button', { name: en.archive.newer }).click()
  await expect(lines(bench)).toHaveCount(50)

  const words = page.getByLabel(en.archive.search.words)
  const saidOf = page.getByLabel(en.archive.search.saidOf)
  for (const [kind, typed, found] of [
    ['engine', 'tarn', 1],
    ['serial', 'F-217', 1],
    ['serial', 'p-7', 1],
    ['person', 'brandvold', 1],
    ['part', 'brandvold', 0],
    ['part', 'crank', 1],
    ['flag', 'galled', 1],
    ['name', 'ferry 3', 11],
  ] as const) {
    await saidOf.selectOption(kind)
    await words.fill(typed)
    await expect(lines(bench), `${kind} ${typed}`).toHaveCount(found)
  }
  await words.fill('')
  await page.getByRole('button', { name: en.archive.search.states.flagged }).click()
  await expect(lines(bench)).toHaveCount(1)
  await page.getByRole('button', { name: en.archive.search.states.any, exact: true }).click()
  await chooseDay(page, en.archive.search.startedFrom, '2020-01-01')
  await chooseDay(page, en.archive.search.startedTo, '2020-12-31')
  await expect(page.getByText(en.archive.search.nothingFound)).toBeVisible()
  await chooseDay(page, en.archive.search.startedTo, `${new Date().getFullYear() + 1}-12-31`)
  await expect(lines(bench)).toHaveCount(50)
})

test('two builds of one engine are compared; back from a build the archive is as it was left', async ({
  unopened: bench,
}) => {
  const { page } = bench
  await archiveAfter(bench, async (here) => {
    const port = await here.start('skerry-3', 'Ferry, port', 'F-201', 'Ana Ruiz')
    await here.goOn(port, ({ seq }) => seq >= 4)
    await here.start('tarn-4', 'Ferry pump', 'P-7', 'Ana Ruiz')
    for (let count = 1; count <= 50; count += 1)
      await here.start('skerry-3', `Ferry ${count}`, '', 'R. Halloran')
  })
  await page.getByLabel(en.archive.search.words).fill('ferry')
  await page.getByRole('button', { name: en.archive.older }).click()
  await expect(lines(bench)).toHaveCount(2)

  const compare = page.getByRole('button', { name: en.archive.compareTwo })
  for (const line of await lines(bench).getByRole('checkbox').all()) await line.check()
  await expect(compare).toBeDisabled()
  await expect(page.getByText(en.archive.twoEngines)).toBeVisible()
  await page.getByRole('button', { name: en.archive.newer }).click()
  await expect(lines(bench)).toHaveCount(50)
  await lines(bench).getByRole('checkbox').first().check()
  await compare.click()
  await expect(page.getByRole('heading', { name: en.archive.compared.title })).toBeVisible()
  await expect(page.getByText(en.archive.compared.sameSpec)).toBeVisible()
  await expect(page.getByRole('columnheader', { name: 'Ferry, port' }).first()).toBeVisible()
  await page.getByRole('button', { name: `← ${en.archive.title}` }).click()

  await page.getByRole('button', { name: en.archive.older }).click()
  await page.getByRole('button', { name: 'Ferry, port' }).click()
  await expect(page.getByRole('region', { name: en.buildWindow.drawing })).toBeVisible()
  await page.getByRole('button', { name: en.buildWindow.sheet, exact: true }).click()
  await page.getByRole('button', { name: en.sheet.page.backToBuild }).click()
  await page.getByRole('button', { name: `← ${en.archive.title}` }).click()
  await expect(page.getByLabel(en.archive.search.words)).toHaveValue('ferry')
  await expect(page.getByText(en.archive.page({ page: 2 }))).toBeVisible()
  await expect(page.getByRole('button', { name: 'Ferry, port' })).toBeFocused()
})

test(
  'a finished build is verified, amended, printed, and made void',
  onDesktopToo,
  async ({ unopened: bench, host }) => {
    const { page } = bench
    await archiveAfter(bench, async (here) => {
      await here.goOn(await here.start('skerry-3', 'Ferry, port', 'F-201', 'Ana Ruiz'))
      await here.get('preferences.keep', { person: 'Ana Ruiz' })
    })
    await lines(bench).getByRole('checkbox').check()
    await page.getByRole('button', { name: en.archive.verifyIt }).click()
    await page.clock.fastForward(1000)
    await expect(
      page.getByText(
        sayingWithNumbers(() => en.record.verify.isWhole({ builds: null, entries: 20, witnesses: 0 })),
      ),
    ).toBeVisible()
    const code = await page.locator('.verify code').innerText()
    const { name, bytes } = await bench.save(() =>
      page.getByRole('button', { name: en.archive.exportOne }).click(),
    )
    // Only the desktop host knows that it is on disk; a browser has it as a download.
    await expect(
      page.getByText(host === 'local' ? en.parts.savedByBrowser({ fileName: name }) : `/${name}`),
    ).toBeVisible()
    expect(name).toContain(code)
    expect(bytes.toString()).toContain('"bedplateBuild":1')

    await page.getByRole('button', { name: 'Ferry, port' }).click()
    await page.getByRole('button', { name: en.steps.finish.showSheet }).click()
    await expect(page.getByText(saying((any) => en.sheet.head.entries({ entries: any, code })))).toBeVisible()
    await expect(page.getByRole('button', { name: en.sheet.verify })).toBeVisible()
    await page.getByRole('button', { name: en.steps.afterwards.amend }).click()
    await page.getByLabel(en.steps.afterwards.whatToAdd).fill('Sump plug sealed again on 3 May')
    await page.getByRole('button', { name: en.steps.afterwards.nextWhy }).click()
    await page.getByLabel(en.steps.afterwards.whyAdded).fill('It wept at the first start')
    await page.getByRole('button', { name: en.steps.afterwards.add }).click()
    await expect(page.getByText('Sump plug sealed again on 3 May').first()).toBeVisible()
    const amended = (await pagesOf(await bench.pdf())).join(' ')
    expect(amended).toContain('Sump plug sealed again on 3 May')
    expect(amended).toContain('It wept at the first start')
    expect(amended).not.toContain(en.sheet.verify)

    await page.getByRole('button', { name: en.steps.afterwards.void }).click()
    await page.getByLabel(en.steps.afterwards.whyVoid).fill('Trial assembly')
    await page.getByRole('button', { name: en.steps.afterwards.voidIt }).click()
    await expect(
      page.getByText(saying((any) => en.sheet.voided({ reason: 'Trial assembly', stamp: any }))),
    ).toBeVisible()
    const voided = (await pagesOf(await bench.pdf())).join(' ')
    expect(voided).toMatch(saying((any) => en.sheet.voided({ reason: 'Trial assembly', stamp: any })))
  },
)
