import type { ShopMigration } from './migration.ts'

/**
 * The third form: a bench whose line counts now, without an entry of its own that says so, announces what the list says of the build from then on.
 * Every bench that listens is notified, as it is of any other change.
 */
export const lineThatCounts: ShopMigration = {
  version: 3,
  sql: ({ schema, bench }) => `
    CREATE FUNCTION announce(of uuid) RETURNS void LANGUAGE sql SECURITY DEFINER SET search_path = ${schema}, pg_temp AS $$
      SELECT note_change(of)
    $$;
    REVOKE ALL ON FUNCTION announce FROM PUBLIC;
    GRANT EXECUTE ON FUNCTION announce TO ${bench};
  `,
}
