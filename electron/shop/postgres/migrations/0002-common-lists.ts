import type { ShopMigration } from './migration.ts'

/** What is told to who listens in the place of a number of change. */
export const listsAreOther = 'lists'

/**
 * The second form: lists that all benches have in common where the owner chose so, a row for each item, so that no bench puts its list in the
 * place of another's. What was said of an item last holds; that it was removed is said of it too, and nothing else of it is left then.
 */
export const commonLists: ShopMigration = {
  version: 2,
  sql: ({ schema, bench, reader }) => `
    -- Kept a list whole. No program wrote to it.
    DROP TABLE shared_list;

    CREATE TABLE list (
      name text COLLATE "C" PRIMARY KEY,
      common boolean NOT NULL DEFAULT false
    );
    INSERT INTO list (name) VALUES ('people'), ('wrenches');

    CREATE TABLE list_item (
      list text COLLATE "C" NOT NULL REFERENCES list (name),
      id text COLLATE "C" NOT NULL,
      json text,
      at timestamptz NOT NULL,
      bench text COLLATE "C" NOT NULL,
      PRIMARY KEY (list, id)
    );

    CREATE FUNCTION later_holds() RETURNS trigger LANGUAGE plpgsql AS $$
    BEGIN
      IF (NEW.at, NEW.bench) <= (OLD.at, OLD.bench) THEN RETURN NULL; END IF;
      RETURN NEW;
    END $$;
    CREATE TRIGGER later_holds BEFORE UPDATE ON list_item FOR EACH ROW EXECUTE FUNCTION later_holds();

    CREATE FUNCTION lists_are_told() RETURNS trigger LANGUAGE plpgsql AS $$
    BEGIN
      PERFORM pg_notify('bedplate_${schema}', '${listsAreOther}');
      RETURN NULL;
    END $$;
    CREATE TRIGGER lists_are_told AFTER INSERT OR UPDATE ON list_item FOR EACH STATEMENT EXECUTE FUNCTION lists_are_told();
    CREATE TRIGGER lists_are_told AFTER UPDATE ON list FOR EACH STATEMENT EXECUTE FUNCTION lists_are_told();

    REVOKE ALL ON ALL FUNCTIONS IN SCHEMA ${schema} FROM PUBLIC;
    GRANT SELECT ON list TO ${bench}, ${reader};
    GRANT SELECT, INSERT, UPDATE (json, at, bench) ON list_item TO ${bench};
  `,
}
