import { expect } from '@playwright/test'
import type { Page } from '@playwright/test'
import { currentStep, evolve, replay, type BuildState } from '../../core/builds/index.ts'
import type { Input, Output } from '../../core/contract/index.ts'
import type { EngineSpec, Step } from '../../core/engine/index.ts'
import { en } from '../../core/words/index.ts'
import { nextCommand } from '../electron/mechanic.ts'
import { ask, workedOn } from './ask.ts'
import type { Bench } from './bench.ts'
import type { Ask } from './hosts/host.ts'
import { specOf } from './spec-of.ts'

export { ask }

/** Whether a build has come as far as a test wants to begin from. */
export type Far = (spec: EngineSpec, state: BuildState) => boolean

/** At the step of that name, with nothing of it done. */
export function atStep(name: string): Far {
  return (spec, state) => currentStep(spec, state)?.name === name
}

/** At the first step of the kind, with nothing of it done. */
export function atFirst(kind: Step['kind']): Far {
  return (spec, state) => currentStep(spec, state)?.kind === kind
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
  /** What this bench keeps beside it: its instruments. */
  readonly keeps?: Input<'preferences.keep'>
  readonly far: Far
}

/**
 * Opens the bench with a build begun and worked on, all of it right, by the requests that the window itself would send to
 * its host. What is clicked there is the subject of other tests: the whole jobs. A bench that is open already goes to the new
 * build by its list, without loading its page again.
 */
export async function openAt(bench: Bench, seed: Seed): Promise<void> {
  const { page } = bench
  if (!bench.isOpen)
    await bench.open(async (ask) => {
      const line = await work(ask, seed)
      await ask('preferences.keep', { ...seed.keeps, atBuild: line.id, person: seed.person })
    })
  else {
    const { number } = await work((name, input) => ask(page, name, input), seed)
    await backToTheList(page)
    // As by a person who turns to this window again: it looks for what others have begun.
    await page.evaluate(() => window.dispatchEvent(new Event('focus')))
    await page.getByRole('button', { name: new RegExp(`^${number} `) }).click()
  }
  await shown(page)
}

/**
 * Waits until the build is there, as long as the test may take: the first page of a worker compiles all its scripts, and on a loaded
 * machine that takes longer than a test waits for what somebody pressed.
 */
function shown(page: Page): Promise<void> {
  return page.getByRole('region', { name: en.buildWindow.drawing }).waitFor()
}

/** Goes back from page to page, as far as the list of engines and builds. */
export async function backToTheList(page: Page): Promise<void> {
  const list = page.getByRole('heading', { name: en.engines.startOn })
  const back = page.getByRole('button', { name: /^←/ }).first()
  while (!(await list.isVisible())) {
    const name = await back.innerText()
    await back.click()
    await expect(page.getByRole('button', { name, exact: true })).toHaveCount(0)
  }
}

/** The same on a page that is open already, where something is set there first; the page is loaded again and shows it. */
export async function seedBuild(page: Page, seed: Seed): Promise<void> {
  await workedOn(page, async (ask) => {
    const line = await work(ask, seed)
    await ask('preferences.keep', { atBuild: line.id, person: seed.person })
  })
  await shown(page)
}

/** Works on in the newest build from elsewhere, all of it right, as far as that; the window in which it lies open follows. */
export async function workOn(page: Page, person: string, far: Far): Promise<void> {
  const [line] = await ask(page, 'builds.list', {})
  if (line === undefined) throw new Error('there is no build')
  const opened = await ask(page, 'builds.open', { build: line.id })
  const { seq } = await workedAsFarAs((name, input) => ask(page, name, input), opened, { person, far })
  await page.evaluate(() => window.dispatchEvent(new Event('focus')))
  await page.locator(`[data-entries="${seq}"]`).waitFor({ state: 'attached' })
}

async function work(ask: Ask, seed: Seed) {
  const { engine, name, serial = '', person } = seed
  const lines = await ask('engines.list', {})
  const id = lines.find((line) => engine.test(line.name))?.id
  if (id === undefined) throw new Error(`no engine is called ${engine}`)
  const begun = await ask('builds.start', { engine: id, name, serial, person, apprentice: false })
  await workedAsFarAs(ask, begun, seed)
  return begun.line
}

async function workedAsFarAs(
  ask: Ask,
  begun: Output<'builds.open'>,
  { person, marks = [], far }: Pick<Seed, 'person' | 'marks' | 'far'>,
): Promise<BuildState> {
  const spec = specOf(begun.specText)
  const left = [...marks]
  let state = replay(begun.events)
  while (!far(spec, state)) {
    const next = nextCommand(spec, state)
    if (next === null) throw new Error('the build was finished before it came that far')
    const typed = next.type === 'note-marks' ? left.shift() : undefined
    const command = next.type === 'note-marks' && typed !== undefined ? { ...next, typed } : next
    if (
      next.type === 'confirm-step' &&
      !(await ask('people.list', {})).some(({ name }) => name === next.second)
    )
      await ask('people.keep', { id: null, name: next.second, role: 'mechanic', by: null })
    const act = { build: begun.line.id, after: state.seq, person, command }
    state = (await ask('builds.act', act)).events.reduce(evolve, state)
  }
  return state
}
