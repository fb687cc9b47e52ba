import { describe, expect, it } from 'vitest'
import { buildSheet } from '../../../../core/builds/index.ts'
import { readSpec } from '../../../../core/engine/index.ts'
import { folder, store } from '../../bench.ts'
import { benchOf, benchOn, hashesOf, memoryShop, until, type TestBench } from './benches.ts'

async function entriesAt(bench: TestBench, build: string): Promise<number> {
  const entries = await bench.client().entries(build)
  return entries.ok ? entries.value.length : -1
}

const codeOf = (answer: { ok: boolean; problem?: { code: string } }) =>
  answer.ok ? null : answer.problem?.code

describe('two benches of a shop', () => {
  it('work on one build one after the other, and a third reads and prints it', async () => {
    const shop = memoryShop()
    const [first, second, third] = [
      await benchOf(shop, 'Bench 1'),
      await benchOf(shop, 'Bench 2'),
      await benchOf(shop, 'Foreman'),
    ]
    const { line } = await first.begin()
    await first.goesOn(line.id, 3)
    await until(async () => (await entriesAt(second, line.id)) === 4)
    await second.looksAt(line.id, 4)

    const there = await second.get('builds.open', { build: line.id })
    expect(there.benches).toMatchObject({ begunAt: first.name, here: second.name, apart: null })
    expect(there.line).toMatchObject({ number: line.number, begunAt: 'Bench 1' })
    expect(codeOf(await second.does(line.id, { type: 'void-build', reason: 'Wrong engine' }))).toBe(
      'build-elsewhere',
    )

    await until(async () => (await first.get('shop.read', {})).joined?.benches.length === 3)
    const handed = await first.does(line.id, { type: 'hand-over', to: second.name, note: 'To be tightened' })
    expect(handed.ok).toBe(true)
    expect(codeOf(await first.does(line.id, { type: 'void-build', reason: 'Wrong engine' }))).toBe(
      'build-elsewhere',
    )
    await until(() => second.store.build(line.id)?.entries === 5)
    await second.goesOn(line.id, 4)

    await third.looksAt(line.id, 9)
    expect(hashesOf(third, line.id)).toEqual(hashesOf(second, line.id))
    const opened = await third.get('shop.open', { build: line.id })
    const read = readSpec(opened.specText)
    if (!read.ok) throw new Error('the spec cannot be read')
    expect(buildSheet(read.spec, opened.events).benches).toMatchObject([
      { kind: 'handed-over', from: first.name, to: second.name },
    ])
    const found = await third.get('builds.find', { of: 'shop', words: 'ferry' })
    expect(found.lines).toMatchObject([
      { id: line.id, entries: 9, at: { bench: second.name, isHere: false } },
    ])
    expect([...first.bugs, ...second.bugs, ...third.bugs]).toEqual([])
  })

  it('goes on at a bench that took it over with a reason, as the one that had it is dark', async () => {
    const shop = memoryShop()
    const [first, second] = [await benchOf(shop, 'Bench 1'), await benchOf(shop, 'Bench 2')]
    const { line } = await first.begin()
    await second.looksAt(line.id, 1)
    first.client().cut()
    expect(codeOf(await second.does(line.id, { type: 'take-over', reason: '' }))).toBe('reason-missing')
    expect((await second.does(line.id, { type: 'take-over', reason: 'Bench 1 is dark' })).ok).toBe(true)
    await second.goesOn(line.id)
    first.client().mend()
    await until(() => first.store.build(line.id)?.entries === 3)
    expect(codeOf(await first.does(line.id, { type: 'void-build', reason: 'Wrong engine' }))).toBe(
      'build-elsewhere',
    )
  })
})

describe('a bench with the network down', () => {
  it('goes on, says what waits, and sends it once it is back', async () => {
    const shop = memoryShop()
    const [first, second] = [await benchOf(shop, 'Bench 1'), await benchOf(shop, 'Bench 2')]
    const { line } = await first.begin()
    await second.looksAt(line.id, 1)
    first.client().cut()
    await first.goesOn(line.id, 5)
    expect((await first.get('shop.read', {})).joined).toMatchObject({
      connection: 'cut',
      waiting: { entries: 5, builds: 1 },
      problem: { code: 'shop-unreachable' },
    })
    const doctor = await first.get('host.doctor', {})
    expect(doctor.at(-1)).toMatchObject({ subject: 'shop', state: 'look' })
    first.client().mend()
    await until(() => second.store.build(line.id)?.entries === 6)
    expect(hashesOf(second, line.id)).toEqual(hashesOf(first, line.id))
    await until(async () => (await first.get('shop.read', {})).joined?.waiting.entries === 0)
    expect((await first.get('host.doctor', {})).at(-1)).toMatchObject({ subject: 'shop', state: 'good' })
  })

  it('shows what it has of another bench’s build', async () => {
    const shop = memoryShop()
    const [first, second] = [await benchOf(shop, 'Bench 1'), await benchOf(shop, 'Bench 2')]
    const { line } = await first.begin()
    await second.looksAt(line.id, 1)
    second.client().cut()
    const opened = await second.get('shop.open', { build: line.id })
    expect(opened.events).toHaveLength(1)
    expect(opened.benches?.asOf).not.toBeNull()
    const found = await second.get('builds.find', { of: 'shop', words: 'ferry' })
    expect(found).toMatchObject({
      lines: [{ id: line.id, at: { bench: first.name, isHere: false, asOf: opened.benches?.asOf } }],
      shop: { cut: { problem: { code: 'shop-unreachable' } } },
    })
    expect(found.shop?.cut?.since).not.toBeNull()
  })

  it('sends all again to an archive that was restored from a backup', async () => {
    const shop = memoryShop()
    const inFolder = folder()
    const first = await benchOf(shop, 'Bench 1', inFolder)
    const { line } = await first.begin()
    await first.goesOn(line.id, 3)
    await until(async () => (await entriesAt(first, line.id)) === 4)
    await until(async () => (await first.get('shop.read', {})).joined?.waiting.entries === 0)
    await first.stop()
    first.store.close()
    const again = await benchOn(await store(inFolder), memoryShop(), 'Bench 1')
    await until(async () => (await entriesAt(again, line.id)) === 4)
    const there = await again.client().entries(line.id)
    expect(there.ok && there.value.map(({ sha256 }) => sha256)).toEqual(hashesOf(again, line.id))
  })

  it('sends what was confirmed before it joined', async () => {
    const shop = memoryShop()
    const first = await benchOf(shop, 'Bench 1')
    await first.get('shop.leave', {})
    const { line } = await first.begin()
    await first.goesOn(line.id, 2)
    const second = await benchOf(shop, 'Bench 2')
    await first.get('shop.join', { address: 'postgres://bench@127.0.0.1/south', password: '', authority: '' })
    await second.looksAt(line.id, 3)
    expect(hashesOf(second, line.id)).toEqual(hashesOf(first, line.id))
  })
})

/** `looks`: a bench that looked at the build before, and reads it as it goes on. */
async function apart({ looks }: { readonly looks?: string } = {}) {
  const shop = memoryShop()
  const [first, second] = [await benchOf(shop, 'Bench 1'), await benchOf(shop, 'Bench 2')]
  const { line } = await first.begin()
  const build = line.id
  await second.looksAt(build, 1)
  first.client().cut()
  await second.does(build, { type: 'take-over', reason: 'Bench 1 is dark' })
  await until(async () => (await entriesAt(second, build)) === 2)
  const third = looks === undefined ? null : await benchOf(shop, looks)
  await third?.looksAt(build, 2)
  await first.goesOn(build, 2)
  first.client().mend()
  await until(async () => (await first.get('shop.read', {})).joined?.apart.length === 1)
  await until(async () => (await second.get('shop.read', {})).joined?.apart.length === 1)
  return { shop, first, second, third, build }
}

describe('a build that two benches went on with apart', () => {
  it('is refused at both, with both lines kept', async () => {
    const { first, second, build } = await apart()
    for (const bench of [first, second])
      expect(codeOf(await bench.does(build, { type: 'void-build', reason: 'Wrong engine' }))).toBe(
        'build-apart',
      )
    expect((await first.get('shop.read', {})).joined?.apart).toMatchObject([
      { build, entry: 2, bench: 'Bench 2', counts: null },
    ])
    const [found] = (await second.get('builds.find', { of: 'shop', words: '' })).lines
    expect(found).toMatchObject({ id: build, at: { isForked: true } })
    expect((await second.get('host.doctor', {})).at(-1)).toMatchObject({ subject: 'shop', state: 'bad' })
  })

  it('names the benches of both lines at a third that only looked at it before', async () => {
    const { first, second, third, build } = await apart({ looks: 'Foreman' })
    if (third === null) throw new Error('nobody looks')
    await until(async () => (await third.get('shop.read', {})).joined?.apart.length === 1)
    expect((await third.get('shop.read', {})).joined?.apart).toMatchObject([
      { build, entry: 2, bench: 'Bench 1', own: 'Bench 2', counts: null },
    ])
    expect((await first.get('shop.read', {})).joined?.apart).toMatchObject([{ bench: 'Bench 2', own: null }])
    expect((await second.get('shop.read', {})).joined?.apart).toMatchObject([{ bench: 'Bench 1', own: null }])
    const { benches } = await third.get('builds.open', { build })
    expect(benches?.apart).toMatchObject({ code: 'build-apart', facts: { bench: 'Bench 1', own: 'Bench 2' } })
  })

  it('goes on at the bench whose line a person said counts, and is left at the other', async () => {
    const { first, second, build } = await apart()
    const [fork] = (await first.get('shop.read', {})).joined?.apart ?? []
    const settle = {
      type: 'settle-fork',
      entry: 2,
      over: fork?.line ?? '',
      reason: 'The engine is here',
    } as const
    expect((await first.does(build, settle)).ok).toBe(true)
    await first.goesOn(build)
    // Its own record keeps the line that was left, so it could not go on.
    expect(codeOf(await first.does(build, { type: 'hand-over', to: second.name, note: '' }))).toBe(
      'bench-line-left',
    )
    await until(async () => {
      const [other] = (await second.get('shop.read', {})).joined?.apart ?? []
      return other?.counts === 'there'
    })
    expect(codeOf(await second.does(build, { type: 'void-build', reason: 'Wrong engine' }))).toBe(
      'build-line-left',
    )
    const [other] = (await second.get('shop.read', {})).joined?.apart ?? []
    const line = await second.get('shop.read-line', { build, line: other?.line ?? '' })
    expect(line.events.map(({ hash }) => hash)).toEqual(hashesOf(first, build).slice(0, line.events.length))
    await until(
      async () =>
        (await second.get('builds.find', { of: 'shop', words: '' })).lines[0]?.at?.isForked === false,
    )
    expect([...first.bugs, ...second.bugs]).toEqual([])
  })
})

describe('a bench that comes after a fork was settled', () => {
  const settleAt = async (bench: TestBench, build: string, givesWay?: true) => {
    const [fork] = (await bench.get('shop.read', {})).joined?.apart ?? []
    const over = { entry: 2, over: fork?.line ?? '', reason: 'The engine is here' }
    return bench.does(build, { type: 'settle-fork', ...over, ...(givesWay && { givesWay }) })
  }

  /** In the archive too. */
  const isSettled = (bench: TestBench) =>
    until(async () => (await bench.get('shop.read', {})).joined?.waiting.entries === 0)

  it('reads the line that counts, follows it, and can go on with it', async () => {
    const { shop, first, build } = await apart()
    // The archive had the other line first.
    expect((await settleAt(first, build)).ok).toBe(true)
    await isSettled(first)
    const third = await benchOf(shop, 'Foreman')
    await third.looksAt(build, 4)
    expect(hashesOf(third, build)).toEqual(hashesOf(first, build))
    expect((await third.get('builds.open', { build })).benches?.apart).toBeNull()
    await first.goesOn(build, 2)
    await until(() => third.store.build(build)?.entries === 6)
    await until(async () => (await first.get('shop.read', {})).joined?.benches.length === 3)
    expect((await first.does(build, { type: 'hand-over', to: third.name, note: '' })).ok).toBe(true)
    await until(() => third.store.build(build)?.entries === 7)
    await third.goesOn(build)
    await until(() => first.store.build(build)?.entries === 8)
    expect(hashesOf(third, build)).toEqual(hashesOf(first, build))
    expect([...first.bugs, ...third.bugs]).toEqual([])
  })

  it('reads it too where the bench that took it over has the line that counts', async () => {
    const { shop, second, build } = await apart()
    expect((await settleAt(second, build)).ok).toBe(true)
    await isSettled(second)
    const third = await benchOf(shop, 'Foreman')
    await third.looksAt(build, 3)
    expect(hashesOf(third, build)).toEqual(hashesOf(second, build))
    expect((await third.get('builds.open', { build })).benches?.apart).toBeNull()
  })

  it('finds it listed by the line that counts, wherever that was said', async () => {
    const { first, second, build } = await apart()
    const [before] = (await second.get('builds.find', { of: 'shop', words: '' })).lines
    expect(before?.at?.bench).toEqual(second.name)
    expect((await settleAt(second, build, true)).ok).toBe(true)
    const listed = async () => (await second.get('builds.find', { of: 'shop', words: '' })).lines[0]
    await until(async () => (await listed())?.at?.bench.id === first.name.id)
    await first.goesOn(build, 3)
    const here = (await first.get('builds.find', { of: 'here', words: '' })).lines[0]?.standing
    expect(here?.step).not.toBeNull()
    await until(async () => JSON.stringify((await listed())?.standing) === JSON.stringify(here))
  })
})

describe('two lines that were each settled over the other', () => {
  it('are ended by one answer at either bench', async () => {
    const { first, second, build } = await apart()
    const settle = async (bench: TestBench, givesWay?: true) => {
      const [fork] = (await bench.get('shop.read', {})).joined?.apart ?? []
      const over = { entry: 2, over: fork?.line ?? '', reason: 'The engine is here' }
      return bench.does(build, { type: 'settle-fork', ...over, ...(givesWay && { givesWay }) })
    }
    first.client().cut()
    expect((await settle(second)).ok).toBe(true)
    expect((await settle(first)).ok).toBe(true)
    first.client().mend()
    const counts = async (bench: TestBench) => (await bench.get('shop.read', {})).joined?.apart[0]?.counts
    await until(async () => (await counts(first)) === null && (await counts(second)) === null)
    expect((await settle(second, true)).ok).toBe(true)
    await until(async () => (await counts(first)) === 'here')
    await first.goesOn(build)
    expect(await counts(second)).toBe('there')
  })
})
