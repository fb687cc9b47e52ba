import type { RecordedEvent } from '../../core/builds/index.ts'
import { done, type Outcome, type Problem } from '../../core/problem/index.ts'
import { makeBackup } from './backups/backups.ts'
import type { Backup, BackupPlace } from './backups/backups.ts'
import { benchOf } from './bench.ts'
import { buildsOn } from './builds.ts'
import type { BuildRow, Search } from './builds.ts'
import type { KeptStanding } from './standings.ts'
import type { StoredEntry } from './chain/chain.ts'
import { commonListsOn } from './common-lists.ts'
import type { CommonLists } from './common-lists.ts'
import { draftsOn } from './drafts.ts'
import type { Drafts } from './drafts.ts'
import { libraryOn } from './library.ts'
import type { Library } from './library.ts'
import { entriesOn } from './entries.ts'
import type { Addition, ImportedEntries } from './entries.ts'
import { watchFiles } from './file/file-watch.ts'
import { entryOfCode } from './chain/heads.ts'
import { rebuildLists } from './lists.ts'
import { practiceOn } from './practice.ts'
import type { RoundRow } from './practice.ts'
import { peopleOn } from './people.ts'
import type { PersonRow } from './people.ts'
import { photosOn } from './photos.ts'
import type { Photos } from './photos.ts'
import { picturesOn } from './pictures.ts'
import type { Pictures } from './pictures.ts'
import { preferencesOn } from './preferences.ts'
import { writerOn } from './file/sqlite.ts'
import type { Database } from './file/sqlite.ts'
import { shopOn } from './shop.ts'
import type { ShopMarks } from './shop.ts'
import { specsOn } from './specs.ts'
import type { KeptSpec } from './specs.ts'
import { verifyChain } from './chain/verify-chain.ts'
import type { ChainVerification, VerifyOptions } from './chain/verify-chain.ts'
import { witnessesOn } from './chain/witnesses.ts'
import type { Witness } from './chain/witnesses.ts'

/** The record of one bench. Everything is synchronous, so that a transaction is over when its function returns. */
export interface Store {
  readonly file: string
  /** The bench whose record it is: 12 hexadecimal digits. */
  readonly bench: string
  /** Why nothing can be kept any more: the file was taken away under the program. Null while all is well. */
  problem(): Problem | null
  /** Keeps the spec and adds the first entry of a build, which must be `build-started`. */
  start(addition: Addition, spec: KeptSpec): Outcome<readonly RecordedEvent[]>
  append(addition: Addition): Outcome<readonly RecordedEvent[]>
  /** In order; empty for a build that is not there. */
  entries(build: string): readonly StoredEntry[]
  /** Those with a number past `after`, in order. */
  entriesAfter(build: string, after: number, most: number): readonly StoredEntry[]
  /** Adds entries after the last one of the build here. That they belong there is for the caller to have checked. */
  importEntries(build: string, imported: ImportedEntries, kept: readonly KeptSpec[]): Outcome<null>
  /** The one started last comes first: ids grow with time. */
  builds(search?: Search): readonly BuildRow[]
  countBuilds(): number
  /** Keeps where builds stand beside them. What was confirmed does not depend on it. */
  keepStandings(kept: readonly KeptStanding[]): Outcome<null>
  /** The last in the order of ids; null for none. */
  lastBuild(): string | null
  /** Makes the list of builds again from the entries; answers how many rows were not as they should be. */
  rebuildLists(): Outcome<number>
  /** Heads that were given out. */
  witnesses(): readonly Witness[]
  keepWitness(witness: Witness): Outcome<null>
  build(id: string): BuildRow | null
  /** The entry whose hash begins with these 16 digits; null for none. */
  entryOfCode(code: string): ReturnType<typeof entryOfCode>
  readonly photos: Pick<Photos, 'bytes' | 'stateOf' | 'count'>
  /** Keeps photos that entries name, and puts right those that were damaged. */
  keepPhotos(photos: readonly Uint8Array[]): Outcome<null>
  /** Specs while they are written. */
  readonly drafts: Omit<Drafts, 'insert'>
  /** The manual's pictures under their drawings. */
  readonly pictures: Pictures
  /** What lies between this record and the archive of the shop. */
  readonly shop: Omit<ShopMarks, 'note'>
  /** What was said last of each item of the lists that all benches of the shop have in common. */
  readonly lists: CommonLists
  /** Published revisions of engines. */
  readonly library: Library
  /** By the hash of the text. */
  specText(sha256: string): string | null
  /** Of every spec that a build ever rested on. */
  specHashes(): readonly string[]
  /** By name, each as it was kept. */
  preferences(): Readonly<Record<string, unknown>>
  people(): readonly PersonRow[]
  /** Adds a person, or puts this in the place of the one with the id. */
  keepPerson(person: PersonRow): Outcome<null>
  /** Removes what the person practised with them. */
  removePerson(id: string): Outcome<null>
  /** What somebody practised, in the order in which it was done. */
  practised(person: string): readonly RoundRow[]
  keepRound(person: string, round: RoundRow): Outcome<null>
  /** By engine, how many rounds of each drill without an error the shop wants before a person leads a build. */
  practiceMinimums(): Readonly<Record<string, number>>
  /** 0 takes it away. */
  keepPracticeMinimum(engine: string, rounds: number): Outcome<null>
  keepPreferences(change: Readonly<Record<string, unknown>>): Outcome<null>
  /** Copies the record, checks the copy, and gives it its name; null when it was stopped. */
  backUp(place: BackupPlace): Promise<Outcome<Backup | null>>
  /** Follows the chains; null when it was stopped. */
  verify(options: VerifyOptions): Promise<ChainVerification | null>
  /** Brings what stands in the log beside the record into the record itself. What was confirmed is on disk without it. */
  flush(): void
  close(): void
}

export function storeOn(db: Database, file: string): Store {
  const watch = watchFiles(file)
  const write = writerOn(watch)
  const specs = specsOn(db)
  const builds = buildsOn(db)
  const photos = photosOn(db)
  const shop = shopOn(db, write)
  const keepPhotos = db.transaction((some: readonly Uint8Array[]) =>
    some.forEach((bytes) => photos.keep(bytes)),
  )
  const { start, append, importEntries, entries, entriesAfter } = entriesOn(db, write, {
    specs,
    builds,
    photos,
    shop,
  })
  const drafts = draftsOn(db, write)
  const library = libraryOn(db, write, { specs, drafts })
  const people = peopleOn(db, write)
  const practice = practiceOn(db, write)
  const preferences = preferencesOn(db, write)
  const witnesses = witnessesOn(db)
  const rebuild = db.transaction(() => rebuildLists(db))
  const keepStandings = db.transaction(builds.keepStandings)
  return {
    file,
    bench: benchOf(db),
    problem: watch,
    start,
    append,
    importEntries,
    entries,
    entriesAfter,
    builds: builds.find,
    countBuilds: builds.count,
    keepStandings: (kept) =>
      write(() => {
        keepStandings.immediate(kept)
        return done(null)
      }),
    lastBuild: builds.last,
    build: builds.one,
    rebuildLists: () => write(() => done(rebuild.immediate())),
    witnesses: witnesses.all,
    keepWitness: (witness) =>
      write(() => {
        witnesses.keep(witness)
        return done(null)
      }),
    entryOfCode: (code) => entryOfCode(db, code),
    photos,
    keepPhotos: (some) =>
      write(() => {
        keepPhotos.immediate(some)
        return done(null)
      }),
    drafts,
    pictures: picturesOn(db, write),
    shop,
    lists: commonListsOn(db, write, { people, practice, preferences }),
    library,
    specText: specs.text,
    specHashes: specs.hashes,
    preferences: preferences.all,
    keepPreferences: preferences.keep,
    people: people.all,
    keepPerson: people.keep,
    removePerson: people.remove,
    practised: practice.of,
    keepRound: practice.keep,
    practiceMinimums: practice.minimums,
    keepPracticeMinimum: practice.keepMinimum,
    backUp: (place) => makeBackup(db, place),
    verify: (options) => verifyChain(db, options),
    flush: () => void db.pragma('wal_checkpoint(TRUNCATE)'),
    close: () => db.close(),
  }
}
