import type { RichText } from '../../rich.ts'
import { clock } from '../../formats/index.ts'
import { passes, type StepOfPass } from './passes.ts'
import { wrenchForPull } from './wrench-for-pull.ts'
import { turnByAngle } from './turn-by-angle.ts'
import { pullExplained } from './pull-explained.ts'

export type PassKind = keyof typeof passes.kinds

export interface OfFastener {
  /** As it stands beside it on the drawing. */
  readonly number: string
}
export interface OfAction {
  /** Null for an action between passes. */
  readonly number: string | null
}
export interface OfTarget extends OfAction {
  /** With the unit. */
  readonly target: string
}
export interface OfPlace {
  /** Counted from 1. */
  readonly pass: number
  readonly kind: PassKind
}

const who = ({ number }: OfAction) => number ?? 'It'
const passAndKind = ({ pass, kind }: OfPlace) => `pass ${pass}, ${passes.kinds[kind]}`

const cap = ({ cap }: { readonly cap: string }) => `cap ${cap}`

/** A tightening procedure while it is carried out. */
export const run = {
  /** Beside the name of the procedure. */
  heading: (
    facts: OfPlace & {
      readonly passes: number
      readonly step: StepOfPass | null
      readonly ownOrder: boolean
      /** Where it goes cap by cap: the one that is worked on. */
      readonly cap: string | null
    },
  ) =>
    `${facts.cap === null ? '' : `${cap({ cap: facts.cap })}, `}pass ${facts.pass} of ${facts.passes}, ${passes.kinds[facts.kind]}` +
    `${facts.step === null ? '' : `, ${passes.step(facts.step)}`}${facts.ownOrder ? ', own order' : ''}`,
  cap,
  orderOfCap: ({ cap }: { readonly cap: string }) => `Fasteners of cap ${cap}`,
  passes: 'Passes',
  pulled: ({ pulled, planned }: { readonly pulled: number; readonly planned: number }) =>
    `${pulled} of ${planned}`,
  pulledInPass: ({ pulled, planned }: { readonly pulled: number; readonly planned: number }) =>
    `${pulled} of ${planned} in this pass`,
  orderOfPass: 'Order of this pass',
  gap: 'gap',

  // What the main button says
  confirm: {
    backToPull: 'Back to the pull',
    useOrder: 'Use this order …',
    start: ({ procedure }: { readonly procedure: string }) => `Start: ${procedure}`,
    areNew: ({ group }: { readonly group: string }) => `All ${group} are new`,
    swing: (facts: { readonly swing: number; readonly swings: number; readonly angle: string }) =>
      `Swing ${facts.swing} of ${facts.swings}: ${facts.angle}`,
    newIn: ({ number }: OfFastener) => `A new ${number} is in`,
    reads: (facts: OfAction & { readonly reading: string }) => `${who(facts)} reads ${facts.reading}`,
    writeDown: ({ number }: OfAction) =>
      `Note what ${number === null ? 'the gauge shows' : `${number} measures`}`,
    seated: (facts: OfAction) => `${who(facts)} is seated`,
    loose: (facts: OfAction) => `${who(facts)} is loose`,
    done: 'Done',
    holds: (facts: OfTarget) => `${who(facts)} holds ${facts.target}`,
    turned: (facts: OfTarget) => `${who(facts)} is turned ${facts.target}`,
    at: (facts: OfTarget) => `${who(facts)} is at ${facts.target}`,
    moved: 'It moved',
  },

  // What is next
  next: 'Next',
  usualLimits: 'The spec gives no limits: usual ones.',
  measure: {
    gap: 'Measure the gap of the joint face',
    stretch: 'Measure its length again',
    tightenOn: 'Tighten it on until it is long enough',
    lengthBefore: 'Measure its length before it is pulled',
  },
  seatByHand: 'By hand, until it seats',
  /** One that does not run free. */
  seatByWrench: 'With a wrench, until it seats',
  loosenIt: 'Loosen it',
  longerBy: 'longer by',
  readingIn: ({ unit, onScale }: { readonly unit: string; readonly onScale: boolean }) =>
    `Reading in ${unit}${onScale ? ', as the scale shows it' : ''}`,
  torqueThen: ({ unit, onScale }: { readonly unit: string; readonly onScale: boolean }) =>
    `Its torque then in ${unit}${onScale ? ', as the scale shows it' : ''}`,
  /** A fastener that does not run free; torques come with their unit. */
  prevailing: {
    included: ({ most }: { readonly most: string }) =>
      `It takes up to ${most} to run down, and its torque includes that: add nothing.`,
    notSaid: ({ most }: { readonly most: string }) =>
      `It takes up to ${most} to run down. The spec does not say whether its torque includes that: add nothing.`,
    read: ({ unit }: { readonly unit: string }) => `Torque while it runs down, in ${unit}`,
    readFirst: ({ most }: { readonly most: string }) =>
      `At most ${most}. Read it before the fastener touches, off a wrench without an adapter: its torque does not include that.`,
    /** `isRange` where a range is pulled within and no target is aimed at. */
    onTop: (facts: {
      readonly running: string
      readonly target: string
      readonly least: string
      readonly most: string
      readonly isRange: boolean
    }): RichText =>
      facts.isRange
        ? [
            `It runs down at ${facts.running}, which goes on top: `,
            { strong: `${facts.least} to ${facts.most}` },
            ' at the fastener.',
          ]
        : [
            `It runs down at ${facts.running}, which goes on top: pull to `,
            { strong: facts.target },
            ` (${facts.least} to ${facts.most}).`,
          ],
  },
  asScaleShows: 'as the wrench shows it',
  unit: 'Unit',
  asGaugeShows: 'as the gauge shows it',
  typeOrConfirm: 'or confirm',
  /** A length that does not go with the others. */
  doubt: {
    again: 'Measure it again',
    sure: ({ typed }: { readonly typed: string }) => `It is right: note ${typed}`,
  },
  screenMayDarken: 'The screen may go dark: the system does not keep it on.',
  answerFirst: 'First answer the question above, or cancel it.',
  orderNotMade: 'The order is not made yet: name each fastener once, or cancel it.',
  unasked: {
    sent: ({ sent }: { readonly sent: string }) =>
      `The gauge sent ${sent} while nothing asked for a reading. It is kept.`,
    use: 'Use it here',
    drop: 'Drop it',
    which: 'A second reading came before the first was confirmed. Which one counts?',
    counts: ({ sent }: { readonly sent: string }) => `${sent} counts`,
    dropped: {
      'broken-off': 'The gauge stopped in the middle of a reading. What it sent was dropped: send it again.',
      crossed: 'Two gauges sent at the same time. What they sent was dropped: send one after the other.',
    },
  },

  // Before the start, while paused, at the end
  benchCard: 'Bench card',
  clampMap: 'Clamp map',
  onceOnly: ({ group }: { readonly group: string }) =>
    `${group} may be used once only: fit new ones, and throw the old ones away.`,
  paused: ({ reason }: { readonly reason: string }) => `Paused${reason === '' ? '' : `: ${reason}`}.`,
  allDone: '✓ Every pass is done and every flag is answered.',
  problem: '! Problem',
  pause: 'Pause',

  pauseForm: {
    why: 'Why pause? (optional)',
    pause: 'Pause here',
    usualReasons: ['Telephone', 'End of the day', 'Waiting for a part'],
  },
  problemForm: {
    what: ({ number }: OfAction) => `What is the problem${number === null ? '' : ` at fastener ${number}`}?`,
    note: 'Note the problem',
  },
  ownOrderForm: {
    why: 'Why this order, and not the maker’s?',
    start: 'Start in this order',
    usualReasons: ['The maker’s order cannot be reached', 'On the foreman’s instruction', 'For practice'],
  },

  takeBack: {
    offer: ({ number }: OfAction) => `Take back ${number ?? 'the action'}`,
    why: ({ number }: OfAction) =>
      `Take back ${number === null ? 'the last action' : `fastener ${number}`}: why?`,
    takeBack: 'Take it back',
    mistyped: 'The reading was mistyped',
    usualReasons: ['Pressed by mistake', 'Wrong wrench setting', 'Not sure it clicked'],
    /** A turn by an angle stays turned, whatever is confirmed or taken back. `read` is the angle, with its sign. */
    wasTurned: ({ number, read }: OfFastener & { readonly read: string | null }) =>
      `Was fastener ${number} turned?${read === null ? '' : ` It was read as ${read}.`}`,
    sayFirst: 'First say whether it was turned.',
    notTurned: 'No, it was confirmed without being turned …',
    turned: 'Yes: it has to begin again …',
    whyNotTurned: ({ number }: OfFastener) => `Take back fastener ${number}, which was not turned: why?`,
    usualReasonsNotTurned: ['Pressed by mistake', 'Pressed before turning', 'Another fastener was turned'],
    staysTurned: ({ number }: OfFastener) =>
      `A turn stays turned. Loosen ${number} all the way: what was pulled on it no longer counts, and it begins ` +
      'again with its first pass.',
    usualReasonsTurned: ['Not sure how far it was turned', 'Wrong wrench setting'],
  },

  loosen: {
    offer: 'Loosen it, and begin it again …',
    whatHappens:
      'Loosen it all the way. What was pulled on it no longer counts, and it begins again with its first pass.',
    why: ({ number }: OfFastener) => `Loosen ${number} and begin it again: why?`,
    usualReasons: ['Not sure of its pulls', 'Has to come out again'],
  },

  /** A fastener that was tapped and is not next. */
  picked: {
    title: ({ number, where }: OfFastener & { readonly where: string }) => `Fastener ${number}: ${where}`,
    notItsTurn: (facts: OfPlace & { readonly target: string | null }) =>
      `It is not its turn. What is open for it: ${passAndKind(facts)}` +
      `${facts.target === null ? '' : `, ${facts.target}`}.`,
    why: 'Pull it now, before its turn: why?',
    isPulled: ({ number }: OfFastener) => `Fastener ${number} is pulled`,
    usualReasons: ['The next one cannot be reached yet', 'On the foreman’s instruction'],
    nothingLeft: '✓ Nothing is left to do at it in this procedure.',
    back: 'Back to what is next',
  },

  /** Something was read that is not right, or moved, or was noted as a problem. */
  flag: {
    whatWasDone: 'What was done?',
    note: 'Note what was done',
    usualAnswers: {
      under: ['Pulled again until it clicked'],
      over: ['Put right and measured again'],
      moved: ['Set again to the full value', 'Replaced with a new one'],
      problem: ['Put right', 'Replaced the part'],
    },
    answerLater: 'Answer later (the run stays open until then)',
    /** Problems whose answers were put off. */
    later: 'To be answered before the end',
    answerNow: 'Answer now',
    measureAgain: ({ pass }: { readonly pass: number }) => `All are loose: measure again from pass ${pass}`,
    gapOut:
      'Loosen every fastener of the joint, the last one first. Look for what holds it open, seat them again, and measure the gap again.',
  },

  readAgain: {
    offer: 'The reading was wrong: read again …',
    touchNothing: ({ number }: OfAction) =>
      `Touch nothing, and read ${number === null ? 'it' : `fastener ${number}`} again. Both readings stay in the record.`,
    turnedAfter: ({ degrees }: { readonly degrees: number }) =>
      `What is read is what was turned after the first ${degrees}°.`,
    reads: ({ unit }: { readonly unit: string }) => `It reads, in ${unit}`,
    torque: ({ unit }: { readonly unit: string }) =>
      `Its torque, in ${unit}, where that was read wrong (empty: as it was)`,
    why: 'Why is it read again?',
    usualReason: 'The first reading was wrong',
    note: 'Note what it reads now',
  },

  /** Too much on a fastener, or one that may be used once only and was loosened. */
  replace: {
    stretched:
      'By the load calculated it has been stretched past proof, and turning it back does not undo that.',
    pastMost: 'It went past its upper limit, and is replaced.',
    onceOnly: 'It may be used once only.',
    whatToDo: ({ number }: OfFastener) => `What to do with fastener ${number}`,
    loosen: ({ number }: OfFastener) => `Loosen ${number} all the way.`,
    fitNew: 'Fit a new one, and throw the old one away.',
    beginAgain: ({ number }: OfFastener) =>
      `Begin ${number} again from pass 1. What was pulled on it no longer counts.`,
  },

  /** Between two passes, where the procedure waits. */
  wait: {
    title: 'Waiting time',
    left: ({ seconds }: { readonly seconds: number }) => `${clock(seconds)} to wait`,
    over: '✓ The wait is over.',
    goOnBefore: 'Continue before it is over …',
    why: 'Why is the wait shortened?',
    shorten: 'Continue now',
    usualReasons: ['Waited elsewhere already', 'On the foreman’s instruction'],
  },

  overTime: {
    goOn: 'Close the joint anyway …',
    why: 'The open time of the sealant is over. Why is the joint closed anyway?',
    closed: 'Pull it with this reason',
    usualReasons: ['Sealant looked at, still wet', 'The maker of the sealant allows longer'],
  },

  restart: {
    offer: 'Begin again …',
    offerInstead: 'Begin again instead …',
    whole: 'Loosen every fastener, the last one first. Then begin again with the first pass.',
    /** Steps that are to be done again, the one to undo first first. */
    opensJoint: ({ steps }: { readonly steps: readonly string[] }) =>
      `The joint opens and its sealant does not seal twice. Undone with it: ${steps.join(', ')}. Clean the joint and lay a new bead.`,
    from: ({ pass }: { readonly pass: number }) =>
      `What was pulled in pass ${pass} and after it no longer counts, and is pulled again.`,
    beginWith: 'Begin with',
    pass: passAndKind,
    why: 'Begin again: why?',
    beginAgain: ({ pass }: { readonly pass: number }) => `Begin again with pass ${pass}`,
    usualReasons: ['Sealant open too long', 'The pass was interrupted', 'Part has to come off again'],
  },

  angle: turnByAngle,
  wrench: wrenchForPull,
  explained: pullExplained,
}
