import { z } from 'zod'
import { advise } from './advice.ts'
import { dangerKinds } from './danger.ts'
import { measure } from './measure.ts'
import { placedList } from './placed.ts'
import { turning } from './turning.ts'
import { gapText, idText, sentenceText, shownName } from './text.ts'

const common = {
  id: idText,
  /** Two or three words: it stands in the strip of steps. */
  name: shownName,
  /** Steps that must be done before this one. */
  after: z.array(idText).max(100).default([]),
  note: sentenceText.optional(),
  /** What can hurt while it is done, said before its work with the signal word of its kind. */
  dangers: z.array(z.enum(dangerKinds)).max(12).optional(),
  /** Somebody else must have looked at it before the build continues: where an apprentice builds, or in every build. */
  secondPerson: z.enum(['for-an-apprentice', 'always']).optional(),
  /** The build may go on without it, where a person says why. */
  mayBeSkipped: z.literal('with-a-reason').optional(),
}

/** Work at a face of the case. */
const atFace = {
  ...common,
  face: idText.optional(),
  /** What the drawing shows lying in the case: the crank, in the steps in which it lies open to the eye. */
  shows: z.literal('crank').optional(),
}

/** Of a step that is done place by place. */
const byPlace = { ...atFace, places: placedList }

/** One thing to do on the way from the bare case to the closed and proven one. */
export const step = z.discriminatedUnion('kind', [
  z.strictObject({
    ...common,
    kind: z.literal('note-marks'),
    fit: idText,
    part: z.enum(['housing', 'journal']),
  }),
  z.strictObject({ ...common, kind: z.literal('choose-shells'), fit: idText }),
  z.strictObject({ ...common, kind: z.literal('fit-shells'), fit: idText }),
  z.strictObject({
    ...atFace,
    kind: z.literal('fit-part'),
    instruction: sentenceText,
  }),
  z.strictObject({ ...common, kind: z.literal('lay-bead'), bead: idText }),
  z.strictObject({ ...common, kind: z.literal('run-procedure'), procedure: idText }),
  /** Measured at several places against limits, each reading by itself. */
  z.strictObject({
    ...atFace,
    kind: z.literal('measure-limits'),
    measures: z.array(measure).min(1, advise('measures-none')).max(30),
  }),
  /** Each ring in its bore and groove, against the limits of the set. */
  z.strictObject({ ...common, kind: z.literal('measure-rings'), face: idText.optional(), rings: idText }),
  /** The rings on each piston, the right side up and their gaps turned to where they belong. */
  z.strictObject({ ...common, kind: z.literal('fit-rings'), face: idText.optional(), rings: idText }),
  /** Oiled where it says so, and dry where it says so. */
  z.strictObject({ ...byPlace, kind: z.literal('lubricate') }),
  z.strictObject({ ...byPlace, kind: z.literal('clean') }),
  /** Which way a part lies: front, side, number, groove, lip. */
  z.strictObject({ ...byPlace, kind: z.literal('orient') }),
  /** Marks that must meet, and meet again after so many turns of the crank. */
  z.strictObject({
    ...byPlace,
    kind: z.literal('align'),
    againAfterTurns: z.int().min(1).max(20).optional(),
  }),
  /** Parts that go in one by one: pins, circlips. */
  z.strictObject({ ...byPlace, kind: z.literal('fit-places') }),
  /** Something is read and written down. */
  z.strictObject({ ...byPlace, kind: z.literal('note') }),
  /** A photo of something, before it is covered; where there is no camera, a reason why there is none. */
  z.strictObject({
    ...atFace,
    kind: z.literal('photo'),
    /** What is to be seen on it. */
    instruction: sentenceText,
    /** The part of the list that it shows. */
    part: idText.optional(),
  }),
  /** The crank is turned by hand, and what it takes is read where the manual gives limits; else it must turn freely. */
  z.strictObject({
    ...atFace,
    kind: z.literal('turn'),
    instruction: sentenceText,
    turning: turning.optional(),
  }),
  /** What is left over is counted: every part of the list is in, or it is said where it is. */
  z.strictObject({ ...common, kind: z.literal('count') }),
  z.strictObject({
    ...atFace,
    kind: z.literal('check'),
    instruction: sentenceText,
    /** What the gauge must show; without it the answer is good or not good. */
    reading: z.strictObject({ least: gapText, most: gapText }).optional(),
    /** What the reading is, where the spec has a table or limits for it: the crank's end float, a rod's side clearance. */
    gap: z.enum(['end-float', 'rod-side']).optional(),
  }),
])

export type Step = z.output<typeof step>
export type StepKind = Step['kind']
export type PlacedStep = Extract<Step, { readonly places: unknown }>

/** Whether a step is done place by place. */
export function isPlacedStep(step: Step): step is PlacedStep {
  return 'places' in step
}
