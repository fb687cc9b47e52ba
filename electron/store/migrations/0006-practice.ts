/**
 * The sixth form: what people practised, and how much of it the shop wants. It is no part of the record of builds, and goes
 * with the person.
 */
export const practice = {
  version: 6,
  sql: `
    CREATE TABLE practice_round (
      person TEXT NOT NULL REFERENCES person (id) ON DELETE CASCADE,
      -- In the order in which they were done: the clock may have been set back.
      number INTEGER NOT NULL,
      engine TEXT NOT NULL,
      drill TEXT NOT NULL,
      at_utc TEXT NOT NULL,
      seconds REAL NOT NULL CHECK (seconds >= 0),
      -- What was asked for, and the errors made at each.
      tally_json TEXT NOT NULL,
      PRIMARY KEY (person, number)
    ) STRICT, WITHOUT ROWID;

    -- How many rounds of each drill without an error the shop wants before a person leads a build of the engine.
    CREATE TABLE practice_minimum (
      engine TEXT NOT NULL PRIMARY KEY,
      least INTEGER NOT NULL CHECK (least > 0)
    ) STRICT, WITHOUT ROWID;
  `,
} as const
