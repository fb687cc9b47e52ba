import { describe, expect, it } from 'vitest'
import { sentenceOf } from '../../../core/problem/index.ts'
import { evolve, replay } from '../../../core/builds/index.ts'
import type { Input } from '../../../core/contract/index.ts'
import { readSpec } from '../../../core/engine/index.ts'
import { folder, store } from '../bench.ts'
import { nextCommand } from '../mechanic.ts'
import { asking } from './asking.ts'

const builds = [
  { engine: 'skerry-3', name: 'Ferry, port engine', serial: 'F-201', person: 'Ana Ruiz', day: '2026-03-02' },
  {
    engine: 'skerry-3',
    name: 'Ferry, starboard',
    serial: 'F-202',
    person: 'I. Brandvold',
    day: '2026-03-03',
  },
  { engine: 'tarn-4', name: 'Pump at the lower lock', serial: 'P7', person: 'Ana Ruiz', day: '2026-04-01' },
  { engine: 'tarn-4', name: 'Øvre sluse', serial: '', person: 'Åse Lind', day: '2026-04-02' },
] as const

/** A bench with the four builds above; the second was finished as void, the third has a noted problem. */
async function archive() {
  let day: string = builds[0].day
  const host = asking(await store(folder()), { now: () => new Date(`${day}T10:00:00Z`) })
  const ids: string[] = []
  for (const { day: on, ...start } of builds) {
    day = on
    ids.push((await host.get('builds.start', start)).line.id)
  }
  await host.act(ids[1] ?? '', 1, { type: 'void-build', reason: 'Wrong engine on the stand' })
  const find = async (search: Partial<Input<'builds.find'>>) => {
    const { lines } = await host.get('builds.find', { words: '', ...search })
    return lines.map(({ id }) => ids.indexOf(id))
  }
  return { ...host, find, ids }
}

/** Works on a build until its first procedure has begun. */
async function workToRun(
  get: ReturnType<typeof asking>['get'],
  act: ReturnType<typeof asking>['act'],
  build: string,
) {
  const { specText, events } = await get('builds.open', { build })
  const read = readSpec(specText)
  if (!read.ok) throw new Error('the spec cannot be read')
  let state = replay(events)
  while (Object.keys(state.runs).length === 0) {
    const answer = await act(build, state.seq, nextCommand(read.spec, state) ?? { type: 'finish-build' })
    if (!answer.ok) throw new Error(sentenceOf(answer.problem))
    state = answer.value.events.reduce(evolve, state)
  }
  return { seq: state.seq, procedure: Object.keys(state.runs)[0] ?? '' }
}

describe('finding builds', () => {
  it.each<[string, Partial<Input<'builds.find'>>, number[]]>([
    ['all, newest first', {}, [3, 2, 1, 0]],
    ['by a word of the name', { words: 'ferry' }, [1, 0]],
    ['by the beginning of a word', { words: 'starb' }, [1]],
    ['by two words, in any order', { words: 'port ferry' }, [0]],
    ['by serial number, with hyphen', { words: 'F-201' }, [0]],
    ['by serial number, without', { words: 'f202' }, [1]],
    ['by serial number, with a hyphen it was not entered with', { words: 'P-7' }, [2]],
    ['by serial number, the beginning of it', { words: 'F-2' }, [1, 0]],
    ['by person, in whatever entry', { words: 'ruiz' }, [2, 1, 0]],
    ['by a person typed without accents', { words: 'ase' }, [3]],
    ['by engine', { words: 'tarn' }, [3, 2]],
    ['by the engine as it is called in German', { words: 'Fährenhilfs', language: 'en' }, [1, 0]],
    ['by the engine as it is called in Spanish', { words: 'bombeo', kind: 'engine', language: 'de' }, [3, 2]],
    ['by what the engine is called and what the person is', { words: 'bewasserung lind' }, [3]],
    ['by a name of an engine, but not as a person', { words: 'bombeo', kind: 'person' }, []],
    ['by what was entered, in a window of another language', { words: 'starb', language: 'es' }, [1]],
    ['by number', { words: '2026-003' }, [2]],
    ['by a word of one kind alone', { words: 'ana', kind: 'serial' }, []],
    ['by a person as a person', { words: 'brand', kind: 'person' }, [1]],
    ['from a day on', { from: '2026-03-03' }, [3, 2, 1]],
    ['until a day, that day included', { to: '2026-03-03' }, [1, 0]],
    ['within a day', { from: '2026-04-01', to: '2026-04-01' }, [2]],
    ['that do not count', { state: 'voided' }, [1]],
    ['still open', { state: 'open' }, [3, 2, 0]],
    ['that are not there', { words: 'zeppelin' }, []],
    ['by signs that mean something to a database', { words: "%_' OR 1=1 --" }, []],
    ['by both word and state', { words: 'ferry', state: 'open' }, [0]],
  ])('%s', async (_, search, expected) => {
    const { find } = await archive()
    expect(await find(search)).toEqual(expected)
  })

  it('finds a flagged one by its flag, the words of it, and the state', async () => {
    const { act, get, find, ids } = await archive()
    const { seq, procedure } = await workToRun(get, act, ids[0] ?? '')
    const text = 'Thread galled at the second rod'
    const noted = await act(ids[0] ?? '', seq, { type: 'note-problem', procedure, fastener: null, text })
    expect(noted.ok).toBe(true)
    expect(await find({ words: 'galled', kind: 'flag' })).toEqual([0])
    expect(await find({ state: 'flagged' })).toEqual([0])
  })

  it('gives fifty at a time, and the next fifty after them', async () => {
    const { get, begin } = asking(await store(folder()))
    const ids: string[] = []
    for (let count = 0; count < 60; count += 1) ids.unshift((await begin()).line.id)
    const first = await get('builds.find', { words: '' })
    expect(first).toMatchObject({ more: true })
    const before = first.lines.at(-1)?.id ?? ''
    const second = await get('builds.find', { words: '', before })
    expect(second.more).toBe(false)
    expect([...first.lines, ...second.lines].map(({ id }) => id)).toEqual(ids)
  })
})
