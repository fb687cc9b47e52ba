/** How a clearance stands against its limits. */
export const clearance = {
  /** `38 µm (24 to 52)`: the nominal one, and the worst case on both sides. */
  withWorst: (facts: { readonly nominal: string; readonly least: string; readonly most: string }) =>
    `${facts.nominal} (${facts.least} to ${facts.most})`,
  verdicts: {
    inside: 'inside the limits',
    'may-be-tight': 'may be too tight',
    'may-be-loose': 'may be too loose',
    'may-be-either': 'may be too tight or too loose',
    tight: 'too tight',
    loose: 'too loose',
  },
  /** Against the limit for parts that have run. */
  wear: {
    'within-service': 'not reached',
    'may-be-beyond': 'may be exceeded',
    'beyond-service': 'exceeded',
  },
}
