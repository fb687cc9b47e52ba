import { z } from 'zod'
import { lineThatCounts, type BenchName, type BuildCommand } from '../../../core/builds/index.ts'
import type { BuildBenches, ShopCut, ShopState, StoredBuild } from '../../../core/contract/index.ts'
import { done, problem, refused, type Outcome, type Problem } from '../../../core/problem/index.ts'
import { readAddress, writeAddress } from '../../shop/index.ts'
import { eventsIn, listNames, numberOf, type ListName, type Store } from '../../store/index.ts'
import type { OpenBuildCache } from '../open-build-cache.ts'
import { storedBuild, type OpenedBuild } from '../open-build.ts'
import { CommonLists } from './common-lists.ts'
import { apartOf, otherLines, recordedElsewhere } from './lines.ts'
import { News } from './news.ts'
import { ThisBench } from './this-bench.ts'
import { ShopLink, type OpenArchive } from './shop-link.ts'

/** The password of the archive, kept apart from everything else. */
export interface ShopSecret {
  read(): Outcome<string | null>
  keep(password: string): void
  forget(): void
  /** Where it is kept, or would be now. */
  place(): ShopState['passwordIn']
}

const kept = z.object({ address: z.string(), change: z.int().min(0) })
const keptAs = 'shop'
/** A window that waits for news asks again after so long. */
const newsWaitMs = 25_000

export interface ShopServices {
  readonly store: Store
  readonly openBuilds: OpenBuildCache
  readonly now: () => Date
  /** Null where there is no way to an archive. */
  readonly openArchive: OpenArchive | null
  readonly secret: ShopSecret
  /** What the machine is called. */
  readonly machine: string
  /** The version of this program. */
  readonly program: string
  readonly random: () => number
}

/** Which bench this is, and its place among the benches of a shop. */
export class ShopDesk {
  readonly bench: ThisBench
  readonly news = new News(newsWaitMs)
  readonly #services: ShopServices
  readonly #lists: CommonLists
  #link: ShopLink | null = null
  #address = ''
  #change = 0
  /** Why the shop that was joined cannot be asked at all. */
  #fault: Problem | null = null
  /** Builds of which another bench has another line. */
  readonly #parted: Set<string>

  constructor(services: ShopServices) {
    this.#services = services
    const { store, machine, now } = services
    this.#lists = new CommonLists({ store, now, changed: () => this.news.add('') })
    this.bench = new ThisBench(store, machine)
    this.#parted = new Set(store.shop.parted())
    const joined = kept.safeParse(store.preferences()[keptAs])
    if (joined.success) this.#begin(joined.data.address, joined.data.change)
  }

  get here(): BenchName {
    return this.bench.name
  }
  get link(): ShopLink | null {
    return this.#link
  }
  get isJoined(): boolean {
    return this.#address !== ''
  }

  /** Something was confirmed here. The network is not waited for. */
  noted(build: string): void {
    this.#link?.sender.noted(build)
  }

  /** People or wrenches of this bench were changed here. */
  listChanged(list: ListName): void {
    if (this.#lists.noted(list) && this.#link !== null) void this.#lists.meet(this.#link.archive)
  }

  /** Why a command may not be given although it keeps the rules of the build itself. */
  refusal(build: string, command: BuildCommand): Problem | null {
    if (command.type === 'hand-over') {
      if (!this.isJoined) return problem('shop-not-joined', {})
      if (this.#link?.benches.some(({ id }) => id === command.to.id) !== true)
        return problem('bench-unknown', {})
      if (this.#hasLeft(build, command.to))
        return problem('bench-line-left', { name: this.#nameOfBuild(build), bench: command.to.name })
    }
    const apart = this.apart(build)
    if (command.type !== 'settle-fork') return apart
    const isOver = otherLines(this.#services.store, build, this.nameOf).some(
      ({ line, events }) => line === command.over && events[0]?.seq === command.entry,
    )
    if (apart?.code === 'build-line-left') return apart
    return isOver && apart !== null ? null : problem('build-not-apart', { name: this.#nameOfBuild(build) })
  }

  #nameOfBuild(build: string): string {
    return this.#services.store.build(build)?.name ?? ''
  }

  /** Whether the bench has entries of its own in its record over which those here count: it cannot go on with these. */
  #hasLeft(build: string, { id }: BenchName): boolean {
    if (!this.#parted.has(build)) return false
    const { store } = this.#services
    const own = eventsIn(store.entries(build))
    return otherLines(store, build, this.nameOf).some(
      ({ bench, events }) => bench.id === id && lineThatCounts(own, events) === 'here',
    )
  }

  /** Why nobody goes on with the build here, where another bench has another line of it; null for most. */
  apart(build: string): Problem | null {
    return this.#parted.has(build) ? apartOf(this.#services.store, build, this.nameOf) : null
  }

  /** Why the archive is not asked now, and since when; null where it may be. */
  cut(): ShopCut {
    const connection = this.#link?.archive.connection()
    if (this.#fault === null && connection?.kind === 'cut')
      return { since: connection.sinceUtc, problem: connection.problem }
    const fault = this.#fault ?? this.#link?.problem ?? null
    return fault === null ? null : { since: null, problem: fault }
  }

  readonly nameOf = (id: string): string =>
    id === this.here.id ? this.here.name : (this.#link?.nameOf(id) ?? id)

  /** An opened build as a window gets it. */
  stored(opened: OpenedBuild): StoredBuild {
    return { ...storedBuild(this.#services.store, opened), benches: this.benchesOf(opened.row.id) }
  }

  /** How a build stands among the benches. */
  benchesOf(build: string): BuildBenches {
    const { begun, asOf } = this.#services.store.shop.of(build)
    const { here, isJoined } = this
    const begunAt = begun?.bench ?? null
    return { here, isJoined, begunAt, apart: this.apart(build), asOf, cut: isJoined ? this.cut() : null }
  }

  join(typed: string, password: string, authority: string): Outcome<null> {
    const read = readAddress(typed)
    if (!read.ok) return read
    const address = authority === '' ? read.value.address : { ...read.value.address, authority }
    const given = password || read.value.password
    if (given !== null && given !== '') this.#services.secret.keep(given)
    const written = writeAddress(address)
    const change = this.#address === written ? this.#change : 0
    const keptShop = this.#services.store.keepPreferences({ [keptAs]: { address: written, change } })
    if (!keptShop.ok) return keptShop
    void this.#link?.stop()
    if (this.#address !== written) {
      this.#services.store.shop.forget()
      this.#lists.forget()
    }
    this.#begin(written, change)
    return this.#fault === null ? done(null) : { ok: false, problem: this.#fault }
  }

  async leave(): Promise<Outcome<null>> {
    await this.#link?.stop()
    this.#link = null
    this.#address = ''
    this.#fault = null
    this.#services.secret.forget()
    this.#lists.forget()
    const forgotten = this.#services.store.shop.forget()
    if (!forgotten.ok) return forgotten
    this.news.add('')
    return this.#services.store.keepPreferences({ [keptAs]: null })
  }

  async stop(): Promise<void> {
    this.news.wake()
    await this.#link?.stop()
    await this.#lists.stop()
    this.#keepChange()
  }

  state(): ShopState {
    return {
      bench: this.here,
      joined: this.isJoined ? this.#joined() : null,
      passwordIn: this.#services.secret.place(),
    }
  }

  #joined(): NonNullable<ShopState['joined']> {
    const { store } = this.#services
    this.#link?.sender.mark()
    const waiting = store.shop.waiting()
    const connection = this.#link?.archive.connection()
    const named = (build: string) => {
      const row = store.build(build)
      return { build, name: row?.name ?? '', number: row === null ? '' : numberOf(row) }
    }
    return {
      address: this.#address,
      connection: connection?.kind ?? 'untried',
      since: connection === undefined || connection.kind === 'untried' ? null : connection.sinceUtc,
      problem: this.cut()?.problem ?? this.#link?.sender.trouble ?? null,
      waiting: {
        entries: waiting.reduce((sum, { from, to }) => sum + to - from + 1, 0),
        builds: waiting.length,
      },
      refused: store.shop.refused().flatMap((build) => {
        const { refused: why } = store.shop.of(build)
        return why === null ? [] : [{ ...named(build), why }]
      }),
      apart: [...this.#parted].flatMap((build) => {
        const own = eventsIn(store.entries(build))
        return otherLines(store, build, this.nameOf).map((other) => {
          const entry = other.events[0]?.seq ?? 1
          return {
            ...named(build),
            ...{ entry, line: other.line, bench: other.bench.name },
            own: recordedElsewhere(store, build, entry, this.nameOf),
            counts: lineThatCounts(own, other.events),
          }
        })
      }),
      commonLists: listNames.filter((list) => this.#lists.isCommon(list)),
      benches: (this.#link?.benches ?? []).map(({ id, name, program, seenAtUtc }) => ({
        ...{ id, name, program, seenAt: seenAtUtc },
        isHere: id === this.here.id,
      })),
    }
  }

  #begin(address: string, change: number): void {
    const { openArchive, secret, store, openBuilds, now, random, program } = this.#services
    this.#address = address
    this.#change = change
    this.#link = null
    const opened = this.#open(address, openArchive, secret)
    this.#fault = opened.ok ? null : opened.problem
    if (!opened.ok) return
    this.#link = new ShopLink({
      ...{ archive: opened.value, store, openBuilds, now, random, after: change },
      greeting: () => ({ ...this.here, program }),
      keepChange: (seen) => {
        this.#change = seen
      },
      news: (build) => this.news.add(build),
      meetLists: (archive) => this.#lists.meet(archive),
      taken: (build) => {
        if (store.shop.lines(build).length === 0) return
        this.#parted.add(build)
        this.#link?.sender.listAgain(build)
      },
      sent: (build) => {
        this.news.add('')
        if (this.#parted.has(build)) void this.#announceSettled(build)
      },
    })
  }

  #open(address: string, openArchive: OpenArchive | null, secret: ShopSecret) {
    const read = readAddress(address)
    if (!read.ok) return read
    const password = secret.read()
    if (!password.ok) return password
    return openArchive === null
      ? refused('shop-not-joined', {})
      : openArchive(read.value.address, password.value)
  }

  #keepChange(): void {
    if (this.isJoined)
      this.#services.store.keepPreferences({ [keptAs]: { address: this.#address, change: this.#change } })
  }

  /** The archive lists a build as forked until it hears that people settled it. */
  async #announceSettled(build: string): Promise<void> {
    const { store } = this.#services
    const own = eventsIn(store.entries(build))
    const settled = own.findLast(({ event }) => event.type === 'fork-settled')
    if (settled?.event.type !== 'fork-settled' || this.#link === null) return
    const { archive } = this.#link
    const forks = await archive.forks(build)
    if (!forks.ok) return
    const { reason, over, entry } = settled.event
    const mine = own.find(({ seq }) => seq === entry)?.hash
    for (const { at, sha256, settled: before } of forks.value)
      if (before === null && (sha256 === over || sha256 === mine))
        await archive.settle({ build, at, sha256 }, { bench: this.here.id, person: settled.person, reason })
  }
}
