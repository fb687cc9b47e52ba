import { describe, expect, it } from 'vitest'
import type { Input, Output } from '../../../core/contract/index.ts'
import { roundKinds } from '../../../core/practice/index.ts'
import { folder, store } from '../bench.ts'
import { asking } from './asking.ts'

const round: Input<'practice.keep'>['round'] = {
  engine: 'skerry-3',
  drill: 'order',
  tally: [{ about: 'fastener/case-1', errors: 0 }],
  seconds: 42,
}
const missed = { ...round, tally: [{ about: 'fastener/case-1', errors: 2 }] }

async function shop(pin?: string) {
  const record = await store(folder())
  let at = Date.parse('2026-03-02T07:30:00Z')
  const host = asking(record, { now: () => new Date(at) })
  const add = (name: string, role: 'mechanic' | 'apprentice', more: { pin?: string } = {}) =>
    host.get('people.keep', { id: null, name, role, by: null, ...more })
  await add('Bo Lind', 'apprentice')
  const people = await add('Ana Ruiz', 'mechanic', pin === undefined ? {} : { pin })
  const idOf = (name: string) => people.find((person) => person.name === name)!.id
  const practises = (person: string, done = round) => host.get('practice.keep', { person, round: done })
  const setClock = (time: string) => (at = Date.parse(time))
  return { ...host, record, idOf, practises, setClock }
}

const only = ({ progress }: Output<'practice.read'>) => progress[0]

describe('what is practised', () => {
  it('is kept for somebody who is in the list of people, and read again by them alone', async () => {
    const { get, practises } = await shop()
    await practises('Bo Lind', missed)
    const standing = await practises('Bo Lind')
    expect(standing.isKept).toBe(true)
    expect(only(standing)).toMatchObject({ rounds: 2, faultless: 1, fastest: 42, drill: 'order' })
    expect(only(standing)?.places).toEqual([{ about: 'fastener/case-1', asked: 2, errors: 2 }])
    expect(await get('practice.read', { person: 'Bo Lind' })).toEqual(standing)
    expect((await get('practice.read', { person: 'Ana Ruiz' })).progress).toEqual([])
  })

  it('is not kept for a name that is not in the list', async () => {
    const { ask, get } = await shop()
    expect(await ask('practice.keep', { person: 'A guest', round })).toMatchObject({
      ok: false,
      problem: { code: 'practice-not-kept' },
    })
    expect(await get('practice.read', { person: 'A guest' })).toMatchObject({ isKept: false, progress: [] })
  })

  it('goes with the person, and writes no entry of any build', async () => {
    const { get, ask, begin, practises, record, idOf } = await shop()
    const { line } = await begin()
    const before = record.entries(line.id).map(({ sha256 }) => sha256)
    await practises('Bo Lind')
    await get('people.remove', { person: idOf('Bo Lind'), by: null })
    expect(record.practised(idOf('Bo Lind'))).toEqual([])
    expect((await ask('practice.keep', { person: 'Bo Lind', round })).ok).toBe(false)
    expect(record.entries(line.id).map(({ sha256 }) => sha256)).toEqual(before)
  })

  it('keeps its order when the clock is set back', async () => {
    const { practises, setClock } = await shop()
    await practises('Bo Lind')
    setClock('2019-01-01T00:00:00Z')
    const standing = only(await practises('Bo Lind'))
    expect(standing?.rounds).toBe(2)
    expect(standing?.lastAt).toBe('2019-01-01T00:00:00.000Z')
    expect(Date.parse(standing!.dueAt)).toBeGreaterThan(Date.parse('2026-03-02T07:30:00Z'))
  })

  it('takes 10,000 answers in a day, of every kind of round', async () => {
    const { practises, setClock, get } = await shop()
    const tally = Array.from({ length: 100 }, (_, index) => ({ about: `fastener/case-${index}`, errors: 0 }))
    for (let minute = 0; minute < 100; minute++) {
      setClock(new Date(Date.parse('2026-03-02T07:30:00Z') + minute * 60_000).toISOString())
      await practises('Bo Lind', { ...round, drill: roundKinds[minute % roundKinds.length]!, tally })
    }
    const { progress } = await get('practice.read', { person: 'Bo Lind' })
    expect(progress.map(({ drill }) => drill)).toEqual(roundKinds)
    expect(progress.reduce((sum, { rounds }) => sum + rounds, 0)).toBe(100)
    const { people } = await get('practice.people', { person: 'Ana Ruiz', engine: 'skerry-3' })
    expect(people.find(({ name }) => name === 'Bo Lind')?.done).not.toEqual([])
  })

  it('wants the PIN of a name that has one', async () => {
    const { ask, get, idOf } = await shop('4711')
    const refused = { ok: false, problem: { code: 'person-not-proven' } }
    expect(await ask('practice.read', { person: 'Ana Ruiz' })).toMatchObject(refused)
    expect(await ask('practice.keep', { person: 'Ana Ruiz', round })).toMatchObject(refused)
    await get('people.enter', { who: { person: idOf('Ana Ruiz') }, pin: '4711' })
    expect((await ask('practice.keep', { person: 'Ana Ruiz', round })).ok).toBe(true)
  })

  it.each<[string, Partial<typeof round>]>([
    ['nothing asked', { tally: [] }],
    ['an error less than none', { tally: [{ about: 'fastener/case-1', errors: -1 }] }],
    ['an unknown drill', { drill: 'dance' as 'order' }],
    ['a time before it began', { seconds: -3 }],
  ])('is refused with %s, and nothing is kept', async (_, change) => {
    const { ask, get } = await shop()
    expect((await ask('practice.keep', { person: 'Bo Lind', round: { ...round, ...change } })).ok).toBe(false)
    expect((await get('practice.read', { person: 'Bo Lind' })).progress).toEqual([])
  })
})

describe('a minimum of practice', () => {
  it('is set by a mechanic of the list, and taken away with 0', async () => {
    const { ask, get } = await shop()
    const set = (person: string, least: number) =>
      ask('practice.set-minimum', { person, engine: 'skerry-3', least })
    expect(await set('Bo Lind', 2)).toMatchObject({
      ok: false,
      problem: { code: 'practice-led-by-mechanic' },
    })
    expect(await set('Ana Ruiz', 2)).toMatchObject({ ok: true, value: { minimums: { 'skerry-3': 2 } } })
    expect((await get('practice.read', { person: 'Bo Lind' })).minimums).toEqual({ 'skerry-3': 2 })
    expect(await set('Ana Ruiz', 0)).toMatchObject({ ok: true, value: { minimums: {} } })
  })

  it('is set by a mechanic with a PIN where one has one, and the others are seen by such a one alone', async () => {
    const { ask, get, idOf, practises } = await shop('4711')
    await get('people.keep', {
      ...{ id: null, name: 'Cy Vik', role: 'mechanic' },
      by: { person: idOf('Ana Ruiz'), pin: '4711' },
    })
    await practises('Bo Lind', missed)
    await practises('Bo Lind')
    const set = (person: string) => ask('practice.set-minimum', { person, engine: 'skerry-3', least: 1 })
    const people = (person: string) => ask('practice.people', { person, engine: 'skerry-3' })
    const guarded = { ok: false, problem: { code: 'practice-led-by-mechanic' } }
    expect(await set('Cy Vik')).toMatchObject(guarded)
    expect(await people('Cy Vik')).toMatchObject(guarded)
    expect(await people('Bo Lind')).toMatchObject(guarded)
    expect(await people('Ana Ruiz')).toMatchObject({ ok: false, problem: { code: 'person-not-proven' } })

    await get('people.enter', { who: { person: idOf('Ana Ruiz') }, pin: '4711' })
    expect((await set('Ana Ruiz')).ok).toBe(true)
    const {
      least,
      drills,
      people: all,
    } = await get('practice.people', { person: 'Ana Ruiz', engine: 'skerry-3' })
    expect(least).toBe(1)
    expect(drills).toContain('order')
    expect(all.map(({ name, isReady }) => [name, isReady])).toEqual([
      ['Ana Ruiz', false],
      ['Bo Lind', false],
      ['Cy Vik', false],
    ])
    expect(all.find(({ name }) => name === 'Bo Lind')?.done).toEqual([
      { drill: 'order', faultless: 1, faultlessAt: '2026-03-02T07:30:00.000Z' },
    ])
  })

  it('is reached by somebody who has done each drill without an error', async () => {
    const { get, practises } = await shop()
    await get('practice.set-minimum', { person: 'Ana Ruiz', engine: 'skerry-3', least: 1 })
    const of = () => get('practice.people', { person: 'Ana Ruiz', engine: 'skerry-3' })
    for (const drill of (await of()).drills) {
      expect((await of()).people.some(({ isReady }) => isReady)).toBe(false)
      await practises('Bo Lind', { ...round, drill })
    }
    expect((await of()).people.filter(({ isReady }) => isReady).map(({ name }) => name)).toEqual(['Bo Lind'])
  })

  it('says what is missing, without a PIN, and bars no build', async () => {
    const { get, ask, practises } = await shop()
    const readiness = (person: string) => get('practice.readiness', { person, engine: 'skerry-3' })
    expect(await readiness('Bo Lind')).toBeNull()
    await get('practice.set-minimum', { person: 'Ana Ruiz', engine: 'skerry-3', least: 1 })
    await practises('Bo Lind')
    const missing = (await readiness('Bo Lind'))!.missing.map(({ drill }) => drill)
    expect(missing).not.toContain('order')
    expect(missing.length).toBeGreaterThan(0)
    expect((await readiness('A guest'))!.missing.map(({ drill }) => drill)).toContain('order')
    const started = await ask('builds.start', {
      engine: 'skerry-3',
      name: 'Ferry',
      serial: '',
      person: 'Bo Lind',
    })
    expect(started.ok).toBe(true)
  })
})
