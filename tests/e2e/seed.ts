import { expect } from '@playwright/test'
import type { Page } from '@playwright/test'
import { sentenceOf } from '../../core/problem/index.ts'
import { currentStep, evolve, replay, type BuildState } from '../../core/builds/index.ts'
import type { Answer, Input, Output, RequestName } from '../../core/contract/index.ts'
import { readSpec, type EngineSpec } from '../../core/engine/index.ts'
import type { Bridge } from '../../renderer/client/bridge-client.ts'
import { nextCommand } from '../electron/mechanic.ts'

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
 * Begins a build and works it on, all of it right, by the requests that the window itself would send to its host; then
 * the page is loaded again and shows it. What is clicked there is the subject of other tests: the whole jobs.
 */
export async function seedBuild(
  page: Page,
  { engine, name, serial = '', person, marks = [], far }: Seed,
): Promise<void> {
  const lines = await ask(page, 'engines.list', {})
  const id = lines.find((line) => engine.test(line.name))?.id
  if (id === undefined) throw new Error(`no engine is called ${engine}`)
  const begun = await ask(page, 'builds.start', { engine: id, name, serial, person, apprentice: false })
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
    state = (await ask(page, 'builds.act', asked)).events.reduce(evolve, state)
  }
  await ask(page, 'preferences.keep', { atBuild: begun.line.id, person })
  await page.reload()
  await expect(page.getByRole('region', { name: 'Drawing' })).toBeVisible()
}

/** Asks the host under test on the window's own way to it, whichever host it is. */
export async function ask<Name extends RequestName>(
  page: Page,
  name: Name,
  input: Input<Name>,
): Promise<Output<Name>> {
  const answer = await page.evaluate(
    async ([name, text]) => {
      const { bedplate }: { bedplate?: Bridge } = window
      if (bedplate) return JSON.parse(String(await bedplate.request(name, text))) as unknown
      const token = sessionStorage.getItem('bedplate-token') ?? ''
      const headers = { 'content-type': 'application/json', 'x-bedplate-token': token }
      const response = await fetch(`/request/${name}`, { method: 'POST', headers, body: text })
      return (await response.json()) as unknown
    },
    [name, JSON.stringify(input)] as const,
  )
  const given = answer as Answer<Name>
  if (!given.ok) throw new Error(`${name}: ${sentenceOf(given.problem)}`)
  return given.value
}
