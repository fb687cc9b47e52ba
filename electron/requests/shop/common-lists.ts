import { z } from 'zod'
import { done, type Outcome } from '../../../core/problem/index.ts'
import type { ShopArchive } from '../../shop/index.ts'
import {
  isLater,
  listNames,
  type KeptItem,
  type ListItem,
  type ListName,
  type Store,
} from '../../store/index.ts'
import { listHere } from './list-here.ts'

const keptAs = 'commonLists'
const kept = z.array(z.enum(listNames)).catch([])

/**
 * Keeps the lists that all benches of the shop have in common the same here as in the archive: what was changed here goes there, with when
 * and by which bench, and of each item what was said last holds. With the network down both go on, and meet again item by item.
 */
export class CommonLists {
  readonly #store: Store
  readonly #now: () => Date
  /** Is called where a list here is another than it was. */
  readonly #changed: () => void
  #common: readonly ListName[]
  #meeting: Promise<void> | null = null
  #again = false
  /** The archive that is met. What another one still answers is of no account. */
  #archive: ShopArchive | null = null

  constructor({ store, now, changed }: { store: Store; now: () => Date; changed: () => void }) {
    this.#store = store
    this.#now = now
    this.#changed = changed
    this.#common = kept.parse(store.preferences()[keptAs])
    for (const list of this.#common) {
      // One that was damaged is made again before anything is added to it: its items are not gone.
      if (listHere[list].read(store) === null) store.lists.take(list, [], listHere[list].after(store, []))
      this.#note(list) // what was changed before the program ended, and not noted any more
    }
  }

  /** As far as this bench knows. */
  isCommon(list: ListName): boolean {
    return this.#common.includes(list)
  }

  /** A list was changed here. Whether it has to be sent is the answer. */
  noted(list: ListName): boolean {
    return this.isCommon(list) && this.#note(list)
  }

  /** Takes in what other benches said, and says what was changed here. Once more where it is asked for meanwhile. */
  meet(archive: ShopArchive): Promise<void> {
    this.#archive = archive
    this.#again = true
    this.#meeting ??= this.#meetAll()
    return this.#meeting
  }

  /** Resolves when nothing of the record is touched any more. */
  async stop(): Promise<void> {
    this.#archive = null
    await this.#meeting
  }

  /** The bench is in no shop, or in another: its lists are its own, as they are. */
  forget(): void {
    this.#archive = null
    this.#keepCommon([])
  }

  async #meetAll(): Promise<void> {
    try {
      while (this.#again && this.#archive !== null) {
        this.#again = false
        const archive = this.#archive
        const common = await archive.commonLists()
        if (archive !== this.#archive) continue
        if (!common.ok) return
        this.#keepCommon(this.#common.filter((list) => common.value.includes(list)))
        for (const list of common.value) {
          const met = await this.#meet(archive, list)
          if (!met.ok) return
        }
      }
    } finally {
      this.#meeting = null // in the same moment as it was last looked whether to go on
    }
  }

  async #meet(archive: ShopArchive, list: ListName): Promise<Outcome<null>> {
    const there = await archive.listItems(list)
    if (archive !== this.#archive) return done(null)
    if (!there.ok) return there
    // Nothing is waited for from here on: what is compared is not changed meanwhile. A list that was this bench's own until now
    // is not said yet: of what the shop knows already, the shop's word holds.
    if (this.isCommon(list)) this.#note(list)
    const taken = this.#take(list, there.value)
    if (!taken.ok) return taken
    if (!this.isCommon(list)) this.#keepCommon([...this.#common, list])
    this.#note(list)
    if (taken.value) this.#changed()
    const unsent = this.#store.lists.items(list).filter(({ sent }) => !sent)
    if (unsent.length === 0) return done(null)
    const said = await archive.keepListItems(
      list,
      unsent.map(({ sent: _, ...item }) => item),
    )
    if (archive !== this.#archive) return done(null)
    return said.ok ? this.#store.lists.markSent(list, unsent) : said
  }

  /** Whether the list here is another for it. */
  #take(list: ListName, there: readonly ListItem[]): Outcome<boolean> {
    const before = new Map(this.#store.lists.items(list).map((item) => [item.id, item]))
    const news = there.filter((item) => {
      const known = before.get(item.id)
      return known === undefined || isLater(item, known)
    })
    const echoed = there.filter((item) => {
      const known = before.get(item.id)
      return known?.sent === false && known.atUtc === item.atUtc && known.bench === item.bench
    })
    if (news.length + echoed.length === 0) return done(false)
    const items = [...news, ...echoed].map((item): KeptItem => ({ ...item, sent: true }))
    const change = listHere[list].after(this.#store, news)
    const taken = this.#store.lists.take(list, items, change)
    return taken.ok ? done(news.length > 0) : taken
  }

  /** Records the changes made here that are not recorded yet: items that were added, changed or removed since. */
  #note(list: ListName): boolean {
    const { read, isSame, knows } = listHere[list]
    const here = read(this.#store)
    if (here === null) return false
    const reported = new Map(this.#store.lists.items(list).map((item) => [item.id, item]))
    const said = (id: string, json: string | null): KeptItem => ({
      ...{ id, json, bench: this.#store.bench, sent: false },
      atUtc: this.#after(reported.get(id)),
    })
    const changed = [...here].filter(([id, json]) => {
      const before = reported.get(id)?.json
      return before === undefined || before === null || !isSame(before, json)
    })
    // One that this program cannot read is not in its list, and not gone.
    const gone = [...reported.values()].filter(
      ({ id, json }) => json !== null && !here.has(id) && knows(json),
    )
    const items = [...changed.map(([id, json]) => said(id, json)), ...gone.map(({ id }) => said(id, null))]
    if (items.length === 0) return false
    return this.#store.lists.keep(list, items).ok
  }

  /** The present time, but always later than the last known change of the item: a bench that has seen that change comes after it, even if its clock is behind. */
  #after(known: ListItem | undefined): string {
    const least = known === undefined ? 0 : Date.parse(known.atUtc) + 1
    return new Date(Math.max(this.#now().getTime(), least)).toISOString()
  }

  #keepCommon(lists: readonly ListName[]): void {
    if (lists.length === this.#common.length && lists.every((list) => this.#common.includes(list))) return
    for (const list of this.#common) if (!lists.includes(list)) this.#store.lists.forget(list)
    this.#common = lists
    this.#store.keepPreferences({ [keptAs]: lists })
    this.#changed()
  }
}
