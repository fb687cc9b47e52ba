import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { en } from '../../core/words/index.ts'
import { expect, test as bench } from './bench.ts'
import { Machinist } from './machinist.ts'
import { backToTheList } from './seed.ts'
import { engineFile } from '../engine-files.ts'
import { saying } from './named.ts'

interface Cell {
  readonly housing: string
  readonly journal: string
  readonly upper: string
  readonly lower: string
  readonly positions?: readonly string[]
}
interface Spec {
  id: string
  name: string
  case: { saddles: { id: string; at: string }[] }
  fits: { positions: string[]; chart?: Cell[] }[]
}

/** The split-case three with another chart at M1, a mixed pair in it, and no chart for its big ends. */
function bySaddle(spec: Spec): Spec {
  const [mains, bigEnds] = spec.fits as [Spec['fits'][number], Spec['fits'][number]]
  const own = { housing: '1', journal: 'H', upper: 'S', lower: 'T', positions: ['M1'] }
  const { chart: _, ...banded } = bigEnds
  const fits = [{ ...mains, chart: [own, ...mains.chart!] }, banded]
  return { ...spec, id: 'by-saddle', name: 'By saddle', fits }
}

/** As long as one likes. */
function long(spec: Spec, saddles: number): Spec {
  const first = spec.case.saddles[0]!
  const all = Array.from({ length: saddles }, (_, at) => ({
    ...first,
    id: `M${at + 1}`,
    at: `${20 + 30 * at} mm`,
  }))
  const [mains, ...others] = spec.fits as [Spec['fits'][number]]
  const { chart: _, ...banded } = mains
  const fits = [{ ...banded, positions: all.map(({ id }) => id) }, ...others]
  return {
    ...spec,
    id: `long-${saddles}`,
    name: `Long ${saddles}`,
    case: { ...spec.case, saddles: all },
    fits,
  }
}

const test = bench.extend({
  specs: async ({}, use) => {
    const folder = await mkdtemp(join(tmpdir(), 'bedplate-specs-'))
    const read = async (id: string) => JSON.parse(await readFile(engineFile(id), 'utf8')) as Spec
    const skerry = await read('skerry-3')
    for (const spec of [await read('fen-1'), bySaddle(skerry), long(skerry, 200)])
      await writeFile(join(folder, `${spec.id}.json`), JSON.stringify(spec))
    await use(folder)
    await rm(folder, { recursive: true, force: true })
  },
})
test.setTimeout(120_000)

test('charts without sizes, with one of its own at a saddle, and an engine too long', async ({ bench }) => {
  await test.step('a chart without sizes: grades and no clearance, the tray, and readings all the same', async () => {
    const machinist = new Machinist(bench)
    await machinist.startBuild(/Fen 1/, 'Ditch', 'R. Halloran')
    for (const marks of ['1 2', 'U W', '1', 'X']) await machinist.noteMarks(marks)
    await expect(machinist.heading).toContainText('Choose mains')
    await expect(machinist.row('M1')).toContainText(en.shells.row.noSizes)
    await machinist.openRow('M1')
    await expect(machinist.panel).toContainText(en.proposals['by-chart']({ housing: '1', journal: 'U' }))
    await machinist.countTray({ B: '1', H: '2' })
    await expect(machinist.panel).toContainText(
      en.shells.toOrder({ lines: [{ count: 1, grade: 'B', undersize: null, half: 'either' }] }),
    )
    await machinist.measure('M1', 'housing', '47.000')
    await machinist.measure('M1', 'journal', '42.966')
    await expect(machinist.panel).toContainText(
      saying((any) => en.problems['no-walls-known']({ place: any })),
    )
    for (const step of ['Choose mains', 'Choose big end']) await machinist.finishStep(step)
    await expect(machinist.heading).toContainText('Main shells')
    await expect(machinist.panel).toContainText('B')
  })

  await test.step('a chart of its own at one saddle, and big ends by bands alone', async () => {
    const machinist = new Machinist(bench)
    await backToTheList(bench.page)
    await machinist.startBuild(/^By saddle/, 'Shells', 'R. Halloran')
    for (const marks of ['1 1 3 2', 'H H F G', '4 5 4', 'L M L']) await machinist.noteMarks(marks)
    await machinist.openRow('M1')
    await expect(machinist.panel).toContainText(
      en.proposals['halves-differ']({ split: 'upper-lower', upper: 'S', lower: 'T' }),
    )
    await machinist.openRow('M2')
    await expect(machinist.panel).toContainText(
      en.shells.pair({ split: 'upper-lower', upper: 'T', lower: 'T' }),
    )
    await machinist.finishStep('Choose mains')
    await machinist.openRow('B1')
    await expect(machinist.panel).toContainText(
      saying((any) => en.proposals['by-bands']({ of: any, housing: '4', journal: any })),
    )
    await machinist.finishStep('Choose big ends')
  })

  await test.step('200 saddles are refused in a sentence', async () => {
    await backToTheList(bench.page)
    await expect(bench.page.getByRole('main')).toContainText('“saddles”')
    await expect(bench.page.getByRole('button', { name: /^Fen 1/ })).toBeEnabled()
  })
})
