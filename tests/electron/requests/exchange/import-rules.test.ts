import { describe, expect, it } from 'vitest'
import { sentenceOf } from '../../../../core/problem/index.ts'
import { folder, store } from '../../bench.ts'
import { finishBuild } from '../../mechanic.ts'
import { asking } from '../asking.ts'
import { forged } from './forged.ts'

type Entry = Record<string, unknown>

/** A finished build as it is exported, with a chain of its own around what `change` makes of its entries. */
async function forgedBuild(change: (entries: Entry[], spec: string) => string | void) {
  const { begin, act, get } = asking(await store(folder()))
  const { line, specText, events } = await begin()
  await finishBuild({ build: line.id, specText, events, act })
  return forged((await get('builds.export', { build: line.id })).text, change)
}

const eventOf = (entry: Entry | undefined) => entry?.event as Record<string, unknown>
const renumber = (entries: Entry[]) => entries.forEach((entry, at) => (entry.seq = at + 1))

async function takenIn(text: string) {
  const { ask, get, bugs } = asking(await store(folder()))
  const answer = await ask('builds.import', { text })
  return { answer, builds: await get('builds.list', {}), bugs }
}

describe('a chain that is whole around entries that nobody could have confirmed', () => {
  it('is taken in where nothing was changed', async () => {
    const { answer } = await takenIn(await forgedBuild(() => undefined))
    expect(answer).toMatchObject({ ok: true, value: { kind: 'added', line: { finished: true } } })
  })

  it.each<[string, (entries: Entry[], spec: string) => string | void, string]>([
    [
      'begins and is finished',
      (entries) => {
        entries.splice(1, entries.length - 2)
        renumber(entries)
      },
      'Entry 2 of the file',
    ],
    [
      'goes on after it was said not to count',
      (entries) => {
        const voided = { ...entries[1]!, event: { type: 'build-voided', version: 1, reason: 'Trial only' } }
        entries.splice(1, 0, voided)
        renumber(entries)
      },
      'Entry 3 of the file',
    ],
    [
      'names another spec’s id',
      (entries) => void (eventOf(entries[0]).spec = 'strath-6'),
      'Entry 1 of the file',
    ],
    [
      'pulls a fastener twice',
      (entries) => {
        const at = entries.findIndex(({ event }) => (event as Entry).type === 'fastener-pulled')
        const again = structuredClone(entries[at]!)
        eventOf(again).pull = 2
        entries.splice(at + 1, 0, again)
        renumber(entries)
      },
      'Entry',
    ],
    [
      'leaves a pull out',
      (entries) => {
        const pulls = entries.filter(({ event }) => (event as Entry).type === 'fastener-pulled')
        entries.splice(entries.indexOf(pulls[3]!), 1)
        renumber(entries)
      },
      'Entry',
    ],
    [
      'calls a reading within the limits that is not',
      (entries) => {
        const pulled = entries.find(({ event }) => (event as Entry).type === 'fastener-pulled')
        Object.assign(eventOf(pulled), {
          reading: { typed: '450', value: 450, unit: 'N·m' },
          verdict: 'within',
        })
      },
      'Entry',
    ],
    [
      'has a line break in a name',
      (entries) => void (entries[2]!.person = 'Ana\nRuiz'),
      'Entry 3 of the file',
    ],
  ])('is refused with the number of the entry: it %s', async (_, change, words) => {
    const { answer, builds, bugs } = await takenIn(await forgedBuild(change))
    expect(answer).toMatchObject({ ok: false, problem: { code: 'import-against-rules' } })
    expect(answer.ok ? '' : sentenceOf(answer.problem)).toContain(words)
    expect(builds).toEqual([])
    expect(bugs).toEqual([])
  })
})

describe('a large file', () => {
  it('is refused by its first line, whatever comes after', async () => {
    const { answer } = await takenIn(`{"bedplateBuild":1,${' '.repeat(500)}}\n${'x'.repeat(30_000_000)}`)
    expect(answer).toMatchObject({ ok: false, problem: { code: 'import-not-ours' } })
  })

  it('is refused by the number of its lines before any of them is read', async () => {
    const text = await forgedBuild(() => undefined)
    const { answer } = await takenIn(text + '{"at":0}\n'.repeat(3_000_000))
    expect(answer).toMatchObject({ ok: false, problem: { code: 'import-altered' } })
  })

  it('is taken in one at a time, and others are answered meanwhile', async () => {
    const text = await forgedBuild(() => undefined)
    const { ask } = asking(await store(folder()))
    const first = ask('builds.import', { text })
    expect(await ask('builds.import', { text })).toMatchObject({
      ok: false,
      problem: { code: 'import-busy' },
    })
    expect((await ask('builds.list', {})).ok).toBe(true)
    expect((await first).ok).toBe(true)
  })
})
