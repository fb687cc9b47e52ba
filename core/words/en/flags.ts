export interface Outside {
  readonly read: string
  readonly limits: string
}

/** What is flagged at a fastener, in a few words for the drawing. */
export const flags = {
  moved: 'moved',
  /** `reads 18 N·m, 22.8 to 25.2`. */
  reads: ({ read, limits }: Outside) => `reads ${read}, ${limits}`,
  /** Of the gap of a face, or what an action asks for. */
  measured: ({ read, limits }: Outside) => `measured ${read}, ${limits}`,
}
