import type { RichText } from '../../rich.ts'

/** Orders in which fasteners are pulled: the maker's, and one of a person's own while it is made. */
export const order = {
  title: 'Order',
  /** Those that are shown, as they stand on the drawing; `cut` where there are more. */
  given: (facts: {
    readonly numbers: readonly string[]
    readonly cut: boolean
    readonly pattern: keyof typeof grown | null
  }): RichText => [
    { strong: 'Order:' },
    ` ${facts.numbers.join(', ')}${facts.cut ? ' …' : ''}; ` +
      `${facts.pattern === null ? 'as the manual numbers them' : grown[facts.pattern]}.`,
  ],

  own: {
    title: 'Own order',
    tapOrType: 'Tap the fasteners one after another, or type their numbers',
    asMaker: 'empty: the maker’s order',
    allIn: ({ count }: { readonly count: number }) => `✓ All ${count} are in the order.`,
    isMaker: 'This is the maker’s order.',
    undo: 'Undo the last',
    clear: 'Clear',
    fillWith: 'Fill with',
    maker: 'Maker’s',
    patterns: {
      'centre-out': 'Centre out',
      spiral: 'Spiral',
      crosswise: 'Crosswise',
      'end-to-end': 'End to end',
    },
    /** Every pull of every pass, as it comes. */
    allPulls: ({ count }: { readonly count: number }) =>
      `All ${count} pulls, in the order in which they come`,
    pullsOfPass: ({ pass }: { readonly pass: number }) => `Pulls of pass ${pass}`,
    /** Stands for the fastener where a pass is one action. */
    once: 'once',
    compare: 'Compare clamp maps …',
    caution: 'The maker’s order comes first. Your own order is recorded as a deviation, with its reason.',
    forOwnEngine: 'For the spec file of an engine of your own',
    forSpec: 'For the spec file',
  },
}

const grown = {
  'centre-out': 'from the middle outwards, from side to side',
  spiral: 'in a spiral from the middle outwards',
  crosswise: 'crosswise on a circle',
  'end-to-end': 'from one end to the other',
}
