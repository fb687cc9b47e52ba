/**
 * The fourth form: the list of builds has guards as the entries have, the record has a name of the bench it belongs to,
 * and the heads that were given out on sheets, exports and backups are kept as witnesses.
 */
export const guards = {
  version: 4,
  sql: `
    -- Twelve hexadecimal digits by which the backups of several benches in one folder are kept apart.
    CREATE TABLE bench (
      id TEXT NOT NULL PRIMARY KEY
    ) STRICT, WITHOUT ROWID;

    INSERT INTO bench VALUES (lower(hex(randomblob(6))));

    -- A head that somebody else may hold on paper or in a file. build is '' for the head over all builds of a backup.
    CREATE TABLE witness (
      build TEXT NOT NULL,
      entries INTEGER NOT NULL CHECK (entries >= 0),
      head TEXT NOT NULL,
      kind TEXT NOT NULL CHECK (kind IN ('sheet', 'export', 'backup')),
      at_utc TEXT NOT NULL,
      PRIMARY KEY (build, entries, head, kind)
    ) STRICT, WITHOUT ROWID;

    CREATE TRIGGER bench_is_not_changed BEFORE UPDATE ON bench
    BEGIN SELECT RAISE(ABORT, 'the name of the bench is never changed'); END;

    CREATE TRIGGER bench_is_not_removed BEFORE DELETE ON bench
    BEGIN SELECT RAISE(ABORT, 'the name of the bench is never removed'); END;

    CREATE TRIGGER bench_is_one BEFORE INSERT ON bench WHEN EXISTS (SELECT 1 FROM bench)
    BEGIN SELECT RAISE(ABORT, 'a record belongs to one bench'); END;

    CREATE TRIGGER witness_is_not_changed BEFORE UPDATE ON witness
    BEGIN SELECT RAISE(ABORT, 'a witness is never changed'); END;

    CREATE TRIGGER witness_is_not_removed BEFORE DELETE ON witness
    BEGIN SELECT RAISE(ABORT, 'a witness is never removed'); END;

    CREATE TRIGGER build_is_not_removed BEFORE DELETE ON build
    BEGIN SELECT RAISE(ABORT, 'a build is never removed'); END;

    CREATE TRIGGER build_is_not_changed BEFORE UPDATE ON build
    WHEN OLD.id IS NOT NEW.id OR OLD.year IS NOT NEW.year OR OLD.ordinal IS NOT NEW.ordinal
      OR OLD.name IS NOT NEW.name OR OLD.serial IS NOT NEW.serial OR OLD.spec_sha256 IS NOT NEW.spec_sha256
      OR OLD.started_at_utc IS NOT NEW.started_at_utc
      OR NEW.finished < OLD.finished OR NEW.voided < OLD.voided OR NEW.flagged < OLD.flagged
    BEGIN SELECT RAISE(ABORT, 'what the list says of a build follows from its entries'); END;

    CREATE TRIGGER build_rests_on_its_spec BEFORE INSERT ON build
    WHEN NEW.spec_sha256 IS NOT (
      SELECT json_extract(body, '$.event.specSha256') FROM event WHERE build = NEW.id AND seq = 1
    )
    BEGIN SELECT RAISE(ABORT, 'a build rests on the spec that its first entry names'); END;
  `,
} as const
