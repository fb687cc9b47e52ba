/** Sentences about the host. */
export const hostWords = {}
