/** The two halves of a bearing, and its pair of washers, in the drawing's lists. */
export type FittedHow = 'fitted' | 'next' | 'not-fitted'

/** From where a face is seen. The sides have the names that the engine's own spec gives them. */
export interface SeenFace {
  readonly face: string
  readonly from:
    | { readonly of: 'above' | 'below' }
    | { readonly of: 'nose' | 'drive-end'; readonly upsideDown: boolean }
    | { readonly of: 'side'; readonly side: string; readonly upsideDown: boolean }
  /** Where the nose points on the sheet; null in a face across an end. */
  readonly nose: 'left' | 'top' | 'right' | 'bottom' | null
}

function seenFrom(from: SeenFace['from']): string {
  if (!('upsideDown' in from)) return `seen from ${from.of}`
  const end = from.of === 'side' ? `the ${from.side}` : from.of === 'nose' ? 'the nose' : 'the drive end'
  return `seen from ${end}${from.upsideDown ? ', upside down' : ''}`
}

const faceParts = {
  seal: 'Seal',
  'two-piece-seal': 'Two-piece seal',
  plug: 'Plug',
  'check-valve': 'Check valve',
  strainer: 'Strainer',
}

/** What is written on a joint face's drawing, and the drawing as a list of what is on it. */
export const drawing = {
  // On the sheet
  nose: 'NOSE',
  driveEnd: 'DRIVE END',
  bore: ({ numbers }: { readonly numbers: readonly number[] }) => `bore ${numbers.join(', ')}`,
  thrust: 'thrust',
  noSealant: 'no sealant',
  halfOf: ({ bearing, half }: { readonly bearing: string; readonly half: string }) => `${bearing} ${half}`,
  view: ({ face, from, nose }: SeenFace) =>
    `${face}, ${seenFrom(from)}${nose === null ? '' : `, nose at the ${nose}`}`,
  notToScaleAcross: ({ view }: { readonly view: string }) => `${view}. Not to scale across`,
  outsideLimits: 'outside the limits',

  /** Where a pin of the crank stands, beside its rods: straight to who looks, or straight away. */
  pinStands: { towards: 'towards you', away: 'away from you' },

  /** How the engine is placed on the bench; a case that is split vertically is put together lying flat. */
  orientations: {
    upright: 'upright',
    'upside-down': 'upside down',
    flat: 'flat',
    'turned-over': 'flat, turned over',
  },
  onItsSide: ({ side }: { readonly side: string }) => `on its ${side}`,

  // As a list
  list: {
    nose: 'Nose, the front end of the crank',
    driveEnd: 'Drive end',
    fastener: ({ number, where }: { readonly number: string; readonly where: string }) =>
      `Fastener ${number}, ${where}`,
    fastenerState: (facts: {
      readonly fastener: string
      readonly state: string
      readonly more: string | null
    }) => `${facts.fastener}: ${facts.state}${facts.more === null ? '' : `, ${facts.more}`}`,
    fastenerStates: {
      waiting: 'waiting',
      next: 'next',
      'after-next': 'after the next',
      'partly-done': 'partly done',
      done: 'done',
      flagged: 'flagged',
    },
    shareOfPasses: ({ percent }: { readonly percent: number }) => `${percent} % of its passes`,
    half: (facts: { readonly bearing: string; readonly id: string; readonly half: string }) =>
      `${facts.bearing} ${facts.id} ${facts.half}`,
    halfState: ({ half, parts }: { readonly half: string; readonly parts: readonly string[] }) =>
      `${half}: ${parts.join(', ')}`,
    grade: ({ grade }: { readonly grade: string }) => `grade ${grade}`,
    shellNotChosen: 'shell not chosen',
    fitted: { fitted: 'fitted', next: 'next to fit', 'not-fitted': 'not fitted' } satisfies Record<
      FittedHow,
      string
    >,
    thrust: ({ saddle }: { readonly saddle: string }) => `Thrust washers at saddle ${saddle}`,
    bead: ({ name, isLaid }: { readonly name: string; readonly isLaid: boolean }) =>
      `${name}: ${isLaid ? 'laid' : 'to lay'}`,
    keepOut: ({ name }: { readonly name: string }) => `${name}: no sealant`,
    passage: ({ name }: { readonly name: string }) => `Oil passage, ${name}`,
    dowel: ({ number }: { readonly number: string }) => `Dowel ${number}`,
    bore: ({ number }: { readonly number: number }) => `Bore ${number}`,
    journal: ({ id }: { readonly id: string }) => `Main journal ${id}`,
    pin: ({ rods, stands }: { readonly rods: readonly string[]; readonly stands: string }) =>
      `Crankpin of ${rods.join(' and ')}: ${stands}`,
    wheels: { gear: 'Gear on the crank', chain: 'Chain wheel on the crank', belt: 'Belt wheel on the crank' },
    facePart: ({ kind, name }: { readonly kind: keyof typeof faceParts; readonly name: string }) =>
      `${faceParts[kind]}, ${name}`,
    gasket: 'Gasket along the edge of the face',
    opening: ({ number }: { readonly number: number }) => `Opening ${number}`,
    withNotes: ({ text, notes }: { readonly text: string; readonly notes: readonly string[] }) =>
      [text, ...notes].join('; '),
  },

  /** The protractor at a fastener. Directions come as degrees and as on a clock's face, where 12 is straight up. */
  protractor: (facts: {
    readonly start: string
    readonly startClock: number
    readonly end: string
    readonly endClock: number
    readonly turned: string
    readonly sense: 'clockwise' | 'anticlockwise'
  }) =>
    `Protractor: the handle starts at ${facts.start} (${facts.startClock} o’clock) and comes to ${facts.end} ` +
    `(${facts.endClock} o’clock) after ${facts.turned}, ${facts.sense}.`,
}
