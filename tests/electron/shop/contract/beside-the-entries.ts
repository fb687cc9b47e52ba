import { describe, expect, it } from 'vitest'
import { photoHash, sha256, type ListItem } from '../../../../electron/store/index.ts'
import { ferryEngine, first, second, value } from '../sample.ts'
import { withSpec, type OpenShop } from './shop-with-spec.ts'

/** What is kept beside entries: specs, photos, benches, the lists of the shop. */
export function besideEntriesContract(of: string, openShop: OpenShop): void {
  describe(`what lies beside the entries in an archive ${of}`, () => {
    it('is specs and photos by their hash, each once', async () => {
      const [archive] = await withSpec(openShop)
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
      const [archive] = await withSpec(openShop)
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
      const [archive] = await withSpec(openShop)
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
      const [archive] = await withSpec(openShop)
      expect(value(await archive.commonLists())).toEqual([])
    })
  })
}
