import { readFileSync } from 'node:fs'
import {
  currentStep,
  decide,
  emptyBuild,
  evolve,
  isStepDone,
  startBuild,
  type BenchName,
  type BuildCommand,
  type BuildEvent,
  type BuildState,
  type RecordedEvent,
} from '../../../core/builds/index.ts'
import { sentenceOf, type Problem, type Outcome } from '../../../core/problem/index.ts'
import { readSpec, type EngineSpec, type Step } from '../../../core/engine/index.ts'
import { nextCommand } from './next-command.ts'
import { engineFile, shippedFile } from '../../engine-files.ts'

/** One of the demo engines that come with the program; two of them with short plans. */
export function demoEngine(id: string): EngineSpec {
  return engineIn(engineFile(id))
}

/** One of the demo engines, as it ships. */
export function shippedEngine(id: string): EngineSpec {
  return engineIn(shippedFile(id))
}

const engines = new Map<string, EngineSpec>()

/** The same each time: what is remembered of a spec is then worked out once. */
function engineIn(file: string): EngineSpec {
  const known = engines.get(file) ?? readEngine(file)
  engines.set(file, known)
  return known
}

function readEngine(file: string): EngineSpec {
  const read = readSpec(readFileSync(file, 'utf8'))
  if (!read.ok) throw new Error(read.problems.map(sentenceOf).join('\n'))
  return read.spec
}

export const newBuild = {
  name: 'Pump at the lower lock',
  serial: 'A 117',
  person: 'Ada',
  specSha256: 'a'.repeat(64),
}

/**
 * One build on the bench: one command after another, each entry kept as a record keeps it, a minute apart.
 */
export class Workshop {
  readonly spec: EngineSpec
  readonly entries: RecordedEvent[] = []
  state: BuildState = emptyBuild
  person = 'Ada'
  /** By which commands are decided and recorded, UTC; null for a minute after the last entry, by which nothing is decided. */
  now: string | null = null
  /** The bench at which commands are given; null where benches are not told apart. */
  bench: BenchName | null = null

  constructor(spec: EngineSpec) {
    this.spec = spec
    this.#append(startBuild(spec, newBuild))
  }

  /** Carries a command out and gives its events; throws with the sentence when it is refused. */
  does(command: BuildCommand): readonly BuildEvent[] {
    return this.#append(decide(this.spec, this.state, command, this.now, this.bench))
  }

  /** Why a command is refused, as code and facts; throws when it is not. */
  refusal(command: BuildCommand): Problem {
    const decided = decide(this.spec, this.state, command, this.now, this.bench)
    if (decided.ok) throw new Error(`${command.type} was not refused`)
    return decided.problem
  }

  /** The sentence of a refusal, for tests that are about the words. */
  refuses(command: BuildCommand): string {
    return sentenceOf(this.refusal(command))
  }

  step(id: string): Step {
    return this.spec.steps.find((step) => step.id === id)!
  }

  /** Goes on without trouble until the step is the one to work on. */
  worksUpTo(id: string): void {
    while (currentStep(this.spec, this.state)?.id !== id) this.goesOn()
  }

  /** Goes on without trouble until the step is done. */
  worksThrough(id: string): void {
    while (!isStepDone(this.spec, this.state, this.step(id))) this.goesOn()
  }

  /** Does the one thing that is next for a person without trouble. */
  goesOn(): void {
    this.does(nextCommand(this.spec, this.state))
  }

  #append(decided: Outcome<BuildEvent | readonly BuildEvent[]>): readonly BuildEvent[] {
    if (!decided.ok) throw new Error(sentenceOf(decided.problem))
    const events = [decided.value].flat()
    for (const event of events) {
      const seq = this.entries.length + 1
      const at = this.now ?? new Date(Date.UTC(2026, 2, 9, 7, seq)).toISOString()
      const entry = { seq, at, person: this.person, event, hash: seq.toString(16).padStart(64, '0') }
      this.entries.push(entry)
      this.state = evolve(this.state, entry)
    }
    return events
  }
}
