import { z } from 'zod'
import { benchName, type BenchName } from '../../core/builds/index.ts'
import { done, type Outcome, type Problem } from '../../core/problem/index.ts'
import type { StoredEntry } from './chain/chain.ts'
import type { Database, Write } from './file/sqlite.ts'

const begun = z.strictObject({ bench: benchName, number: z.string() })
/** Where a build was begun that came from another bench of the shop, and what it is called there, as `2026-014`. */
export type BuildOrigin = z.output<typeof begun>

/** What the archive of the shop has of a build, as far as this bench knows. */
export interface AtShop {
  /** The entries up to this one, as they are here. */
  readonly sent: number
  readonly begun: BuildOrigin | null
  /** UTC, ISO 8601: when the archive last had something to say of it. */
  readonly asOf: string | null
  /** Why the archive did not take it. */
  readonly refused: Problem | null
}

/** What another bench recorded under numbers that have another entry here. */
export interface KeptLine {
  /** The hash of its first entry. */
  readonly line: string
  /** The bench that made it: 12 hexadecimal digits. */
  readonly bench: string
  readonly entries: readonly StoredEntry[]
}

/** Entries of a build that the archive does not have yet. */
export interface UnsentEntries {
  readonly build: string
  /** The first and the last of them. */
  readonly from: number
  readonly to: number
}

/** Null for a build that was begun here, and where it cannot be read. */
export function readBegun(json: string | null): BuildOrigin | null {
  const read = begun.safeParse(jsonIn(json))
  return read.success ? read.data : null
}

interface Row {
  readonly sent: number
  readonly begun_json: string | null
  readonly as_of_utc: string | null
  readonly refused_json: string | null
}

const unknown: AtShop = { sent: 0, begun: null, asOf: null, refused: null }

/** What lies between this record and the archive of the shop. */
export function shopOn(db: Database, write: Write) {
  const read = db.prepare<[string], Row>(
    'SELECT sent, begun_json, as_of_utc, refused_json FROM shop_build WHERE build = ?',
  )
  const keep = db.prepare(`
    INSERT INTO shop_build (build, sent, begun_json, as_of_utc, refused_json)
    VALUES (@build, @sent, @begun, @asOf, @refused)
    ON CONFLICT DO UPDATE SET sent = @sent, begun_json = @begun, as_of_utc = @asOf, refused_json = @refused`)
  const forget = db.prepare('UPDATE shop_build SET sent = 0, refused_json = NULL')
  const waiting = db.prepare<[], UnsentEntries>(`
    SELECT id AS build, sent + 1 AS "from", last AS "to" FROM (
      SELECT b.id, coalesce(s.sent, 0) AS sent,
        (SELECT max(seq) FROM event WHERE event.build = b.id) AS last
      FROM build AS b LEFT JOIN shop_build AS s ON s.build = b.id
    ) WHERE last > sent ORDER BY id`)
  const refused = db
    .prepare<[], string>('SELECT build FROM shop_build WHERE refused_json IS NOT NULL ORDER BY build')
    .pluck()
  const parted = db.prepare<[], string>('SELECT DISTINCT build FROM shop_line ORDER BY build').pluck()
  const lines = db.prepare<[string], StoredEntry & { line: string; bench: string }>(
    'SELECT line, bench, seq, body, sha256 FROM shop_line WHERE build = ? ORDER BY line, seq',
  )
  const insert = db.prepare(`
    INSERT INTO shop_line (build, line, seq, body, sha256, bench)
    VALUES (@build, @line, @seq, @body, @sha256, @bench) ON CONFLICT DO NOTHING`)

  /** In the transaction of the caller. */
  function note(build: string, change: Partial<AtShop>): void {
    const { sent, begun, asOf, refused } = { ...of(build), ...change }
    keep.run({
      ...{ build, sent, asOf },
      begun: begun === null ? null : JSON.stringify(begun),
      refused: refused === null ? null : JSON.stringify(refused),
    })
  }

  function of(build: string): AtShop {
    const row = read.get(build)
    if (row === undefined) return unknown
    return {
      sent: row.sent,
      begun: readBegun(row.begun_json),
      asOf: row.as_of_utc,
      refused: jsonIn(row.refused_json) as Problem | null,
    }
  }

  const keepLine = db.transaction((build: string, { line, bench, entries }: KeptLine) => {
    for (const { seq, body, sha256 } of entries) insert.run({ build, line, bench, seq, body, sha256 })
  })

  const keepSent = db.transaction((sent: ReadonlyMap<string, number>) => {
    for (const [build, upTo] of sent) note(build, { sent: upTo })
  })

  const holder = db
    .prepare<[string], string>(`
    SELECT json_extract(body, '$.event.to') FROM event
    WHERE build = ? AND (body LIKE '%"build-handed-over"%' OR body LIKE '%"build-taken-over"%')
      AND json_extract(body, '$.event.type') IN ('build-handed-over', 'build-taken-over')
    ORDER BY seq DESC LIMIT 1`)
    .pluck()

  return {
    of,
    /** The bench that a build was last handed to, or that took it over; null where it never changed benches. */
    holder: (build: string): BenchName | null =>
      benchName
        .nullable()
        .catch(null)
        .parse(jsonIn(holder.get(build) ?? null)),
    note,
    /** Oldest build first. */
    waiting: (): readonly UnsentEntries[] => waiting.all(),
    /** Builds that the archive did not take. */
    refused: (): readonly string[] => refused.all(),
    /** Builds of which there is another line. */
    parted: (): readonly string[] => parted.all(),
    lines: (build: string): readonly KeptLine[] => {
      const rows = lines.all(build)
      return [...new Set(rows.map(({ line }) => line))].map((line) => {
        const of = rows.filter((row) => row.line === line)
        const entries = of.map(({ seq, body, sha256 }) => ({ seq, body, sha256 }))
        return { line, bench: of[0]?.bench ?? '', entries }
      })
    },
    /** What is there already stays. */
    keepLine: (build: string, line: KeptLine): Outcome<null> =>
      write(() => {
        keepLine.immediate(build, line)
        return done(null)
      }),
    keep: (build: string, change: Partial<AtShop>): Outcome<null> =>
      write(() => {
        note(build, change)
        return done(null)
      }),
    /** By build, how far the archive has it. */
    keepSent: (sent: ReadonlyMap<string, number>): Outcome<null> =>
      write(() => {
        keepSent.immediate(sent)
        return done(null)
      }),
    /** For another shop, to which all goes again. Where builds were begun is not forgotten. */
    forget: (): Outcome<null> =>
      write(() => {
        forget.run()
        return done(null)
      }),
  }
}

export type ShopMarks = ReturnType<typeof shopOn>

function jsonIn(text: string | null): unknown {
  try {
    return text === null ? null : (JSON.parse(text) as unknown)
  } catch {
    return null
  }
}
