import { describe, expect, it } from 'vitest'
import { chainOf, consignment, first, second, value } from '../sample.ts'
import { build, withSpec, type OpenShop } from './shop-with-spec.ts'

/** What becomes of two lines of one build. */
export function forksContract(of: string, openShop: OpenShop): void {
  describe(`a fork in an archive ${of}`, () => {
    const ours = chainOf(build, 4)
    const theirs = chainOf(build, 6, 2, 'other')

    it('keeps both branches and mixes neither', async () => {
      const [archive] = await withSpec(openShop)
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
      const [archive] = await withSpec(openShop)
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
      const [archive] = await withSpec(openShop)
      value(await archive.send(consignment(build, ours)))
      expect(value(await archive.send(consignment(build, theirs.slice(4))))).toEqual({
        kind: 'behind',
        from: 1,
      })
      expect(value(await archive.send(consignment(build, theirs)))).toEqual({ kind: 'fork', at: 3 })
    })

    it('is what the list tells of once it counts, and the line that was left has no word in it', async () => {
      const [archive] = await withSpec(openShop)
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
      const [archive] = await withSpec(openShop)
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
}
