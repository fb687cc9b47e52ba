import { z } from 'zod'

/** A fault on its way to the person: the code for programs, the path into the input, the sentence for people. */
export const problemMessage = z.strictObject({ code: z.string(), path: z.string(), sentence: z.string() })
export type ProblemMessage = z.output<typeof problemMessage>

/** The input of a request that asks for nothing in particular. */
export const nothing = z.strictObject({})
