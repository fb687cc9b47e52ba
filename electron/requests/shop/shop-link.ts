import { done, type Outcome, type Problem } from '../../../core/problem/index.ts'
import type { ShopAddress, ShopArchive, ShopBench, ShopBuild } from '../../shop/index.ts'
import { mayPass } from '../../shop/index.ts'
import type { Store } from '../../store/index.ts'
import type { OpenBuildCache } from '../open-build-cache.ts'
import { Sender } from './sender.ts'
import { BuildReceiver } from './build-receiver.ts'
import { isSoon } from './soon.ts'

/** Opens the way to an archive; whether anything answers there, its first question shows. */
export type OpenArchive = (address: ShopAddress, password: string | null) => Outcome<ShopArchive>

/** How often the bench says that it is there while nothing is sent. */
const greetEveryMs = 300_000
/** After what came could not be taken in, for want of an answer. */
const againMs = 5_000
/** How long an answer that came late is as good as asked for: the page that hears of it reads again. */
const freshMs = 2_000
/** How many builds are asked for at once. */
const atOnce = 200

/** The way between this bench and the archive of a shop, while it belongs to it: what goes, what comes, and who is there. */
export class ShopLink {
  readonly archive: ShopArchive
  readonly sender: Sender
  readonly #receiver: BuildReceiver
  readonly #greeting: () => { id: string; name: string; program: string }
  readonly #services: ShopLinkServices
  /** What came and is to be looked at, by build: the last state of each. */
  readonly #coming = new Map<string, ShopBuild>()
  readonly #timer: NodeJS.Timeout
  readonly #unfollow: () => void
  #benches: readonly ShopBench[] = []
  #again: NodeJS.Timeout | null = null
  #taking: Promise<void> | null = null
  #greeted: Problem | null = null
  #looking: Promise<void> | null = null
  /** When the benches were last answered too late for the page that asked; 0 for never. */
  #cameLateMs = 0
  #isStopped = false
  /** The last change that was announced. */
  #seen: number
  /** Much was added that was not announced one by one. */
  #isBehind = false

  constructor(services: ShopLinkServices) {
    const { archive, store, openBuilds, greeting, now, random } = services
    this.archive = archive
    this.#seen = services.after
    this.#services = services
    this.#greeting = greeting
    const bench = store.bench
    this.sender = new Sender({
      ...{ store, openBuilds, archive, bench, random },
      changed: (build) => services.sent(build),
    })
    const nameOf = (id: string) => this.nameOf(id)
    this.#receiver = new BuildReceiver({ store, openBuilds, archive, bench, nameOf, now })
    this.#timer = setInterval(() => {
      void this.greet()
      void services.meetLists(archive) // a server may announce nothing
    }, greetEveryMs)
    this.#timer.unref()
    this.#unfollow = archive.follow(services.after, {
      added: (build) => {
        this.#seen = Math.max(this.#seen, build.change)
        this.#came(build)
        services.news(build.id)
      },
      skipped: (why) => {
        if (why === 'set-back') this.sender.sendAllAgain()
        this.#isBehind = true
        this.#takeAll()
      },
      lists: () => void services.meetLists(archive),
      connection: ({ kind }) => {
        if (kind === 'open') {
          void this.greet().then(() => this.sender.tryNow())
          this.#takeAll()
          void services.meetLists(archive)
        }
        services.news('')
      },
    })
    void this.greet().then(() => this.sender.sendAll())
  }

  /** As the archive knew them last. */
  get benches(): readonly ShopBench[] {
    return this.#benches
  }
  /** Why the archive does not take this bench’s word; null where it does, and where nobody answers. */
  get problem(): Problem | null {
    return this.#greeted
  }

  nameOf(id: string): string {
    const here = this.#greeting()
    return id === here.id ? here.name : (this.#benches.find((bench) => bench.id === id)?.name ?? id)
  }

  async greet(): Promise<void> {
    const greeted = await this.archive.greet(this.#greeting())
    const problem = greeted.ok ? null : greeted.problem
    const isNews = problem?.code !== this.#greeted?.code
    this.#greeted = problem
    if (isNews) this.#services.news('')
    await this.lookWhoIsThere()
  }

  /** Takes in what the archive has of a build now. */
  async take(build: string): Promise<Outcome<boolean>> {
    const row = await this.archive.build(build)
    if (!row.ok) return row
    return row.value === null ? { ok: true, value: false } : this.#take(row.value)
  }

  async stop(): Promise<void> {
    this.#isStopped = true
    this.#unfollow()
    clearInterval(this.#timer)
    if (this.#again !== null) clearTimeout(this.#again)
    await this.sender.stop()
    await this.#taking
    await this.archive.close()
  }

  #takeAll(): void {
    if (this.#isStopped) return
    this.#taking ??= this.#takeEach().finally(() => {
      this.#taking = null
      if ((this.#coming.size > 0 || this.#isBehind) && this.#again === null)
        this.#again = setTimeout(() => {
          this.#again = null
          this.#takeAll()
        }, againMs).unref()
    })
  }

  /** Of others’ builds only those are kept here that somebody has looked at, and those that were handed to this bench. */
  #came(row: ShopBuild): void {
    const { store } = this.#services
    if (row.holder !== store.bench && store.build(row.id) === null) return this.#keepChange()
    this.#coming.set(row.id, row)
    this.#takeAll()
  }

  /** All up to the change before the first that is still to be taken in. */
  #keepChange(): void {
    if (this.#isBehind) return
    const first = Math.min(...[...this.#coming.values()].map(({ change }) => change))
    this.#services.keepChange(Math.min(this.#seen, first - 1))
  }

  /** One after the other. What cannot be had now stays; what will never be taken in is reported and passed over. */
  async #takeEach(): Promise<void> {
    if (this.#isBehind && !(await this.#askForAll())) return
    for (const row of this.#coming.values()) {
      if (this.#isStopped) return
      const taken = await this.#take(row)
      if (!taken.ok && mayPass(taken.problem)) return
      if (this.#coming.get(row.id) === row) this.#coming.delete(row.id)
      this.#keepChange()
      this.#services.news(row.id)
    }
  }

  /** Asks page by page for what would have been announced. False where there was no answer. */
  async #askForAll(): Promise<boolean> {
    const { store, archive } = this.#services
    const { bench } = store
    const last = await archive.lastChange()
    if (!last.ok) return false
    const here = async (before: string | undefined) => {
      const ids = store.builds({ before, most: atOnce }).map(({ id }) => id)
      return { ids, rows: ids.length === 0 ? done([]) : await archive.buildsOf(ids) }
    }
    const handed = async (before: string | undefined) => {
      const rows = await archive.builds({ holder: bench, state: 'open', before, most: atOnce })
      return { ids: rows.ok ? rows.value.map(({ id }) => id) : [], rows }
    }
    for (const page of [here, handed])
      for (let before: string | undefined, isMore = true; isMore && !this.#isStopped;) {
        const { ids, rows } = await page(before)
        if (!rows.ok) return false
        for (const row of rows.value) if (!this.#coming.has(row.id)) this.#coming.set(row.id, row)
        before = ids.at(-1)
        isMore = ids.length === atOnce
      }
    this.#seen = last.value
    this.#isBehind = false
    return true
  }

  async #take(row: ShopBuild): Promise<Outcome<boolean>> {
    if (!this.#benches.some(({ id }) => id === row.bench)) await this.lookWhoIsThere()
    const taken = await this.#receiver.take(row)
    if (taken.ok && taken.value) this.#services.taken(row.id)
    return taken
  }

  /** Also which benches have come since. */
  async lookWhoIsThere(): Promise<void> {
    const benches = await this.archive.benches()
    if (benches.ok) this.#benches = benches.value
  }

  /** The same for a page, which does not wait for a slow network: what comes later is announced. */
  async lookWhoIsThereSoon(): Promise<void> {
    const nowMs = () => this.#services.now().getTime()
    if (Math.abs(nowMs() - this.#cameLateMs) < freshMs) return
    const looked = (this.#looking ??= this.lookWhoIsThere().finally(() => (this.#looking = null)))
    if (await isSoon(looked)) return
    void looked.then(() => {
      this.#cameLateMs = nowMs()
      this.#services.news('')
    })
  }

  /** Takes in what the archive has of a build that is here too; what comes later than a page waits for is announced. */
  async takeSoon(build: string): Promise<void> {
    const taken = this.take(build)
    if (await isSoon(taken)) return
    void taken.then((late) => {
      if (late.ok && late.value) this.#services.news(build)
    })
  }
}

export interface ShopLinkServices {
  readonly archive: ShopArchive
  readonly store: Store
  readonly openBuilds: OpenBuildCache
  readonly greeting: () => { id: string; name: string; program: string }
  /** The last change of the archive that was taken in here. */
  readonly after: number
  readonly keepChange: (change: number) => void
  /** Something of the build, or of the shop where it is '', is another than it was. */
  readonly news: (build: string) => void
  /** Entries of another bench are here that were not. */
  readonly taken: (build: string) => void
  readonly sent: (build: string) => void
  /** Lists that all benches have in common may be others there. */
  readonly meetLists: (archive: ShopArchive) => Promise<void>
  readonly now: () => Date
  readonly random: () => number
}
