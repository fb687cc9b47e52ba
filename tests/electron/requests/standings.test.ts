import { dirname } from 'node:path'
import { describe, expect, it } from 'vitest'
import type { Store } from '../../../electron/store/index.ts'
import { alter } from '../alter.ts'
import { folder, store } from '../bench.ts'
import { asking } from './asking.ts'

const marks = [
  { type: 'note-marks', step: 'case-marks', typed: '2 2 3 1' },
  { type: 'note-marks', step: 'crank-marks', typed: 'G G F H' },
] as const

/** Two builds of the Skerry: of the older one the marks of the case are noted. */
async function twoBuilds(record: Store) {
  const host = asking(record)
  const { line } = await host.begin()
  await host.act(line.id, 1, marks[0])
  await host.begin()
  return { ...host, id: line.id }
}

/** The store, counting which builds have their entries read. */
function counting(record: Store) {
  const read: string[] = []
  const counted: Store = {
    ...record,
    entries: (build) => {
      read.push(build)
      return record.entries(build)
    },
  }
  return { counted, read }
}

async function reopened(record: Store): Promise<Store> {
  record.close()
  return store(dirname(record.file))
}

const atCrankMarks = { step: { place: 2, of: 21, name: 'Crank marks' } }

describe('where the builds of a list stand', () => {
  it('is said of each that is open, on the first page and in the archive', async () => {
    const { get } = await twoBuilds(await store(folder()))
    const standings = [
      { standing: { step: { place: 1, name: 'Case marks' } } },
      { standing: { ...atCrankMarks, openProblems: 0 } },
    ]
    expect(await get('builds.list', {})).toMatchObject(standings)
    expect((await get('builds.find', { words: '' })).lines).toMatchObject(standings)
  })

  it('names step and engine in the language of whoever asks', async () => {
    const { get } = await twoBuilds(await store(folder()))
    const inGerman = {
      engine: 'Skerry 3 Fährenhilfsmotor',
      standing: { step: { place: 2, name: 'Wellenzeichen' } },
    }
    expect((await get('builds.list', { language: 'de' }))[1]).toMatchObject(inGerman)
    expect((await get('builds.find', { words: '', language: 'de' })).lines[1]).toMatchObject(inGerman)
    expect((await get('builds.list', { language: 'es' }))[1]).toMatchObject({
      engine: 'Auxiliar de transbordador Skerry 3',
      standing: { step: { name: 'Marcas del cigüeñal' } },
    })
    expect((await get('builds.list', {}))[1]).toMatchObject({ standing: atCrankMarks })
  })

  it('is not said of one that is void', async () => {
    const { get, act, id } = await twoBuilds(await store(folder()))
    await act(id, 2, { type: 'void-build', reason: 'Wrong engine' })
    expect((await get('builds.list', {}))[1]).toMatchObject({ id, voided: true, standing: null })
  })

  it('follows each confirmation', async () => {
    const { get, act, id } = await twoBuilds(await store(folder()))
    await get('builds.list', {})
    await act(id, 2, marks[1])
    expect((await get('builds.list', {}))[1]?.standing?.step?.name).toBe('Rod marks')
  })

  it('is read off the entries once, and not again by any later list or start of the program', async () => {
    const record = await store(folder())
    await twoBuilds(record)
    const first = counting(await reopened(record))
    await asking(first.counted).get('builds.list', {})
    expect(first.read).toHaveLength(2)
    await asking(first.counted).get('builds.list', {})
    expect(first.read).toHaveLength(2)
    const second = counting(await reopened(first.counted))
    expect((await asking(second.counted).get('builds.list', {}))[1]).toMatchObject({ standing: atCrankMarks })
    expect(second.read).toEqual([])
  })

  it.each([
    ['is no JSON', "'{'"],
    ['is JSON of another shape', `'{"head":"x","standing":{"step":7}}'`],
    ['was never kept', 'NULL'],
    ['was kept after another entry', `json_set(standing, '$.head', '${'0'.repeat(64)}')`],
  ])('is found again where what is kept of it %s', async (_, value) => {
    const record = await store(folder())
    const { get } = await twoBuilds(record)
    await get('builds.list', {})
    record.close()
    alter(dirname(record.file), `UPDATE build SET standing = ${value}`)
    const { get: later, bugs } = asking(await store(dirname(record.file)))
    expect(await later('builds.list', {})).toMatchObject([{ fault: null }, { standing: atCrankMarks }])
    expect(bugs).toEqual([])
  })

  it('is not said of a build that cannot be read to its end, which is listed all the same', async () => {
    const record = await store(folder())
    const { id } = await twoBuilds(record)
    record.close()
    alter(dirname(record.file), `UPDATE event SET body = replace(body, '2', '3') WHERE seq = 2`)
    const { get } = asking(await store(dirname(record.file)))
    expect((await get('builds.list', {})).find((line) => line.id === id)?.standing).toBeNull()
  })

  it('is said although it cannot be kept', async () => {
    const record = await store(folder())
    await twoBuilds(record)
    const refusal = {
      ok: false,
      problem: { code: 'record-not-saved', facts: { reason: 'disk-full' }, path: '' },
    } as const
    const { get, bugs } = asking({ ...record, keepStandings: () => refusal })
    expect((await get('builds.list', {}))[1]).toMatchObject({ standing: atCrankMarks })
    expect(bugs).toEqual([])
  })

  it('is found again after the lists were made again', async () => {
    const record = await store(folder())
    const { get } = await twoBuilds(record)
    await get('builds.list', {})
    expect(await get('record.rebuild-lists', {})).toEqual({ changed: 0 })
    expect(record.builds().map(({ standing }) => standing)).toEqual([null, null])
    expect((await get('builds.list', {}))[1]).toMatchObject({ standing: atCrankMarks })
  })
})
