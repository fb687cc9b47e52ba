import type { EngineSpec, Step } from '../../engine/index.ts'
import type { BuildEvent, RecordedEvent } from '../events/events.ts'
import { evolve } from '../events/evolve.ts'
import { emptyBuild } from '../events/state.ts'
import { isCarriedOut } from './steps.ts'

/** Whether an entry is work on its step; the others only say something of it, or belong to none. */
const isWork: { readonly [Type in BuildEvent['type']]: boolean } = {
  'build-started': false,
  'marks-noted': true,
  'shells-chosen': true,
  'half-fitted': true,
  'half-taken-out': true,
  'part-fitted': true,
  'part-taken-out': true,
  'bead-laid': true,
  'bead-wiped-off': true,
  'check-answered': true,
  'step-confirmed': false,
  'step-sent-back': false,
  'build-finished': false,
  'build-amended': false,
  'build-voided': false,
  'readings-noted': true,
  'readings-withdrawn': true,
  'undersize-declared': true,
  'basis-decided': true,
  'shells-pinned': true,
  'shells-released': true,
  'tray-noted': true,
  'thread-read': true,
  'run-started': true,
  'fasteners-declared-new': true,
  'fastener-pulled': true,
  'pull-taken-back': false,
  'pull-read-again': false,
  'problem-noted': false,
  'flag-answered': false,
  'fastener-loosened': true,
  'fastener-replaced': true,
  'pass-repeated': true,
  'run-restarted': true,
  'run-paused': false,
  'run-resumed': false,
}

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
  if (!isWork[event.type]) return false
  if ('step' in event) return event.step === step.id
  return step.kind === 'run-procedure' && 'procedure' in event && event.procedure === step.procedure
}
