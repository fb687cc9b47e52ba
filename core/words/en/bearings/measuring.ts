export interface OfCell {
  /** Both counted from 1. */
  readonly plane: number
  readonly direction: number
}

function planesInWords(planes: number): string {
  return planes === 1
    ? 'One plane, in the middle.'
    : `${planes} planes along the axis, counted from the nose.`
}

function directionsInWords(directions: readonly number[]): string {
  const where = directions.map((degrees, index) => {
    const turned = Math.abs(Math.round(degrees))
    if (turned === 0) return `${index + 1} straight up`
    return `${index + 1} ${turned}° ${degrees < 0 ? 'left' : 'right'} of straight up`
  })
  return `Directions across it, seen from the nose: ${where.join(', ')}.`
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
  /** The mark's own sizes, with their unit. */
  byMark: ({ mark, least, most }: { readonly mark: string; readonly least: string; readonly most: string }) =>
    `Mark ${mark}: ${least} to ${most}.`,
  /** The picture beside the readings, in words. */
  picture: (facts: {
    readonly part: 'housing' | 'journal'
    readonly planes: number
    /** Degrees clockwise from straight up, in the order of the directions. */
    readonly directions: readonly number[]
  }) =>
    `${planesInWords(facts.planes)} ${directionsInWords(facts.directions)}` +
    (facts.part === 'housing' ? ' None lies in the joint of the cap.' : ''),
  alongAxis: 'from the nose',
  acrossAxis: 'seen from the nose',
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
  /** A taper that is allowed for a length; lengths with their unit. */
  taperPer: (facts: {
    readonly taper: string
    readonly per: string
    readonly apart: string
    readonly allowed: string
  }) =>
    `Taper: ${facts.taper} for each ${facts.per}. With the first plane ${facts.apart} from the last that is ${facts.allowed} over all.`,
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
