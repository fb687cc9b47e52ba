/** What a pass is called in a heading. */
const kinds = {
  seat: 'seat by hand',
  torque: 'torque',
  angle: 'angle',
  loosen: 'loosen',
  recheck: 'recheck',
  length: 'length before',
  stretch: 'stretch',
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
  untilNoneMoves: 'again until none moves',
  inAll: ({ angle }: { readonly angle: string }) => `${angle} in all`,
}

/** In a table: `3 torque`. Passes are counted from 1. */
export const numberAndKind = ({ pass, kind }: { readonly pass: number; readonly kind: keyof typeof kinds }) =>
  `${pass} ${kinds[kind]}`
