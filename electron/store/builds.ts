import { searchWords } from '../../core/builds/index.ts'
import type { Mention, RecordedEvent } from '../../core/builds/index.ts'
import { markOf } from './listing.ts'
import { readBegun } from './shop.ts'
import { writeStanding, type KeptStanding } from './standings.ts'
import type { Database, Statement } from './file/sqlite.ts'

/** One line of the list of builds. */
export interface BuildRow {
  readonly id: string
  readonly year: number
  /** 1, 2, 3 … within the year, on this bench. */
  readonly ordinal: number
  readonly name: string
  readonly serial: string
  readonly engine: string
  readonly demo: 0 | 1
  readonly spec_sha256: string
  readonly started_at_utc: string
  readonly last_at_utc: string
  readonly finished: 0 | 1
  readonly voided: 0 | 1
  /** Whether anything in it was ever flagged, answered or not. */
  readonly flagged: 0 | 1
  readonly entries: number
  readonly head_sha256: string
  /** Where it stood when a list last showed it: see `readStanding`. */
  readonly standing: string | null
  /** JSON: where it was begun, if at another bench of the shop: see `readBegun`. */
  readonly begun_json: string | null
}

type EngineOf = Pick<BuildRow, 'engine' | 'demo'>
type BareRow = Omit<BuildRow, keyof EngineOf>

/** What is looked for among the builds; what is absent does not narrow the search. */
export interface Search {
  /** As `typedWords` writes them; each must be the beginning of a word of the build. */
  readonly words?: readonly string[] | undefined
  /** What the words must be about. */
  readonly kind?: Mention['kind'] | 'number' | undefined
  /** For a word, the specs whose engine is called so in some language: their builds are found by it too. */
  readonly called?: ((word: string) => readonly string[]) | undefined
  /** UTC, ISO 8601: started at or after `from` and before `to`. */
  readonly from?: string | undefined
  readonly to?: string | undefined
  readonly state?: 'open' | 'finished' | 'voided' | 'flagged' | undefined
  /** Older than this build. */
  readonly before?: string | undefined
  /** Begun after this build. */
  readonly after?: string | undefined
  readonly most?: number | undefined
}

const lastCharacter = '\u{10FFFF}'

const inState: { readonly [State in NonNullable<Search['state']>]: string } = {
  open: 'finished = 0 AND voided = 0',
  finished: 'finished = 1 AND voided = 0',
  voided: 'voided = 1',
  flagged: 'flagged = 1',
}

/** `ids` is a list of ids as SQL; the last entry of each build says how far it has come. */
function linesOf(ids: string): string {
  return `
    SELECT b.*, (SELECT begun_json FROM shop_build WHERE shop_build.build = b.id) AS begun_json, coalesce(last.seq, 0) AS entries, coalesce(last.sha256, '') AS head_sha256,
      coalesce(CASE WHEN json_valid(last.body) THEN json_extract(last.body, '$.at') END, b.started_at_utc) AS last_at_utc
    FROM (${ids}) AS page
    CROSS JOIN build AS b ON b.id = page.id
    LEFT JOIN event AS last ON last.build = b.id
      AND last.seq = (SELECT max(e.seq) FROM event AS e WHERE e.build = b.id)
    ORDER BY b.id DESC`
}

/** The list of builds and the words they are found by: read off the events, in the transaction that adds them. */
export function buildsOn(db: Database) {
  const count = db.prepare<[], number>('SELECT count(*) FROM build').pluck()
  const last = db.prepare<[], string | null>('SELECT max(id) FROM build').pluck()
  const one = db.prepare<[string], BareRow>(linesOf('SELECT ? AS id'))
  const readEngine = db.prepare<[string], EngineOf>('SELECT engine, demo FROM spec WHERE sha256 = ?')
  /** By the hash of the spec, which is never changed. Its row is as long as its text, and slow to read past that. */
  const engines = new Map<string, EngineOf>()

  function withEngine(row: BareRow): BuildRow {
    const engine = engines.get(row.spec_sha256) ?? readEngine.get(row.spec_sha256) ?? { engine: '', demo: 0 }
    engines.set(row.spec_sha256, engine)
    return { ...row, ...engine }
  }

  /** By the SQL of the ids; to prepare one takes longer than to carry it out. */
  const searches = new Map<string, Statement<unknown[], BareRow>>()
  const insert = db.prepare(`
    INSERT INTO build (id, year, ordinal, name, serial, spec_sha256, started_at_utc, finished)
    VALUES (
      @id, @year, (SELECT coalesce(max(ordinal), 0) + 1 FROM build WHERE year = @year), @name, @serial, @sha256, @at, 0
    )`)
  const number = db.prepare<[string], { year: number; ordinal: number; begun_json: string | null }>(
    'SELECT year, ordinal, begun_json FROM build LEFT JOIN shop_build ON build = id WHERE id = ?',
  )
  const mention = db.prepare(
    'INSERT INTO mention (word, kind, build) VALUES (?, ?, ?) ON CONFLICT DO NOTHING',
  )
  const marks = {
    finished: db.prepare('UPDATE build SET finished = 1 WHERE id = ?'),
    voided: db.prepare('UPDATE build SET voided = 1 WHERE id = ?'),
    flagged: db.prepare('UPDATE build SET flagged = 1 WHERE id = ? AND flagged = 0'),
  }

  /** What a build is found by: its number, what became of it, the words of its entries. Twice does no harm. */
  function note(
    build: string,
    entries: readonly Pick<RecordedEvent, 'event'>[],
    mentions: readonly Mention[],
  ): void {
    for (const { event } of entries) {
      const mark = markOf(event)
      if (mark !== null) marks[mark].run(build)
      if (event.type !== 'build-started') continue
      const row = number.get(build)
      if (row === undefined) continue
      for (const word of searchWords(numberOf(row))) mention.run(word, 'number', build)
    }
    for (const { kind, word } of mentions) mention.run(word, kind, build)
  }

  const keepStanding = db.prepare('UPDATE build SET standing = ? WHERE id = ?')

  return {
    /** Where builds stand, in the transaction of the caller. */
    keepStandings: (kept: readonly KeptStanding[]): void => {
      for (const each of kept) keepStanding.run(writeStanding(each), each.build)
    },
    one: (id: string): BuildRow | null => {
      const row = one.get(id)
      return row === undefined ? null : withEngine(row)
    },
    count: () => count.get() ?? 0,
    last: () => last.get() ?? null,
    find: (search: Search = {}): readonly BuildRow[] => {
      const { sql, values } = pageOf(search)
      const lines = searches.get(sql) ?? db.prepare<unknown[], BareRow>(linesOf(sql))
      searches.set(sql, lines)
      return lines.all(...values).map(withEngine)
    },
    /** Takes in entries just added to `build`, in order, and the words they add to it. */
    follow(
      build: string,
      added: readonly Pick<RecordedEvent, 'event' | 'at'>[],
      mentions: readonly Mention[],
    ): void {
      for (const { event, at } of added)
        if (event.type === 'build-started') {
          const { name, serial, specSha256: sha256 } = event
          insert.run({ id: build, year: Number(at.slice(0, 4)), name, serial, sha256, at })
        }
      note(build, added, mentions)
    },
    note,
  }
}

export type Builds = ReturnType<typeof buildsOn>

/** What people call a build: `2026-014`, as the bench counted it that began it. */
export function numberOf(row: Pick<BuildRow, 'year' | 'ordinal' | 'begun_json'>): string {
  return readBegun(row.begun_json)?.number ?? `${row.year}-${numberWord(row.ordinal)}`
}

/** How the number within the year is written, and searched for. */
export function numberWord(ordinal: number): string {
  return String(ordinal).padStart(3, '0')
}

/** The ids that a search finds, as SQL and its values. */
function pageOf({ words = [], kind, called, from, to, state, before, after, most = -1 }: Search): {
  sql: string
  values: unknown[]
} {
  const conditions: string[] = []
  const values: unknown[] = []
  const narrow = (condition: string, ...its: readonly unknown[]) => {
    conditions.push(condition)
    values.push(...its)
  }
  if (before !== undefined) narrow('id < ?', before)
  if (after !== undefined) narrow('id > ?', after)
  if (from !== undefined) narrow('started_at_utc >= ?', from)
  if (to !== undefined) narrow('started_at_utc < ?', to)
  if (state !== undefined) narrow(inState[state])
  // The longest word narrows most: its builds are looked up, and each is asked for the other words.
  const [longest, ...others] = words.toSorted((a, b) => b.length - a.length)
  const boundsOf = (word: string): readonly string[] => [
    word,
    word + lastCharacter,
    ...(kind === undefined ? [] : [kind]),
  ]
  const matches = `word >= ? AND word < ?${kind === undefined ? '' : ' AND kind = ?'}`
  const narrowBy = (word: string, condition: string) => {
    const specs = kind === undefined || kind === 'engine' ? (called?.(word) ?? []) : []
    const orCalled = specs.length === 0 ? '' : ` OR spec_sha256 IN (${specs.map(() => '?').join(', ')})`
    narrow(`(${condition}${orCalled})`, ...boundsOf(word), ...specs)
  }
  if (longest !== undefined) narrowBy(longest, `id IN (SELECT build FROM mention WHERE ${matches})`)
  for (const word of others)
    narrowBy(word, `EXISTS (SELECT 1 FROM mention WHERE mention.build = build.id AND ${matches})`)
  const where = conditions.length === 0 ? '' : `WHERE ${conditions.join(' AND ')}`
  // Written out: SQLite plans a statement again each time that a LIMIT is bound, which takes longer than the search.
  return { sql: `SELECT id FROM build ${where} ORDER BY id DESC LIMIT ${most}`, values }
}
