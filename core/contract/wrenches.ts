import { z } from 'zod'
import { torqueUnits } from '../quantity/index.ts'
import { wrench } from '../tightening/index.ts'
import { nothing } from './problem-message.ts'

const typed = z.string().max(40)

/** A wrench as its owner writes it down, values with their units: what is kept and sent. `wrench` turns it into numbers. */
export const writtenWrench = z
  .strictObject({
    id: z.string().max(40),
    name: z.string().max(80),
    number: typed.optional(),
    range: z.strictObject({ least: typed, most: typed }),
    statedMinimum: typed.optional(),
    scale: z.strictObject({ unit: z.enum(torqueUnits), step: z.number() }),
    made: z.strictObject({ type: z.enum(['I', 'II']), class: z.string().max(1) }).optional(),
    length: typed.optional(),
    adapters: z
      .array(
        z.strictObject({ id: z.string().max(40), name: z.string().max(80), offset: typed, angle: typed }),
      )
      .max(20),
    calibration: z.strictObject({ on: z.string().max(10), cycles: z.int() }).optional(),
  })
  .superRefine((written, context) => {
    const read = wrench.safeParse(written)
    for (const { path, message } of read.error?.issues ?? [])
      context.addIssue({ code: 'custom', path: [...path], message })
  })
export type WrittenWrench = z.output<typeof writtenWrench>

const wrenchList = z.array(writtenWrench)

/** The shop's own wrenches. */
export const wrenchRequests = {
  'wrenches.list': { input: nothing, output: wrenchList },
  /** Adds a wrench, or puts it in the place of the one with its id. */
  'wrenches.keep': { input: z.strictObject({ wrench: writtenWrench }), output: wrenchList },
  'wrenches.remove': { input: z.strictObject({ id: z.string().max(40) }), output: wrenchList },
} as const
