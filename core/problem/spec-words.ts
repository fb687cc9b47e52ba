/** Sentences about the spec. */
export const specWords = {}
