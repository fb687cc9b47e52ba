import { z } from 'zod'
import { nothing } from './problem-message.ts'

const personLine = z.strictObject({
  id: z.uuid(),
  name: z.string(),
  role: z.enum(['mechanic', 'apprentice']),
  hasBadge: z.boolean(),
  hasPin: z.boolean(),
  /** Whether entries are taken under this name now: at once without a PIN, else after `people.enter`. */
  present: z.boolean(),
})
export type PersonLine = z.output<typeof personLine>

const people = z.array(personLine)
const pin = z.string().max(40)

/** Once a mechanic has a PIN, the list of people is changed only with a mechanic's PIN. */
const by = z.strictObject({ person: z.uuid(), pin }).nullable()

/** Requests about who works at this bench. A name that is not in the list can always be typed, and needs no PIN. */
export const peopleRequests = {
  'people.list': { input: nothing, output: people },
  /** Adds a person, or changes the one with this id. What is absent of badge and PIN stays; null takes it away. */
  'people.keep': {
    input: z.strictObject({
      id: z.uuid().nullable(),
      name: z.string().max(200),
      role: z.enum(['mechanic', 'apprentice']),
      badge: z.string().max(200).nullable().optional(),
      pin: pin.nullable().optional(),
      by,
    }),
    output: people,
  },
  'people.remove': { input: z.strictObject({ person: z.uuid(), by }), output: people },
  /**
   * Somebody comes to the bench: chosen from the list, or by what the badge types. Refuses `pin-wanted` where there is a
   * PIN and none is sent.
   */
  'people.enter': {
    input: z.strictObject({
      who: z.union([z.strictObject({ person: z.uuid() }), z.strictObject({ badge: z.string().max(200) })]),
      pin: pin.nullable(),
    }),
    output: personLine,
  },
  /** Entries under this name need the PIN again. */
  'people.leave': { input: z.strictObject({ person: z.uuid() }), output: people },
} as const
