import type { Client, PracticeStanding, Preferences, ReadyPeople } from '../../core/contract/index.ts'
import type { EngineSpec } from '../../core/engine/index.ts'
import {
  drillsOf,
  seedOf,
  type DrillKind,
  type DrillOf,
  type RoundKind,
  type Tally,
} from '../../core/practice/index.ts'
import { problem, type Problem } from '../../core/problem/index.ts'
import type { Language, Words } from '../../core/words/index.ts'
import { SpecInLanguages } from '../bench/spec-in-languages.ts'
import { DryRun } from './dry-run/dry-run.ts'

/** A drill that somebody is at. */
export interface OpenDrill {
  readonly spec: EngineSpec
  readonly drill: DrillKind
  readonly seed: string
}

const nothing: PracticeStanding = { isKept: false, progress: [], minimums: {} }

/** Where one person practises: the engine that is chosen, how the person stands, and the drill that is open. */
export class PracticeDesk {
  readonly #client: Client
  readonly #person: () => string
  readonly #language: () => Language
  #chosen = $state<string | null>(null)
  #specs = $state.raw<SpecInLanguages | null>(null)
  #standing = $state.raw<PracticeStanding>(nothing)
  #open = $state.raw<OpenDrill | null>(null)
  #problem = $state.raw<Problem | null>(null)
  #ready = $state.raw<ReadyPeople | null>(null)
  #dryRun = $state.raw<DryRun | null>(null)
  #specText = ''
  /** Rounds begun at this desk, by engine and drill: of who is not in the list, nothing else counts them. */
  #begun: Readonly<Record<string, number>> = {}

  readonly #spec = $derived.by(() => this.#specs?.in(this.#language()) ?? null)

  readonly drills: readonly DrillOf[] = $derived.by(() => {
    const spec = this.#spec
    return spec === null ? [] : drillsOf(spec).map((drill) => ({ engine: spec.id, drill }))
  })

  /** The chosen engine is always in `language`. */
  constructor(client: Client, person: () => string, language: () => Language = () => 'en') {
    this.#language = language
    this.#client = client
    this.#person = person
  }

  /** The id of the engine that was chosen last. */
  get chosen() {
    return this.#chosen
  }
  /** The chosen engine; null until it is read, so that no drill of another one is begun meanwhile. */
  get spec() {
    return this.#spec
  }
  get standing() {
    return this.#standing
  }
  get open() {
    return this.#open
  }
  /** How everybody stands with the chosen engine; null for somebody who does not lead the shop. */
  get ready() {
    return this.#ready
  }
  /** The dry run that is under way, or was ended and is looked at. */
  get dryRun() {
    return this.#dryRun
  }
  get problem() {
    return this.#problem
  }

  async look() {
    const answer = await this.#client.request('practice.read', { person: this.#person() })
    this.#standing = answer.ok ? answer.value : nothing
    this.#problem = answer.ok ? null : answer.problem
    await this.#lookAtPeople()
  }

  /**
   * Answers the chosen engine; null where it cannot be read, for the reason in `problem`, and where another one was chosen
   * before the answer came.
   */
  async choose(engine: string): Promise<EngineSpec | null> {
    this.#chosen = engine
    if (this.#spec?.id === engine) return this.#spec
    this.#specs = null
    this.#ready = null
    const answer = await this.#client.request('engines.read', { id: engine })
    if (this.#chosen !== engine) return null
    const read = answer.ok ? SpecInLanguages.read(answer.value.specText, this.#language()) : null
    this.#specText = answer.ok ? answer.value.specText : ''
    if (answer.ok && read?.ok) this.#problem = null
    else this.#problem = answer.ok ? problem('engine-unknown', { engine }) : answer.problem
    this.#specs = read?.ok ? read.value : null
    const spec = this.#spec
    await this.#lookAtPeople()
    return spec
  }

  async #lookAtPeople() {
    const engine = this.#spec?.id
    if (engine === undefined) return
    const answer = await this.#client.request('practice.people', { person: this.#person(), engine })
    if (this.#spec?.id === engine) this.#ready = answer.ok ? answer.value : null
  }

  async begin({ engine, drill }: DrillOf) {
    const spec = await this.choose(engine)
    if (spec === null) return
    const key = `${engine}/${drill}`
    const kept = this.standingOf({ engine, drill })?.rounds ?? 0
    const rounds = this.#standing.isKept ? kept : (this.#begun[key] ?? 0)
    this.#begun = { ...this.#begun, [key]: rounds + 1 }
    this.#open = { spec, drill, seed: seedOf(engine, drill, rounds) }
  }

  /** A whole build of the chosen engine, as practice. */
  beginDryRun({ practice }: Words, preferences: Preferences) {
    const spec = this.#spec
    if (spec === null) return
    const { dryRun } = practice
    const started = DryRun.start(this.#client, {
      engine: { spec, text: this.#specText },
      ...{ number: dryRun.number, name: dryRun.build },
      person: this.#person().trim() || dryRun.nobody,
      preferences,
    })
    this.#dryRun = started.ok ? started.value : null
    this.#problem = started.ok ? null : started.problem
  }

  leave() {
    this.#open = null
    this.#dryRun = null
  }

  standingOf({ engine, drill }: { readonly engine: string; readonly drill: RoundKind }) {
    return this.#standing.progress.find((each) => each.engine === engine && each.drill === drill) ?? null
  }

  /** Keeps what was done of the open drill; for somebody who is not in the list there is nothing to keep. */
  async keep(tally: Tally, seconds: number) {
    if (this.#open !== null) await this.#keep(this.#open.spec, this.#open.drill, tally, seconds)
  }

  /** A dry run that came to the end of its build. */
  async keepDryRun(tally: Tally, seconds: number) {
    if (this.#spec !== null) await this.#keep(this.#spec, 'dry-run', tally, seconds)
  }

  async #keep(spec: EngineSpec, drill: RoundKind, tally: Tally, seconds: number) {
    if (!this.#standing.isKept || tally.length === 0) return
    const round = { engine: spec.id, drill, tally: tally.map((each) => ({ ...each })), seconds }
    const answer = await this.#client.request('practice.keep', { person: this.#person(), round })
    if (answer.ok) this.#standing = answer.value
    this.#problem = answer.ok ? null : answer.problem
    await this.#lookAtPeople()
  }

  async setMinimum(engine: string, least: number) {
    const wanted = { person: this.#person(), engine, least }
    const answer = await this.#client.request('practice.set-minimum', wanted)
    if (answer.ok) this.#standing = answer.value
    this.#problem = answer.ok ? null : answer.problem
    await this.#lookAtPeople()
  }
}
