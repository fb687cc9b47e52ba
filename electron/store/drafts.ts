import { done, refused, type Outcome } from '../../core/problem/index.ts'
import type { Database, Write } from './file/sqlite.ts'

/** A draft as it was begun. */
export interface DraftRow {
  readonly id: string
  readonly engine: string
  readonly revision: number
  readonly base: string
  readonly begun_by: string
  readonly begun_at_utc: string
}

/** One entry of a draft, as it lies there. */
export interface KeptEntry {
  readonly seq: number
  readonly at_utc: string
  readonly person: string
  readonly event_json: string
}

/** Specs while they are written: begun once, then entries that are only ever added. */
export function draftsOn(db: Database, write: Write) {
  const all = db.prepare<[], DraftRow>('SELECT * FROM draft ORDER BY id DESC')
  const one = db.prepare<[string], DraftRow>('SELECT * FROM draft WHERE id = ?')
  const begin = db.prepare(`
    INSERT INTO draft (id, engine, revision, base, begun_by, begun_at_utc)
    VALUES (@id, @engine, @revision, @base, @begun_by, @begun_at_utc)`)
  const entries = db.prepare<[string], KeptEntry>(
    'SELECT seq, at_utc, person, event_json FROM draft_entry WHERE draft = ? ORDER BY seq',
  )
  const last = db
    .prepare<[string], number>('SELECT coalesce(max(seq), 0) FROM draft_entry WHERE draft = ?')
    .pluck()
  const add = db.prepare('INSERT INTO draft_entry VALUES (@draft, @seq, @at_utc, @person, @event_json)')

  /** In the transaction of the caller. Refuses `draft-moved-on` where the entry before is not the last one. */
  function insert(draft: string, entry: KeptEntry): Outcome<null> {
    const found = last.get(draft) ?? 0
    if (found !== entry.seq - 1) return refused('draft-moved-on', { last: found }, 'after')
    add.run({ draft, ...entry })
    return done(null)
  }
  const append = db.transaction(insert)

  return {
    /** The one begun last first. */
    all: (): readonly DraftRow[] => all.all(),
    one: (id: string): DraftRow | null => one.get(id) ?? null,
    entries: (draft: string): readonly KeptEntry[] => entries.all(draft),
    begin: (row: DraftRow): Outcome<null> =>
      write(() => {
        begin.run(row)
        return done(null)
      }),
    append: (draft: string, entry: KeptEntry): Outcome<null> => write(() => append.immediate(draft, entry)),
    insert,
  }
}

export type Drafts = ReturnType<typeof draftsOn>
