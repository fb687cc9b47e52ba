import { mostPhotoBytes } from '../../../../core/photo/index.ts'
import { mostSpecFileCharacters } from '../../../../core/drafts/index.ts'
import type { ShopMigration } from './migration.ts'

/** Far more than any entry of a program takes. */
const mostEntryBytes = 1024 * 1024

/** A name as people give it to a bench, a build or themselves, and what they write beside it. */
const mostName = 400
const mostText = 4000

/**
 * The fourth form: what one bench sends, every other one can read. Nothing has a date that no calendar has, the name of a bench that is none, or
 * more than a program makes. What was there before is left as it is.
 */
export const bounds: ShopMigration = {
  version: 4,
  sql: ({ schema }) => `
    ALTER TABLE bench
      ADD CHECK (${isText('name', 80)}) NOT VALID,
      ADD CHECK (length(program) <= 80) NOT VALID;
    ALTER TABLE build
      ADD CHECK (${isBench('holder')}) NOT VALID,
      ADD CHECK (${isTime('started_at')} AND ${isTime('last_at')}) NOT VALID,
      ADD CHECK (year BETWEEN 1 AND 9999 AND ordinal >= 0) NOT VALID,
      ADD CHECK (length(name) <= ${mostName} AND length(serial) <= ${mostName}) NOT VALID,
      ADD CHECK (length(standing) <= ${mostText}) NOT VALID;
    ALTER TABLE entry
      ADD CHECK (${isBench('bench')}) NOT VALID,
      ADD CHECK (octet_length(body) <= ${mostEntryBytes}) NOT VALID;
    ALTER TABLE fork_entry
      ADD CHECK (${isBench('bench')}) NOT VALID,
      ADD CHECK (octet_length(body) <= ${mostEntryBytes}) NOT VALID;
    ALTER TABLE fork_settled
      ADD CHECK (${isBench('bench')}) NOT VALID,
      ADD CHECK (${isText('person', mostName)} AND ${isText('reason', mostText)}) NOT VALID;
    ALTER TABLE spec
      ADD CHECK (length(text) <= ${mostSpecFileCharacters} AND length(engine) <= ${mostText}) NOT VALID;
    ALTER TABLE photo
      ADD CHECK (octet_length(bytes) <= ${mostPhotoBytes}) NOT VALID;
    ALTER TABLE list_item
      ADD CHECK (${isBench('bench')}) NOT VALID,
      ADD CHECK (${isTime('at')}) NOT VALID,
      ADD CHECK (${isText('id', 100)} AND length(json) <= ${mostEntryBytes}) NOT VALID;
    -- As the others: by what is in the schema and the system alone, whatever the role that asks has as its path.
    ALTER FUNCTION later_holds() SET search_path = ${schema}, pg_temp;
    ALTER FUNCTION previous_in(uuid, integer, text, bytea) SET search_path = ${schema}, pg_temp;
  `,
}

function isBench(column: string): string {
  return `${column} ~ '^[0-9a-f]{12}$'`
}

function isText(column: string, most: number): string {
  return `length(btrim(${column})) > 0 AND length(${column}) <= ${most}`
}

/** Of four digits: what ISO 8601 writes without a sign. */
function isTime(column: string): string {
  return `${column} BETWEEN '0001-01-01 00:00+00' AND '9999-12-31 00:00+00'`
}
