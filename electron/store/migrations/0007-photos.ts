/**
 * The seventh form: the bytes of photos, each once under its hash. Which build has which photo, its entries say; the index
 * finds those among millions of others.
 */
export const photos = {
  version: 7,
  sql: `
    CREATE TABLE photo (
      id INTEGER PRIMARY KEY,
      sha256 TEXT NOT NULL UNIQUE,
      bytes BLOB NOT NULL
    ) STRICT;

    CREATE TRIGGER photo_is_not_removed BEFORE DELETE ON photo
    BEGIN SELECT RAISE(ABORT, 'a photo that a build has is never removed'); END;

    -- Bytes that were damaged may be put right by the same photo that comes again; what it is called stays.
    CREATE TRIGGER photo_keeps_its_name BEFORE UPDATE ON photo
    WHEN OLD.sha256 IS NOT NEW.sha256 OR OLD.id IS NOT NEW.id
    BEGIN SELECT RAISE(ABORT, 'a photo keeps its hash'); END;

    -- In JSON a quotation mark within a text has a backslash before it, so that no caption looks like this.
    CREATE INDEX event_with_photo ON event (build, seq) WHERE instr(body, '"type":"photo-added"') > 0;
  `,
} as const
