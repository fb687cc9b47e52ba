import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { proposalsFor } from '../../../../core/builds/index.ts'
import type { Client, Preferences, RequestName } from '../../../../core/contract/index.ts'
import { refused } from '../../../../core/problem/index.ts'
import { OpenBuild } from '../../../../renderer/bench/open-build.svelte.ts'
import { Crew } from '../../../../renderer/people/crew.svelte.ts'
import { DryRun } from '../../../../renderer/practice/dry-run/dry-run.ts'
import { nextCommand } from '../../../core/builds/next-command.ts'
import { demo } from '../../../core/layout/demos.ts'
import { engineFile } from '../../../engine-files.ts'

const spec = demo('skerry-3')
const text = readFileSync(engineFile('skerry-3'), 'utf8')
const preferences: Preferences = {
  ...{ person: 'Ana Ruiz', torqueUnit: 'N·m', lengthUnit: 'mm', theme: 'light', readingDistance: 1 },
  ...{ screenPxPerMm: null, views: [], unfinished: [], letterKeys: true, language: null, atBuild: null },
  ...{ instruments: [], speaks: false, speechRate: 1, voice: null },
}

/** A host that notes what it is asked, and has nothing. */
function listeningHost() {
  const requests: RequestName[] = []
  const host: Client = {
    request(name) {
      requests.push(name)
      return Promise.resolve(refused('request-unknown', { name }))
    },
  }
  return { host, requests }
}

function begin() {
  const { host, requests } = listeningHost()
  const started = DryRun.start(host, {
    ...{
      engine: { spec, text },
      number: 'PRACTICE',
      name: 'PRACTICE: Skerry 3',
      person: 'Ana Ruiz',
      preferences,
    },
  })
  if (!started.ok) throw new Error(started.problem.code)
  const run = started.value
  const crew = new Crew(run.client, { name: () => 'Ana Ruiz', keep: () => Promise.resolve() })
  const opened = OpenBuild.from(run.client, run.build.opened, crew)
  if (!opened.ok) throw new Error(opened.problem.code)
  return { run, openBuild: opened.value, requests }
}

describe('a dry run', () => {
  it('is the same build as on the record, from its first step to its last, and asks the host for nothing', async () => {
    const { run, openBuild, requests } = begin()
    while (!openBuild.state.finished)
      expect(await openBuild.act(nextCommand(spec, openBuild.state))).toBe(true)
    expect(run.isFinished).toBe(true)
    expect(requests).toEqual([])
    expect(run.tally.length).toBeGreaterThan(spec.fasteners.length)
    expect(run.tally.filter(({ errors }) => errors > 0)).toEqual([])
  })

  it('counts a refused answer and a reading out of its limits at the thing they were about', async () => {
    const { run, openBuild } = begin()
    while (openBuild.step?.kind !== 'fit-shells') await openBuild.act(nextCommand(spec, openBuild.state))
    const command = nextCommand(spec, openBuild.state)
    expect(await openBuild.act(command)).toBe(true)
    // The same half once more is refused.
    expect(await openBuild.act(command)).toBe(false)
    if (command.type !== 'fit-half') throw new Error('no half is fitted')
    const about = `half/${command.position}/${command.half}`
    expect(run.tally.find((each) => each.about === about)).toEqual({ about, errors: 1 })

    let next = nextCommand(spec, openBuild.state)
    while (next.type !== 'pull' || next.reading === null) {
      await openBuild.act(next)
      next = nextCommand(spec, openBuild.state)
    }
    await openBuild.act({ ...next, reading: { typed: '1', unit: 'N·m' } })
    const pulled = `fastener/${next.fastener}`
    expect(run.tally.find((each) => each.about === pulled)?.errors).toBe(1)
  })

  it('counts the shell that the chart does not have for the marks at its half', async () => {
    const { run, openBuild } = begin()
    while (openBuild.step?.kind !== 'choose-shells') await openBuild.act(nextCommand(spec, openBuild.state))
    const { id: step, fit: of } = openBuild.step
    const fit = spec.fits.find(({ id }) => id === of)!
    const [position = ''] = fit.positions
    const proposed = proposalsFor(spec, openBuild.state, of).find((each) => each.position === position)!
    const byChart = [proposed.upper?.grade, proposed.lower?.grade]
    const { grade } = fit.grades.find((each) => !byChart.includes(each.grade))!
    const reason = 'It was in the tray.'
    const others = (['upper', 'lower'] as const).map((half) => ({ position, half, grade, reason }))
    expect(await openBuild.act({ type: 'choose-shells', step, others })).toBe(true)
    const halves = run.tally.filter(({ about }) => about.startsWith('half/'))
    expect(halves).toEqual([
      { about: `half/${position}/upper`, errors: 1 },
      { about: `half/${position}/lower`, errors: 1 },
    ])
  })

  it('is in no list, is exported and verified by nobody, and stands under the word PRACTICE', async () => {
    const { run, openBuild, requests } = begin()
    const build = openBuild.line.id
    expect(openBuild.line.number).toBe('PRACTICE')
    expect(await run.client.request('builds.list', {})).toEqual({ ok: true, value: [] })
    for (const refusedHere of [
      run.client.request('verification.keep-head', { build }),
      run.client.request('verification.start', { build }),
      run.client.request('builds.start', {
        ...{ engine: spec.id, name: 'a', serial: '', person: 'Ana Ruiz', apprentice: false },
      }),
      run.client.request('practice.read', { person: 'Ana Ruiz' }),
    ])
      expect(await refusedHere).toMatchObject({ ok: false, problem: { code: 'practice-only' } })
    expect(requests).toEqual([])
  })

  it('remembers how it was looked at only as long as it lasts', async () => {
    const { run, openBuild } = begin()
    const build = openBuild.line.id
    const kept = await run.client.request('preferences.keep', { views: [{ build, faces: {} }] })
    expect(kept).toMatchObject({ ok: true, value: { atBuild: build, views: [{ build }] } })
    expect(preferences.views).toEqual([])
  })
})
