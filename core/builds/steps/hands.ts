import type { EngineSpec, Step } from '../../engine/index.ts'
import type { BuildEvent, RecordedEvent } from '../events/events.ts'
import { evolve } from '../events/evolve.ts'
import { emptyBuild } from '../events/state.ts'
import type { BuildState } from '../events/state.ts'
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
  'limit-measured': true,
  'rings-fitted': true,
  'rings-taken-off': true,
  'crank-turned': true,
  'turning-accepted': true,
  'turning-voided': true,
  'place-done': true,
  'place-undone': true,
  'limit-accepted': true,
  'measured-part-replaced': true,
  'parts-ticked': true,
  'ticks-removed': false,
  'part-left-over': true,
  'parts-counted': true,
  // Work where the step asks for a photo, and only said of any other: see `isWorkOn`.
  'photo-added': true,
  'photo-skipped': true,
  'photo-withdrawn': false,
  'step-reopened': false,
  'revision-taken-over': false,
  'step-skipped': true,
  'skip-taken-back': false,
  'note-written': false,
  'bead-laid': true,
  'bead-wiped-off': true,
  'check-answered': true,
  'step-confirmed': false,
  'step-sent-back': false,
  'build-finished': false,
  'build-amended': false,
  'build-voided': false,
  'build-handed-over': false,
  'build-taken-over': false,
  'fork-settled': false,
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

/** Whose hands did what stands of each step, by the step's id and in the order of their first. */
export type Hands = ReadonlyMap<string, readonly string[]>

/**
 * The hands after one more entry; `before` is the build as it was before it. Work that was taken back as a whole is nobody's
 * any more: who showed how it is done can still look at it when another has done it again.
 */
export function handsAfter(spec: EngineSpec, hands: Hands, before: BuildState, entry: RecordedEvent): Hands {
  let after = hands
  for (const step of spec.steps) {
    if (!isWorkOn(step, entry.event)) continue
    const own = hands.get(step.id) ?? []
    const now = withHand(own, entry.person, () => isCarriedOut(spec, before, step))
    if (now !== own) after = new Map([...after, [step.id, now]])
  }
  return after
}

/**
 * Whose hands did what stands of one step; empty while nothing does. Entries are only replayed where that makes a
 * difference: where one person does all of a step it takes one look at each entry.
 */
export function handsIn(spec: EngineSpec, entries: readonly RecordedEvent[], step: Step): readonly string[] {
  let hands: readonly string[] = []
  let state = emptyBuild
  let replayed = 0
  for (const [at, { event, person }] of entries.entries()) {
    if (!isWorkOn(step, event)) continue
    hands = withHand(hands, person, () => {
      for (; replayed < at; replayed += 1) state = evolve(state, entries[replayed]!)
      return isCarriedOut(spec, state, step)
    })
  }
  return hands
}

/** `stands` says whether anything of the step stood before; it is only asked where the answer depends on it. */
function withHand(hands: readonly string[], person: string, stands: () => boolean): readonly string[] {
  if (hands.length === 0) return [person]
  if (hands.length === 1 && hands[0] === person) return hands
  if (!stands()) return [person]
  return hands.includes(person) ? hands : [...hands, person]
}

function isWorkOn(step: Step, event: BuildEvent): boolean {
  if (!isWork[event.type]) return false
  if (event.type === 'photo-added') return step.kind === 'photo' && event.step === step.id
  if ('step' in event) return event.step === step.id
  return step.kind === 'run-procedure' && 'procedure' in event && event.procedure === step.procedure
}
