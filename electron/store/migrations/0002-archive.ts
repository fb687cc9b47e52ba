/**
 * The second form: what a build is found by, the people of the bench. What the last entry of a build says is no longer
 * kept beside it: a confirmation then writes one page of the file and not two.
 */
export const archive = {
  version: 2,
  sql: `
    ALTER TABLE build DROP COLUMN last_at_utc;
    ALTER TABLE build DROP COLUMN entries;
    ALTER TABLE build DROP COLUMN head_sha256;
    ALTER TABLE build ADD COLUMN voided INTEGER NOT NULL DEFAULT 0 CHECK (voided IN (0, 1));
    ALTER TABLE build ADD COLUMN flagged INTEGER NOT NULL DEFAULT 0 CHECK (flagged IN (0, 1));

    CREATE INDEX build_by_start ON build (started_at_utc);

    -- Computed from the events: the words by which a build is found.
    CREATE TABLE mention (
      word TEXT NOT NULL,
      kind TEXT NOT NULL,
      build TEXT NOT NULL REFERENCES build (id),
      PRIMARY KEY (word, kind, build)
    ) STRICT, WITHOUT ROWID;

    CREATE TABLE person (
      id TEXT NOT NULL PRIMARY KEY,
      name TEXT NOT NULL UNIQUE,
      role TEXT NOT NULL CHECK (role IN ('mechanic', 'apprentice')),
      -- What a badge types; null without one.
      badge TEXT UNIQUE,
      -- Salt and scrypt of the PIN, both in hexadecimal, with a colon between; null without one.
      pin TEXT
    ) STRICT, WITHOUT ROWID;
  `,
} as const
