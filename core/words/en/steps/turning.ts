/** With their units; null where the manual has none. */
export interface TurningLimits<Text = string> {
  readonly least: Text | null
  readonly most: Text | null
  readonly mostRise: Text | null
  /** Since the reading before; null where there was none. */
  readonly rise: Text | null
}

/** `at most 2.5 N·m`, `0.5 N·m to 2.5 N·m`, with what it may rise and what it rose. */
export function turningLimits({ least, most, mostRise, rise }: TurningLimits): string {
  const range = [
    ...(most === null ? [] : [least === null ? `at most ${most}` : `${least} to ${most}`]),
    ...(most === null && least !== null ? [`at least ${least}`] : []),
    ...(mostRise === null ? [] : [`a rise of at most ${mostRise}${rise === null ? '' : ` (rose ${rise})`}`]),
    ...(mostRise === null && rise !== null ? [`rose ${rise} since the last reading`] : []),
  ]
  return range.join(', ')
}

const verdicts = {
  free: 'turns freely by hand',
  within: 'within its limits',
  under: '! too little',
  over: '! too much',
  binds: '! does not turn freely',
}

/** What it takes to turn the crank, and that it turns freely. */
export const turning = {
  limits: turningLimits,
  verdicts,
  /** Before the big button. */
  manualFirst:
    'The maker’s manual comes first. Turn the crank slowly, at least one full turn, and read while it moves.',
  reading: ({ unit }: { readonly unit: string }) => `Turning torque in ${unit}`,
  byWrench: 'Wrench with a scale',
  byBalance: 'Spring balance',
  with: 'Read by',
  arm: 'Lever, from the middle of the crank to the balance',
  howToTypeArm: '250 mm',
  force: ({ unit }: { readonly unit: string }) => `Force on the balance in ${unit}`,
  square: 'Hold the balance square to the lever. Torque is force times lever.',
  comesTo: ({ torque }: { readonly torque: string }) => `That is ${torque}.`,
  last: ({ torque }: { readonly torque: string }) => `Read before: ${torque}.`,
  note: 'Note this reading',
  turnsFreely: 'It turns freely',
  binds: 'It does not …',
  whatBinds: 'Where it binds, and what was felt',
  noteBinds: 'Note that it does not turn freely',
  whatWasDone: 'It did not turn freely before. What was done since?',
  isFreeNow: 'It turns freely now',
  lookFor:
    'The maker’s manual comes first. Loosen one cap after the other and turn the crank each time: the one that frees it is to be ' +
    'looked at, its shells, its oil, the number and the direction of the cap. Then turn once more.',
  capIsLoose: ({ cap }: { readonly cap: string }) => `Cap ${cap} is loose`,
  accept: 'Accept it …',
  whyAccepted: 'Why is it accepted outside its limits?',
  acceptIt: 'Accept it so',
  again: 'It is to be turned again …',
  whyAgain: 'Why does the reading not count?',
  againIt: 'Turn the crank again',
  read: (facts: {
    readonly typed: string | null
    /** What it comes to, where a force was read. */
    readonly torque: string | null
    readonly verdict: keyof typeof verdicts
    readonly rise: string | null
    readonly accepted: string | null
    readonly note: string
  }) =>
    [
      ...(facts.typed === null
        ? []
        : [facts.torque === null ? facts.typed : `${facts.typed} = ${facts.torque}`]),
      verdicts[facts.verdict],
      ...(facts.rise === null ? [] : [`rise ${facts.rise}`]),
      ...(facts.accepted === null ? [] : [`accepted: ${facts.accepted}`]),
      ...(facts.note === '' ? [] : [facts.note]),
    ].join(', '),
  sheet: {
    title: 'Turning the crank',
    step: 'Step',
    reading: 'Reading',
    limits: 'Limits',
    voided: ({ text, reason }: { readonly text: string; readonly reason: string }) =>
      `${text}; does not count: ${reason}`,
    again: ({ text }: { readonly text: string }) => `${text} (turned again later)`,
  },
}
