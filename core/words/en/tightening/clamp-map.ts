import type { RichText } from '../../rich.ts'
import { numberAndKind } from './passes.ts'

const orders = {
  spec: 'as in the spec',
  own: 'own order',
  reversed: 'from its end',
  'centre-out': 'centre out',
  spiral: 'spiral',
  crosswise: 'crosswise',
  'end-to-end': 'end to end',
}
export interface OfOrder {
  readonly order: keyof typeof orders
}
export interface BothOrders {
  readonly first: keyof typeof orders
  readonly second: keyof typeof orders
}
export interface OfRange {
  readonly least: string
  readonly most: string
}

/** How the bolts of a face share the clamp load, pass by pass, in two orders side by side. */
export const clampMap = {
  title: ({ procedure }: { readonly procedure: string }) => `Clamp map: ${procedure}`,
  backToBuild: 'Back to the build',
  teachingModel: 'A teaching model. It shows how bolts take load from each other, not what one bolt holds.',
  /** Where two orders leave a fastener with the most different loads, and by how much they differ after the last pass. */
  differMost: (
    facts: BothOrders &
      Parameters<typeof numberAndKind>[0] & {
        readonly fastener: string
        readonly firstLoad: string
        readonly secondLoad: string
        /** Null where that is too little to be shown. */
        readonly atLast: string | null
      },
  ): RichText => [
    { strong: `The two orders differ most after pass ${numberAndKind(facts)}: ` },
    `fastener ${facts.fastener} then holds ${facts.firstLoad} kN ${orders[facts.first]}, ` +
      `${facts.secondLoad} kN ${orders[facts.second]}. After the last pass ` +
      (facts.atLast === null
        ? 'they hold the same.'
        : `no fastener differs by more than ${facts.atLast} kN.`),
  ],
  alike: 'After no pass does a fastener differ between the two orders by 0.1 kN or more.',
  sameOrder: 'Both sides are in the same order. Choose another one to compare it.',
  difference: ({ first, second, pull }: BothOrders & { readonly pull: number }) =>
    `What each fastener holds more or less ${orders[second]} than ${orders[first]}, after ${pull} pulls`,
  differenceShown: ({ first, second }: BothOrders) =>
    `In kN, ${orders[second]} against ${orders[first]}. Darker: the pressure between the faces differs more.`,
  afterPass: 'After pass',
  pass: numberAndKind,
  between: 'Between the faces',
  materials: { metal: 'metal', gasket: 'gasket' },
  orders,
  inOrder: ({ order }: OfOrder) => `Order ${orders[order]}`,
  /** Of the two that are compared: 1 or 2. */
  whichOrder: ({ place }: { readonly place: number }) => `Order ${place}`,
  pulls: 'Pull by pull',
  /** Where the slider stands; `pull` 0 is before the first. */
  pull: (facts: {
    readonly pull: number
    readonly of: number
    readonly pass: string | null
    /** What is pulled in each of the two orders. */
    readonly fasteners: readonly string[]
  }) =>
    facts.pass === null
      ? `Before the first of ${facts.of} pulls`
      : `Pull ${facts.pull} of ${facts.of}, pass ${facts.pass}: fastener ` +
        facts.fasteners.map((fastener, index) => `${fastener} in order ${index + 1}`).join(', '),
  picture: ({ face, order, pull }: OfOrder & { readonly face: string; readonly pull: number }) =>
    `Clamp map of ${face}, order ${orders[order]}, after ${pull} pulls`,
  openAlong: ({ percent }: { readonly percent: string }) => `Open along ${percent} % of the joint face.`,
  hold: ({ least, most }: OfRange) => `Fasteners that were pulled hold ${least} to ${most} kN.`,
  nothingPulled: 'Nothing is pulled yet.',
  pressure: 'Pressure between the faces',
  open: 'open',
  megapascals: ({ least, most }: OfRange) => `${least} to ${most} MPa`,
  numbers: 'In a disc: what the fastener holds, in kN. Filled: the one just pulled.',
  table: ({ pull }: { readonly pull: number }) => `What each fastener holds after ${pull} pulls, in kN`,
  fastener: 'Fastener',
  assumptions: 'What the model assumes',
}
