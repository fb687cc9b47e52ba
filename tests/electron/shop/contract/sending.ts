import { describe, expect, it } from 'vitest'
import { sha256 } from '../../../../electron/store/index.ts'
import { chainOf, consignment, first, value } from '../sample.ts'
import { build, later, withSpec, type OpenShop } from './shop-with-spec.ts'

/** What sending entries does. */
export function sendingContract(of: string, openShop: OpenShop): void {
  describe(`sending to an archive ${of}`, () => {
    it('keeps entries as they are, with the bench that sent them', async () => {
      const [archive, client] = await withSpec(openShop)
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
      const [archive] = await withSpec(openShop)
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
      const [archive] = await withSpec(openShop)
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
      const [archive] = await withSpec(openShop)
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
      const [archive, client] = await withSpec(openShop)
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
}
