/**
 * The eleventh form: what was said last of each item of a list that all benches of the shop have in common, such as people. What was said
 * here and did not reach the archive yet waits in it.
 */
export const commonLists = {
  version: 11,
  sql: `
    CREATE TABLE list_item (
      list TEXT NOT NULL,
      id TEXT NOT NULL,
      -- As it is kept; null: it was removed.
      json TEXT,
      -- By the clock of the bench that said so.
      at_utc TEXT NOT NULL,
      bench TEXT NOT NULL,
      sent INTEGER NOT NULL CHECK (sent IN (0, 1)),
      PRIMARY KEY (list, id)
    ) STRICT, WITHOUT ROWID;
  `,
} as const
