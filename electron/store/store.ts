import type { RecordedEvent } from '../../core/builds/index.ts'
import type { Outcome } from '../../core/problem/index.ts'
import { makeBackup } from './backups.ts'
import type { Backup } from './backups.ts'
import { buildsOn } from './builds.ts'
import type { BuildRow, Search } from './builds.ts'
import type { StoredEntry } from './chain.ts'
import { entriesOn } from './entries.ts'
import type { Addition, ImportedEntries } from './entries.ts'
import { peopleOn } from './people.ts'
import type { PersonRow } from './people.ts'
import { preferencesOn } from './preferences.ts'
import type { Database } from './sqlite.ts'
import { specsOn } from './specs.ts'
import type { KeptSpec } from './specs.ts'
import { verifyChain } from './verify-chain.ts'
import type { ChainVerification, VerifyOptions } from './verify-chain.ts'

/** The record of one bench. Everything is synchronous, so that a transaction is over when its function returns. */
export interface Store {
  readonly file: string
  /** Keeps the spec and adds the first entry of a build, which must be `build-started`. */
  start(addition: Addition, spec: KeptSpec): Outcome<readonly RecordedEvent[]>
  append(addition: Addition): Outcome<readonly RecordedEvent[]>
  /** In order; empty for a build that is not there. */
  entries(build: string): readonly StoredEntry[]
  /** Adds entries after the last one of the build here. That they belong there is for the caller to have checked. */
  importEntries(build: string, imported: ImportedEntries, spec: KeptSpec): Outcome<null>
  /** The one started last comes first: ids grow with time. */
  builds(search?: Search): readonly BuildRow[]
  countBuilds(): number
  build(id: string): BuildRow | null
  /** By the hash of the text. */
  specText(sha256: string): string | null
  /** By name, each as it was kept. */
  preferences(): Readonly<Record<string, unknown>>
  people(): readonly PersonRow[]
  /** Adds a person, or puts this in the place of the one with the id. */
  keepPerson(person: PersonRow): Outcome<null>
  removePerson(id: string): Outcome<null>
  keepPreferences(change: Readonly<Record<string, unknown>>): Outcome<null>
  /** Copies the record, checks the copy, and gives it its name; null when it was stopped. */
  backUp(folder: string, at: Date, signal: AbortSignal): Promise<Outcome<Backup | null>>
  /** Follows the chains; null when it was stopped. */
  verify(options: VerifyOptions): Promise<ChainVerification | null>
  /** Brings what stands in the log beside the record into the record itself. What was confirmed is on disk without it. */
  flush(): void
  close(): void
}

export function storeOn(db: Database, file: string): Store {
  const specs = specsOn(db)
  const builds = buildsOn(db)
  const { start, append, importEntries, entries } = entriesOn(db, specs, builds)
  const people = peopleOn(db)
  const preferences = preferencesOn(db)
  return {
    file,
    start,
    append,
    importEntries,
    entries,
    builds: builds.find,
    countBuilds: builds.count,
    build: builds.one,
    specText: specs.text,
    preferences: preferences.all,
    keepPreferences: preferences.keep,
    people: people.all,
    keepPerson: people.keep,
    removePerson: people.remove,
    backUp: (folder, at, signal) => makeBackup(db, folder, at, signal),
    verify: (options) => verifyChain(db, options),
    flush: () => void db.pragma('wal_checkpoint(TRUNCATE)'),
    close: () => db.close(),
  }
}
