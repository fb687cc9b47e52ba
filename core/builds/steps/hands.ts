import type { EngineSpec, Step } from '../../engine/index.ts'
import type { BuildEvent, RecordedEvent } from '../events/events.ts'
import { evolve } from '../events/evolve.ts'
import { emptyBuild } from '../events/state.ts'
import { isCarriedOut } from './steps.ts'

/** Entries that say something of a step without putting a hand to it. */
const remarks: readonly BuildEvent['type'][] = [
  'step-confirmed',
  'step-sent-back',
  'problem-noted',
  'flag-answered',
  'pull-taken-back',
  'pull-read-again',
  'run-paused',
  'run-resumed',
]

/**
 * Whose hands did what stands of a step, in the order of their first; empty while nothing does. Work that was taken back
 * as a whole is nobody's any more: who showed how it is done can still look at it when another has done it again.
 */
export function handsIn(spec: EngineSpec, entries: readonly RecordedEvent[], step: Step): readonly string[] {
  let hands: readonly string[] = []
  let state = emptyBuild
  for (const entry of entries) {
    const stands = isCarriedOut(spec, state, step)
    state = evolve(state, entry)
    if (!isWorkOn(step, entry.event)) continue
    hands = stands ? [...new Set([...hands, entry.person])] : [entry.person]
  }
  return hands
}

function isWorkOn(step: Step, event: BuildEvent): boolean {
  if (remarks.includes(event.type)) return false
  if ('step' in event) return event.step === step.id
  return step.kind === 'run-procedure' && 'procedure' in event && event.procedure === step.procedure
}
