import { mkdtemp, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { test as bench, type Bench } from './bench.ts'
import { Mechanic } from './mechanic.ts'
import { afterPulls, openAt, type Far } from './seed.ts'
import { setA, setB, setD, setF } from '../published/tightening-sets.ts'

export const sets = { A: setA(), B: setB(), D: setD(), F: setF() }

/** Set B with what a manual may ask to be measured in it: lengths, the gap, stretch, end float, and a recheck. */
function measured(): object {
  const spec = JSON.parse(sets.B.specText) as { procedures: { orders: { id: string }[]; passes: object[] }[] }
  const order = spec.procedures[0]!.orders[0]!.id
  spec.procedures[0]!.passes = [
    { kind: 'length', order },
    { kind: 'seat', order, gap: { most: '0.05 mm' } },
    { kind: 'torque', order, target: '70 N·m' },
    { kind: 'stretch', order, least: '0.10 mm', most: '0.15 mm' },
    {
      kind: 'action',
      instruction: 'Measure the end float.',
      reading: { least: '0.10 mm', most: '0.25 mm' },
    },
    { kind: 'recheck', order, target: '70 N·m', only: ['bolt-1', 'bolt-2'], repeat: 'until-none-moves' },
  ]
  return { ...spec, id: 'measured', name: 'Measured set' }
}

/** Opens the bench with a build of set B: ten bolts in two rows, a torque, then a turn by 120°. */
async function withSetB(bench: Bench, by: Mechanic['by'], far: Far) {
  await openAt(bench, { engine: /Published set B/, name: 'Set B', person: 'R. Halloran', far })
  return new Mechanic(bench.page, by)
}

/** Set B before its order is chosen. */
export const atTheStart = (bench: Bench, by: Mechanic['by']) => withSetB(bench, by, () => true)

/** Set B at its first pull. */
export const atTheFirstPull = (bench: Bench, by: Mechanic['by']) => withSetB(bench, by, afterPulls(0))

/** A bench whose engines are the published tightening sets. */
export const test = bench.extend({
  specs: async ({}, use) => {
    const folder = await mkdtemp(join(tmpdir(), 'bedplate-specs-'))
    for (const [name, { specText }] of Object.entries(sets)) {
      const spec = { ...(JSON.parse(specText) as object), name: `Published set ${name}` }
      await writeFile(join(folder, `${name}.json`), JSON.stringify(spec))
    }
    await writeFile(join(folder, 'measured.json'), JSON.stringify(measured()))
    await use(folder)
    await rm(folder, { recursive: true, force: true })
  },
})
