import { en } from '../../core/words/index.ts'
import { expect, onDesktopToo, test as base } from './bench.ts'
import type { Bench } from './bench.ts'
import { withDataFolder } from './hosts/host.ts'
import { OtherBench } from './other-bench.ts'
import { pagesOf } from './pdf.ts'
import { forged } from '../electron/requests/forged.ts'

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

/** Does something to the record of the bench while no host has it open, and goes to the archive. */
async function archiveAfter(bench: Bench, work: (here: OtherBench) => Promise<void>) {
  await bench.whileClosed(async (dataFolder) => {
    const here = await OtherBench.at(dataFolder)
    await work(here)
    await here.close()
  })
  await bench.page.getByRole('button', { name: 'Archive', exact: true }).click()
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
    await page.getByRole('button', { name: 'Archive', exact: true }).click()
    const refusal = page.getByRole('region', { name: en.archive.import.title }).getByRole('alert')
    for (const [what, sentence] of [
      [text.slice(0, text.length / 2), /at line \d+ something was changed, added or cut off/],
      [`${text}x`, /at line \d+ something was changed/],
      ['GIF89a, a picture renamed', /is not an exported build/],
    ] as const) {
      await drop(bench, what)
      await expect(refusal).toContainText(sentence)
      await expect(refusal).toContainText('Nothing was imported')
    }
    await expect(lines(bench)).toHaveCount(0)
    await drop(bench, text, 'renamed by hand.txt')
    await expect(page.locator('.outcome')).toContainText('Imported as')
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
    await expect(outcome).toContainText(/Imported as \d{4}-002 “Ferry, port engine”: 1 entry/)
    await drop(bench, first)
    await expect(outcome).toContainText('is here already, entry for entry. Nothing was changed.')
    await drop(bench, longer)
    await expect(outcome).toContainText('was continued elsewhere: 3 more entries are here now, 4 in all.')
    await drop(bench, forkOf)
    await expect(outcome).toContainText('was continued differently in two places: from entry 2 on')
    const sides = outcome.getByRole('row')
    await expect(sides.nth(1)).toContainText('marks noted')
    await expect(sides.nth(2)).toContainText('build voided')
    await expect(sides.nth(2)).toContainText('I. Brandvold')
    await expect(lines(bench)).toHaveCount(2)

    await outcome.getByRole('button', { name: /^Open \d{4}-002/ }).click()
    await expect(page.getByRole('region', { name: 'Drawing' })).toBeVisible()
    await expect(page.getByText(/^Step 4 of /)).toBeVisible()
  })

  await test.step('a build with an entry of a newer program is imported, and opens to be read', async () => {
    const build = await elsewhere.start('skerry-3', 'Ferry', 'F-201', 'Ana Ruiz')
    await elsewhere.goOn(build, ({ seq }) => seq >= 3)
    const newer = forged(await elsewhere.export(build), (entries) => {
      entries[2]!['event'] = { type: 'thread-cleaned', version: 1 }
    })
    await page.getByRole('button', { name: '← Archive' }).click()
    await drop(bench, newer)
    await page.getByRole('button', { name: /^Open / }).click()
    await expect(page.getByRole('alert')).toContainText('Entry 3 of this build was made by a newer Bedplate')
    await expect(page.locator('.confirm button')).toBeDisabled()
    await page.getByRole('button', { name: 'Sheet', exact: true }).click()
    await expect(page.getByRole('alert')).toContainText('made by a newer Bedplate')
    await expect(page.getByRole('button', { name: 'Void this build' })).toHaveCount(0)
  })
})

test('the archive is paged and searched by engine, serial number, person, day, part and flag', async ({
  bench,
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
  await page.getByRole('button', { name: 'Older →' }).click()
  await expect(lines(bench)).toHaveCount(3)
  await expect(page.getByText('page 2')).toBeVisible()
  await page.getByRole('button', { name: '← Newer' }).click()
  await expect(lines(bench)).toHaveCount(50)

  const words = page.getByLabel('Search for')
  const saidOf = page.getByLabel('Search in')
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
  await page.getByRole('button', { name: 'flagged' }).click()
  await expect(lines(bench)).toHaveCount(1)
  await page.getByRole('button', { name: 'any', exact: true }).click()
  await page.getByLabel('Started from').fill('2020-01-01')
  await page.getByLabel('to', { exact: true }).fill('2020-12-31')
  await expect(page.getByText('No build found.')).toBeVisible()
  await page.getByLabel('to', { exact: true }).fill('2099-12-31')
  await expect(lines(bench)).toHaveCount(50)
})

test('two builds of one engine are compared; back from a build the archive is as it was left', async ({
  bench,
}) => {
  const { page } = bench
  await archiveAfter(bench, async (here) => {
    const port = await here.start('skerry-3', 'Ferry, port', 'F-201', 'Ana Ruiz')
    await here.goOn(port, ({ seq }) => seq >= 4)
    await here.start('tarn-4', 'Ferry pump', 'P-7', 'Ana Ruiz')
    for (let count = 1; count <= 50; count += 1)
      await here.start('skerry-3', `Ferry ${count}`, '', 'R. Halloran')
  })
  await page.getByLabel('Search for').fill('ferry')
  await page.getByRole('button', { name: 'Older →' }).click()
  await expect(lines(bench)).toHaveCount(2)

  const compare = page.getByRole('button', { name: 'Compare the two' })
  for (const line of await lines(bench).getByRole('checkbox').all()) await line.check()
  await expect(compare).toBeDisabled()
  await expect(page.getByText('They are builds of two engines')).toBeVisible()
  await page.getByRole('button', { name: '← Newer' }).click()
  await expect(lines(bench)).toHaveCount(50)
  await lines(bench).getByRole('checkbox').first().check()
  await compare.click()
  await expect(page.getByRole('heading', { name: 'Two builds side by side' })).toBeVisible()
  await expect(page.getByText('Both were built by the same spec, to the letter.')).toBeVisible()
  await expect(page.getByRole('columnheader', { name: 'Ferry, port' }).first()).toBeVisible()
  await page.getByRole('button', { name: '← Archive' }).click()

  await page.getByRole('button', { name: 'Older →' }).click()
  await page.getByRole('button', { name: 'Ferry, port' }).click()
  await expect(page.getByRole('region', { name: 'Drawing' })).toBeVisible()
  await page.getByRole('button', { name: 'Sheet', exact: true }).click()
  await page.getByRole('button', { name: '← Back to the build' }).click()
  await page.getByRole('button', { name: '← Archive' }).click()
  await expect(page.getByLabel('Search for')).toHaveValue('ferry')
  await expect(page.getByText('page 2')).toBeVisible()
  await expect(page.getByRole('button', { name: 'Ferry, port' })).toBeFocused()
})

test(
  'a finished build is verified, amended, printed, and made void',
  onDesktopToo,
  async ({ bench, host }) => {
    const { page } = bench
    await archiveAfter(bench, async (here) => {
      await here.goOn(await here.start('skerry-3', 'Ferry, port', 'F-201', 'Ana Ruiz'))
      await here.get('preferences.keep', { person: 'Ana Ruiz' })
    })
    await lines(bench).getByRole('checkbox').check()
    await page.getByRole('button', { name: 'Verify it' }).click()
    await page.clock.fastForward(1000)
    await expect(page.getByText(/✓ \d+ entries: each is as it was confirmed/)).toBeVisible()
    const code = await page.locator('.verify code').innerText()
    const { name, bytes } = await bench.save(() =>
      page.getByRole('button', { name: 'Export as one file' }).click(),
    )
    // Only the desktop host knows that it is on disk; a browser has it as a download.
    await expect(page.getByText(host === 'local' ? `The browser saves ${name}.` : `/${name}`)).toBeVisible()
    expect(name).toContain(code)
    expect(bytes.toString()).toContain('"bedplateBuild":1')

    await page.getByRole('button', { name: 'Ferry, port' }).click()
    await page.getByRole('button', { name: 'Show the build sheet' }).click()
    await expect(page.getByText(`head code ${code}`)).toBeVisible()
    await expect(page.getByRole('button', { name: 'Verify this build' })).toBeVisible()
    await page.getByRole('button', { name: 'Amend this build' }).click()
    await page.getByLabel('What is to be added to this build?').fill('Sump plug sealed again on 3 May')
    await page.getByRole('button', { name: 'Next: why' }).click()
    await page.getByLabel('Why is it added now?').fill('It wept at the first start')
    await page.getByRole('button', { name: 'Add it' }).click()
    await expect(page.getByText('Sump plug sealed again on 3 May').first()).toBeVisible()
    const amended = (await pagesOf(await bench.pdf())).join(' ')
    expect(amended).toContain('Sump plug sealed again on 3 May')
    expect(amended).toContain('It wept at the first start')
    expect(amended).not.toContain('Verify this build')

    await page.getByRole('button', { name: 'Void this build' }).click()
    await page.getByLabel('Why is this build void?').fill('Trial assembly')
    await page.getByRole('button', { name: 'Void the build' }).click()
    await expect(page.getByText('VOID: Trial assembly')).toBeVisible()
    const voided = (await pagesOf(await bench.pdf())).join(' ')
    expect(voided).toContain('VOID: Trial assembly')
  },
)
