/** Sentences about the build. */
export const buildWords = {}
