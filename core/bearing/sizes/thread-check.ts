import { difference, nanometres, type Length } from '../../quantity/index.ts'
import type { Range } from '../clearance.ts'

/** What a flattened plastic thread says of a clearance that was computed from readings. */
export interface ThreadCheck {
  readonly verdict: 'agrees' | 'says-tighter' | 'says-looser'
  /** How far the thread's reading lies outside of what was computed, the card's step allowed for; zero where it agrees. */
  readonly off: Length
}

/**
 * Holds a plastic thread's reading against the least and greatest clearance from readings. The card shows steps, and the
 * true width lies up to one step to either side of the one that was read. The thread never decides: where it disagrees,
 * dirt, a cap that was not pulled tight or a wrong reading is looked for.
 */
export function checkByThread(read: Length, cardStep: Length, computed: Range): ThreadCheck {
  const below = difference(computed.least, nanometres(read + cardStep))
  if (below > 0) return { verdict: 'says-tighter', off: below }
  const above = difference(nanometres(read - cardStep), computed.most)
  if (above > 0) return { verdict: 'says-looser', off: above }
  return { verdict: 'agrees', off: nanometres(0) }
}
