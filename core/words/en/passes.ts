/** The passes of a tightening procedure. */
export const passes = {
  /** What a pass is called in a heading. */
  kinds: {
    seat: 'seat by hand',
    torque: 'torque',
    angle: 'angle',
    loosen: 'loosen',
    recheck: 'recheck',
    length: 'length before',
    stretch: 'stretch',
    action: 'between passes',
  },
}
