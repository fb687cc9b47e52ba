export interface OutsideLimits {
  readonly read: string
  readonly limits: string
}

/** What is flagged at a fastener, in a few words for the drawing. */
export const flags = {
  /** What was done about one, where that follows from what came after it. */
  deeds: {
    replaced: 'Loosened, replaced by a new one, and begun again from its first pass.',
    'begun-again': 'Loosened, and begun again from its first pass.',
    'turned-on': 'Turned on from where it stood.',
    'tightened-on': 'Tightened on from where it stood.',
    'pass-repeated': 'The pass is repeated until none moves.',
  },
  /** Why a fastener was loosened or a run begun again, where the program had told the person to. */
  causes: {
    'to-be-replaced': 'Too much: to be replaced',
    'to-begin-again': 'Too much: to begin again',
    'gap-out': 'The gap was out of its limits',
    'crank-stiff': 'The crank took too much to turn',
    'joint-opened': 'The bolts of the joint were loosened to begin again',
  },
  moved: 'moved',
  /** `reads 18 N·m, 22.8 to 25.2`. */
  reads: ({ read, limits }: OutsideLimits) => `reads ${read}, ${limits}`,
  /** Of the gap of a face, or what an action asks for. */
  measured: ({ read, limits }: OutsideLimits) => `measured ${read}, ${limits}`,
}
