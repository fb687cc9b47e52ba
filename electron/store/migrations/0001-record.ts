/** The first form of the record: events that are only ever added, the specs they rest on, and what is read off them. */
export const record = {
  version: 1,
  sql: `
    CREATE TABLE spec (
      sha256 TEXT NOT NULL PRIMARY KEY,
      text TEXT NOT NULL,
      engine TEXT NOT NULL,
      demo INTEGER NOT NULL CHECK (demo IN (0, 1))
    ) STRICT, WITHOUT ROWID;

    -- body is the canonical text of the whole entry, the hash before it included; sha256 is the hash of those bytes.
    CREATE TABLE event (
      build TEXT NOT NULL,
      seq INTEGER NOT NULL CHECK (seq >= 1),
      body TEXT NOT NULL,
      sha256 TEXT NOT NULL,
      PRIMARY KEY (build, seq)
    ) STRICT, WITHOUT ROWID;

    -- What the list of builds shows, computed from the events; the number alone is this bench's own.
    CREATE TABLE build (
      id TEXT NOT NULL PRIMARY KEY,
      year INTEGER NOT NULL,
      ordinal INTEGER NOT NULL,
      name TEXT NOT NULL,
      serial TEXT NOT NULL,
      spec_sha256 TEXT NOT NULL REFERENCES spec (sha256),
      started_at_utc TEXT NOT NULL,
      last_at_utc TEXT NOT NULL,
      finished INTEGER NOT NULL CHECK (finished IN (0, 1)),
      entries INTEGER NOT NULL,
      head_sha256 TEXT NOT NULL,
      UNIQUE (year, ordinal)
    ) STRICT, WITHOUT ROWID;

    CREATE TABLE preference (
      name TEXT NOT NULL PRIMARY KEY,
      value_json TEXT NOT NULL
    ) STRICT, WITHOUT ROWID;

    CREATE TRIGGER event_is_not_changed BEFORE UPDATE ON event
    BEGIN SELECT RAISE(ABORT, 'an entry is never changed'); END;

    CREATE TRIGGER event_is_not_removed BEFORE DELETE ON event
    BEGIN SELECT RAISE(ABORT, 'an entry is never removed'); END;

    CREATE TRIGGER spec_is_not_changed BEFORE UPDATE ON spec
    BEGIN SELECT RAISE(ABORT, 'a spec that a build rests on is never changed'); END;

    CREATE TRIGGER spec_is_not_removed BEFORE DELETE ON spec
    BEGIN SELECT RAISE(ABORT, 'a spec that a build rests on is never removed'); END;
  `,
} as const
