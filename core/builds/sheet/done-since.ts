import type { Step } from '../../engine/index.ts'
import type { RecordedEvent } from '../events/events.ts'
import { evolve, replay } from '../events/evolve.ts'
import { stampOf, type Stamp } from '../events/stamp.ts'
import { emptyBuild, type BuildState } from '../events/state.ts'
import { isWorkDone } from '../steps/steps.ts'
import { specAt, type SpecUntil } from './in-their-time.ts'

type RunStep = Extract<Step, { kind: 'run-procedure' }>

/**
 * By step id, the entry after which its work was done and stayed so, of the steps whose work is done at the end. To ask of
 * a run whether it is done takes as long as it has pulls; so a run is not asked after each of them, but backwards from
 * its last entry, which is one question where nothing was done to it afterwards.
 */
export function doneSince(
  specs: readonly SpecUntil[],
  atEnd: BuildState,
  entries: readonly RecordedEvent[],
): ReadonlyMap<string, Stamp> {
  const since = new Map<string, Stamp>()
  let state = emptyBuild
  for (const entry of entries) {
    state = evolve(state, entry)
    const spec = specAt(specs, entry.seq)
    for (const step of spec.steps) {
      if (step.kind === 'run-procedure') continue
      if (!isWorkDone(spec, state, step)) since.delete(step.id)
      else if (!since.has(step.id)) since.set(step.id, stampOf(entry))
    }
  }
  for (const step of specAt(specs, entries.at(-1)?.seq ?? 0).steps) {
    const entry = step.kind === 'run-procedure' ? runDoneBy(specs, step, atEnd, entries) : null
    if (entry !== null) since.set(step.id, stampOf(entry))
  }
  return since
}

function runDoneBy(
  specs: readonly SpecUntil[],
  step: RunStep,
  atEnd: BuildState,
  entries: readonly RecordedEvent[],
): RecordedEvent | null {
  if (!isWorkDone(specAt(specs, entries.at(-1)?.seq ?? 0), atEnd, step)) return null
  const isOfRun = ({ event }: RecordedEvent) => 'procedure' in event && event.procedure === step.procedure
  let by = entries.findLastIndex(isOfRun)
  for (;;) {
    const before = entries.slice(0, by).findLastIndex(isOfRun)
    const entry = entries[before]
    if (entry === undefined) break
    if (!isWorkDone(specAt(specs, entry.seq), replay(entries.slice(0, before + 1)), step)) break
    by = before
  }
  return entries[by] ?? null
}
