import { engineParts } from '../engine-parts.ts'

const { halves, standardSize } = engineParts
const sources = { marks: 'marks', readings: 'readings' }

interface AtPosition {
  readonly position: string
}
interface AtHalf extends AtPosition {
  readonly half: keyof typeof halves
}
interface OfPart {
  readonly part: string
}
interface OfStep {
  readonly step: string
}

/** What a person is asked to say in their own words, by what it is for. */
const reasons = {
  'readings-withdrawn': ({ position }: AtPosition) => `why the readings of ${position} do not count`,
  'undersize-declared': (facts: {
    readonly positions: readonly string[]
    readonly undersize: string | null
  }) => `why ${facts.positions.join(', ')} count as ${facts.undersize ?? standardSize}`,
  'basis-decided': ({ by, position }: AtPosition & { readonly by: keyof typeof sources }) =>
    `why the ${sources[by]} count at ${position}`,
  'shells-pinned': ({ position }: AtPosition) => `why these shells are used at ${position}`,
  'other-shell': ({ position, half, grade }: AtHalf & { readonly grade: string }) =>
    `why ${position}, ${halves[half]} half, gets ${grade}`,
  'half-taken-out': ({ position, half }: AtHalf) => `why the ${halves[half]} half of ${position} comes out`,
  'part-taken-out': ({ step }: OfStep) => `why “${step}” is undone`,
  'limit-accepted': ({ name, place }: { readonly name: string; readonly place: string }) =>
    `why ${name}, ${place}, is accepted outside its limits`,
  'crank-binds': (_: None) => 'where the crank binds, and what was felt',
  'turns-again': (_: None) => 'what was done since the crank did not turn freely',
  'turning-accepted': (_: None) => 'why the turning torque is accepted outside its limits',
  'turning-voided': (_: None) => 'why the reading does not count',
  written: ({ place }: { readonly place: string }) => `what is there, “${place}”`,
  'place-undone': ({ place }: { readonly place: string }) => `why ${place} does not count`,
  'rings-taken-off': ({ piston }: { readonly piston: string }) => `why the rings of ${piston} come off`,
  'measured-part-replaced': (_: None) => 'what was replaced or worked on',
  'new-each-time': ({ part }: OfPart) => `why “${part}” is used again although it is to be new each time`,
  'used-up': ({ part }: OfPart) => `why “${part}” is used again beyond its limit`,
  'ticks-removed': ({ part }: OfPart) => `why “${part}” does not count as fitted`,
  'part-left-over': ({ part }: OfPart) => `why “${part}” is left over`,
  'photo-skipped': ({ step }: OfStep) => `why there is no photo in “${step}”`,
  'photo-withdrawn': (_: None) => 'why the photo is withdrawn',
  'revision-taken-over': (_: None) => 'why the newer revision is taken over',
  'step-redone': ({ step }: OfStep) => `why “${step}” is done again`,
  'step-skipped': ({ step }: OfStep) => `why “${step}” is skipped`,
  'skip-taken-back': ({ step }: OfStep) => `why “${step}” is done after all`,
  'bead-wiped-off': (_: None) => 'why the bead is wiped off',
  'step-sent-back': ({ step }: OfStep) => `why “${step}” is to be done again`,
  addition: (_: None) => 'what is to be added to the build',
  'added-late': (_: None) => 'why it is added now',
  'build-voided': (_: None) => 'why the build is void',
  'taken-over': (_: None) => 'why the build is taken over',
  'fork-settled': (_: None) => 'why this line counts',
  problem: (_: None) => 'what the problem is',
  'flag-answered': (_: None) => 'what was done about it',
  'out-of-order': (facts: { readonly fastener: string | null; readonly next: string | null }) =>
    `why ${facts.fastener ?? 'this'} comes before ${facts.next ?? 'what is next'}`,
  'wait-shortened': (_: None) => 'why the wait is shortened',
  'over-time': (_: None) => 'why the joint is closed although the open time is over',
  'pull-taken-back': (_: None) => 'why the pull is taken back',
  'pull-read-again': (_: None) => 'why it was read again',
  'fastener-loosened': ({ fastener }: { readonly fastener: string }) =>
    `why fastener ${fastener} is loosened`,
  'run-restarted': (_: None) => 'why it begins again',
  'own-order': (_: None) => 'why another order than the maker’s is used',
}

type None = Record<never, never>

/** What is asked for, with the facts that its text needs. */
export type ReasonFor = {
  readonly [What in keyof typeof reasons]: { readonly what: What } & Parameters<(typeof reasons)[What]>[0]
}[keyof typeof reasons]

/** As a clause: `why the bead is wiped off`. */
export function reasonText(facts: ReasonFor): string {
  const text = reasons[facts.what] as (facts: ReasonFor) => string
  return text(facts)
}
