import type { Fit } from '../../engine/index.ts'
import { bearingAt } from './bearing-at.ts'
import type { BearingEvent } from '../events/bearing-events.ts'
import { evolveBearings } from '../events/bearing-record.ts'
import { proposalAt, type BearingProposal } from './proposal-at.ts'
import { bearingsIn, type BuildState } from '../events/state.ts'

/**
 * What the bearing would get if its journal were of this size, null for the standard one, whatever it measures: what the
 * shells would be after a person has decided so.
 */
export function shellsBySize(
  state: BuildState,
  fit: Fit,
  position: string,
  undersize: string | null,
): BearingProposal {
  const decided: BearingEvent = {
    type: 'undersize-declared',
    version: 1,
    step: '',
    fit: fit.id,
    positions: [position],
    undersize,
    reason: '?',
  }
  const bearings = { ...state.bearings, [fit.id]: evolveBearings(bearingsIn(state, fit.id), decided) }
  return proposalAt(bearingAt({ ...state, bearings }, fit, position))
}
