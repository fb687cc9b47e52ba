import type { Mention } from '../../core/builds/index.ts'
import type { Outcome, Problem } from '../../core/problem/index.ts'
import type { KeptSpec, ListItem, ListName, Search, StoredEntry } from '../store/index.ts'

/**
 * The archive that the benches of a shop share. Entries are the only truth in it: they are added at the end of a build and
 * never changed. What the list says of a build is made from them by the bench that sends them, and may be made again.
 *
 * Nothing here is waited for by a confirmation: a bench's own record is on disk before anything is sent.
 * Each method is answered once, with a value or with the problem that kept it from one, and throws only at a bug.
 */
export interface ShopArchive {
  /** The shop: the name of its schema in the database. */
  readonly shop: string
  /** How it stands with the way to the archive, as far as the last question showed. */
  connection(): ShopConnection
  /** Says which bench is here, and keeps when. To be said after joining, and now and then while nothing is sent. */
  greet(bench: GreetingBench): Promise<Outcome<null>>
  /** Every bench that ever greeted, by name. */
  benches(): Promise<Outcome<readonly ShopBench[]>>
  /** Which of these specs and photos, each by its hash, are not in the archive yet. */
  lacking(hashes: Hashes): Promise<Outcome<Hashes>>
  /** Twice does no harm. */
  keepSpec(spec: KeptSpec): Promise<Outcome<null>>
  /** Twice does no harm. */
  keepPhoto(bytes: Uint8Array): Promise<Outcome<null>>
  /**
   * Adds entries of one build, all or none. What is there already is passed over, so that to send again does no harm.
   * Refused with `shop-spec-missing` where the spec of the build is not there, and with `shop-entry-refused` where the entries
   * do not follow one another or one is not what its hash was made of.
   */
  send(consignment: Consignment): Promise<Outcome<Receipt>>
  /** The one started last comes first. Photos and specs that are asked for by hash: null where there is none. */
  builds(search?: ShopSearch): Promise<Outcome<readonly ShopBuild[]>>
  build(id: string): Promise<Outcome<ShopBuild | null>>
  /** Those with a number past `after`, in order; all of them without it; none of a build that is not there. */
  entries(build: string, after?: number): Promise<Outcome<readonly ShopEntry[]>>
  spec(sha256: string): Promise<Outcome<KeptSpec | null>>
  photo(sha256: string): Promise<Outcome<Uint8Array | null>>
  /** Those of these builds that are there, in no order. */
  buildsOf(ids: readonly string[]): Promise<Outcome<readonly ShopBuild[]>>
  /** The change of the build that was added to last; 0 for an archive with none. */
  lastChange(): Promise<Outcome<number>>
  /** Builds to which something was added past this change, the earliest first, and no more than a few hundred at once. */
  changesAfter(change: number): Promise<Outcome<readonly ShopBuild[]>>
  /**
   * Tells of each build as something is added to it, past the change `after`; what was added while the way was cut comes
   * when it is open again, with the last state of each build; where that is too much, `skipped` is called in its place. Returns what ends it.
   */
  follow(after: number, listener: ShopListener): () => void
  /** Of one build, or of all. Settled ones too. */
  forks(build?: string): Promise<Outcome<readonly Fork[]>>
  /** Notes what people decided about a fork. Both branches stay as they are. */
  settle(fork: ForkName, settlement: Settlement): Promise<Outcome<null>>
  /** The lists that all benches have in common, as the owner of the shop chose. Any other is each bench's own. */
  commonLists(): Promise<Outcome<readonly ListName[]>>
  /** What was said last of each item, by its id; removed ones too. */
  listItems(list: ListName): Promise<Outcome<readonly ListItem[]>>
  /** Keeps what is said of each item where nothing later is known of it (`isLater`). Twice does no harm. */
  keepListItems(list: ListName, items: readonly ListItem[]): Promise<Outcome<null>>
  close(): Promise<void>
}

export type ShopConnection =
  | { readonly kind: 'untried' }
  | { readonly kind: 'open'; readonly sinceUtc: string }
  /** `sinceUtc`: when it was noticed. */
  | { readonly kind: 'cut'; readonly sinceUtc: string; readonly problem: Problem }

export interface ShopListener {
  /** A build as it stands now. */
  readonly added: (build: ShopBuild) => void
  /**
   * More was added than is announced, or the archive is not as far as it was, as after it was restored from a backup: what is followed is to be
   * asked for. What comes from now on is announced.
   */
  readonly skipped?: (why: 'many' | 'set-back') => void
  /** Something was said of an item of a list, or other lists are common now. */
  readonly lists?: () => void
  /** The way to the archive opened or was cut. */
  readonly connection: (connection: ShopConnection) => void
}

export interface GreetingBench {
  /** 12 hexadecimal digits: the bench that a record belongs to. */
  readonly id: string
  /** As people call it. */
  readonly name: string
  /** The version of its program. */
  readonly program: string
}

export interface ShopBench extends GreetingBench {
  /** When it last greeted or sent, by the clock of the server. */
  readonly seenAtUtc: string
}

export interface Hashes {
  readonly specs: readonly string[]
  readonly photos: readonly string[]
}

/** Entries of one build on their way to the archive. */
export interface Consignment {
  /** A UUID. The month in which the build was started is read off it. */
  readonly build: string
  /** The bench that sends them: 12 hexadecimal digits. */
  readonly bench: string
  /** At least one, numbered without a gap, each after the one before. */
  readonly entries: readonly StoredEntry[]
  /** What the list says of the build after the last of them. */
  readonly listed: ListedBuild
  /** The words that they add to those the build is found by. */
  readonly mentions: readonly Mention[]
  /**
   * Which line of the build counts, as far as its bench knows: the one that these go on with, or another. Null where there is one alone, and
   * where nobody settled it.
   */
  readonly counts: 'here' | 'there' | null
}

/** Whether the list is to say of a build what its bench says with these entries: a line that was left has no word in it. */
export function isListed({ counts }: Consignment, placed: 'kept' | 'fork'): boolean {
  return placed === 'kept' ? counts !== 'there' : counts === 'here'
}

/** What the list of builds says, made from the entries by the bench that sends them. */
export interface ListedBuild {
  /** The number of the build at the bench that started it. */
  readonly year: number
  readonly ordinal: number
  readonly name: string
  readonly serial: string
  readonly specSha256: string
  /** By the clock of the bench; UTC, ISO 8601. */
  readonly startedAtUtc: string
  readonly lastAtUtc: string
  readonly finished: boolean
  readonly voided: boolean
  readonly flagged: boolean
  /** The bench whose build it is. */
  readonly holder: string
  /** Where the build stands, as `writeStanding` writes it; null where that is not known. */
  readonly standing: string | null
}

export type Receipt =
  /** All entries up to this number are in the archive, on disk. */
  | { readonly kind: 'kept'; readonly upTo: number }
  /** Another entry was there under the number `at`. What was sent from that number on is kept beside it, as a fork. */
  | { readonly kind: 'fork'; readonly at: number }
  /** The archive lacks entries before these: send from this number on. */
  | { readonly kind: 'behind'; readonly from: number }

/** A line of the list of builds of the shop. */
export interface ShopBuild extends ListedBuild {
  readonly id: string
  readonly engine: string
  readonly demo: boolean
  readonly entries: number
  readonly headSha256: string
  /** The bench that sent the last entry, and when it came, by the clock of the server. */
  readonly bench: string
  readonly receivedAtUtc: string
  /** Whether it has a fork that nobody settled. */
  readonly forked: boolean
  /** Grows with each consignment to the shop; of two builds the one with the larger was changed later. */
  readonly change: number
}

/** An entry with the bench that sent it. */
export interface ShopEntry extends StoredEntry {
  readonly bench: string
}

/** As in the record of a bench, and by bench. `words`, `kind` and the rest mean what they mean there. */
export interface ShopSearch extends Omit<Search, 'state' | 'after'> {
  readonly state?: Search['state'] | 'forked'
  /** Whose build it is. */
  readonly holder?: string | undefined
}

/** A fork is called by its build, the number of its first entry and that entry’s hash. */
export interface ForkName {
  readonly build: string
  readonly at: number
  readonly sha256: string
}

export interface Fork extends ForkName {
  /** Entries that were sent under numbers that were taken, in order. */
  readonly entries: readonly ShopEntry[]
  readonly settled: (Settlement & { readonly atUtc: string }) | null
}

export interface Settlement {
  readonly bench: string
  readonly person: string
  readonly reason: string
}
