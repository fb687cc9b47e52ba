/** The fifth form: where an open build stands is kept beside it, so that a list of builds need not read their entries. */
export const standings = {
  version: 5,
  sql: `
    -- JSON: where the build stood, and the hash of the entry after which it did. Null, or of another entry than the last
    -- one, until a list of builds is asked for:
    -- a confirmation goes on writing one page of the file.
    ALTER TABLE build ADD COLUMN standing TEXT;
  `,
} as const
