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
export const passes = { kinds }

/** In a table: `3 torque`. Passes are counted from 1. */
export const numberAndKind = ({ pass, kind }: { readonly pass: number; readonly kind: keyof typeof kinds }) =>
  `${pass} ${kinds[kind]}`
