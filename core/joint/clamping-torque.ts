import { newtonMetres, type Torque } from '../quantity/index.ts'

/** What of a torque turns a fastener before it clamps anything, as far as it is known. */
export interface PrevailingRange {
  readonly least: Torque
  readonly usual: Torque
  readonly most: Torque
}

const none = newtonMetres(0)

/** A fastener that runs free. */
export const runsFree: PrevailingRange = { least: none, usual: none, most: none }

/**
 * What a locking nut or insert may take of a torque where only the most is known (ISO 2320 limits the first assembly): a used
 * one may run almost free. The usual value is the middle, common practice without a source.
 */
export function prevailingUpTo(most: Torque): PrevailingRange {
  return { least: none, usual: newtonMetres(most / 2), most }
}

/** What is left of a torque to clamp with. A bound of the clamp takes the prevailing torque that makes it one. */
export function clampingTorque(
  { prevailing }: { readonly prevailing: PrevailingRange },
  torque: Torque,
  takes: keyof PrevailingRange = 'usual',
): Torque {
  return newtonMetres(Math.max(0, torque - prevailing[takes]))
}
