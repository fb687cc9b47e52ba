export interface OfGap {
  readonly ring: string
  /** With its unit. */
  readonly angle: string
}

/** Rings: their gaps measured, and turned to where they belong on the piston. */
export const rings = {
  /** What is measured of a ring, in a line of its own. */
  measures: {
    'ring-gap': ({ ring }: { readonly ring: string }) => `${ring}, end gap`,
    'groove-clearance': ({ ring }: { readonly ring: string }) => `${ring} in its groove`,
  },
  /** Lengths come with their unit. `most` is null where no most is known. */
  file: (facts: { readonly least: string; readonly most: string | null }) =>
    `! Too narrow. File ${facts.least} off the ends in all` +
    `${facts.most === null ? '' : `, never more than ${facts.most}`}, square and a little at a time, break the edges, and measure again.`,
  replace: (facts: { readonly by: string; readonly wider: string }) =>
    `! Too wide by ${facts.by}. Measure the bore: ${facts.wider} of wear alone would open the gap so far, because it grows by π times ` +
    'what the bore does. If the bore is right, fit another ring.',
  /** Measured again after filing or with another ring; a gap cannot be accepted that is too narrow. */
  sure: 'It is as typed',
  confirm: 'The gaps stand so',
  title: ({ piston }: { readonly piston: string }) => `Rings of ${piston}`,
  say: 'Turn each gap to its place, looking at the crown with the nose side at the left.',
  up: ({ mark }: { readonly mark: string }) => `${mark} up`,
  noSide: 'either side up',
  gap: ({ ring, angle }: OfGap) => `${ring}: ${angle}`,
  /** A piston with all its gaps; none while its rings are not on. */
  clock: ({ piston, gaps }: { readonly piston: string; readonly gaps: readonly OfGap[] }) =>
    gaps.length === 0
      ? `${piston}: rings to fit`
      : `${piston}: ${gaps.map(({ ring, angle }) => `${ring} ${angle}`).join(', ')}`,
  done: ({ text }: { readonly text: string }) => `✓ ${text}`,
  allDone: ({ pistons }: { readonly pistons: number }) => `✓ The rings of all ${pistons} pistons are on.`,
  places: 'All pistons',
  otherwise: 'Another angle …',
  asSpec: 'As the spec has them',
  angleOf: ({ ring }: { readonly ring: string }) => `${ring}: its gap stands at, in °`,
  whyOff: ({ piston }: { readonly piston: string }) => `${piston}: why do the rings come off?`,
  takeOff: 'They come off',
  drawing: ({ piston, gaps }: { readonly piston: string; readonly gaps: readonly OfGap[] }) =>
    `${piston} from above, its nose side at the left. Gaps clockwise from there: ` +
    `${gaps.map(({ ring, angle }) => `${ring} at ${angle}`).join(', ')}.`,
  nose: 'nose',
  pin: 'pin',
  /** Beside the piston, which bears on its bore at the top and at the foot of the drawing. */
  above: ({ thrust }: { readonly thrust: boolean }) => `↑ ${thrust ? 'thrust side' : 'anti-thrust side'}`,
  below: ({ thrust }: { readonly thrust: boolean }) => `↓ ${thrust ? 'thrust side' : 'anti-thrust side'}`,
  sheet: {
    title: 'Rings and their gaps',
    gaps: 'Gaps, clockwise from the nose side seen on the crown',
    takenOff: ({ text, reason }: { readonly text: string; readonly reason: string }) =>
      `${text}; taken off: ${reason}`,
  },
  card: {
    open: 'Ring card',
    foot: (facts: { readonly engine: string; readonly revision: string; readonly rings: string }) =>
      `Bedplate ring card · ${facts.engine}, revision ${facts.revision} · ${facts.rings}`,
    rules: (facts: {
      readonly apart: string
      readonly offPin: string | null
      readonly offThrust: string | null
    }) =>
      `Gaps of neighbouring rings at least ${facts.apart} apart` +
      `${facts.offPin === null ? '' : `, at least ${facts.offPin} from the ends of the pin`}` +
      `${facts.offThrust === null ? '' : `, at least ${facts.offThrust} from the middle of the thrust sides`}.`,
    ring: 'Ring',
    up: 'Up',
    stands: 'Gap at',
  },
}
