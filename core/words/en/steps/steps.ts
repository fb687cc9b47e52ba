import { counted } from '../formats.ts'
import { engineParts } from '../engine-parts.ts'
import type { HalfName } from '../../formats/index.ts'
import { patterns } from '../window/parts.ts'

export interface OfHalf {
  /** The saddle or rod. */
  readonly position: string
  readonly half: HalfName
}
const named = ({ position, half }: OfHalf) => `${position} ${engineParts.halves[half]}`

/** The panel beside the drawing, whatever the step is. */
const frame = {
  title: 'What to do',
  /** Steps that have to be done before this one. */
  waitsFor: ({ steps }: { readonly steps: readonly string[] }) => `First: ${steps.join(', ')}.`,
  saving: 'Saving …',
  goOn: 'Continue',
  whichReading: 'First say which of the two readings counts.',
}

/** What another window of the program has confirmed in the build that is shown. */
const elsewhere = {
  confirmed: ({ entries, person }: { readonly entries: number; readonly person: string }) =>
    `Confirmed in another window or at another bench: ${counted(entries, 'entry', 'entries')}, ` +
    `${entries === 1 ? '' : 'the last one '}by ${person}.`,
  look: 'What is typed here stays. Does it still belong here?',
  goOn: 'I have looked: continue',
}

const marks = {
  note: 'Note these marks',
  asStamped: 'As stamped, in order from the nose',
  signOfWorn: ({ sign }: { readonly sign: string }) => `${sign} for a worn one`,
  stillToRead: ({ positions }: { readonly positions: readonly string[] }) =>
    `Still to read: ${positions.join(', ')}.`,
  /** What the mark of a place stands for, with the unit. */
  band: ({ least, most }: { readonly least: string; readonly most: string }) => `${least} to ${most}`,
  wornAway: 'worn away',
  worn: 'worn',
  noneReadable: 'None can be read',
}

const fitShells = {
  isIn: (half: OfHalf) => `${named(half)} is in`,
  name: named,
  title: ({ position, half }: OfHalf) => `${position}, ${engineParts.halves[half]} half`,
  shell: (facts: {
    readonly grade: string
    readonly pattern: keyof typeof patterns
    readonly undersize: string | null
    /** The compartment of the tray; null where it has to be ordered, undefined where no tray was counted. */
    readonly label: string | null | undefined
  }) =>
    [
      `Grade ${facts.grade}`,
      patterns[facts.pattern],
      ...(facts.undersize === null ? [] : [facts.undersize]),
      ...(facts.label === undefined
        ? []
        : [facts.label === null ? 'to be ordered' : `from the tray: ${facts.label}`]),
    ].join(', ') + '.',
  /** Of a shell that was still to be ordered when it was chosen. */
  toOrder: (half: OfHalf) => `The shell of ${named(half)} is still to be ordered. Has it come?`,
  hasCome: (half: OfHalf) => `It has come, and ${named(half)} is in`,
  asks: (half: OfHalf) => `Fit ${named(half)}, still to be ordered …`,
  noneChosen: 'No shell is chosen yet.',
  seating: 'Tang in its notch, oil hole over the oil passage.',
  dryAndClean: 'Back and bore dry and clean.',
  inPlace: '✓ In place.',
  allIn: ({ halves }: { readonly halves: number }) => `✓ All ${halves} halves are in.`,
  in: '✓ in',
  toFit: 'to fit',
  takeOut: (half: OfHalf) => `Take ${named(half)} out`,
}

const fitPart = {
  isIn: 'It is in',
  done: '✓ Done.',
  whyOut: 'Why does it come out again?',
  takeOut: 'Take it out',
  takeOutAgain: 'Take it out again',
}

const bead = {
  laid: 'The bead is laid: start the clock',
  /** The sealant's name and how wide the bead is, with the unit. */
  bead: (facts: {
    readonly name: string
    readonly sealant: string
    readonly width: string
    readonly closed: boolean
  }) =>
    `${facts.name}: ${facts.sealant}, a bead ${facts.width} wide${facts.closed ? ', closed on itself' : ''}.`,
  keepOut: 'Keep it out of:',
  withinReach:
    'Have everything for closing the joint within reach first. From laying it to the joint being closed there are',
  minutes: ({ minutes }: { readonly minutes: number }) => `${minutes} minutes`,
  whyWiped: 'Why is it wiped off?',
  wipeOff: 'Wipe it off',
  usualReasons: ['Open time is over', 'Smeared while closing'],
}

export interface Limits {
  readonly least: string
  readonly most: string
}

const check = {
  noteBad: 'Note it as not good',
  noteReading: 'Note this reading',
  isGood: 'It is good',
  isGoodAfterAll: 'It is good after all',
  isNotGood: '! It is not good',
  good: '✓ Good',
  notGood: '! Not good',
  reading: ({ least, most }: Limits) => `Reading, ${least} to ${most}`,
  howToType: ({ unit }: { readonly unit: string }) =>
    `in ${unit}, or with its unit: ${unit === 'in' ? '0.12 mm' : '0.005 in'}`,
  measuredWith: 'Thrust washers',
  withWashers: ({ name }: { readonly name: string }) => `measured with ${name} washers`,
  washersByTable: ({ name, thickness }: { readonly name: string; readonly thickness: string }) =>
    `Washers by the table: ${name}, ${thickness} each`,
  /** Two washers, alike or not, with their thickness. */
  fitPair: (facts: {
    readonly first: { readonly name: string; readonly thickness: string }
    readonly second: { readonly name: string; readonly thickness: string }
    readonly float: string
  }) =>
    facts.first.name === facts.second.name
      ? `Washers: two ${facts.first.name}, ${facts.first.thickness} each, for an end float of ${facts.float}`
      : `Washers: ${facts.first.name}, ${facts.first.thickness}, and ${facts.second.name}, ${facts.second.thickness}, for an end float of ${facts.float}`,
  pairStays: 'The washers that are in stay.',
  toGet: ({
    washers,
  }: {
    readonly washers: readonly { readonly count: number; readonly name: string; readonly thickness: string }[]
  }) =>
    `To order unless they are there: ${washers.map(({ count, name, thickness }) => `${count} × ${name}, ${thickness}`).join('; ')}.`,
  sayMeasuredWith: 'Say which washers it was measured with: those to fit follow from that.',
  noPairFits: 'Washers: none of the spec fit',
  withoutWashers: 'without washers',
  measuredWithout: 'measured without washers',
  measuredWithPair: ({ first, second }: { readonly first: string; readonly second: string }) =>
    first === second
      ? `measured with two ${first} washers`
      : `measured with a ${first} and a ${second} washer`,
  andWith: 'and',
  washersNotDefined: 'Washers: not defined',
  whatIsWrong: 'What is wrong',
  whatWasDone: 'It was not good: what was done since?',
  isGoodNow: 'It is good now',
}

const finish = {
  void: 'Void',
  finished: 'Finished',
  showSheet: 'Show the build sheet',
  finish: 'Finish this build',
  isFinished: '✓ This build is finished. Its work can no longer be changed.',
  lookOnceMore: 'Look at the sheet once more before finishing: afterwards its work cannot be changed.',
  lookAtSheet: 'Look at the sheet',
}

/** What can be done to a build after its work. */
const afterwards = {
  isVoid: '✕ This build is void. What was recorded stays.',
  whatToAdd: 'What is to be added to this build?',
  nextWhy: 'Next: why',
  whyAdded: 'Why is it added now?',
  add: 'Add it',
  whyVoid: 'Why is this build void?',
  voidIt: 'Void the build',
  amend: 'Amend this build',
  void: 'Void this build',
}

/** The steps of a build, each kind with its own texts. */
export const steps = { frame, elsewhere, marks, fitShells, fitPart, bead, check, finish, afterwards }
