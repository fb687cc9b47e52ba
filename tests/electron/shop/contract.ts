import { describe, expect, it } from 'vitest'
import { typedWords } from '../../../core/builds/index.ts'
import type { ShopArchive, ShopBuild, ShopConnection } from '../../../electron/shop/index.ts'
import { photoHash, sha256, type ListItem } from '../../../electron/store/index.ts'
import { buildId, chainOf, consignment, ferryEngine, first, second, value } from './sample.ts'

/** Opens ways to one archive that is empty at first. */
export type OpenShop = () => Promise<() => Promise<ShopArchive>>

/** A machine under load is slow, not wrong. */
const soon = { timeout: 20_000 }

/** What every archive of a shop does, whatever it stands on. */
export function archiveContract(of: string, openShop: OpenShop): void {
  const build = buildId('2026-11-02T08:00:01Z', 1)
  const later = buildId('2026-12-24T08:00:00Z', 2)

  async function withSpec(): Promise<readonly [ShopArchive, () => Promise<ShopArchive>]> {
    const client = await openShop()
    const archive = await client()
    value(await archive.keepSpec(ferryEngine))
    return [archive, client]
  }

  describe(`sending to an archive ${of}`, () => {
    it('keeps entries as they are, with the bench that sent them', async () => {
      const [archive, client] = await withSpec()
      const entries = chainOf(build, 3)
      expect(value(await archive.send(consignment(build, entries)))).toEqual({ kind: 'kept', upTo: 3 })
      const elsewhere = await client()
      expect(value(await elsewhere.entries(build))).toEqual(
        entries.map((entry) => ({ ...entry, bench: first })),
      )
      expect(value(await elsewhere.entries(build, 2)).map(({ seq }) => seq)).toEqual([3])
      expect(value(await elsewhere.entries(later))).toEqual([])
    })

    it('does no harm by sending again, in part or past the end', async () => {
      const [archive] = await withSpec()
      const entries = chainOf(build, 5)
      value(await archive.send(consignment(build, entries.slice(0, 3))))
      const change = value(await archive.build(build))?.change
      expect(value(await archive.send(consignment(build, entries.slice(1, 3))))).toEqual({
        kind: 'kept',
        upTo: 3,
      })
      expect(value(await archive.build(build))?.change).toBe(change)
      expect(value(await archive.send(consignment(build, entries.slice(1))))).toEqual({
        kind: 'kept',
        upTo: 5,
      })
      expect(value(await archive.entries(build)).map(({ seq }) => seq)).toEqual([1, 2, 3, 4, 5])
    })

    it('tells from where to send when entries before these are not there', async () => {
      const [archive] = await withSpec()
      const entries = chainOf(build, 6)
      expect(value(await archive.send(consignment(build, entries.slice(3))))).toEqual({
        kind: 'behind',
        from: 1,
      })
      value(await archive.send(consignment(build, entries.slice(0, 2))))
      expect(value(await archive.send(consignment(build, entries.slice(3))))).toEqual({
        kind: 'behind',
        from: 3,
      })
      expect(value(await archive.entries(build))).toHaveLength(2)
    })

    it('takes no entry of a build whose spec it does not have', async () => {
      const archive = await (await openShop())()
      const sent = await archive.send(consignment(build, chainOf(build, 1)))
      expect(sent).toMatchObject({ ok: false, problem: { code: 'shop-spec-missing' } })
      expect(value(await archive.build(build))).toBeNull()
    })

    it('takes nothing where one of the entries was altered, is out of place, or is of another build', async () => {
      const [archive] = await withSpec()
      const [one, two, three] = chainOf(build, 3)
      if (one === undefined || two === undefined || three === undefined) throw new Error('three entries')
      const altered = { ...two, body: two.body.replace('step-2', 'step-9') }
      const alteredWithItsHash = { ...altered, sha256: sha256(altered.body) }
      for (const [entries, entry] of [
        [[one, altered], 2],
        [[one, alteredWithItsHash, three], 3],
        [[one, three], 3],
        [[{ ...one, seq: 2 }], 2],
        [[{ ...one, sha256: two.sha256 }], 1],
      ] as const)
        expect(await archive.send(consignment(build, entries))).toMatchObject({
          ok: false,
          problem: { code: 'shop-entry-refused', facts: { entry } },
        })
      expect(await archive.send(consignment(later, [one]))).toMatchObject({
        problem: { code: 'shop-entry-refused', facts: { entry: 1 } },
      })
      expect(value(await archive.builds())).toEqual([])
    })

    it('keeps each entry once when two send the same at once', async () => {
      const [archive, client] = await withSpec()
      const other = await client()
      const entries = chainOf(build, 8)
      const sent = await Promise.all([
        archive.send(consignment(build, entries.slice(0, 5))),
        other.send(consignment(build, entries)),
        archive.send(consignment(build, entries.slice(0, 7))),
      ])
      expect(sent.map(value).map(({ kind }) => kind)).toEqual(['kept', 'kept', 'kept'])
      expect(value(await archive.entries(build)).map(({ seq }) => seq)).toEqual([1, 2, 3, 4, 5, 6, 7, 8])
    })
  })

  describe(`a fork in an archive ${of}`, () => {
    const ours = chainOf(build, 4)
    const theirs = chainOf(build, 6, 2, 'other')

    it('keeps both branches and mixes neither', async () => {
      const [archive] = await withSpec()
      value(await archive.send(consignment(build, ours)))
      expect(value(await archive.send(consignment(build, theirs.slice(2, 5), { bench: second })))).toEqual({
        kind: 'fork',
        at: 3,
      })
      expect(value(await archive.entries(build)).map(({ sha256 }) => sha256)).toEqual(
        ours.map(({ sha256 }) => sha256),
      )
      expect(value(await archive.forks())).toEqual([
        {
          build,
          at: 3,
          sha256: theirs[2]?.sha256,
          entries: theirs.slice(2, 5).map((entry) => ({ ...entry, bench: second })),
          settled: null,
        },
      ])
      expect(value(await archive.build(build))).toMatchObject({ forked: true, entries: 4, bench: first })
    })

    it('grows by what comes after it, and by nothing twice', async () => {
      const [archive] = await withSpec()
      value(await archive.send(consignment(build, ours)))
      value(await archive.send(consignment(build, theirs.slice(0, 5), { bench: second })))
      for (let times = 0; times < 2; times += 1)
        expect(value(await archive.send(consignment(build, theirs.slice(5), { bench: second })))).toEqual({
          kind: 'fork',
          at: 3,
        })
      const forks = value(await archive.forks(build))
      expect(forks.map(({ entries }) => entries.map(({ seq }) => seq))).toEqual([[3, 4, 5, 6]])
    })

    it('is found from the beginning where its own beginning was not sent', async () => {
      const [archive] = await withSpec()
      value(await archive.send(consignment(build, ours)))
      expect(value(await archive.send(consignment(build, theirs.slice(4))))).toEqual({
        kind: 'behind',
        from: 1,
      })
      expect(value(await archive.send(consignment(build, theirs)))).toEqual({ kind: 'fork', at: 3 })
    })

    it('is what the list tells of once it counts, and the line that was left has no word in it', async () => {
      const [archive] = await withSpec()
      value(await archive.send(consignment(build, ours)))
      const said = { bench: second, holder: second, counts: 'here' } as const
      const mentions = [{ kind: 'person', word: 'ferrante' }] as const
      value(await archive.send(consignment(build, theirs.slice(2, 5), { ...said, mentions: [] })))
      expect(value(await archive.build(build))).toMatchObject({ holder: second })
      value(await archive.send(consignment(build, theirs.slice(5), { ...said, finished: true, mentions })))
      const left = chainOf(build, 5, 4, 'left').slice(4)
      value(await archive.send(consignment(build, left, { counts: 'there', voided: true })))
      expect(value(await archive.builds({ words: ['ferrante'] }))).toMatchObject([
        { id: build, holder: second, finished: true, voided: false },
      ])
      // What is there already, once more: who learns late that its line counts has nothing new to send.
      const changed = async (about: Parameters<typeof consignment>[2], entries = theirs.slice(5)) => {
        const before = value(await archive.lastChange())
        value(await archive.send(consignment(build, entries, about)))
        return value(await archive.changesAfter(before))
      }
      expect(await changed({ ...said, flagged: true })).toMatchObject([{ id: build, flagged: true }])
      expect(await changed({ ...said, flagged: true })).toEqual([])
      // The archive’s own line counts again, as the other gave way.
      const own = { counts: 'here', standing: null } as const
      expect(await changed(own, ours.slice(3))).toMatchObject([{ id: build, flagged: false, holder: first }])
      expect(await changed(own, ours.slice(3))).toEqual([])
      expect(await changed({ voided: true }, ours.slice(3))).toEqual([])
    })

    it('is settled once, by a person with a reason, and both branches stay', async () => {
      const [archive] = await withSpec()
      value(await archive.send(consignment(build, ours)))
      value(await archive.send(consignment(build, theirs.slice(2), { bench: second })))
      const name = { build, at: 3, sha256: theirs[2]?.sha256 ?? '' }
      const settlement = { bench: first, person: 'Ana Ruiz', reason: 'The case lies at bench 1.' }
      value(await archive.settle(name, settlement))
      expect(value(await archive.build(build))?.forked).toBe(false)
      const [fork] = value(await archive.forks(build))
      expect(fork).toMatchObject({ settled: settlement })
      expect(fork?.entries).toHaveLength(4)
      expect(value(await archive.entries(build))).toHaveLength(4)
      expect(await archive.settle(name, settlement)).toMatchObject({ problem: { code: 'shop-fork-unknown' } })
      expect(await archive.settle({ ...name, at: 2 }, settlement)).toMatchObject({
        problem: { code: 'shop-fork-unknown' },
      })
    })
  })

  describe(`the list of builds in an archive ${of}`, () => {
    async function twoBuilds() {
      const [archive, client] = await withSpec()
      value(await archive.send(consignment(build, chainOf(build, 3))))
      const about = { startedAtUtc: '2026-12-24T08:00:00.000Z', finished: true, holder: second, ordinal: 2 }
      value(
        await archive.send(
          consignment(later, chainOf(later, 2), {
            ...about,
            bench: second,
            mentions: [{ kind: 'person', word: 'ferrante' }],
          }),
        ),
      )
      return [archive, client] as const
    }
    /** For those that only read: to set up a shop on a server takes a while. */
    let once: ReturnType<typeof twoBuilds> | undefined
    const toRead = () => (once ??= twoBuilds())
    const idsIn = (found: readonly ShopBuild[]) => found.map(({ id }) => id)

    it('says of each what its bench said last, and how far it is', async () => {
      const [archive] = await twoBuilds()
      const standing = '{"head":"0","standing":null}'
      const entries = chainOf(build, 4)
      value(await archive.send(consignment(build, entries.slice(3), { flagged: true, standing })))
      expect(value(await archive.build(build))).toMatchObject({
        id: build,
        name: 'Ferry, port engine',
        serial: 'F-201',
        engine: 'Ferry 4',
        demo: true,
        specSha256: sha256(ferryEngine.text),
        year: 2026,
        ordinal: 1,
        startedAtUtc: '2026-11-02T08:00:01.000Z',
        lastAtUtc: '2026-11-02T08:00:02.000Z',
        finished: false,
        flagged: true,
        holder: first,
        standing,
        entries: 4,
        headSha256: entries[3]?.sha256,
        bench: first,
        forked: false,
      })
      expect(value(await archive.build(build))?.receivedAtUtc).toMatch(
        /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d\.\d{3}Z$/,
      )
    })

    it('has the one started last first, as many as are asked for', async () => {
      const [archive] = await toRead()
      expect(idsIn(value(await archive.builds()))).toEqual([later, build])
      expect(idsIn(value(await archive.builds({ most: 1 })))).toEqual([later])
      expect(idsIn(value(await archive.builds({ before: later })))).toEqual([build])
    })

    it.each([
      ['the beginning of a word', { words: ['ferr'] }, [later, build]],
      ['several words', { words: ['ferr', 'por'] }, [build]],
      ['a serial number without its hyphen', { words: typedWords('F201') }, [build]],
      ['what the word is about', { words: ['ferr'], kind: 'person' as const }, [later]],
      ['its number', { words: typedWords('2026-002'), kind: 'number' as const }, [later]],
      ['its state', { state: 'finished' as const }, [later]],
      ['being open', { state: 'open' as const }, [build]],
      ['whose it is', { holder: second }, [later]],
      ['its time', { from: '2026-12-01T00:00:00.000Z' }, [later]],
      ['its time, the end not included', { to: '2026-12-24T08:00:00.000Z' }, [build]],
      [
        'the name of its engine elsewhere',
        { words: ['fähre'], called: () => [sha256(ferryEngine.text)] },
        [later, build],
      ],
      ['a word that nothing begins with', { words: ['erry'] }, []],
    ])('is narrowed by %s', async (_, search, found) => {
      const [archive] = await toRead()
      expect(idsIn(value(await archive.builds(search)))).toEqual(found)
    })

    it('takes a word with the signs of a pattern as it is typed', async () => {
      const [archive] = await toRead()
      expect(value(await archive.builds({ words: ['%'] }))).toEqual([])
      expect(value(await archive.builds({ words: ['ferr_'] }))).toEqual([])
    })
  })

  describe(`what lies beside the entries in an archive ${of}`, () => {
    it('is specs and photos by their hash, each once', async () => {
      const [archive] = await withSpec()
      const bytes = Uint8Array.from([0xff, 0xd8, 0, 1, 2])
      value(await archive.keepPhoto(bytes))
      value(await archive.keepPhoto(bytes))
      value(await archive.keepSpec(ferryEngine))
      const [spec, photo, none] = [sha256(ferryEngine.text), photoHash(bytes), sha256('none')]
      expect(value(await archive.lacking({ specs: [spec, none], photos: [none, photo] }))).toEqual({
        specs: [none],
        photos: [none],
      })
      expect(value(await archive.lacking({ specs: [], photos: [] }))).toEqual({ specs: [], photos: [] })
      expect(value(await archive.spec(spec))).toEqual(ferryEngine)
      expect([...(value(await archive.photo(photo)) ?? [])]).toEqual([...bytes])
      expect(value(await archive.spec(none))).toBeNull()
      expect(value(await archive.photo(none))).toBeNull()
    })

    it('is the benches that greeted, by name, with when', async () => {
      const [archive] = await withSpec()
      value(await archive.greet({ id: second, name: 'Bench by the door', program: '0.1.0' }))
      value(await archive.greet({ id: first, name: 'Bench 9', program: '0.1.0' }))
      value(await archive.greet({ id: first, name: 'Bench 1', program: '0.2.0' }))
      const benches = value(await archive.benches())
      expect(benches).toMatchObject([
        { id: first, name: 'Bench 1', program: '0.2.0' },
        { id: second, name: 'Bench by the door' },
      ])
      expect(benches[0]?.seenAtUtc).toMatch(/Z$/)
    })

    it('is lists item by item, of each what was said last, whoever sends first', async () => {
      const [archive] = await withSpec()
      const said = (id: string, json: string | null, at: string, bench = first): ListItem => ({
        ...{ id, json, bench },
        atUtc: `2026-11-02T08:00:0${at}Z`,
      })
      expect(value(await archive.listItems('people'))).toEqual([])
      value(
        await archive.keepListItems('people', [said('ana', '{"a":1}', '2.000'), said('bo', '{}', '2.000')]),
      )
      // Another bench's: later of one, earlier of the other; one of its own, and one at the same moment.
      const others = [
        said('ana', null, '3.000', second),
        said('bo', '{"b":0}', '1.999', second),
        said('cy', '{}', '2.000'),
      ]
      value(await archive.keepListItems('people', others))
      value(
        await archive.keepListItems('people', [...others, said('dee', '{"of":"second"}', '2.000', second)]),
      )
      value(await archive.keepListItems('people', [said('dee', '{"of":"first"}', '2.000', first)]))
      value(await archive.keepListItems('wrenches', [said('ana', '{"wrench":true}', '1.000')]))
      expect(value(await archive.listItems('people'))).toEqual([
        others[0],
        said('bo', '{}', '2.000'),
        others[2],
        said('dee', '{"of":"second"}', '2.000', second),
      ])
      expect(value(await archive.listItems('wrenches'))).toHaveLength(1)
    })

    it('is which lists all benches have in common: none until the owner says so', async () => {
      const [archive] = await withSpec()
      expect(value(await archive.commonLists())).toEqual([])
    })
  })

  describe(`following an archive ${of}`, () => {
    it('begins with what came past a change, and goes on with each addition', async () => {
      const [archive, client] = await withSpec()
      value(await archive.send(consignment(build, chainOf(build, 1))))
      const change = value(await archive.build(build))?.change ?? 0
      value(await archive.send(consignment(later, chainOf(later, 1))))
      const elsewhere = await client()
      const told: [string, number][] = []
      const connections: ShopConnection['kind'][] = []
      const stop = elsewhere.follow(change, {
        added: ({ id, entries }) => told.push([id, entries]),
        connection: ({ kind }) => connections.push(kind),
      })
      await expect.poll(() => told, soon).toEqual([[later, 1]])
      expect(connections.at(-1)).toBe('open')
      value(await archive.send(consignment(build, chainOf(build, 3))))
      await expect
        .poll(() => told, soon)
        .toEqual([
          [later, 1],
          [build, 3],
        ])
      stop()
      value(await archive.send(consignment(build, chainOf(build, 4))))
      await elsewhere.builds()
      expect(told).toHaveLength(2)
    })

    it('begins with now where the archive has gone back behind what was seen', async () => {
      const [archive, client] = await withSpec()
      value(await archive.send(consignment(build, chainOf(build, 1))))
      const told: string[] = []
      const stop = (await client()).follow(1_000_000, {
        added: ({ id }) => told.push(id),
        skipped: (why) => told.push(why),
        connection: () => {},
      })
      await expect.poll(() => told, soon).toEqual(['set-back'])
      expect(value(await archive.lastChange())).toBe(value(await archive.build(build))?.change)
      expect(value(await archive.buildsOf([later, build])).map(({ id }) => id)).toEqual([build])
      value(await archive.send(consignment(later, chainOf(later, 1))))
      await expect.poll(() => told, soon).toEqual(['set-back', later])
      stop()
    })

    it('tells that something was said of a list', async () => {
      const [archive, client] = await withSpec()
      let told = 0
      const connections: ShopConnection['kind'][] = []
      const stop = (await client()).follow(0, {
        added: () => {},
        lists: () => (told += 1),
        connection: ({ kind }) => connections.push(kind),
      })
      await expect.poll(() => connections, soon).toContain('open')
      const item = { id: 'ana', json: '{}', bench: first }
      // The line on which it is told may open a moment later.
      await expect
        .poll(async () => {
          value(await archive.keepListItems('people', [{ ...item, atUtc: new Date().toISOString() }]))
          return told > 0
        }, soon)
        .toBe(true)
      stop()
    })

    it('tells changes in their order', async () => {
      const [archive] = await withSpec()
      value(await archive.send(consignment(build, chainOf(build, 1))))
      value(await archive.send(consignment(later, chainOf(later, 1))))
      value(await archive.send(consignment(build, chainOf(build, 2))))
      const changes = value(await archive.changesAfter(0))
      expect(changes.map(({ id, entries }) => [id, entries])).toEqual([
        [later, 1],
        [build, 2],
      ])
      expect(value(await archive.changesAfter(changes.at(-1)?.change ?? 0))).toEqual([])
    })
  })
}
