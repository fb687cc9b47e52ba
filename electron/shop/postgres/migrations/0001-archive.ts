import type { ShopMigration } from './migration.ts'

/**
 * The first form of the archive. Truth is in `entry`, `spec`, `photo`, `fork_entry` and `fork_settled`, to which rows are only added;
 * the rest is made from them, or may be overwritten.
 */
export const archive: ShopMigration = {
  version: 1,
  sql: ({ schema, bench, reader }) => `
    CREATE TABLE spec (
      sha256 bytea PRIMARY KEY,
      text text NOT NULL CHECK (sha256 = sha256(convert_to(text, 'UTF8'))),
      engine text NOT NULL,
      demo boolean NOT NULL
    );

    CREATE TABLE photo (
      sha256 bytea PRIMARY KEY,
      bytes bytea NOT NULL CHECK (sha256 = sha256(bytes))
    );

    CREATE TABLE bench (
      id text COLLATE "C" PRIMARY KEY CHECK (id ~ '^[0-9a-f]{12}$'),
      name text NOT NULL,
      program text NOT NULL,
      seen_at timestamptz NOT NULL DEFAULT now()
    );

    -- What the list shows. A bench says what its entries come to; the columns from entries on are the triggers' alone.
    CREATE TABLE build (
      id uuid PRIMARY KEY,
      year integer NOT NULL,
      ordinal integer NOT NULL,
      name text NOT NULL,
      serial text NOT NULL,
      spec_sha256 bytea NOT NULL REFERENCES spec (sha256),
      started_at timestamptz NOT NULL,
      last_at timestamptz NOT NULL,
      finished boolean NOT NULL,
      voided boolean NOT NULL,
      flagged boolean NOT NULL,
      holder text COLLATE "C" NOT NULL,
      standing text,
      entries integer NOT NULL DEFAULT 0,
      head_sha256 bytea,
      bench text COLLATE "C",
      received_at timestamptz NOT NULL DEFAULT now(),
      forked boolean NOT NULL DEFAULT false,
      change bigint NOT NULL DEFAULT 0
    );
    CREATE INDEX build_by_change ON build (change);
    CREATE INDEX build_by_start ON build (started_at);
    CREATE INDEX build_open ON build (id) WHERE NOT finished AND NOT voided;
    CREATE INDEX build_forked ON build (id) WHERE forked;

    CREATE TABLE mention (
      word text COLLATE "C" NOT NULL,
      kind text COLLATE "C" NOT NULL,
      build uuid NOT NULL REFERENCES build (id),
      PRIMARY KEY (word, kind, build)
    );
    CREATE INDEX mention_by_build ON mention (build, word);

    -- By the month in which the build was started, which its id begins with (RFC 9562, 5.7); so the key has the column that it is
    -- parted by, and all entries of a build lie together.
    CREATE TABLE entry (
      build uuid NOT NULL REFERENCES build (id),
      seq integer NOT NULL CHECK (seq >= 1),
      body text NOT NULL,
      sha256 bytea NOT NULL,
      bench text COLLATE "C" NOT NULL,
      received_at timestamptz NOT NULL DEFAULT now(),
      PRIMARY KEY (build, seq)
    ) PARTITION BY RANGE (build);
    -- Ids of no month, and of one that was not near when they came.
    CREATE TABLE entry_other PARTITION OF entry DEFAULT;

    CREATE TABLE fork_entry (
      build uuid NOT NULL REFERENCES build (id),
      seq integer NOT NULL CHECK (seq >= 1),
      sha256 bytea NOT NULL,
      body text NOT NULL,
      bench text COLLATE "C" NOT NULL,
      -- The first entry of the fork.
      root_seq integer NOT NULL,
      root_sha256 bytea NOT NULL,
      received_at timestamptz NOT NULL DEFAULT now(),
      PRIMARY KEY (build, sha256)
    );

    CREATE TABLE fork_settled (
      build uuid NOT NULL,
      sha256 bytea NOT NULL,
      bench text COLLATE "C" NOT NULL,
      person text NOT NULL,
      reason text NOT NULL,
      at timestamptz NOT NULL DEFAULT now(),
      PRIMARY KEY (build, sha256),
      FOREIGN KEY (build, sha256) REFERENCES fork_entry (build, sha256)
    );

    CREATE TABLE shared_list (
      name text PRIMARY KEY,
      version integer NOT NULL CHECK (version >= 1),
      json text NOT NULL,
      bench text COLLATE "C" NOT NULL,
      at timestamptz NOT NULL DEFAULT now()
    );

    -- One row. Its lock is held until a consignment is committed, so that numbers are seen in the order in which they grow.
    CREATE TABLE counter (
      one boolean PRIMARY KEY DEFAULT true CHECK (one),
      change bigint NOT NULL
    );
    INSERT INTO counter (change) VALUES (0);

    CREATE FUNCTION never_changed() RETURNS trigger LANGUAGE plpgsql AS $$
    BEGIN
      RAISE EXCEPTION 'what is in % is never changed and never removed', TG_TABLE_NAME USING ERRCODE = 'insufficient_privilege';
    END $$;
    ${['entry', 'spec', 'photo', 'fork_entry', 'fork_settled'].map(guards).join('')}

    -- A month gets its place with its first build.
    CREATE FUNCTION month_has_place() RETURNS trigger LANGUAGE plpgsql SECURITY DEFINER SET search_path = ${schema}, pg_temp AS $$
    DECLARE
      digits text := replace(NEW.id::text, '-', '');
      milliseconds bigint := ('x' || lpad(left(digits, 12), 16, '0'))::bit(64)::bigint;
      month timestamp;
      place text;
    BEGIN
      IF substr(digits, 13, 1) <> '7' OR milliseconds > 253402300799000 THEN RETURN NULL; END IF;
      month := date_trunc('month', to_timestamp(milliseconds / 1000.0) AT TIME ZONE 'UTC');
      IF month < '2020-01-01' OR month > now() AT TIME ZONE 'UTC' + interval '2 months' THEN RETURN NULL; END IF;
      place := 'entry_' || to_char(month, 'YYYY_MM');
      IF to_regclass('${schema}.' || place) IS NOT NULL THEN RETURN NULL; END IF;
      LOCK TABLE entry IN SHARE UPDATE EXCLUSIVE MODE;
      IF to_regclass('${schema}.' || place) IS NOT NULL THEN RETURN NULL; END IF;
      EXECUTE format('CREATE TABLE %I PARTITION OF entry FOR VALUES FROM (%L) TO (%L)',
        place, first_id(month), first_id(month + interval '1 month'));
      EXECUTE format('CREATE TRIGGER never_emptied BEFORE TRUNCATE ON %I EXECUTE FUNCTION never_changed()', place);
      RETURN NULL;
    EXCEPTION WHEN check_violation THEN
      RETURN NULL; -- entries of that month came while it was far away, and lie among the others
    END $$;
    CREATE FUNCTION first_id(month timestamp) RETURNS uuid LANGUAGE sql IMMUTABLE AS $$
      SELECT (lpad(to_hex((extract(epoch FROM month) * 1000)::bigint), 12, '0') || repeat('0', 20))::uuid
    $$;
    CREATE TRIGGER month_has_place AFTER INSERT ON build FOR EACH ROW EXECUTE FUNCTION month_has_place();

    -- The hash that an entry follows, in hexadecimal; null for the first. Raises where the entry is not what it says.
    CREATE FUNCTION previous_in(build uuid, seq integer, body text, hash bytea) RETURNS text LANGUAGE plpgsql AS $$
    DECLARE
      inside jsonb;
    BEGIN
      IF hash IS DISTINCT FROM sha256(convert_to(body, 'UTF8')) THEN
        RAISE EXCEPTION 'entry % is not what its hash was made of', seq USING ERRCODE = 'check_violation', DETAIL = seq::text;
      END IF;
      inside := replace(body, '\\u0000', '\\u0001')::jsonb; -- jsonb has no NUL
      IF inside ->> 'build' IS DISTINCT FROM build::text OR inside ->> 'seq' IS DISTINCT FROM seq::text THEN
        RAISE EXCEPTION 'entry % says another place', seq USING ERRCODE = 'check_violation', DETAIL = seq::text;
      END IF;
      RETURN inside ->> 'previous';
    END $$;

    CREATE FUNCTION entry_follows() RETURNS trigger LANGUAGE plpgsql SET search_path = ${schema}, pg_temp AS $$
    DECLARE
      said text := previous_in(NEW.build, NEW.seq, NEW.body, NEW.sha256);
      kept bytea;
    BEGIN
      SELECT e.sha256 INTO kept FROM entry AS e WHERE e.build = NEW.build AND e.seq = NEW.seq - 1;
      IF said IS DISTINCT FROM encode(kept, 'hex') OR (said IS NULL) <> (NEW.seq = 1) THEN
        RAISE EXCEPTION 'entry % does not follow', NEW.seq USING ERRCODE = 'check_violation', DETAIL = NEW.seq::text;
      END IF;
      RETURN NEW;
    END $$;
    CREATE TRIGGER entry_follows BEFORE INSERT ON entry FOR EACH ROW EXECUTE FUNCTION entry_follows();

    CREATE FUNCTION fork_entry_follows() RETURNS trigger LANGUAGE plpgsql SET search_path = ${schema}, pg_temp AS $$
    DECLARE
      said text := previous_in(NEW.build, NEW.seq, NEW.body, NEW.sha256);
    BEGIN
      IF NEW.sha256 = NEW.root_sha256 THEN
        IF NOT EXISTS (
          SELECT FROM entry AS e WHERE e.build = NEW.build AND e.seq = NEW.seq AND e.sha256 <> NEW.sha256
        ) OR said IS DISTINCT FROM (
          SELECT encode(e.sha256, 'hex') FROM entry AS e WHERE e.build = NEW.build AND e.seq = NEW.seq - 1
        ) THEN RAISE EXCEPTION 'entry % begins no fork', NEW.seq USING ERRCODE = 'check_violation', DETAIL = NEW.seq::text;
        END IF;
      ELSIF NOT EXISTS (
        SELECT FROM fork_entry AS f WHERE f.build = NEW.build AND f.seq = NEW.seq - 1
          AND encode(f.sha256, 'hex') = said AND f.root_sha256 = NEW.root_sha256
      ) THEN RAISE EXCEPTION 'entry % does not follow', NEW.seq USING ERRCODE = 'check_violation', DETAIL = NEW.seq::text;
      END IF;
      RETURN NEW;
    END $$;
    CREATE TRIGGER fork_entry_follows BEFORE INSERT ON fork_entry FOR EACH ROW EXECUTE FUNCTION fork_entry_follows();

    -- Gives a build the next number of change, and tells who listens.
    CREATE FUNCTION note_change(of uuid) RETURNS void LANGUAGE plpgsql AS $$
    DECLARE
      next bigint;
    BEGIN
      UPDATE counter SET change = change + 1 RETURNING change INTO next;
      UPDATE build SET change = next, received_at = clock_timestamp() WHERE id = of;
      PERFORM pg_notify('bedplate_${schema}', next::text);
    END $$;

    CREATE FUNCTION entries_are_listed() RETURNS trigger LANGUAGE plpgsql SECURITY DEFINER SET search_path = ${schema}, pg_temp AS $$
    DECLARE
      last record;
    BEGIN
      FOR last IN SELECT DISTINCT ON (a.build) a.build, a.seq, a.sha256, a.bench FROM added AS a ORDER BY a.build, a.seq DESC LOOP
        UPDATE build SET entries = last.seq, head_sha256 = last.sha256, bench = last.bench WHERE id = last.build;
        UPDATE bench SET seen_at = clock_timestamp() WHERE id = last.bench;
        PERFORM note_change(last.build);
      END LOOP;
      RETURN NULL;
    END $$;
    CREATE TRIGGER entries_are_listed AFTER INSERT ON entry REFERENCING NEW TABLE AS added
      FOR EACH STATEMENT EXECUTE FUNCTION entries_are_listed();

    CREATE FUNCTION forks_are_listed() RETURNS trigger LANGUAGE plpgsql SECURITY DEFINER SET search_path = ${schema}, pg_temp AS $$
    DECLARE
      of uuid;
    BEGIN
      FOR of IN SELECT DISTINCT a.build FROM added AS a LOOP
        UPDATE build SET forked = EXISTS (
          SELECT FROM fork_entry AS f WHERE f.build = of AND f.sha256 = f.root_sha256 AND NOT EXISTS (
            SELECT FROM fork_settled AS s WHERE s.build = of AND s.sha256 = f.sha256
          )
        ) WHERE id = of;
        PERFORM note_change(of);
      END LOOP;
      RETURN NULL;
    END $$;
    CREATE TRIGGER forks_are_listed AFTER INSERT ON fork_entry REFERENCING NEW TABLE AS added
      FOR EACH STATEMENT EXECUTE FUNCTION forks_are_listed();
    CREATE TRIGGER forks_are_listed AFTER INSERT ON fork_settled REFERENCING NEW TABLE AS added
      FOR EACH STATEMENT EXECUTE FUNCTION forks_are_listed();

    REVOKE ALL ON ALL FUNCTIONS IN SCHEMA ${schema} FROM PUBLIC;
    GRANT USAGE ON SCHEMA ${schema} TO ${bench}, ${reader};
    GRANT EXECUTE ON FUNCTION previous_in TO ${bench};
    GRANT SELECT ON bedplate_version, spec, photo, bench, build, mention, entry, fork_entry, fork_settled TO ${bench}, ${reader};
    GRANT INSERT ON spec, photo, mention, fork_entry, fork_settled TO ${bench};
    GRANT INSERT (build, seq, body, sha256, bench) ON entry TO ${bench};
    GRANT INSERT (id, name, program), UPDATE (name, program, seen_at) ON bench TO ${bench};
    GRANT INSERT (id, ${said}), UPDATE (${said}) ON build TO ${bench};
    GRANT SELECT, INSERT, UPDATE ON shared_list TO ${bench};
  `,
}

/** The columns of a build that a bench says. */
const said =
  'year, ordinal, name, serial, spec_sha256, started_at, last_at, finished, voided, flagged, holder, standing'

function guards(table: string): string {
  return `
    CREATE TRIGGER never_changed BEFORE UPDATE OR DELETE ON ${table} FOR EACH ROW EXECUTE FUNCTION never_changed();
    CREATE TRIGGER never_emptied BEFORE TRUNCATE ON ${table} EXECUTE FUNCTION never_changed();`
}
