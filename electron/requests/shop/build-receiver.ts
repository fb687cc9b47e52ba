import { heldAt } from '../../../core/builds/index.ts'
import { done, problem, type Outcome, type Problem } from '../../../core/problem/index.ts'
import {
  eventsIn,
  firstBroken,
  follows,
  mentionsIn,
  numberWord,
  type BuildOrigin,
  type BuildRow,
  type KeptSpec,
  type Store,
} from '../../store/index.ts'
import {
  lineToGoOnWith,
  wholeLines,
  type Fork,
  type ShopArchive,
  type ShopBuild,
  type ShopEntry,
} from '../../shop/index.ts'
import { keepUnderEarlierRules } from '../exchange/earlier-rules.ts'
import { readExport, writeExport } from '../exchange/export-file.ts'
import { specNamedBy } from '../exchange/export-specs.ts'
import type { OpenBuildCache } from '../open-build-cache.ts'
import { openBuild } from '../open-build.ts'

/**
 * Takes into the record here what other benches have sent to the archive. What follows the entries here is added to them; what does not is
 * kept beside them as another line. A build that comes for the first time is held against the rules, like one that comes in a file.
 */
export class BuildReceiver {
  readonly #store: Store
  readonly #openBuilds: OpenBuildCache
  readonly #archive: ShopArchive
  readonly #bench: string
  readonly #nameOf: (bench: string) => string
  readonly #now: () => Date

  constructor(services: {
    readonly store: Store
    readonly openBuilds: OpenBuildCache
    readonly archive: ShopArchive
    readonly bench: string
    readonly nameOf: (bench: string) => string
    readonly now: () => Date
  }) {
    this.#store = services.store
    this.#openBuilds = services.openBuilds
    this.#archive = services.archive
    this.#bench = services.bench
    this.#nameOf = services.nameOf
    this.#now = services.now
  }

  /** Whether anything new is here now. */
  async take(row: ShopBuild): Promise<Outcome<boolean>> {
    const forks = await this.#archive.forks(row.id)
    if (!forks.ok) return forks
    if (forks.value.length > 0) return this.#takeParted(row, forks.value)
    if (this.#store.build(row.id) !== null) return this.#takeMore(row)
    const entries = await this.#archive.entries(row.id)
    return entries.ok ? this.#takeFirst(row, entries.value) : entries
  }

  async #takeFirst(row: ShopBuild, entries: readonly ShopEntry[]): Promise<Outcome<boolean>> {
    const { id: build, year, ordinal } = row
    const broken = firstBroken(build, entries)
    if (broken !== null) return this.#altered(row, broken)
    const [first] = entries
    const specs = await this.#specsNamed(entries)
    if (!specs.ok) return specs
    if (first === undefined || specs.value.length === 0) return done(false)
    const texts = specs.value.map(({ text }) => text)
    const read = await readExport(writeExport(build, texts, entries, () => null))
    if (!read.ok) return this.#refused(build, read.problem)
    const { events, allowedOnce } = read.value
    const photos = await this.#takePhotos(events)
    if (!photos.ok) return photos
    // Noted before the entries are there, as in an import.
    if (allowedOnce !== null) keepUnderEarlierRules(this.#store, build, allowedOnce)
    const begun: BuildOrigin | null =
      first.bench === this.#bench
        ? null
        : { bench: this.#benchNamed(first.bench), number: `${year}-${numberWord(ordinal)}` }
    const atShop = { sent: entries.length, begun, asOf: this.#now().toISOString(), refused: null }
    const mentions = events.flatMap((entry) => {
      const { spec, namesOf } = heldAt(read.value.specs, entry.seq)
      return mentionsIn(spec, namesOf, [entry])
    })
    const added = this.#store.importEntries(
      build,
      { entries: read.value.entries, events, mentions, atShop },
      specs.value,
    )
    return added.ok ? done(true) : added
  }

  async #specsNamed(entries: readonly ShopEntry[]): Promise<Outcome<readonly KeptSpec[]>> {
    const specs: KeptSpec[] = []
    for (const hash of specsIn(entries)) {
      const spec = await this.#archive.spec(hash)
      if (!spec.ok) return spec
      if (spec.value !== null) specs.push(spec.value)
    }
    return done(specs)
  }

  async #takeMore(row: ShopBuild): Promise<Outcome<boolean>> {
    const { id: build } = row
    const here = this.#store.build(build)
    if (here === null) return done(false)
    if (here.entries >= row.entries) {
      const [mine] = this.#store.entriesAfter(build, row.entries - 1, 1)
      return mine?.sha256 === row.headSha256 ? done(false) : this.#takeOther(row)
    }
    const entries = await this.#archive.entries(build, here.entries)
    if (!entries.ok) return entries
    let previous = here.head_sha256
    for (const [index, entry] of entries.value.entries()) {
      if (!follows(build, here.entries + index + 1, previous, entry)) return this.#takeOther(row)
      previous = entry.sha256
    }
    return this.#add(row, here, entries.value)
  }

  /** Adds what follows the entries here. */
  async #add(row: ShopBuild, here: BuildRow, entries: readonly ShopEntry[]): Promise<Outcome<boolean>> {
    const { id: build } = here
    const specs = await this.#specsNamed(entries)
    if (!specs.ok) return specs
    const events = eventsIn(entries)
    const photos = await this.#takePhotos(events)
    if (!photos.ok) return photos
    // A confirmation here may have been sooner: then these are another line, and it is looked at again.
    const now = this.#store.build(build)
    if (now?.head_sha256 !== here.head_sha256) return this.#takeOther(row)
    const cached = this.#openBuilds.known(build)
    const opened = cached === null ? openBuild(this.#store, build) : done(cached)
    if (!opened.ok) return opened
    const { spec, namesOf } = opened.value
    const mentions = mentionsIn(spec, namesOf, events)
    const added = this.#store.importEntries(
      build,
      {
        ...{ entries, events, mentions },
        atShop: { sent: here.entries + entries.length, asOf: this.#now().toISOString(), refused: null },
      },
      specs.value,
    )
    if (!added.ok) return added
    const isByOneSpec = specs.value.length === 0
    if (cached !== null && isByOneSpec && events.length === entries.length)
      this.#openBuilds.advance(build, cached, events, mentions)
    else this.#openBuilds.drop(build)
    return done(true)
  }

  /** The archive’s own line of a build is another than here, and what was confirmed here is not there yet. */
  async #takeOther(row: ShopBuild): Promise<Outcome<boolean>> {
    const theirs = await this.#archive.entries(row.id)
    if (!theirs.ok) return theirs
    const broken = firstBroken(row.id, theirs.value)
    return broken === null ? done(this.#keepWhatParts(row.id, theirs.value)) : this.#altered(row, broken)
  }

  /** Goes on here with the line that counts of those that go on from the entries here; the others are kept beside. */
  async #takeParted(row: ShopBuild, forks: readonly Fork[]): Promise<Outcome<boolean>> {
    const { id: build } = row
    const own = await this.#archive.entries(build)
    if (!own.ok) return own
    const lines = wholeLines(own.value, forks)
    const broken = lines.map((line) => firstBroken(build, line)).find((entry) => entry !== null)
    if (broken !== undefined) return this.#altered(row, broken)
    const here = this.#store.build(build)
    const next = lineToGoOnWith(lines, here)
    const added =
      next === null
        ? done(false)
        : await (here === null ? this.#takeFirst(row, next) : this.#add(row, here, next.slice(here.entries)))
    if (!added.ok) return added
    const kept = lines.map((line) => this.#keepWhatParts(build, line))
    return done(added.value || kept.includes(true))
  }

  /** Keeps beside what of a whole line is another than here. */
  #keepWhatParts(build: string, line: readonly ShopEntry[]): boolean {
    const ours = this.#store.entries(build)
    const parting = line.findIndex(({ sha256 }, at) => ours[at]?.sha256 !== sha256)
    return parting >= 0 && ours[parting] !== undefined && this.#keepLine(build, line.slice(parting))
  }

  #keepLine(build: string, entries: readonly ShopEntry[]): boolean {
    const [first] = entries
    if (first === undefined) return false
    const known = this.#store.shop.lines(build).find(({ line }) => line === first.sha256)
    if (known?.entries.length === entries.length) return false
    this.#store.shop.keepLine(build, { line: first.sha256, bench: first.bench, entries })
    return true
  }

  async #takePhotos(events: ReturnType<typeof eventsIn>): Promise<Outcome<null>> {
    for (const { event } of events) {
      if (event.type !== 'photo-added' || this.#store.photos.stateOf(event.photo.sha256) === 'good') continue
      const photo = await this.#archive.photo(event.photo.sha256)
      if (!photo.ok) return photo
      const kept = photo.value === null ? done(null) : this.#store.keepPhotos([photo.value])
      if (!kept.ok) return kept
    }
    return done(null)
  }

  #benchNamed(id: string) {
    return { id, name: this.#nameOf(id) }
  }

  /** What the archive has is not what a bench recorded: nothing of it is believed. */
  #altered({ id: build, name }: ShopBuild, entry: number): Outcome<boolean> {
    return this.#refused(build, problem('shop-build-altered', { name, entry }))
  }

  #refused(build: string, why: Problem): Outcome<boolean> {
    this.#store.shop.keep(build, { refused: why })
    return done(true)
  }
}

/** The specs that entries name, the first one first; those of a build's later entries may be none. */
function specsIn(entries: readonly ShopEntry[]): readonly string[] {
  return entries.flatMap(({ body }) => {
    if (!body.includes('"specSha256"')) return []
    const { event } = JSON.parse(body) as { readonly event: unknown }
    return specNamedBy(event) ?? []
  })
}
