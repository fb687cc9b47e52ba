import { counted } from '../formats.ts'

export interface NextPull {
  /** As on the drawing; null for what is done between passes. */
  readonly fastener: string | null
  readonly pass: number
  readonly passes: number
}

/** The first page: engines to start from, builds to continue. */
export const engines = {
  program: 'Bedplate',
  purpose: 'Shells, bolts and record for the bottom end of an engine.',
  wrenches: 'Wrenches',
  people: 'People',
  otherPages: 'Other pages',
  record: 'Record and backups',
  onTheBench: 'On the bench',
  noBuilds: 'Nothing yet. Pick an engine to start a build.',
  /** What a bench without builds of its own offers. The names and what was typed become entries of the build. */
  sample: {
    offer:
      'Or look round first, in a demo build. One is half-way done: its shells are chosen and fitted, and its rod bolts ' +
      'are in their last pass. One is finished: look at its sheet, its clamp map and its line in the archive. ' +
      'Each is kept in this bench’s record, marked as a demo, and can be made void like any other.',
    take: { 'half-way': 'Try it', finished: 'See a finished one' },
    offerGuided: 'Or put a demo engine together from its first step, with a short note beside each.',
    beginGuided: 'Begin a guided first build',
    guided: 'Demo: guided first build',
    name: 'Demo: ferry, port engine',
    machinist: 'Mara Holt (demo)',
    mechanic: 'Jonas Reet (demo)',
    problem: 'Scored under the head of R4',
    answer: 'Dressed the face with a stone',
    whole: {
      name: 'Demo: irrigation, pump 3',
      problem: 'Thread of 5 felt rough by hand',
      answer: 'Taken out, thread of the block chased, bolt oiled again',
      withoutPhoto: 'Demo: nobody was there to take one',
    },
  },
  /** What the line of a build says of it. */
  buildLine: (facts: { readonly engine: string; readonly demo: boolean; readonly serial: string }) =>
    `${facts.engine}${facts.demo ? ', demo' : ''}${facts.serial ? ` · serial ${facts.serial}` : ''}`,
  lastEntry: ({ at }: { readonly at: string }) => `last entry ${at}`,
  /** Where an open build stands, in as many parts as there is something to say of. */
  standing: {
    step: ({ place, of, name }: { readonly place: number; readonly of: number; readonly name: string }) =>
      `Step ${place} of ${of} · ${name}`,
    allStepsDone: 'All steps done, not signed off yet',
    awaitsSecond: 'waits for a second person',
    next: ({ fastener, pass, passes }: NextPull) =>
      `${fastener === null ? '' : `next ${fastener}, `}pass ${pass} of ${passes}`,
    paused: ({ reason }: { readonly reason: string }) => (reason ? `Paused: ${reason}` : 'Paused'),
    openProblems: ({ problems }: { readonly problems: number }) =>
      `${counted(problems, 'open problem', 'open problems')} to answer`,
  },
  startOn: 'Start on an engine',
  demo: 'demo',
  /** Before the sentence that says why. */
  cannotBeBuilt: 'Cannot be built:',
  overruled:
    'The maker’s current manual, local rules and a qualified person overrule this program. Demo engines are ' +
    'invented: never build a real engine from one.',

  newBuildOf: ({ engine }: { readonly engine: string }) => `New build of ${engine}`,
  buildName: 'Name of this build',
  buildNameExample: 'for example: Pump 4, second rebuild',
  serial: 'Serial number, if it has one',
  person: 'Who is at the bench',
  personExample: 'your name, as it goes on the sheet',
  listOfPeople: 'From the list of people',
  apprentice: 'An apprentice builds this: chosen steps need a second person',
  lookedAt: ({ steps }: { readonly steps: readonly string[] }) =>
    `A mechanic from the list checks: ${steps.join(', ')}.`,
  noneLookedAt: 'The spec of this engine marks no step for a second person.',
  /** Before the sentence that says what. */
  doubtful: 'Doubtful in this spec:',
  start: 'Start this build',
}
