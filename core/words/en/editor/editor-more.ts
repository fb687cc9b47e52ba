import { counted } from '../formats.ts'
import { patterns } from '../window/parts.ts'

export interface OfPart {
  readonly of: string
}

/** What few manuals give: the forms that are opened for it. */
export const editorMore = {
  /** A form that has nothing in it yet. */
  notSaid: ({ of }: OfPart) => `${of}: not said`,
  /** Bearings. */
  split: 'The halves lie',
  splits: { 'upper-lower': 'one above the other', 'left-right': 'side by side' },
  drawn: ({ of }: OfPart) => `${of}: size and class on the drawing`,
  drawnExample: '62 mm H6',
  pattern: ({ grade }: { readonly grade: string }) => `Pattern of ${grade}`,
  patterns,
  measuring: {
    title: 'How journals and bores are measured',
    means:
      'Without it each is measured in two planes and two directions. The taper is for the whole bearing, or for a length that is said here.',
    planes: 'Planes along the bearing',
    directions: 'Directions in each plane',
    outOfRound: 'Out of round, at most',
    taper: 'Taper, at most',
    taperPer: 'The taper is for a length of',
    planesApart: 'From the first plane to the last',
    add: 'Add how they are measured',
  },
  seating: {
    title: 'How the shells lie',
    means: 'Where groove, oil hole and tang of each half go: said beside each half when it is fitted.',
    halves: 'Both halves of a bearing',
    parts: { alike: 'are the same part', differ: 'are different parts' },
    upper: 'The upper or left half',
    lower: 'The lower or right half',
    add: 'Add how they lie',
  },
  warm: {
    title: 'Clearance when warm',
    means:
      'How much each expands, in millionths of its size for each kelvin (10⁻⁶/K): about 23 for aluminium, 11 to 12 for steel and cast iron.',
    housing: 'Housing, 10⁻⁶/K',
    journal: 'Journal, 10⁻⁶/K',
    shell: 'Shells, 10⁻⁶/K',
    oil: 'Oil temperature',
    add: 'Add the warm engine',
  },
  walls: ({ undersize }: { readonly undersize: string }) => `Walls of ${undersize}, as printed`,
  wallsMean: 'Without walls of its own each grade of an undersize is thicker by half of it.',
  addWall: 'Add a wall',
  chartFor: 'Chart for',
  allBearings: 'all of them',
  newChartFor: 'Another chart, for',
  addChart: 'Begin this chart',
  mixed: 'The two washers differ in thickness',
  mixes: { no: 'never', yes: 'where the float asks for it' },

  /** Fasteners. */
  headFace: {
    title: 'Face under the head',
    means: 'A usual one is taken where the manual gives none.',
    outer: 'Outer diameter',
    hole: 'Diameter of the hole under it',
    add: 'Add the face',
  },
  workingLoad: {
    title: 'Load while the engine runs',
    means:
      'For teaching alone: what pulls at each of them, and where it comes in, from 0 to 1 (n of VDI 2230).',
    force: 'Force at each',
    introduction: 'Where it comes in',
    add: 'Add the load',
  },
  layers: {
    title: 'Parts that are clamped, from the head on',
    material: 'Material',
    thickness: 'Thickness',
    add: 'Add a part',
  },

  /** Rings. */
  ringRule: 'How the end gap is given',
  ringRules: { limits: 'by its limits', bore: 'as a share of the bore', none: 'not at all' },
  perBore: 'Least, as a share of the bore: 0.004 for 0.004 mm a millimetre',
  minimum: 'But never less than',
  mostPerBore: 'Most, as a share of the bore',
  endGap: ({ limit }: { readonly limit: string }) => `End gap. ${limit}`,
  inGroove: ({ limit }: { readonly limit: string }) => `In the groove. ${limit}`,
  ringTitle: ({ ring }: { readonly ring: string }) => `${ring}: end gap and groove`,
  whereGroove: 'How the clearance in the groove is measured',
  offPin: 'Gap away from the ends of the pin by',
  offThrust: 'Gap away from the thrust sides by',
  thrustSide: 'Thrust side, crown seen, nose ahead',
  thrustSides: { left: 'left', right: 'right' },
  moreRings: 'Rings of other pistons',

  /** Passes. */
  capByCap: 'One cap goes through all passes before the next',
  only: ({ count }: { readonly count: number }) =>
    count === 0 ? 'Rechecked: all of the order' : `Rechecked: ${counted(count, 'fastener', 'fasteners')}`,
  newOrder: 'Name of another order',
  addOrder: 'Add the order',
  orderTakenOut: ({ order }: { readonly order: string }) => `Take the order ${order} out`,
}
