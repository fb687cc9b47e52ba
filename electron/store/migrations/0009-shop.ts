/**
 * The ninth form: what the archive of the shop has of each build. What waits to go there is all that is past it, so that an entry is in
 * the queue by being in the record, and a confirmation writes nothing more than before.
 */
export const shop = {
  version: 9,
  sql: `
    CREATE TABLE shop_build (
      build TEXT NOT NULL PRIMARY KEY,
      -- The archive has the entries up to this one, as they are here.
      sent INTEGER NOT NULL CHECK (sent >= 0),
      -- JSON: the bench that began it and its number there. Null for one that was begun here, or came in a file.
      begun_json TEXT,
      -- When the archive last had something to say of it, by the clock of this bench; null before that.
      as_of_utc TEXT,
      -- JSON: the problem with which the archive refused it; null for none.
      refused_json TEXT
    ) STRICT, WITHOUT ROWID;

    -- What other benches recorded under numbers that have another entry here. Never a part of the build here.
    CREATE TABLE shop_line (
      build TEXT NOT NULL,
      -- The hash of the first of these entries.
      line TEXT NOT NULL,
      seq INTEGER NOT NULL CHECK (seq >= 1),
      body TEXT NOT NULL,
      sha256 TEXT NOT NULL,
      bench TEXT NOT NULL,
      PRIMARY KEY (build, line, seq)
    ) STRICT, WITHOUT ROWID;

    CREATE TRIGGER shop_line_is_not_changed BEFORE UPDATE ON shop_line
    BEGIN SELECT RAISE(ABORT, 'an entry is never changed'); END;

    CREATE TRIGGER shop_line_is_not_removed BEFORE DELETE ON shop_line
    BEGIN SELECT RAISE(ABORT, 'an entry is never removed'); END;
  `,
} as const
