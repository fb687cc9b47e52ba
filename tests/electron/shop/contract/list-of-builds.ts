import { describe, expect, it } from 'vitest'
import { typedWords } from '../../../../core/builds/index.ts'
import type { ShopBuild } from '../../../../electron/shop/index.ts'
import { sha256 } from '../../../../electron/store/index.ts'
import { chainOf, consignment, ferryEngine, first, second, value } from '../sample.ts'
import { build, later, withSpec, type OpenShop } from './shop-with-spec.ts'

/** What the list says of builds, and how it is narrowed. */
export function listOfBuildsContract(of: string, openShop: OpenShop): void {
  describe(`the list of builds in an archive ${of}`, () => {
    async function twoBuilds() {
      const [archive, client] = await withSpec(openShop)
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
}
