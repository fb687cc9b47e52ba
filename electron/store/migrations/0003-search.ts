/** The third form: the words of a build can be found by the build, for searches by several words. */
export const search = {
  version: 3,
  sql: `
    CREATE INDEX mention_by_build ON mention (build, word);
  `,
} as const
