import { describe, expect, it } from 'vitest'
import { replay, stepStates, unaccountedParts } from '../../../core/builds/index.ts'
import { nextPull } from '../../../core/tightening/index.ts'
import { readSpec } from '../../../core/engine/index.ts'
import { firstBroken } from '../../../electron/store/index.ts'
import { engines } from '../answers.ts'
import { folder, store } from '../bench.ts'
import { asking } from './asking.ts'

const halfWay = { sample: 'half-way' } as const
const finished = { sample: 'finished' } as const

describe('the demo build of an empty bench', () => {
  it('is half-way done: shells fitted, a problem answered, the rod bolts in their last pass', async () => {
    const { get } = asking(await store(folder()))
    const { line, specText, events, readOnly } = await get('builds.try', halfWay)
    const read = readSpec(specText)
    if (!read.ok) throw new Error('the spec cannot be read')
    const state = replay(events)
    const rods = read.spec.procedures.find(({ id }) => id === 'rods')!
    expect(line).toMatchObject({ number: '2026-001', demo: true, finished: false, voided: false })
    expect(readOnly).toBeNull()
    expect(state.fitted.size).toBe(2 * 4 + 2 * 3)
    expect(state.runs['rods']?.flags).toMatchObject([
      { about: 'problem', answer: expect.anything() as unknown },
    ])
    expect(nextPull(rods, state.runs['rods'])).toEqual({ pass: 2, fastener: 'rod-3' })
    expect(state.runs['rods']?.pulls.map(({ verdict }) => verdict)).toEqual([
      ...Array<string>(6).fill('unread'),
      ...Array<string>(8).fill('within'),
    ])
  })

  it('names invented people as such, and each with what is theirs', async () => {
    const { get } = asking(await store(folder()))
    const { events } = await get('builds.try', halfWay)
    expect(new Set(events.map(({ person }) => person))).toEqual(
      new Set(['Mara Holt (demo)', 'Jonas Reet (demo)']),
    )
  })

  it('is called in the language of the window in which it is made', async () => {
    const { get } = asking(await store(folder()))
    const { line, events } = await get('builds.try', { ...halfWay, language: 'es' })
    expect(line.name).toBe('Demo: transbordador, motor de babor')
    expect(JSON.stringify(events)).toContain('Rayas bajo la cabeza de R4')
    expect((await get('builds.try', { ...finished, language: 'de' })).line.name).toBe(
      'Demo: Bewässerung, Pumpe 3',
    )
  })

  it('has a chain that verifies, is exported, and is taken in by another bench as any other', async () => {
    const record = await store(folder())
    const { get } = asking(record)
    const { line } = await get('builds.try', halfWay)
    expect(firstBroken(line.id, record.entries(line.id))).toBeNull()
    const { text } = await get('builds.export', { build: line.id })
    const there = asking(await store(folder()))
    expect(await there.get('builds.import', { text })).toMatchObject({ kind: 'added' })
    expect((await there.get('builds.open', { build: line.id })).readOnly).toBeNull()
  })

  it('is worked on, and made void, as any other', async () => {
    const { get, act } = asking(await store(folder()))
    const { line } = await get('builds.try', halfWay)
    const pull = { type: 'pull', procedure: 'rods', pass: 2, fastener: 'rod-3' } as const
    const reading = { typed: '61', unit: '°' } as const
    expect(
      await act(line.id, line.entries, { ...pull, reading, moved: false, outOfOrder: null }),
    ).toMatchObject({ ok: true })
    expect(await act(line.id, line.entries + 1, { type: 'void-build', reason: 'Seen' })).toMatchObject({
      ok: true,
    })
  })

  it('is found by what stands in it', async () => {
    const { get } = asking(await store(folder()))
    await get('builds.try', halfWay)
    for (const words of ['Holt', 'Reet', 'DEMO-1'])
      expect((await get('builds.find', { words })).lines).toHaveLength(1)
  })

  it('is made beside a build of a demo engine, as the guided one is, and once', async () => {
    const { ask, begin, get } = asking(await store(folder()))
    await begin()
    await get('builds.try', halfWay)
    expect(await ask('builds.try', halfWay)).toMatchObject({ problem: { code: 'sample-not-needed' } })
    expect(await get('builds.list', {})).toHaveLength(2)
  })

  it('is never made beside a build of a shop’s own engine', async () => {
    const { text } = engines.find(({ id }) => id === 'skerry-3')!
    const source = { kind: 'entered', from: 'Workshop manual', enteredBy: 'Ana Ruiz', on: '2026-03-02' }
    const own = JSON.stringify({ ...(JSON.parse(text) as object), id: 'own-3', source })
    const read = readSpec(own)
    if (!read.ok) throw new Error('the spec cannot be read')
    const engine = { ...engines[0]!, kind: 'sound', id: 'own-3', text: own, spec: read.spec } as const
    const { ask, get } = asking(await store(folder()), { engines: [...engines, engine] })
    await get('builds.start', { engine: 'own-3', name: 'Ferry', serial: '', person: 'Ana Ruiz' })
    expect(await ask('builds.try', halfWay)).toMatchObject({
      ok: false,
      problem: { code: 'sample-not-needed' },
    })
    expect(await get('builds.list', {})).toHaveLength(1)
  })

  it('is refused, with nothing recorded, where its engine is not there or is another one', async () => {
    const without = asking(await store(folder()), { engines: [] })
    expect(await without.ask('builds.try', halfWay)).toMatchObject({ problem: { code: 'engine-unknown' } })
    for (const [id, sample] of [
      ['skerry-3', halfWay],
      ['tarn-4', finished],
    ] as const) {
      const others = engines.filter((each) => each.id !== id)
      expect(others.length).toBeGreaterThan(5)
      for (const engine of others) {
        const other = asking(await store(folder()), { engines: [{ ...engine, id }] })
        expect(await other.ask('builds.try', sample), `${engine.id} as ${id}`).toMatchObject({ ok: false })
        expect(await other.get('builds.list', {})).toEqual([])
        expect(other.bugs).toEqual([])
      }
    }
  })
})

describe('the demo build to look at', () => {
  it('is finished: every step done, every part counted, every reading within, one problem answered', async () => {
    const { get } = asking(await store(folder()))
    const { line, specText, events } = await get('builds.try', finished)
    const read = readSpec(specText)
    if (!read.ok) throw new Error('the spec cannot be read')
    const { spec } = read
    const state = replay(events)
    expect(line).toMatchObject({ number: '2026-001', demo: true, finished: true, voided: false })
    expect(stepStates(spec, state).map((each) => each.state)).toEqual(spec.steps.map(() => 'done'))
    expect(unaccountedParts(spec, state)).toEqual([])
    const pulls = Object.values(state.runs).flatMap((run) => run.pulls)
    expect(pulls.length).toBeGreaterThan(100)
    expect(pulls.filter(({ verdict }) => verdict !== 'within' && verdict !== 'unread')).toEqual([])
    const flags = Object.values(state.runs).flatMap((run) => run.flags)
    expect(flags.map(({ about, answer }) => [about, answer !== null])).toEqual([['problem', true]])
  })

  it('has readings as a hand makes them: not all alike, and none on a limit', async () => {
    const { get } = asking(await store(folder()))
    const { specText, events } = await get('builds.try', finished)
    const read = readSpec(specText)
    if (!read.ok) throw new Error('the spec cannot be read')
    const caps = read.spec.procedures.find(({ id }) => id === 'caps')!
    const typed = events.flatMap(({ event }) =>
      event.type === 'fastener-pulled' && event.procedure === 'caps' && event.pass === 1
        ? [Number(event.reading?.typed)]
        : [],
    )
    expect(caps.passes[1]).toMatchObject({ kind: 'torque', target: 35, least: 32, most: 38 })
    expect(new Set(typed).size).toBeGreaterThan(3)
    expect(Math.min(...typed)).toBeGreaterThan(32)
    expect(Math.max(...typed)).toBeLessThan(38)
  })

  it('is offered beside the other, each once', async () => {
    const record = await store(folder())
    const { ask, get } = asking(record)
    await get('builds.try', finished)
    const { line } = await get('builds.try', halfWay)
    expect(firstBroken(line.id, record.entries(line.id))).toBeNull()
    for (const sample of [finished, halfWay])
      expect(await ask('builds.try', sample)).toMatchObject({ problem: { code: 'sample-not-needed' } })
    expect((await get('builds.list', {})).map(({ serial }) => serial).toSorted()).toEqual([
      'DEMO-1',
      'DEMO-2',
    ])
  })
})
