export interface Spread {
  readonly usual: string
  readonly least: string
  /** Null past the yield point. */
  readonly most: string | null
}

const spread = ({ usual, least, most }: Spread) =>
  `${usual} (${least} ${most === null ? 'up to past its yield point' : `to ${most}`})`

/** What a pull does to its bolt. Forces, torques, angles and shares come with their units. */
export const pullExplained = {
  offer: 'What this pull does …',
  title: 'What this pull does',
  notCalculated: 'This cannot be calculated: no torque comes before it, or nothing is loaded by it.',
  spread,
  preload: 'Preload afterwards',
  ofProof: 'Of the proof load',
  ofTorque: 'Of the torque, clamps',
  clamps: ({ part, whole }: { readonly part: string; readonly whole: string }) => `${part} of ${whole}`,
  friction: 'Lost to friction',
  lost: (facts: {
    readonly share: string
    readonly thread: string
    readonly head: string
    /** What it takes to run down; null for a fastener that runs free. */
    readonly prevailing: string | null
  }) =>
    `${facts.share}: thread ${facts.thread}, head ${facts.head}` +
    (facts.prevailing === null ? '' : `, running down ${facts.prevailing}`),
  stress: 'Stress while pulling',
  stressAndYield: (facts: {
    readonly mpa: string
    readonly usual: string
    readonly least: string
    readonly most: string
  }) => `${facts.mpa} MPa, ${facts.usual} of yield (${facts.least} to ${facts.most})`,
  beforeTurn: 'Before the turn',
  preloadFrom: ({ preload, torque }: { readonly preload: string; readonly torque: string }) =>
    `${preload} from ${torque}`,
  eachDegree: 'Each degree adds',
  proofAfter: 'Proof load after',
  yieldsFirst: 'it yields first',
  yieldsAfter: 'Yields after',
  atTarget: 'At the target it is',
  states: { elastic: 'elastic', yielded: 'past its yield point' },
  onlyExplains: 'It explains the spec’s value and never overrules it.',
  /** A lesson about the running engine, said to be one. */
  workingLoad: (facts: {
    readonly force: string
    readonly percent: string
    readonly onFastener: string
    readonly clampLeft: string
    readonly opensAt: string
    readonly opens: 'never' | 'at-least-preload' | 'at-usual-preload'
  }) =>
    `For teaching: of ${facts.force} that pull at it while the engine runs, the fastener feels ${facts.percent}, ${facts.onFastener}; ` +
    `the rest unloads the parts, which keep ${facts.clampLeft} of clamp. ` +
    {
      never: `They stay closed up to ${facts.opensAt} with the usual preload, and under this load with the lowest one too.`,
      'at-least-preload': `They stay closed up to ${facts.opensAt} with the usual preload; with the lowest one they open.`,
      'at-usual-preload': `They open at ${facts.opensAt} already.`,
    }[facts.opens],
  inputs: 'Calculated from',

  plot: {
    title: 'Preload against turn',
    yields: ({ force }: { readonly force: string }) => `yields, ${force}`,
    proof: ({ force }: { readonly force: string }) => `proof, ${force}`,
    snug: ({ force }: { readonly force: string }) => `snug, ${force}`,
    turn: 'turn since the torque →',
  },
}
