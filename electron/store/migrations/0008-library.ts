/** The eighth form: specs that people write here, while they are written and when they are published. */
export const library = {
  version: 8,
  sql: `
    CREATE TABLE draft (
      id TEXT NOT NULL UNIQUE,
      -- The id of the engine that it is of, and the revision that it becomes.
      engine TEXT NOT NULL,
      revision INTEGER NOT NULL CHECK (revision >= 1),
      -- The text of the spec that it was begun with.
      base TEXT NOT NULL,
      begun_by TEXT NOT NULL,
      begun_at_utc TEXT NOT NULL
    ) STRICT;

    -- What happened to a draft, as JSON. What was undone stays, as it can be done again.
    CREATE TABLE draft_entry (
      draft TEXT NOT NULL REFERENCES draft (id),
      seq INTEGER NOT NULL CHECK (seq >= 1),
      at_utc TEXT NOT NULL,
      person TEXT NOT NULL,
      event_json TEXT NOT NULL,
      PRIMARY KEY (draft, seq)
    ) STRICT, WITHOUT ROWID;

    -- Published revisions of engines; the text is kept as that of a build's spec is.
    CREATE TABLE library_spec (
      engine TEXT NOT NULL,
      revision INTEGER NOT NULL CHECK (revision >= 1),
      sha256 TEXT NOT NULL REFERENCES spec (sha256),
      published_at_utc TEXT NOT NULL,
      published_by TEXT NOT NULL,
      -- What the list of the library shows, read off the text.
      name TEXT NOT NULL,
      family TEXT NOT NULL,
      cylinders INTEGER NOT NULL,
      revision_name TEXT NOT NULL,
      entered_by TEXT NOT NULL,
      checked_by TEXT,
      PRIMARY KEY (engine, revision)
    ) STRICT, WITHOUT ROWID;

    CREATE INDEX library_spec_by_text ON library_spec (sha256);

    CREATE TRIGGER draft_is_not_changed BEFORE UPDATE ON draft
    BEGIN SELECT RAISE(ABORT, 'what a draft was begun with is never changed'); END;

    CREATE TRIGGER draft_is_not_removed BEFORE DELETE ON draft
    BEGIN SELECT RAISE(ABORT, 'a draft is discarded, not removed'); END;

    CREATE TRIGGER draft_entry_is_not_changed BEFORE UPDATE ON draft_entry
    BEGIN SELECT RAISE(ABORT, 'an entry of a draft is never changed'); END;

    CREATE TRIGGER draft_entry_is_not_removed BEFORE DELETE ON draft_entry
    BEGIN SELECT RAISE(ABORT, 'an entry of a draft is never removed'); END;

    CREATE TRIGGER library_spec_is_not_changed BEFORE UPDATE ON library_spec
    BEGIN SELECT RAISE(ABORT, 'a published revision is never changed'); END;

    CREATE TRIGGER library_spec_is_not_removed BEFORE DELETE ON library_spec
    BEGIN SELECT RAISE(ABORT, 'a published revision is never removed'); END;
  `,
} as const
