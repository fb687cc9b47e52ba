/** What a pass is called in a heading. */
const kinds = {
  seat: 'seat by hand',
  torque: 'torque',
  angle: 'angle',
  loosen: 'loosen',
  recheck: 'recheck',
  length: 'length before',
  stretch: 'stretch',
  'tighten-to-stretch': 'tighten to a stretch',
  action: 'between passes',
}

/** The passes of a tightening procedure. */
export const passes = {
  kinds,
  seatWithGap: `${kinds.seat}, gap`,
  measuredIn: ({ unit }: { readonly unit: string }) => `measured in ${unit}`,
  /** `24 N·m (22.8 to 25.2)`. */
  withLimits: (facts: { readonly target: string; readonly limits: string; readonly isUsual: boolean }) =>
    `${facts.target} (${facts.limits}${facts.isUsual ? ', usual limits' : ''})`,
  only: ({ numbers }: { readonly numbers: string }) => `only ${numbers}`,
  /** A torque as it stands in the manual, beside the same in the unit of the bench. */
  printed: ({ value }: { readonly value: string }) => `In the manual: ${value}`,
  printedRange: ({ least, most }: { readonly least: string; readonly most: string }) => `${least} to ${most}`,
  untilNoneMoves: 'again until none moves',
  inAll: ({ angle }: { readonly angle: string }) => `${angle} in all`,
  /** After the name of a pass that goes through its order more than once. */
  step: ({ number, of }: StepOfPass) => `step ${number} of ${of}`,
  /** Of one that is tightened until it is so much longer. */
  atTorque: ({ limits, unit }: { readonly limits: string; readonly unit: string }) => `at ${limits} ${unit}`,
  /** What is done between passes, and the limits of what is read then: `Turn it and read what it takes: at most 9 N·m.` */
  toRead: ({ instruction, limits }: { readonly instruction: string; readonly limits: string }) =>
    `${instruction.replace(/\.$/, '')}: ${limits}.`,
  wait: ({ minutes }: { readonly minutes: number }) => `Wait ${minutes} min.`,
}

export interface StepOfPass {
  readonly number: number
  readonly of: number
}

/** In a table: `3 torque`. Passes are counted from 1. */
export const numberAndKind = (facts: {
  readonly pass: number
  readonly kind: keyof typeof kinds
  readonly step?: StepOfPass | null
}) => `${facts.pass} ${kinds[facts.kind]}${!facts.step ? '' : `, ${passes.step(facts.step)}`}`
