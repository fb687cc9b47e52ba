/** Sentences about the tightening. */
export const tighteningWords = {}
