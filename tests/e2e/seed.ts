import { expect } from '@playwright/test'
import type { Page } from '@playwright/test'
import { currentStep, evolve, replay, type BuildState } from '../../core/builds/index.ts'
import { readSpec, type EngineSpec } from '../../core/engine/index.ts'
import { nextCommand } from '../electron/mechanic.ts'
import { workedOn } from './ask.ts'
import type { Bench } from './bench.ts'
import type { Ask } from './hosts/host.ts'

export { ask } from './ask.ts'

/** Whether a build has come as far as a test wants to begin from. */
export type Far = (spec: EngineSpec, state: BuildState) => boolean

/** At the step of that name, with nothing of it done. */
export function atStep(name: string): Far {
  return (spec, state) => currentStep(spec, state)?.name === name
}

/** In the first procedure that is begun, with that many pulls made. */
export function afterPulls(count: number): Far {
  return (_, { runs }) => Object.values(runs).some(({ pulls }) => pulls.length === count)
}

export interface Seed {
  readonly engine: RegExp
  readonly name: string
  readonly serial?: string
  readonly person: string
  /** The marks of each step that asks for some, in order; the first mark of the spec where one is not said. */
  readonly marks?: readonly string[]
  readonly far: Far
}

/**
 * Opens the bench with a build begun and worked on, all of it right, by the requests that the window itself would send to
 * its host. What is clicked there is the subject of other tests: the whole jobs.
 */
export async function openAt(bench: Bench, seed: Seed): Promise<void> {
  await bench.open((ask) => work(ask, seed))
  await expect(bench.page.getByRole('region', { name: 'Drawing' })).toBeVisible()
}

/** The same on a page that is open already, where something is set there first; the page is loaded again and shows it. */
export async function seedBuild(page: Page, seed: Seed): Promise<void> {
  await workedOn(page, (ask) => work(ask, seed))
  await expect(page.getByRole('region', { name: 'Drawing' })).toBeVisible()
}

async function work(ask: Ask, { engine, name, serial = '', person, marks = [], far }: Seed): Promise<void> {
  const lines = await ask('engines.list', {})
  const id = lines.find((line) => engine.test(line.name))?.id
  if (id === undefined) throw new Error(`no engine is called ${engine}`)
  const begun = await ask('builds.start', { engine: id, name, serial, person, apprentice: false })
  const read = readSpec(begun.specText)
  if (!read.ok) throw new Error('the spec cannot be read')
  const left = [...marks]
  let state = replay(begun.events)
  while (!far(read.spec, state)) {
    const next = nextCommand(read.spec, state)
    if (next === null) throw new Error('the build was finished before it came that far')
    const typed = next.type === 'note-marks' ? left.shift() : undefined
    const command = next.type === 'note-marks' && typed !== undefined ? { ...next, typed } : next
    const asked = { build: begun.line.id, after: state.seq, person, command }
    state = (await ask('builds.act', asked)).events.reduce(evolve, state)
  }
  await ask('preferences.keep', { atBuild: begun.line.id, person })
}
