import { done, refused, type Outcome } from '../../core/problem/index.ts'
import { sha256 } from './chain/chain.ts'
import type { Drafts, KeptEntry } from './drafts.ts'
import type { Database, Write } from './file/sqlite.ts'
import type { Specs } from './specs.ts'

/** A published revision of an engine. */
export interface LibraryRow {
  readonly engine: string
  /** 1, 2, 3 … on this bench. */
  readonly revision: number
  readonly sha256: string
  readonly published_at_utc: string
  readonly published_by: string
  readonly name: string
  readonly family: string
  readonly cylinders: number
  /** As the spec itself calls it. */
  readonly revision_name: string
  readonly entered_by: string
  readonly checked_by: string | null
}

/** A revision on its way into the library, with its text and, where it was a draft, that draft's last entry. */
export interface Publication {
  readonly row: Omit<LibraryRow, 'sha256'>
  readonly text: string
  readonly closes: { readonly draft: string; readonly entry: KeptEntry } | null
}

/** The specs of the shop: each revision is put in once and never changed. */
export function libraryOn(db: Database, write: Write, { specs, drafts }: { specs: Specs; drafts: Drafts }) {
  const latest = db.prepare<[], LibraryRow>(
    `SELECT * FROM library_spec AS one
     WHERE revision = (SELECT max(revision) FROM library_spec WHERE engine = one.engine) ORDER BY name, engine`,
  )
  const revisions = db.prepare<[string], LibraryRow>(
    'SELECT * FROM library_spec WHERE engine = ? ORDER BY revision DESC',
  )
  const last = db
    .prepare<[string], number>('SELECT coalesce(max(revision), 0) FROM library_spec WHERE engine = ?')
    .pluck()
  const uses = db.prepare<[], { sha256: string; builds: number }>(
    'SELECT spec_sha256 AS sha256, count(*) AS builds FROM build GROUP BY spec_sha256',
  )
  const insert = db.prepare(`
    INSERT INTO library_spec VALUES (@engine, @revision, @sha256, @published_at_utc, @published_by, @name, @family,
      @cylinders, @revision_name, @entered_by, @checked_by)`)
  const publish = db.transaction(({ row, text, closes }: Publication): Outcome<null> => {
    const before = last.get(row.engine) ?? 0
    if (before !== row.revision - 1) return refused('draft-overtaken', { revision: before })
    if (closes !== null) {
      const closed = drafts.insert(closes.draft, closes.entry)
      if (!closed.ok) return closed
    }
    specs.keep({ text, engine: row.name, demo: false })
    insert.run({ ...row, sha256: sha256(text) })
    return done(null)
  })
  return {
    /** The latest revision of each engine, by name. */
    latest: (): readonly LibraryRow[] => latest.all(),
    /** All revisions of an engine, the latest first. */
    revisions: (engine: string): readonly LibraryRow[] => revisions.all(engine),
    /** How many builds rest on each spec, by the hash of its text. */
    uses: (): ReadonlyMap<string, number> =>
      new Map(uses.all().map(({ sha256: hash, builds }) => [hash, builds])),
    publish: (publication: Publication): Outcome<null> => write(() => publish.immediate(publication)),
  }
}

export type Library = ReturnType<typeof libraryOn>
