import { describe, expect, it } from 'vitest'
import { preferences, type Preferences } from '../../../core/contract/index.ts'
import { refused } from '../../../core/problem/index.ts'
import { en } from '../../../core/words/index.ts'
import { Bench } from '../../../renderer/bench/bench.svelte.ts'
import { engineOf } from '../../../renderer/gallery/engines.ts'
import { memoryHost, usualPreferences } from '../../../renderer/gallery/memory-host.ts'
import { Guide } from '../../../renderer/help/guide.ts'
import { ShownLanguage } from '../../../renderer/shown-language.svelte.ts'
import { twin } from '../twin.ts'

const [first, second] = ['01956f6c-8a00-7000-8000-000000000001', '01956f6c-8a00-7000-8000-000000000002']
const { steps } = engineOf('skerry-3').spec
const stepOf = (kind: (typeof steps)[number]['kind']) => steps.find((step) => step.kind === kind)!
const marks = stepOf('note-marks')
const run = stepOf('run-procedure')
const at = (step: typeof marks | null) => ({ step, awaitsSecond: false, closed: false })

function guide() {
  let kept: NonNullable<Preferences['guide']> | null = null
  return new Guide(
    () => kept,
    (next) => Promise.resolve((kept = next)),
  )
}

describe('the guide', () => {
  it('has a note for each step of its build, and for no other build', async () => {
    const guided = guide()
    expect(guided.noteAt(first, at(marks))).toBeNull()
    await guided.begin(first)
    expect(guided.noteAt(first, at(marks))).toBe('marks')
    expect(guided.noteAt(first, at(run))).toBe('run')
    expect(guided.noteAt(first, at(null))).toBe('finish')
    expect(guided.noteAt(second, at(marks))).toBeNull()
  })

  it('tells of the second person at a step that waits for one', async () => {
    const guided = guide()
    await guided.begin(first)
    expect(guided.noteAt(first, { ...at(run), awaitsSecond: true })).toBe('second-person')
  })

  it('puts a note that was read away until the next step', async () => {
    const guided = guide()
    await guided.begin(first)
    await guided.read(marks)
    expect(guided.noteAt(first, at(marks))).toBeNull()
    expect(guided.noteAt(first, at(run))).toBe('run')
    await guided.read(null)
    expect(guided.noteAt(first, at(null))).toBeNull()
    expect(guided.noteAt(first, at(marks))).toBe('marks')
  })

  it('is left for good, and has nothing to say of a build that is finished or void', async () => {
    const guided = guide()
    await guided.begin(first)
    expect(guided.noteAt(first, { ...at(null), closed: true })).toBeNull()
    await guided.leave()
    expect(guided.noteAt(first, at(run))).toBeNull()
    await guided.read(run)
    expect(guided.noteAt(first, at(marks))).toBeNull()
  })

  it('goes over to the build that was begun last', async () => {
    const guided = guide()
    await guided.begin(first)
    await guided.read(marks)
    await guided.begin(second)
    expect(guided.noteAt(first, at(run))).toBeNull()
    expect(guided.noteAt(second, at(marks))).toBe('marks')
  })
})

describe('a guided first build', () => {
  const english = () => ShownLanguage.first({ load: () => Promise.resolve(en) })
  const content = (change: Partial<Preferences> = {}) => ({ preferences: { person: '', ...change } })

  it('is a build of the demo engine in the record, under its mechanic where nobody is at the bench', async () => {
    const { client, requests } = twin(memoryHost(content()))
    const bench = new Bench(client, undefined, { language: await english() })
    await bench.open()
    await bench.newBuilds.beginGuided()
    const begun = requests.find(({ name }) => name === 'builds.start')?.input
    expect(begun).toMatchObject({ engine: 'skerry-3', person: 'Jonas Reet (demo)', apprentice: false })
    expect(bench.problem).toBeNull()
    expect(bench.place.at).toBe('build')
  })

  it('is where it was left after a restart, with what was read of it', async () => {
    const { client } = twin(memoryHost(content({ person: 'R. Halloran' })))
    const before = new Bench(client, undefined, { language: await english() })
    await before.open()
    await before.newBuilds.beginGuided()
    expect(before.crew.name).toBe('R. Halloran')
    if (before.place.at !== 'build') throw new Error('the build is not shown')
    const { id } = before.place.openBuild.line
    expect(before.guide.noteAt(id, at(marks))).toBe('marks')
    await before.guide.read(marks)
    const after = new Bench(client, undefined, { language: await english() })
    await after.open()
    expect(after.place).toMatchObject({ at: 'build', openBuild: { line: { id } } })
    expect(after.guide.noteAt(id, at(marks))).toBeNull()
    expect(after.guide.noteAt(id, at(run))).toBe('run')
  })

  it('says why it cannot be begun, and leaves a guide that is there', async () => {
    const kept = { build: first, read: null }
    const host = memoryHost(content({ guide: kept }))
    const { client } = twin({ ...host, 'builds.start': () => refused('person-not-proven', { name: 'Ana' }) })
    const bench = new Bench(client, undefined, { language: await english() })
    await bench.open()
    await bench.newBuilds.beginGuided()
    expect(bench.problem?.code).toBe('person-not-proven')
    expect(bench.settings.kept?.guide).toEqual(kept)
    expect(bench.place.at).toBe('engines')
  })

  it('is unknown to what a bench kept before there were any', () => {
    expect(preferences.parse(usualPreferences).guide).toBeUndefined()
  })
})
