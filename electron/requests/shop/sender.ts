import { whereItStands } from '../../../core/builds/index.ts'
import { readSpec, type EngineSpec, type NamesOf } from '../../../core/engine/index.ts'
import { done, problem, type Problem } from '../../../core/problem/index.ts'
import {
  eventsIn,
  mentionsIn,
  numberOf,
  writeStanding,
  type BuildRow,
  type Store,
} from '../../store/index.ts'
import { mayPass, type ListedBuild, type ShopArchive } from '../../shop/index.ts'
import { specsNamed } from '../exchange/export-specs.ts'
import type { OpenBuildCache } from '../open-build-cache.ts'
import { openBuild } from '../open-build.ts'
import { whichCounts } from './lines.ts'

/** As many entries as go in one consignment. */
const mostAtOnce = 200
/** Between the answer to a confirmation and its sending, so that the answer goes first. */
const soonMs = 5
/** Between an acknowledgement and its mark in the record: many are then one write. */
const markAfterMs = 2000
/** How long it is waited before trying again: twice as long each time, and a random part of it. */
const backOff = { firstMs: 500, mostMs: 30_000 } as const

/**
 * Sends what is past the mark of each build to the archive: in order per build, again until it is acknowledged. The mark moves only then,
 * so that whatever is killed in between, the same entries go once more, and the archive passes over what it has.
 */
export class Sender {
  readonly #store: Store
  readonly #openBuilds: OpenBuildCache
  readonly #archive: ShopArchive
  readonly #bench: string
  readonly #random: () => number
  readonly #changed: (build: string) => void
  /** In the order in which they had something to send. */
  readonly #builds = new Set<string>()
  /** Hashes of specs that the archive has for certain. */
  readonly #specs = new Set<string>()
  /** Acknowledged, and not yet marked in the record: to send it once more does no harm, and a mark is a write. */
  readonly #unmarked = new Map<string, number>()
  #marking: NodeJS.Timeout | null = null
  #timer: NodeJS.Timeout | null = null
  #failures = 0
  #trouble: Problem | null = null
  #isStopped = false
  #sending: Promise<void> | null = null

  constructor(services: {
    readonly store: Store
    readonly openBuilds: OpenBuildCache
    readonly archive: ShopArchive
    readonly bench: string
    readonly random: () => number
    /** What is known of the build at the archive has changed. */
    readonly changed: (build: string) => void
  }) {
    this.#store = services.store
    this.#openBuilds = services.openBuilds
    this.#archive = services.archive
    this.#bench = services.bench
    this.#random = services.random
    this.#changed = services.changed
  }

  /** Why nothing goes at present although the archive answers, such as a disk that is full there; null where all goes. */
  get trouble(): Problem | null {
    return this.#trouble
  }

  /** Something was added to the build. Costs the caller nothing more than that. */
  noted(build: string): void {
    this.#builds.add(build)
    if (this.#failures === 0) this.#wakeIn(soonMs)
  }

  /** Everything that waits, also what was confirmed before this program was started. */
  sendAll(): void {
    if (this.#isStopped) return
    for (const { build } of this.#store.shop.waiting()) this.#builds.add(build)
    this.tryNow()
  }

  /** The line here counts now over another that the archive lists: its last entry goes once more, with what it says of the build. */
  listAgain(build: string): void {
    const last = this.#store.build(build)?.entries ?? 0
    const sent = this.#unmarked.get(build) ?? this.#store.shop.of(build).sent
    if (last === 0 || sent < last || whichCounts(this.#store, build) !== 'here') return
    this.#unmarked.set(build, last - 1)
    this.noted(build)
  }

  /** The archive has lost what it had: all that is here goes again, and it passes over what it has. */
  sendAllAgain(): void {
    this.#unmarked.clear()
    this.#specs.clear()
    this.#store.shop.forget()
    this.sendAll()
  }

  /** The way is open again. */
  tryNow(): void {
    this.#failures = 0
    this.#wakeIn(0)
  }

  async stop(): Promise<void> {
    this.#isStopped = true
    if (this.#timer !== null) clearTimeout(this.#timer)
    await this.#sending
    this.mark()
  }

  /** Writes down how far the archive has come. */
  mark(): void {
    if (this.#marking !== null) clearTimeout(this.#marking)
    this.#marking = null
    if (this.#unmarked.size > 0) this.#store.shop.keepSent(this.#unmarked)
    this.#unmarked.clear()
  }

  #markLater(build: string, sent: number): void {
    this.#unmarked.set(build, sent)
    this.#marking ??= setTimeout(() => this.mark(), markAfterMs).unref()
  }

  #wakeIn(ms: number): void {
    if (this.#isStopped) return
    if (this.#timer !== null) clearTimeout(this.#timer)
    this.#timer = setTimeout(() => {
      this.#timer = null
      this.#sending ??= this.#run().finally(() => {
        this.#sending = null
        if (this.#builds.size > 0 && this.#timer === null) this.#wakeIn(this.#delay())
      })
    }, ms)
    this.#timer.unref()
  }

  #delay(): number {
    if (this.#failures === 0) return soonMs
    return this.#random() * Math.min(backOff.mostMs, backOff.firstMs * 2 ** this.#failures)
  }

  async #run(): Promise<void> {
    for (const build of this.#builds) {
      if (this.#isStopped) return
      const why = await this.#sendBuild(build)
      if (why !== null && mayPass(why)) {
        this.#failures += 1
        this.#isInTrouble(why, build)
        return
      }
      this.#failures = 0
      this.#isInTrouble(null, build)
      if (why !== null) {
        this.#builds.delete(build)
        this.#store.shop.keep(build, { refused: why })
        this.#changed(build)
      }
    }
  }

  #isInTrouble(why: Problem | null, build: string): void {
    const isNews = why?.code !== this.#trouble?.code
    this.#trouble = why
    if (isNews) this.#changed(build)
  }

  /** Sends until nothing is left; why it did not come that far. */
  async #sendBuild(build: string): Promise<Problem | null> {
    for (let behind = 0; ;) {
      const { refused, ...kept } = this.#store.shop.of(build)
      const sent = this.#unmarked.get(build) ?? kept.sent
      const entries = this.#store.entriesAfter(build, sent, mostAtOnce)
      const last = entries.at(-1)
      if (last === undefined || this.#isStopped) {
        this.#builds.delete(build)
        return null
      }
      const listed = this.#listed(build)
      if ('code' in listed) return listed
      const events = eventsIn(entries)
      const lacking = await this.#sendWhatTheyName([listed.row.spec_sha256, ...specsNamed(entries)], events)
      if (lacking !== null) return lacking
      const answer = await this.#archive.send({
        build,
        bench: this.#bench,
        entries,
        listed: listed.listed,
        mentions: mentionsIn(listed.spec, listed.namesOf, events),
        counts: whichCounts(this.#store, build),
      })
      if (!answer.ok) return answer.problem
      const receipt = answer.value
      if (receipt.kind === 'behind') {
        // Its database was set back, or is another one: all goes again. Twice is a fault that time does not mend.
        behind += 1
        if (behind > 2) return problem('shop-entry-refused', { entry: last.seq })
        this.#unmarked.set(build, receipt.from - 1)
        continue
      }
      this.#markLater(build, last.seq)
      if (refused !== null) this.#store.shop.keep(build, { refused: null })
      this.#changed(build)
    }
  }

  /** The spec and the photos first: an entry that names one comes after it. */
  async #sendWhatTheyName(
    named: readonly string[],
    events: ReturnType<typeof eventsIn>,
  ): Promise<Problem | null> {
    const photos = events.flatMap(({ event }) => (event.type === 'photo-added' ? [event.photo.sha256] : []))
    const specs = [...new Set(named)].filter((hash) => !this.#specs.has(hash))
    if (specs.length + photos.length === 0) return null
    const lacking = await this.#archive.lacking({ specs, photos })
    if (!lacking.ok) return lacking.problem
    for (const hash of lacking.value.specs) {
      const text = this.#store.specText(hash)
      const read = text === null ? null : readSpec(text)
      if (text === null || !read?.ok) continue // the archive refuses the entries then, and that is reported
      const { name: engine, source } = read.spec
      const sent = await this.#archive.keepSpec({ text, engine, demo: source.kind === 'demo' })
      if (!sent.ok) return sent.problem
    }
    for (const hash of specs) this.#specs.add(hash)
    for (const hash of lacking.value.photos) {
      const bytes = this.#store.photos.bytes(hash)
      // One that is damaged here goes nowhere: the entry says what it was.
      if (bytes === null || this.#store.photos.stateOf(hash) !== 'good') continue
      const sent = await this.#archive.keepPhoto(bytes)
      if (!sent.ok) return sent.problem
    }
    return null
  }

  #listed(
    build: string,
  ): { row: BuildRow; spec: EngineSpec; namesOf: NamesOf; listed: ListedBuild } | Problem {
    const row = this.#store.build(build)
    if (row === null) return problem('build-unknown', {})
    const known = this.#openBuilds.known(build)
    const opened = known === null ? openBuild(this.#store, build) : done(known)
    if (!opened.ok) return opened.problem
    const { spec, namesOf, state } = opened.value
    const isOver = state.finished || state.voided
    const standing = isOver
      ? null
      : writeStanding({ build, head: row.head_sha256, standing: whereItStands(spec, state) })
    return { row, spec, namesOf, listed: listedOf(row, state.bench?.id ?? this.#bench, standing) }
  }
}

function listedOf(row: BuildRow, holder: string, standing: string | null): ListedBuild {
  const [year = row.year, ordinal = row.ordinal] = numberOf(row).split('-').map(Number)
  return {
    ...{ year, ordinal, holder, standing },
    name: row.name,
    serial: row.serial,
    specSha256: row.spec_sha256,
    startedAtUtc: row.started_at_utc,
    lastAtUtc: row.last_at_utc,
    finished: row.finished === 1,
    voided: row.voided === 1,
    flagged: row.flagged === 1,
  }
}
