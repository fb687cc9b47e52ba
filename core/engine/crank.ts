import { z } from 'zod'
import { degrees } from '../quantity/index.ts'
import { advise } from './advice.ts'
import type { Face } from './case.ts'
import { angleText, idText, lengthText, sizeText } from './text.ts'

/** From 0 ° up to, and without, a full turn. */
const directionText = angleText.refine((angle) => angle >= 0 && angle < 360, advise('angle-within-circle'))

/**
 * One pin with the rods on it. Its angle is 0 ° where it stands up, towards who looks at the engine from above, and grows
 * towards `case.sides.plus`: at 90 ° it lies level on that side, at 180 ° it hangs down. Of a case that lies on its side for the work,
 * up is as seen from above then. All angles are those in which the crank is laid.
 */
const crankThrow = z.strictObject({
  id: idText,
  /** The rods on it, by their ids; the pin is where they are. */
  rods: z.array(idText).min(1, advise('throw-without-rods')).max(4),
  angle: directionText,
})

/** A weight on the web before or behind a pin, which is the nose's side of it or the drive's. */
const counterweight = z.strictObject({
  throw: idText,
  side: z.enum(['nose', 'drive']),
  /** How far it reaches from the crank's axis. */
  radius: sizeText,
  /** The middle of it, counted like a throw's angle; opposite the pin when absent. */
  angle: directionText.optional(),
  /** From one of its flanks to the other, about the axis. */
  spread: angleText
    .refine((angle) => angle > 0 && angle <= 180, advise('angle-up-to-180'))
    .default(() => degrees(120)),
})

/** What is on the crank beyond its webs: the wheel of the camshaft's drive, say. */
const wheel = z.strictObject({
  id: idText,
  kind: z.enum(['gear', 'chain', 'belt']),
  /** Its middle along the crank. */
  at: lengthText,
  width: sizeText,
  diameter: sizeText,
})

/** The crank as it is drawn where it lies open. Where its journals and pins are follows from the saddles and rods of the case. */
export const crank = z.strictObject({
  /** From the axis to the middle of a pin: half the stroke. */
  throwRadius: sizeText,
  throws: z.array(crankThrow).min(1, advise('throws-none')).max(24),
  counterweights: z.array(counterweight).max(48).default([]),
  wheels: z.array(wheel).max(4).default([]),
})

/** Whether the crank can be seen where a face is worked on: in the saddles of a plan, or looking into an end of the case. */
export function showsCrank({ shows, plane }: Pick<Face, 'shows' | 'plane'>): boolean {
  return plane === 'nose' || plane === 'drive' || (plane === 'plan' && shows === 'saddles')
}

export type Crank = z.output<typeof crank>
export type CrankThrow = z.output<typeof crankThrow>
export type Counterweight = z.output<typeof counterweight>
export type CrankWheel = z.output<typeof wheel>
