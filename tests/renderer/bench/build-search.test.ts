import { describe, expect, it } from 'vitest'
import { done, refused } from '../../../core/problem/index.ts'
import { BuildSearch } from '../../../renderer/bench/build-search.svelte.ts'
import { lineOf, twin } from '../twin.ts'

/** An archive of five builds, two to a page, newest first. */
const five = [5, 4, 3, 2, 1].map((place) => lineOf(place))

function archive(lines = five) {
  const host = twin({
    'builds.find': ({ words, before }) => {
      const found = lines.filter(({ name, id }) => name.includes(words) && (!before || id < before))
      return done({ lines: found.slice(0, 2), more: found.length > 2 })
    },
  })
  return { ...host, search: new BuildSearch(host.client) }
}

const numbers = (search: BuildSearch) => search.lines?.map(({ number }) => number)

describe('searching the archive', () => {
  it('has no lines before the first answer, which is not the same as none found', async () => {
    const { search } = archive()
    expect(search.lines).toBeNull()
    await search.look({ words: 'nobody' })
    expect(search.lines).toEqual([])
  })

  it('keeps what was looked for before, but for what is changed', async () => {
    const { search, requests } = archive()
    await search.look({ words: 'Ferry', state: 'open' })
    await search.look({ state: undefined, kind: 'name' })
    expect(requests.at(-1)?.input).toEqual({
      words: 'Ferry',
      state: undefined,
      kind: 'name',
      of: 'shop',
      before: undefined,
      language: 'en',
    })
  })

  it('goes to older pages and back, and knows where there are no more', async () => {
    const { search } = archive()
    await search.look()
    expect([search.page, numbers(search), search.hasOlder]).toEqual([1, ['2026-005', '2026-004'], true])
    await search.older()
    await search.older()
    expect([search.page, numbers(search), search.hasOlder]).toEqual([3, ['2026-001'], false])
    await search.newer()
    expect([search.page, numbers(search)]).toEqual([2, ['2026-003', '2026-002']])
    await search.newer()
    await search.newer()
    expect(search.page).toBe(1)
  })

  it('begins at the first page again for other words, and stays on its page when only looked at again', async () => {
    const { search } = archive()
    await search.look()
    await search.older()
    await search.lookAgain()
    expect([search.page, numbers(search)]).toEqual([2, ['2026-003', '2026-002']])
    await search.look({ words: 'Ferry 1' })
    expect([search.page, numbers(search)]).toEqual([1, ['2026-001']])
  })

  it('drops an answer to what is no longer asked', async () => {
    const { search, hold } = archive()
    const release = hold()
    const slow = search.look({ words: 'Ferry 5' })
    hold()()
    await search.look({ words: 'Ferry 1' })
    release()
    await slow
    expect(numbers(search)).toEqual(['2026-001'])
  })

  it('keeps the last page where the host cannot answer, and says why', async () => {
    let broken = false
    const { client } = twin({
      'builds.find': () =>
        broken
          ? refused('record-in-use', { folder: '/data' })
          : done({ lines: five.slice(0, 1), more: false }),
    })
    const search = new BuildSearch(client)
    await search.look()
    broken = true
    await search.look({ words: 'x' })
    expect(search.problem?.code).toBe('record-in-use')
    expect(search.lines).toHaveLength(1)
    broken = false
    await search.look()
    expect(search.problem).toBeNull()
  })
})

describe('choosing builds', () => {
  it('takes two at most: of three the one chosen first gives way', async () => {
    const { search } = archive()
    for (const line of five.slice(0, 3)) await search.choose(line)
    expect(search.chosen.map(({ number }) => number)).toEqual(['2026-004', '2026-003'])
  })

  it('lets go of one that is chosen again', async () => {
    const { search } = archive()
    for (const line of [five[0]!, five[1]!, five[0]!]) await search.choose(line)
    expect(search.chosen.map(({ number }) => number)).toEqual(['2026-004'])
  })

  it('outlives a turn of the page, and shows a chosen build as it is now', async () => {
    const changed = five.map((line) => ({ ...line, entries: 62 }))
    const { search } = archive(changed)
    await search.choose(five[0]!)
    await search.look()
    expect(search.chosen[0]?.entries).toBe(62)
    await search.older()
    expect(search.chosen.map(({ number }) => number)).toEqual(['2026-005'])
  })
})

it('knows the build that was opened from it last', () => {
  const { search } = archive()
  expect(search.opened).toBeNull()
  search.open(five[2]!.id)
  expect(search.opened).toBe(five[2]!.id)
})

describe('searching the archive of a shop', () => {
  const bench = { id: 'ba9876543210', name: 'Bench 9' }
  const here = { id: '0123456789ab', name: 'Bench 10' }
  const at = { bench, isHere: false, asOf: '2026-03-09T12:00:00.000Z', isForked: true }

  it('knows the benches that have builds and those that have joined, also once it is cut off', async () => {
    let isCut = false
    const { client } = twin({
      'builds.find': () => done({ lines: [{ ...lineOf(1), at }], more: false, shop: { cut: null } }),
      'shop.read': () =>
        done({
          bench: here,
          passwordIn: 'file',
          joined: {
            commonLists: [],
            ...{
              address: 'postgres://x',
              connection: 'open',
              since: null,
              problem: null,
              refused: [],
              apart: [],
            },
            waiting: { entries: 0, builds: 0 },
            benches: isCut ? [] : [{ ...here, program: '1', seenAt: at.asOf, isHere: true }],
          },
        }),
    })
    const search = new BuildSearch(client)
    await search.look({ bench: bench.id, state: 'forked' })
    expect(search.benches).toEqual([bench])
    await search.readBenches()
    isCut = true
    await search.readBenches()
    expect(search.benches).toEqual([here, bench])
  })

  it('asks for no bench and no fork once the bench has left the shop', async () => {
    let isJoined = true
    const { client, requests } = twin({
      'builds.find': () =>
        done({ lines: [lineOf(1)], more: false, ...(isJoined && { shop: { cut: null } }) }),
    })
    const search = new BuildSearch(client)
    await search.look({ words: 'Ferry', bench: bench.id, state: 'forked' })
    expect(requests.at(-1)?.input).toMatchObject({ bench: bench.id, state: 'forked' })
    isJoined = false
    await search.lookAgain()
    expect(search.wanted).toEqual({ words: 'Ferry' })
    expect(search.benches).toEqual([])
  })
})
