import { copyFile, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { en } from '../../core/words/index.ts'
import { test as bench, expect } from './bench.ts'
import { engineFile } from '../engine-files.ts'
import { saying } from './named.ts'

/** A folder with a good engine, and one without the steps that note marks, choose and fit shells: four faults a fit. */
const test = bench.extend({
  specs: async ({}, use) => {
    const folder = await mkdtemp(join(tmpdir(), 'bedplate-specs-'))
    await copyFile('specs/tarn-4.json', join(folder, 'tarn-4.json'))
    const spec = JSON.parse(await readFile(engineFile('skerry-3'), 'utf8')) as { steps: { kind: string }[] }
    const steps = spec.steps.filter(({ kind }) => kind === 'run-procedure')
    const faulty = { ...spec, name: 'Faulty engine', steps: steps.map((step) => ({ ...step, after: [] })) }
    await writeFile(join(folder, 'faulty.json'), JSON.stringify({ ...faulty, cautions: [] }))
    await use(folder)
    await rm(folder, { recursive: true, force: true })
  },
})

test('an engine with several faults of one kind is reported, and the others can be built', async ({
  bench,
}) => {
  const engine = (name: RegExp) => bench.page.getByRole('button', { name })
  await expect(engine(/Faulty engine/)).toContainText(
    saying((any) => en.problems['fit-without-step']({ fit: any, missing: 'choose-shells' })),
  )
  await expect(engine(/Tarn 4/)).toBeEnabled()
})
