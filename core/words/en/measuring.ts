export interface OfCell {
  /** Both counted from 1. */
  readonly plane: number
  readonly direction: number
}

const threadVerdicts = {
  agrees: 'agrees with the calculated clearance',
  'says-tighter': 'shows less than calculated',
  'says-looser': 'shows more than calculated',
}

/** Readings of a bore or a journal, and the plastic thread. Sizes come with their unit. */
export const measuring = {
  heading: ({ position }: { readonly position: string }) => `measure ${position}`,
  what: 'What is measured',
  parts: { housing: 'Bore', journal: 'Journal', thread: 'Plastic gauge' },
  noteReadings: 'Note these readings',
  noteThread: 'Note this width',

  expected: (facts: {
    /** The part’s name in the spec. */
    readonly part: string
    readonly position: string
    readonly capTight: boolean
    readonly least: string
    readonly most: string
  }) =>
    `${facts.part}, ${facts.position}${facts.capTight ? ', cap tight' : ''}: ${facts.least} to ${facts.most} expected.`,
  bareNumbersIn: 'Numbers without a unit are in',
  direction: ({ direction }: { readonly direction: number }) => `direction ${direction}`,
  plane: ({ plane }: { readonly plane: number }) => `plane ${plane}`,
  cell: ({ plane, direction }: OfCell) => `plane ${plane}, direction ${direction}`,
  partAt: 'Part temperature',
  gaugeAt: 'Gauge temperature',
  gaugeTrue: 'no correction',
  sureTo: 'Gauge error ±',

  least: 'Minimum',
  mean: 'Mean',
  greatest: 'Maximum',
  outOfRound: 'Out of round',
  taper: 'Taper',
  suspect: (facts: OfCell & { readonly size: string; readonly middle: string }) =>
    `Plane ${facts.plane}, direction ${facts.direction} reads ${facts.size}, the others about ${facts.middle}. ` +
    'Measure it again.',

  allRight: 'It was taken again and is right: save these readings',
  withdraw: 'Withdraw these readings',
  whyWithdraw: 'Why do these readings not count?',
  withdrawThem: 'Withdraw them',
  usualReasons: ['Taken at another bearing', 'The gauge was not set right'],

  thread: {
    how: ({ position }: { readonly position: string }) =>
      `Plastic gauge at ${position}: with the shells in, lay it along the journal, tighten the cap, take it off ` +
      'again, and read the width on the card. It never chooses a shell; it finds dirt, a loose cap or a wrong reading.',
    read: 'Read on the card',
    step: 'Step of the card',
    nothingToCompare: ({ width }: { readonly width: string }) =>
      `${width}: no clearance is calculated yet to compare it with.`,
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
