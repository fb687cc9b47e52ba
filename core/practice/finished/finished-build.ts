import {
  awaitsSecondPerson,
  currentStep,
  decide,
  emptyBuild,
  evolve,
  startBuild,
  type BuildEvent,
  type RecordedEvent,
} from '../../builds/index.ts'
import type { EngineSpec } from '../../engine/index.ts'
import { done, refused, type Outcome } from '../../problem/index.ts'
import { plannedPulls } from '../../tightening/index.ts'
import type { Chance } from '../chance.ts'
import { exact } from './manner.ts'
import { marksOf, rightCommand } from './right-command.ts'

/** No build has more entries: what goes on for longer comes to no end. */
const mostEntries = 50_000
const beganAt = '2026-01-05T07:00:00.000Z'
/** Between two entries, unless a sealant would be over its open time. */
const usualPauseMs = 20_000

/**
 * A build of the engine done right to its last entry: marks drawn by chance with the shells that belong to them, every reading
 * on its target, every check good, each joint closed within the open time of its sealant. Nobody did it: it is kept nowhere,
 * and its hashes are zeros. Refuses what `startBuild` and `decide` refuse.
 */
export function finishedBuild(
  spec: EngineSpec,
  chance: Chance,
  person: string,
): Outcome<readonly RecordedEvent[]> {
  const started = startBuild(spec, { name: spec.name, serial: '', person, specSha256: noHash })
  if (!started.ok) return started
  const entries: RecordedEvent[] = []
  let state = emptyBuild
  const pauseMs = pauseFor(spec)
  const add = (event: BuildEvent) => {
    const seq = entries.length + 1
    const at = new Date(Date.parse(beganAt) + seq * pauseMs).toISOString()
    const entry = { seq, at, person, event, hash: noHash }
    entries.push(entry)
    state = evolve(state, entry)
  }
  add(started.value)
  const marks = marksOf(spec, chance)
  while (!state.finished) {
    const step = currentStep(spec, state)
    const command =
      step !== null && awaitsSecondPerson(spec, state, step)
        ? ({ type: 'confirm-step', step: step.id, second: `${person} 2` } as const)
        : rightCommand(spec, state, marks, exact)
    const decided = decide(spec, state, command, null)
    if (!decided.ok) return decided
    for (const event of decided.value) add(event)
    if (decided.value.length === 0 || entries.length > mostEntries)
      return refused('steps-left', { first: currentStep(spec, state)?.name ?? spec.name })
  }
  return done(entries)
}

const noHash = '0'.repeat(64)

function pauseFor({ beads, procedures, steps }: EngineSpec): number {
  const openMs = Math.min(...beads.map(({ openTimeMinutes }) => openTimeMinutes * 60_000))
  const pulls = procedures.reduce((all, procedure) => all + plannedPulls(procedure).length, steps.length)
  return Math.min(usualPauseMs, Math.floor(openMs / (2 * pulls)))
}
