/** Sentences about the bearing. */
export const bearingWords = {}
