import type { RichText } from '../../rich.ts'
import { faultDrill } from './fault-drill.ts'
import { measureDrill } from './measure-drill.ts'
import { mirrorDrill } from './mirror-drill.ts'
import type { Split } from '../../formats/index.ts'
import { namesOf } from '../halves.ts'

const names = {
  order: 'Order',
  chart: 'Chart',
  values: 'Values and wrench',
  angle: 'Angle',
  mirror: 'Mirror',
  measure: 'Measure',
  fault: 'Find the fault',
}
type Drill = keyof typeof names

const times = (count: number, what: string) => `${count} ${what}${count === 1 ? '' : 's'}`
const clock = (seconds: number) =>
  seconds < 60 ? `${Math.round(seconds)} s` : `${Math.floor(seconds / 60)} min ${Math.round(seconds % 60)} s`

/** Practice: drills on the engines of the library, away from any build. */
export const practice = {
  title: 'Practice',
  back: 'Back to practice',
  banner: 'PRACTICE',
  engine: 'Engine',
  none: 'This engine has nothing to practise: no passes and no chart.',
  keptFor: ({ name }: { readonly name: string }) => `What ${name} practises is kept on this bench.`,
  notKept: ({ name }: { readonly name: string }) =>
    (name === '' ? 'Nobody is at the bench' : `${name} is not in the list of people`) +
    ': rounds can be done and are not kept.',

  today: 'Today, about ten minutes',
  nothingToday: 'Done for today.',
  todays: (of: { readonly engine: string; readonly drill: Drill; readonly minutes: number }) =>
    `${names[of.drill]}: ${of.engine}, ${of.minutes} min`,
  drillsOf: ({ engine }: { readonly engine: string }) => `Drills of ${engine}`,
  names,
  abouts: {
    order: 'The order of a pass, on the drawing without its numbers.',
    chart: 'The shells for marks drawn by chance, by the printed chart.',
    values: 'The torque of a pass, its unit, the wrench for it and its setting.',
    angle: 'A turn judged by eye, with the wedge hidden.',
    mirror: 'Shells and bolt numbers of a case that lies upside down or turned.',
    measure: 'A feeler gauge, a plastic strip, micrometers and a bore gauge, read to the last mark.',
    fault: 'A finished build with one thing wrong, on drawing and sheet.',
  },
  notOffered: {
    order: 'no pass goes over fasteners',
    chart: 'it has no chart',
    values: 'no pass has a torque',
    angle: 'no pass turns by an angle',
    mirror: 'it has one place only to lay a shell or to find a bolt',
    measure: 'there is nothing to measure',
    fault: 'nothing that can be wrong shows on drawing and sheet',
  } satisfies Record<Drill, string>,
  without: ({ drill, reason }: { readonly drill: Drill; readonly reason: string }) =>
    `Not for this engine: ${names[drill]}, because ${reason}.`,
  begin: ({ drill }: { readonly drill: Drill }) => `Begin ${names[drill]}`,
  never: 'Not done yet.',
  standing: (of: {
    readonly rounds: number
    readonly faultless: number
    readonly dueAt: string
  }): RichText => [
    `${times(of.rounds, 'round')}, ${of.faultless} without an error. Again on `,
    { whole: `${of.dueAt}.` },
  ],

  errors: 'Errors by place',
  errorsShown: 'Marked: errors in the last ten rounds. Filled: asked for, without an error.',
  noErrors: 'No errors in the last rounds.',
  errorsAt: (of: { readonly errors: number; readonly asked: number }) =>
    `${times(of.errors, 'error')}, asked ${times(of.asked, 'time')}`,

  minimum: 'Rounds of each drill without an error before a person leads a build of this engine',
  noMinimum: 'none',
  minimumBy:
    'A mechanic from the list of people sets it, with a PIN where mechanics have one. It is shown when a build is started and bars nobody.',
  ready: {
    title: 'Who is ready for this engine',
    person: 'Person',
    verdict: 'Minimum',
    yes: 'reached',
    notYet: 'not yet',
    meaning: 'Rounds without an error, and the day of the last one.',
  },
  missing: (of: {
    readonly name: string
    readonly least: number
    readonly missing: readonly { readonly drill: Drill; readonly faultless: number }[]
  }) =>
    `The shop wants ${times(of.least, 'round')} of each drill without an error before a person leads a build of this engine. ` +
    `${of.name} has ` +
    of.missing.map(({ drill, faultless }) => `${faultless} of ${names[drill]}`).join(', ') +
    '. The build can be started anyway.',

  // On the drawing
  fastener: (of: { readonly where: string; readonly letter: string | null; readonly isPulled: boolean }) =>
    `Fastener, ${of.where}${of.letter === null ? '' : ` ${of.letter}`}: ${of.isPulled ? 'pulled' : 'not pulled'}`,

  // In a drill
  soFar: (of: { readonly done: number; readonly of: number }) => `${of.done} of ${of.of}`,
  right: 'Right.',
  wrong: 'Not this one.',
  question: 'What is asked',
  check: 'Check',
  onward: 'Next',

  order: {
    help: 'The next one is shown after',
    afterErrors: ({ errors }: { readonly errors: number }) => times(errors, 'error'),
    tap: 'Which fastener is next? Tap it.',
    /** `cap` where it goes cap by cap, else null. */
    pass: (of: {
      readonly procedure: string
      readonly cap: string | null
      readonly pass: string
    }): RichText => [`${of.procedure}${of.cap === null ? '' : `, cap ${of.cap}`}: `, { strong: of.pass }],
    complete: 'This pass is complete',
    whatNext: 'What comes next?',
    done: 'The procedure is done',
    whole: ({ name, target }: { readonly name: string; readonly target: string | null }) =>
      target === null ? name : `${name}, ${target}`,
    mistakes: {
      'already-pulled': ({ number }: { readonly number: string }) =>
        `${number} is pulled already in this pass.`,
      'not-in-pass': ({ number }: { readonly number: string }) =>
        `${number} is not in this pass: it goes over some of the fasteners only.`,
      'is-complete': 'All of this pass are pulled. Say so.',
      'not-complete': ({ left }: { readonly left: number }) =>
        `The pass is not complete: ${times(left, 'fastener')} still to pull. A bolt that is missed in one pass is turned too far in the next.`,
      'wrong-pass':
        'Another pass comes first. Passes raise the load step by step, so that the faces close evenly.',
    },
    reasons: {
      'middle-first': ({ number }: { readonly number: string }) =>
        `Not ${number} yet: this order goes from the middle outwards. What is trapped in the middle cannot flatten any more.`,
      apart: ({ number }: { readonly number: string }) =>
        `Not ${number} yet: it lies beside the last one. Neighbours pulled one after the other take load from each other.`,
      'as-given': ({ number }: { readonly number: string }) =>
        `Not ${number} yet: the order of the spec goes elsewhere first.`,
    },
    consequence: (of: {
      readonly early: string
      readonly number: string
      readonly right: string
      readonly wrong: string
    }) =>
      `With a gasket in the joint and ${of.early} pulled now, ${of.number} would hold ${of.wrong} kN at the end of the pass, instead of ${of.right} kN.`,
    hardlyAny:
      'In the model of this joint the loads at the end of the pass hardly change; in the order they are still checked.',
    picture: 'What each fastener would hold more or less at the end of the pass, in kN',
    showsNext: ({ number }: { readonly number: string }) => `Next is ${number}, in blue.`,
  },

  chart: {
    marks: (of: {
      readonly position: string
      readonly housing: string
      readonly housingMark: string
      readonly journal: string
      readonly journalMark: string
    }): RichText => [
      { strong: `${of.position}: ` },
      `${of.housing} `,
      { strong: of.housingMark },
      `, ${of.journal} `,
      { strong: of.journalMark },
    ],
    which: 'Which shells?',
    chart: (of: { readonly fit: string; readonly position: string; readonly split: Split }) =>
      `Chart of ${of.fit}, ${of.position}: ${namesOf(of.split).join(' / ')}`,
    /** Of the chart: down its side, and along its head. */
    sides: ({ housing, journal }: { readonly housing: string; readonly journal: string }) =>
      `${housing} ↓ ${journal} →`,
    cell: ({ upper, lower }: { readonly upper: string; readonly lower: string }) => `${upper} / ${lower}`,
    noCell: '–',
    wrongHalves: ({ halves }: { readonly halves: readonly string[] }) =>
      `Not what the chart has for these marks: ${halves.join(' and ')}.`,
    wouldBe: ({ clearance, allowed }: { readonly clearance: string; readonly allowed: string }) =>
      `These shells would leave ${clearance}; ${allowed} is allowed.`,
    chartLeaves: ({ clearance }: { readonly clearance: string }) => `The chart’s shells leave ${clearance}.`,
    noSizes: 'The spec gives no sizes for these: the chart alone decides.',
  },

  values: {
    wrenches: {
      small: 'Small wrench, 5 to 25 N·m',
      inch: 'Inch wrench, 30 to 250 lbf·in',
      middle: 'Middle wrench, 20 to 110 N·m',
      foot: 'Foot wrench, 20 to 150 lbf·ft',
      large: 'Large wrench, 60 to 330 N·m',
      adapter: 'crowfoot of 60 mm',
    },
    practiceRack: 'The shop has listed no wrenches: these are for practice.',
    asks: {
      value: ({ pass, number }: { readonly pass: string; readonly number: string }) =>
        `${pass}: what is fastener ${number} pulled to?`,
      unit: ({ torque, unit }: { readonly torque: string; readonly unit: string }) =>
        `${torque} is asked for, and the wrench has a scale in ${unit}. What is it set to?`,
      wrench: ({ torque }: { readonly torque: string }) => `Which of these can be used for ${torque}?`,
      setting: ({ setup, torque }: { readonly setup: string; readonly torque: string }) =>
        `${setup}: what is it set to for ${torque} at the fastener?`,
    },
    pass: ({
      procedure,
      pass,
      kind,
    }: {
      readonly procedure: string
      readonly pass: number
      readonly kind: string
    }) => `${procedure}, pass ${pass}, ${kind}`,
    scale: ({ number, unit }: { readonly number: string; readonly unit: string }) => `${number} ${unit}`,
    noneOfThem: 'None of these',
    someFits: 'One of these can be used: compare the value with the range of each.',
    gives: (of: {
      readonly value: string
      readonly byValue: string
      readonly times: string
      readonly target: string
    }) =>
      `${of.value} would give the fastener ${of.byValue}: ${of.times} times the ${of.target} that are asked for.`,
  },

  angle: {
    ask: ({ number, angle }: { readonly number: string; readonly angle: string }): RichText => [
      `Turn fastener ${number} by `,
      { strong: angle },
      '.',
    ],
    room: ({ room, grip }: { readonly room: number | null; readonly grip: string }) =>
      room === null
        ? 'Nothing is in the way of the handle.'
        : `The handle has room for ${room}°. Grip again with ${grip}.`,
    hint: 'Drag the knob, or use the arrow keys: 5° each, 1° with Shift.',
    by: ({ degrees }: { readonly degrees: number }) => (degrees < 0 ? `↺ ${-degrees}°` : `↻ ${degrees}°`),
    grip: 'Grip again',
    here: 'It is turned',
    atEnd: 'The handle is at the end of its room.',
    handle: ({ clock }: { readonly clock: number }) => `Handle at about ${clock} o’clock`,
    judged: (of: {
      readonly reached: string
      readonly off: string
      readonly least: string
      readonly most: string
    }) => `${of.reached}: ${of.off}. ${of.least} to ${of.most} is allowed.`,
    off: ({ degrees }: { readonly degrees: number }) =>
      degrees === 0 ? 'to the degree' : `${Math.abs(degrees)}° too ${degrees > 0 ? 'far' : 'little'}`,
    how: 'Turned',
    hows: { screen: 'here', own: 'with a wrench of your own' },
    ownWrench: 'Set a bolt in a vice, turn it by this angle by eye, then read it off a protractor.',
    protractorReads: 'The protractor reads, in °',
  },

  mirror: mirrorDrill,

  fault: faultDrill,

  measure: measureDrill,
  dryRun: {
    name: 'Dry run',
    about:
      'A whole build of this engine on the real screens, without an engine. It stands in no list and no record, and is gone when the window is closed or loaded again.',
    start: 'Start a dry run',
    number: 'PRACTICE',
    build: 'Dry run',
    nobody: 'Nobody',
    band: 'PRACTICE: nothing here is recorded',
    end: 'End the dry run',
    howItWent: ({ engine }: { readonly engine: string }) => `How the dry run of ${engine} went`,
    notFinished: 'It was ended before the build was finished, so it does not count as a round.',
    counted:
      'An error is an answer that was refused, a reading out of its limits, a shell other than the chart’s, and whatever was taken back or done again.',
  },

  result: {
    title: 'Done',
    faultless: 'No errors.',
    errors: ({ errors, asked }: { readonly errors: number; readonly asked: number }) =>
      `${times(errors, 'error')} in ${asked} questions.`,
    took: ({ seconds, fastest }: { readonly seconds: number; readonly fastest: number | null }) =>
      `It took ${clock(seconds)}.${fastest === null ? '' : ` The fastest without an error so far: ${clock(fastest)}.`}`,
    speedLater: 'Time counts once a round has no error.',
    again: ({ dueAt }: { readonly dueAt: string }) => `Again on ${dueAt}.`,
    another: 'Another round',
  },
}
