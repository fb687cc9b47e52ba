import { fixed } from '../formats.ts'

export interface OfStep {
  /** Counted from 1. */
  readonly place: number
  readonly steps: number
  /** The step's name in the spec. */
  readonly name: string
}
export interface OfPass {
  /** Counted from 1. */
  readonly pass: number
  readonly passes: number
}

/** The frame of an open build: the strip of steps, the sheet and its corners, the title block. */
export const buildWindow = {
  stepsOfBuild: 'Steps of this build',
  allBuilds: 'All builds',
  benchView: 'Bench view',

  stepPlace: ({ place, steps, name }: OfStep) => `Step ${place} of ${steps} · ${name}`,
  passPlace: ({ pass, passes }: OfPass) => `pass ${pass} of ${passes}`,
  allDone: 'All steps are done',
  allSteps: 'All steps',
  sheet: 'Sheet',
  /** Beside each step of the list. */
  stepStates: {
    done: 'done',
    open: 'can be done now',
    unconfirmed: 'waits for a second person',
    /** The names of the steps that come first. */
    waiting: ({ after }: { readonly after: readonly string[] }) => `after ${after.join(', ')}`,
    again: 'to be done again',
    againLater: ({ after }: { readonly after: readonly string[] }) =>
      `to be done again, after ${after.join(', ')}`,
  },

  drawing: 'Drawing',
  timesLarger: ({ times }: { readonly times: number }) => `${fixed(times, 1)} × · whole sheet`,
  demo: 'DEMO',
  whatThisIs: 'What this is',
  notes: 'Notes on the drawing',

  engine: 'engine',
  build: 'build',
  atTheBench: 'at the bench',
  nobody: 'nobody',
  pinWanted: ({ person }: { readonly person: string }) => `${person}, PIN wanted`,
  saved: 'saved',
  /** In its place in a dry run, where nothing is saved. */
  confirmed: 'practice',
  saving: 'saving …',
  nothingSaved: 'nothing yet',
  units: 'units',
}
