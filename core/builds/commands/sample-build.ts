import type { EngineSpec, Procedure } from '../../engine/index.ts'
import { done, refused, type Outcome } from '../../problem/index.ts'
import { plannedIn } from '../../tightening/index.ts'
import type { Words } from '../../words/index.ts'
import type { BuildEvent } from '../events/events.ts'
import { evolve } from '../events/evolve.ts'
import { emptyBuild } from '../events/state.ts'
import { fitOf, halvesOf, procedureOf } from '../steps/steps.ts'
import type { BuildCommand } from './commands.ts'
import { decide } from './decide.ts'
import { sampleFacts } from './samples.ts'
import { startBuild } from './start.ts'

/** One entry of the sample build, and who makes it. */
export interface SampleEntry {
  readonly person: string
  readonly event: BuildEvent
}

/**
 * A build of the sample engine that is half-way done: shells chosen and fitted, the crank in, the rod bolts in their angle
 * pass with a problem that was noted and answered. Each entry is decided as it is at the bench; refused with the first that
 * the spec does not allow, so a spec that only has the same id is not worked on.
 *
 * @param at UTC, ISO 8601: when all of it is recorded.
 */
export function sampleBuild(
  words: Words,
  spec: EngineSpec,
  specSha256: string,
  at: string,
): Outcome<readonly SampleEntry[]> {
  const { serial, engine } = sampleFacts['half-way']
  if (!hasItsParts(spec)) return refused('engine-unknown', { engine })
  const { name, machinist, mechanic } = words.engines.sample
  const started = startBuild(spec, { name, serial, person: machinist, specSha256 })
  if (!started.ok) return started
  const entries: SampleEntry[] = []
  let state = emptyBuild
  const add = (person: string, event: BuildEvent) => {
    entries.push({ person, event })
    state = evolve(state, { seq: entries.length, at, event })
  }
  add(machinist, started.value)
  const work = [
    ...sizes.map((command) => ({ person: machinist, command })),
    ...assembly(words, spec).map((command) => ({ person: mechanic, command })),
  ]
  for (const { person, command } of work) {
    const decided = decide(spec, state, command, at)
    if (!decided.ok) return decided
    for (const event of decided.value) add(person, event)
  }
  return done(entries)
}

function hasItsParts({ procedures, fits }: EngineSpec): boolean {
  const ids = [...procedures, ...fits].map(({ id }) => id)
  return ['rods', 'mains', 'big-ends'].every((id) => ids.includes(id))
}

const sizes: readonly BuildCommand[] = [
  { type: 'note-marks', step: 'case-marks', typed: '2 2 3 1' },
  { type: 'note-marks', step: 'crank-marks', typed: 'G G F H' },
  { type: 'note-marks', step: 'rod-marks', typed: '4 5 4' },
  { type: 'note-marks', step: 'pin-marks', typed: 'L M L' },
  { type: 'choose-shells', step: 'choose-mains', others: [] },
  { type: 'choose-shells', step: 'choose-big-ends', others: [] },
]

function assembly(words: Words, spec: EngineSpec): readonly BuildCommand[] {
  const rods = procedureOf(spec, 'rods')
  const { problem, answer } = words.engines.sample
  const [seated, torqued] = [0, 1].map((pass) => pullsOf(rods, pass))
  return [
    ...halvesIn(spec, 'fit-mains', 'mains'),
    { type: 'fit-part', step: 'lay-crank' },
    { type: 'answer-check', step: 'end-float', good: true, reading: '0.12 mm', note: '' },
    ...halvesIn(spec, 'fit-rod-shells', 'big-ends'),
    { type: 'start-run', procedure: rods.id },
    { type: 'declare-new', procedure: rods.id, group: 'rod-bolts' },
    ...seated!,
    ...torqued!.slice(0, 3),
    { type: 'note-problem', procedure: rods.id, fastener: 'rod-4', text: problem },
    { type: 'answer-flag', procedure: rods.id, flag: 1, answer },
    ...torqued!.slice(3),
    ...pullsOf(rods, 2).slice(0, 2),
  ]
}

function halvesIn(spec: EngineSpec, step: string, fit: string): readonly BuildCommand[] {
  return halvesOf(fitOf(spec, fit)).map(([position, half]) => ({ type: 'fit-half', step, position, half }))
}

/** Every pull of one pass of the rod bolts, those that have a reading within their limits. */
function pullsOf(rods: Procedure, pass: number): readonly BuildCommand[] {
  const torques = ['15.0', '14.8', '15.2', '15.1', '14.9', '15.0']
  const readings = [
    () => null,
    (index: number) => ({ typed: torques[index % torques.length]!, unit: 'N·m' as const }),
    () => ({ typed: '60', unit: '°' as const }),
  ]
  return plannedIn(rods, pass).map((planned, index) => ({
    ...planned,
    type: 'pull',
    procedure: rods.id,
    reading: readings[pass]!(index),
    moved: false,
    outOfOrder: null,
  }))
}
