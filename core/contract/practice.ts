import { z } from 'zod'
import { drillKinds, roundKinds } from '../practice/index.ts'

const drill = z.enum(drillKinds)
const kind = z.enum(roundKinds)
const engine = z.string().max(200)
const name = z.string().max(200)

/** The longest that a round counts, in seconds: a person who is called away may come back the next day. */
const mostSeconds = 24 * 3600
/** The most that a shop can want. */
const mostMinimum = 50

const tally = z
  .array(z.strictObject({ about: z.string().max(200), errors: z.int().min(0).max(1000) }))
  .min(1)
  .max(5000)

const progress = z.strictObject({
  engine,
  drill: kind,
  rounds: z.int(),
  faultless: z.int(),
  fastest: z.number().nullable(),
  lastAt: z.iso.datetime(),
  faultlessAt: z.iso.datetime().nullable(),
  dueAt: z.iso.datetime(),
  places: z.array(z.strictObject({ about: z.string(), asked: z.int(), errors: z.int() })).readonly(),
})

const standing = z.strictObject({
  /** Whether what this person practises is kept: only for those in the list of people. */
  isKept: z.boolean(),
  progress: z.array(progress).readonly(),
  /** By engine, how many rounds without an error of each drill the shop wants before a person leads a build. */
  minimums: z.record(z.string(), z.int()),
})
export type PracticeStanding = z.output<typeof standing>

const readiness = z.strictObject({
  least: z.int(),
  missing: z.array(z.strictObject({ drill, faultless: z.int() })).readonly(),
})
export type Readiness = z.output<typeof readiness>

const readyPeople = z.strictObject({
  least: z.int(),
  drills: z.array(drill).readonly(),
  people: z
    .array(
      z.strictObject({
        name,
        done: z
          .array(
            z.strictObject({ drill: kind, faultless: z.int(), faultlessAt: z.iso.datetime().nullable() }),
          )
          .readonly(),
        isReady: z.boolean(),
      }),
    )
    .readonly(),
})
export type ReadyPeople = z.output<typeof readyPeople>

/** Requests about what people practise. Nothing of it is part of the record of builds. */
export const practiceRequests = {
  'practice.read': { input: z.strictObject({ person: name }), output: standing },
  /** A round that was gone through to its end. Refuses `practice-not-kept` for a name that is not in the list. */
  'practice.keep': {
    input: z.strictObject({
      person: name,
      round: z.strictObject({ engine, drill: kind, tally, seconds: z.number().min(0).max(mostSeconds) }),
    }),
    output: standing,
  },
  /** 0 takes the minimum away. Refuses `practice-led-by-mechanic`. */
  'practice.set-minimum': {
    input: z.strictObject({ person: name, engine, least: z.int().min(0).max(mostMinimum) }),
    output: standing,
  },
  /** What of the shop's minimum is missing before a person leads a build of an engine; null where none is set. */
  'practice.readiness': {
    input: z.strictObject({ person: name, engine }),
    output: readiness.nullable(),
  },
  /** How everybody in the list stands with the drills of an engine, for the leader of the shop. Refuses as `practice.set-minimum`. */
  'practice.people': {
    input: z.strictObject({ person: name, engine }),
    output: readyPeople,
  },
} as const
