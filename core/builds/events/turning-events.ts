import { z } from 'zod'
import { readWith } from '../../instrument/index.ts'
import { reading } from '../../tightening/index.ts'

const version = z.literal(1)
const reason = z.string().trim().min(1).max(600)
const ofStep = { version, step: z.string() }

/** What it took to turn the crank, in a step of that kind. */
export const turningEvents = [
  z.strictObject({
    type: z.literal('crank-turned'),
    ...ofStep,
    /** Null where the manual gives no number and it was turned by hand. */
    reading: reading.nullable(),
    readWith: readWith.optional(),
    /** Since the last one; null where nothing was read before, and by hand. */
    rise_Nm: z.number().nullable(),
    verdict: z.enum(['free', 'binds', 'within', 'under', 'over']),
    /** What was felt, or was done since the time before; may be empty. */
    note: z.string().max(600),
  }),
  /** What is outside its limits stays as it is. */
  z.strictObject({ type: z.literal('turning-accepted'), ...ofStep, reason }),
  /** It does not count any more: something under it is changed. */
  z.strictObject({ type: z.literal('turning-voided'), ...ofStep, reason }),
] as const

export type TurningEvent = z.output<(typeof turningEvents)[number]>
