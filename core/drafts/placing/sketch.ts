import { z } from 'zod'
import { leastPoints } from './path-edits.ts'

const typedBead = z.strictObject({
  name: z.string().max(200),
  width: z.string().max(60),
  sealant: z.string().max(200),
  openTimeMinutes: z.number(),
  closed: z.boolean(),
})
const point = z.strictObject({ x: z.int(), y: z.int() })

/** What is drawn point by point: an outline, or a bead as it was typed. */
const drawn = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('outline') }),
  z.strictObject({ kind: z.literal('bead'), typed: typedBead }),
])
export type SketchedThing = z.output<typeof drawn>

/** The points, in nanometres, of an outline or a bead that has too few of them to be in the document. */
export const sketch = z.strictObject({
  face: z.string().max(60),
  drawn,
  points: z
    .array(point)
    .min(1)
    .max(leastPoints.outline - 1),
})
export type Sketch = z.output<typeof sketch>
