import { describe, expect, it } from 'vitest'
import { usesAt } from '../../../core/builds/index.ts'
import { Bench } from '../../../renderer/bench/bench.svelte.ts'
import type { OpenBuild } from '../../../renderer/bench/open-build.svelte.ts'
import { memoryHost } from '../../../renderer/gallery/memory-host.ts'
import { tickNew } from '../../../renderer/steps/parts/tick-new.ts'
import { twin } from '../twin.ts'

/** A Skerry whose case is clean, at the plugs of its oil ways, which want two washers. */
async function atThePlugs(): Promise<OpenBuild> {
  const bench = new Bench(twin(memoryHost({ preferences: { person: 'Ana Ruiz' } })).client)
  await bench.open()
  await bench.newBuilds.start('skerry-3', 'Ferry, port engine', 'F-201', 'Ana Ruiz', false)
  if (bench.place.at !== 'build') throw new Error('no build is open')
  const { openBuild } = bench.place
  const clean = openBuild.spec.steps.find(({ id }) => id === 'clean-case')
  for (const { id: place } of clean !== undefined && 'places' in clean ? clean.places : [])
    await openBuild.act({ type: 'do-place', step: 'clean-case', place, round: 1, note: '' })
  openBuild.goTo('plugs-in')
  return openBuild
}
const plugs = { type: 'do-place', step: 'plugs-in', place: 'gallery', round: 1, note: '' } as const
const washers = (build: OpenBuild) => usesAt(build.spec, build.state, 'plugs-in')[0]!

describe('a step whose work is done and whose parts nobody ticked', () => {
  it('stays on the table until they are ticked', async () => {
    const build = await atThePlugs()
    expect(await build.finishStep(plugs)).toBe(true)
    expect(build.steps.find(({ step }) => step.id === 'plugs-in')?.state).toBe('done')
    expect(build.step?.id).toBe('plugs-in')
    expect(await build.finishStep(tickNew(washers(build)))).toBe(true)
    expect(build.step?.id).toBe('case-marks')
  })

  it('stays where the last of it was no end of the step to the window, as in a run', async () => {
    const build = await atThePlugs()
    build.goTo(null)
    expect(build.step?.id).toBe('case-marks')
    build.goTo('plugs-in')
    await build.act(plugs)
    expect(build.step?.id).toBe('plugs-in')
  })

  it('is left by whoever ticks later, and goes on at once where they are ticked already', async () => {
    const build = await atThePlugs()
    await build.finishStep(plugs)
    build.goTo(null)
    expect(build.step?.id).toBe('case-marks')
    const other = await atThePlugs()
    await other.act(tickNew(washers(other)))
    await other.finishStep(plugs)
    expect(other.step?.id).toBe('case-marks')
  })
})
