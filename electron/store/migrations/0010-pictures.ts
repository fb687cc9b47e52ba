/** The tenth form: the manual's pictures under the drawings of drafts. They are helps of this bench, so that they change and go. */
export const pictures = {
  version: 10,
  sql: `
    CREATE TABLE draft_picture (
      draft TEXT NOT NULL REFERENCES draft (id),
      face TEXT NOT NULL,
      sha256 TEXT NOT NULL,
      width_px INTEGER NOT NULL CHECK (width_px >= 1),
      height_px INTEGER NOT NULL CHECK (height_px >= 1),
      -- JSON: how it lies, how much of it is seen, whether it is.
      look_json TEXT NOT NULL,
      bytes BLOB NOT NULL,
      PRIMARY KEY (draft, face)
    ) STRICT;
  `,
} as const
