import { z } from 'zod'
import { gapText, extentText, idText, shownName, placeText, sizeText } from './text.ts'

const common = { id: idText, name: shownName, face: idText, at: placeText }
/** How far below the face it stands; flush with it at 0. Left out where nothing is said of it. */
const depth = gapText.optional()
/** Round a shaft, its lip towards the oil inside or towards what is kept out. */
const seal = { ...common, diameter: sizeText, shaft: sizeText, lip: z.enum(['inwards', 'outwards']), depth }

/** A part that sits in a face of the case, beside its fasteners and dowels. */
export const facePart = z.discriminatedUnion('kind', [
  z.strictObject({ ...seal, kind: z.literal('seal') }),
  /** Its two halves meet at the joint of the case, with sealant at their ends. */
  z.strictObject({ ...seal, kind: z.literal('two-piece-seal') }),
  /** A plug that is driven or screwed in. */
  z.strictObject({ ...common, kind: z.literal('plug'), diameter: sizeText, depth }),
  /** Lets oil through one way: into the face, or out of it. */
  z.strictObject({
    ...common,
    kind: z.literal('check-valve'),
    diameter: sizeText,
    flow: z.enum(['inwards', 'outwards']),
    depth,
  }),
  /** `size` along and across. */
  z.strictObject({ ...common, kind: z.literal('strainer'), size: extentText }),
])

export type FacePart = z.output<typeof facePart>
