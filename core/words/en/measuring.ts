export interface OfCell {
  /** Both counted from 1. */
  readonly plane: number
  readonly direction: number
}

const threadVerdicts = {
  agrees: 'agrees with what was computed',
  'says-tighter': 'says tighter than computed',
  'says-looser': 'says looser than computed',
}

/** Readings of a bore or a journal, and the plastic thread. Sizes come with their unit. */
export const measuring = {
  heading: ({ position }: { readonly position: string }) => `measure ${position}`,
  what: 'What is measured',
  parts: { housing: 'Bore', journal: 'Journal', thread: 'Thread' },
  noteReadings: 'Note these readings',
  noteThread: 'Note the thread',

  expected: (facts: {
    /** The part’s name in the spec. */
    readonly part: string
    readonly position: string
    readonly capTight: boolean
    readonly least: string
    readonly most: string
  }) =>
    `${facts.part}, ${facts.position}${facts.capTight ? ', cap tight' : ''}: ${facts.least} to ${facts.most} expected.`,
  bareNumbersIn: 'Bare numbers are in',
  direction: ({ direction }: { readonly direction: number }) => `direction ${direction}`,
  plane: ({ plane }: { readonly plane: number }) => `plane ${plane}`,
  cell: ({ plane, direction }: OfCell) => `plane ${plane}, direction ${direction}`,
  partAt: 'Part is at',
  gaugeAt: 'Gauge is at',
  gaugeTrue: 'reads true',
  sureTo: 'Sure to ±',

  least: 'Least',
  mean: 'Mean',
  greatest: 'Greatest',
  outOfRound: 'Out of round',
  taper: 'Taper',
  suspect: (facts: OfCell & { readonly size: string; readonly middle: string }) =>
    `Plane ${facts.plane}, direction ${facts.direction} reads ${facts.size}, the others about ${facts.middle}. ` +
    'Take it again.',

  withdraw: 'Withdraw these readings',
  whyWithdraw: 'Why do these readings not count?',
  withdrawThem: 'Withdraw them',
  usualReasons: ['Taken at another bearing', 'The gauge was off'],

  thread: {
    how: ({ position }: { readonly position: string }) =>
      `Plastic thread at ${position}: with the shells in, lay it across the journal, pull the cap tight, take it off ` +
      'again, and read the width on the card. The thread never decides; it finds dirt, a loose cap or a wrong reading.',
    read: 'Read on the card',
    step: 'Step of the card',
    nothingToCompare: ({ width }: { readonly width: string }) =>
      `${width}: nothing is computed yet to hold it against.`,
    /** `off` is by how much they differ. */
    compared: (facts: {
      readonly width: string
      readonly verdict: keyof typeof threadVerdicts
      readonly off: string
    }) =>
      `${facts.width}: ${threadVerdicts[facts.verdict]}` +
      (facts.verdict === 'agrees'
        ? '.'
        : `, by ${facts.off}. Look for dirt, a loose cap or a wrong reading.`),
  },
}
