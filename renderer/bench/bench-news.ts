import type { Client } from '../../core/contract/index.ts'
import type { OtherWindows } from './other-windows.ts'
import type { Place } from './place.ts'
import { ShopNews } from './shop-news.ts'

/** What of the bench is read again when something came. */
interface ShownAtBench {
  readonly place: () => Place
  readonly loadBuilds: () => Promise<unknown>
  readonly loadPeople: () => Promise<unknown>
  readonly loadWrenches: () => Promise<unknown>
}

/** What other windows and other benches of the shop confirm, shown where the person is, and what this window announces to them. */
export class BenchNews {
  readonly shop: ShopNews
  readonly #others: OtherWindows
  readonly #shown: ShownAtBench
  #draft: { readonly id: string; readonly reload: () => Promise<unknown> } | null = null

  constructor(client: Client, others: OtherWindows, shown: ShownAtBench) {
    this.#others = others
    this.#shown = shown
    this.shop = new ShopNews(client, (build) => {
      others.announce({ build: build ?? '', seq: 0 })
      this.#cameFromShop(build ?? '')
    })
    others.listen(({ build, seq }) => {
      if (build !== null && seq === 0) this.#cameFromShop(build)
      else void this.follow(build ?? undefined)
    })
  }

  /** Shows what other windows have confirmed, of one build or of whatever is shown. */
  async follow(build?: string) {
    const place = this.#shown.place()
    if (place.at === 'engines') await this.#shown.loadBuilds()
    else if (place.at === 'draft') {
      if (build === undefined || build === this.#draft?.id) await this.#draft?.reload()
    } else if (place.at === 'comparison') await Promise.all([place.first.follow(), place.second.follow()])
    else if ('openBuild' in place && (build === undefined || place.openBuild?.line.id === build))
      await place.openBuild?.follow()
  }

  /** What another window edits in the draft that is shown is shown here too, until what is given back is called. */
  followDraft(id: string, reload: () => Promise<unknown>): () => void {
    const draft = { id, reload }
    this.#draft = draft
    return () => {
      if (this.#draft === draft) this.#draft = null
    }
  }

  /** The library has another revision: a build that is shown, here or in another window, says so. */
  async announceRevision() {
    this.#others.announce({ build: null, seq: 0 })
    await this.follow()
  }
  announceEdit(draft: string, seq: number) {
    this.#others.announce({ build: draft, seq })
  }

  #cameFromShop(build: string) {
    this.shop.came()
    if (build !== '') return void this.follow(build)
    const place = this.#shown.place()
    // People and wrenches may be one list for all benches.
    if (place.at === 'people') void this.#shown.loadPeople()
    else if (place.at === 'wrenches') void this.#shown.loadWrenches()
    // What is shown of another bench's build says when the way to the archive was cut.
    else if ('openBuild' in place && place.openBuild?.isElsewhere) void place.openBuild.follow()
  }
}
