import {
  decide,
  emptyBuild,
  evolve,
  mentionsOf,
  startBuild,
  whereItStands,
  type BuildCommand,
  type BuildEvent,
  type BuildState,
  type RecordedEvent,
} from '../../core/builds/index.ts'
import type { BuildLine, StoredBuild } from '../../core/contract/index.ts'
import { noNames, type EngineSpec } from '../../core/engine/index.ts'
import { done, type Outcome } from '../../core/problem/index.ts'

/** An engine, with the text it was read from. */
export interface Engine {
  readonly text: string
  readonly spec: EngineSpec
}

/** What a build in memory is begun with. */
export interface NewSample {
  readonly id: string
  /** For example `2026-003`. */
  readonly number: string
  readonly name: string
  readonly serial: string
  readonly person: string
}

/** When the entry with this number is made, in ms since 1970. */
export type EntryClock = (seq: number) => number

/** Late enough for the open time of a bead to run still. Milliseconds. */
const beginning = Date.now() - 10 * 60_000
const betweenEntries = 1000
const evenly: EntryClock = (seq) => beginning + seq * betweenEntries

/** A build that is kept nowhere: decided and carried on by core as on disk. */
export class MemoryBuild {
  readonly engine: Engine
  readonly begun: NewSample
  #entries: readonly RecordedEvent[] = []
  #state: BuildState = emptyBuild
  readonly #clock: EntryClock

  private constructor(engine: Engine, begun: NewSample, clock: EntryClock) {
    this.engine = engine
    this.begun = begun
    this.#clock = clock
  }

  /** Refused as `startBuild` refuses. */
  static start(engine: Engine, begun: NewSample, clock = evenly): Outcome<MemoryBuild> {
    const started = startBuild(engine.spec, { ...begun, specSha256: '0'.repeat(64) })
    if (!started.ok) return started
    const build = new MemoryBuild(engine, begun, clock)
    build.#append([started.value], begun.person)
    return done(build)
  }

  get state() {
    return this.#state
  }
  get entries() {
    return this.#entries
  }

  /** A second build that has come as far and goes its own way from here. */
  branch(): MemoryBuild {
    const other = new MemoryBuild(this.engine, this.begun, this.#clock)
    other.#entries = this.#entries
    other.#state = this.#state
    return other
  }

  /** `now` as for `decide`. */
  act(
    command: BuildCommand,
    person = this.begun.person,
    now: string | null = null,
  ): Outcome<readonly RecordedEvent[]> {
    const decided = decide(this.engine.spec, this.#state, command, now)
    return decided.ok ? done(this.#append(decided.value, person)) : decided
  }

  /** Throws with the code where the command is refused. */
  does(command: BuildCommand): void {
    const acted = this.act(command)
    if (!acted.ok) throw new Error(`refused: ${acted.problem.code}`)
  }

  get line(): BuildLine {
    return this.lineBy(this.engine.spec)
  }

  /** With the names that this reading of its spec has, in whatever language. */
  lineBy(spec: EngineSpec): BuildLine {
    const { id, number, name, serial } = this.begun
    const { finished, voided } = this.#state
    const mentions = this.#entries.flatMap((entry) => mentionsOf(spec, noNames, entry))
    return {
      ...{ id, number, name, serial, finished, voided },
      engine: spec.name,
      demo: spec.source.kind === 'demo',
      startedAt: this.#entries[0]!.at,
      lastAt: this.#entries.at(-1)!.at,
      flagged: mentions.some(({ kind }) => kind === 'flag'),
      entries: this.#entries.length,
      standing: finished || voided ? null : whereItStands(spec, this.#state),
      fault: null,
    }
  }

  get opened(): StoredBuild {
    return { line: this.line, specText: this.engine.text, events: [...this.#entries], readOnly: null }
  }

  #append(events: readonly BuildEvent[], person: string): readonly RecordedEvent[] {
    const added = events.map((event, index): RecordedEvent => {
      const seq = this.#entries.length + index + 1
      const at = new Date(this.#clock(seq)).toISOString()
      // Like a hash to look at; nothing in memory is verified.
      return { seq, at, person, event, hash: (seq * 0x9e3779b1).toString(16).padEnd(64, '3a7c') }
    })
    this.#entries = [...this.#entries, ...added]
    this.#state = added.reduce(evolve, this.#state)
    return added
  }
}
