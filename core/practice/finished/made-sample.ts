import {
  currentStep,
  decide,
  emptyBuild,
  evolve,
  sampleFacts,
  startBuild,
  type BuildCommand,
  type BuildEvent,
  type BuildState,
  type Sample,
  type SampleEntry,
} from '../../builds/index.ts'
import type { EngineSpec, Step } from '../../engine/index.ts'
import { done, refused, type Outcome } from '../../problem/index.ts'
import { openFlags } from '../../tightening/index.ts'
import type { Words } from '../../words/index.ts'
import { Chance } from '../chance.ts'
import { byHand } from './manner.ts'
import { rightCommand, type MarksByFit } from './right-command.ts'

/** The machinist's; everything else is the mechanic's. */
const sizing: readonly Step['kind'][] = ['note-marks', 'choose-shells', 'measure-limits', 'measure-rings']

/** A problem that is noted at a fastener when so many pulls are made, and then answered. */
interface SampleProblem {
  readonly procedure: string
  readonly fastener: string
  readonly afterPulls: number
  readonly problem: string
  readonly answer: string
}

/** What one demo build has that another has not. */
export interface SampleOf {
  readonly sample: Sample
  readonly name: string
  readonly trouble: SampleProblem
  readonly marks: (chance: Chance) => MarksByFit
  /** Whether it has come as far as it goes. */
  readonly isThere: (state: BuildState) => boolean
}

/**
 * A demo build, worked on from its first mark by one who does everything right, its readings near their targets as a hand makes them, one
 * problem noted and answered. Each entry is decided as it is at the bench; refused with the first that the spec does not allow, so
 * a spec that only has the same id is not worked on.
 *
 * @param at UTC, ISO 8601: when all of it is recorded.
 */
export function madeSample(
  words: Words,
  spec: EngineSpec,
  specSha256: string,
  at: string,
  { sample, name, trouble, marks: marksFor, isThere }: SampleOf,
): Outcome<readonly SampleEntry[]> {
  const { serial, engine } = sampleFacts[sample]
  const { machinist, mechanic, whole } = words.engines.sample
  if (!spec.procedures.some(({ id }) => id === trouble.procedure))
    return refused('engine-unknown', { engine })
  const started = startBuild(spec, { name, serial, person: machinist, specSha256 })
  if (!started.ok) return started
  const entries: SampleEntry[] = []
  let state = emptyBuild
  const add = (person: string, event: BuildEvent) => {
    entries.push({ person, event })
    state = evolve(state, { seq: entries.length, at, event })
  }
  add(machinist, started.value)
  const chance = new Chance(serial)
  const marks = marksFor(chance)
  const manner = byHand(chance, { notes: () => serial, withoutPhoto: () => whole.withoutPhoto })
  while (!isThere(state)) {
    const kind = currentStep(spec, state)?.kind
    if (kind === undefined && state.finished) return refused('steps-left', { first: spec.name })
    const person = kind !== undefined && sizing.includes(kind) ? machinist : mechanic
    const command = troubleNow(state, trouble) ?? rightCommand(spec, state, marks, manner)
    const decided = decide(spec, state, command, at)
    if (!decided.ok) return decided
    for (const event of decided.value) add(person, event)
    if (decided.value.length === 0) return refused('steps-left', { first: spec.name })
  }
  return done(entries)
}

/** The problem, once, and then its answer; null where there is neither. */
function troubleNow(
  { runs }: BuildState,
  { procedure, fastener, afterPulls, problem, answer }: SampleProblem,
): BuildCommand | null {
  const run = runs[procedure]
  const [flag] = openFlags(run)
  if (flag !== undefined) return { type: 'answer-flag', procedure, flag: flag.number, answer }
  return run?.pulls.length === afterPulls && run.flags.length === 0
    ? { type: 'note-problem', procedure, fastener, text: problem }
    : null
}
