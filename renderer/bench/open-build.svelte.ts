import {
  builtElsewhere,
  currentStep,
  stepStates,
  untickedAfter,
  type BuildCommand,
  type RecordedEvent,
  type SpecUntil,
} from '../../core/builds/index.ts'
import type { Answer, BuildLine, Client, Input, StoredBuild } from '../../core/contract/index.ts'
import { documentIn } from '../../core/drafts/index.ts'
import { done, refused, type Outcome, type Problem } from '../../core/problem/index.ts'
import type { Language } from '../../core/words/index.ts'
import type { EngineSpec, Procedure, Step } from '../../core/engine/index.ts'
import { asRun } from '../../core/tightening/index.ts'
import type { OrderDraft } from '../steps/run/order/order-draft.svelte.ts'
import type { Crew } from '../people/crew.svelte.ts'
import { Pause } from './pause.ts'
import { RecordedBuild } from './recorded-build.svelte.ts'
import { SpecInLanguages } from './spec-in-languages.ts'

/** What came from another window and was not read yet. */
export interface FromElsewhere {
  readonly entries: number
  /** Who confirmed the last of them. */
  readonly person: string
  /** Whether something was typed here when it came, which may no longer belong where it stands. */
  readonly wasBegun: boolean
}

/** A photo that goes to the host, and where it belongs. */
export type NewPhoto = Pick<Input<'photos.add'>, 'step' | 'caption' | 'part' | 'base64'>

/** One build as the window sees it: what the host has recorded, and nothing else. Everything shown is derived from it. */
export class OpenBuild {
  readonly line: BuildLine
  readonly #readOnly: Problem | null
  /** The text of the spec that it goes by. */
  readonly specText: string
  /** Who can be at the bench, and who is. */
  readonly crew: Crew
  /** Kept with the build, not with the step: the press that ends one step must not begin the next. */
  readonly pause = new Pause()
  readonly #client: Client
  readonly #recorded: RecordedBuild
  readonly #specs: SpecInLanguages
  readonly #earlier: readonly { readonly specs: SpecInLanguages; readonly until: number }[]
  readonly #language: () => Language
  #problem = $state.raw<Problem | null>(null)
  #chosenStep = $state<string | null>(null)
  /** The step at which something was typed that is not confirmed. */
  #begunAt = $state<string | null>(null)
  /** The step that stays on the table until it is done, although another window works on another one. */
  #stayAt = $state<string | null>(null)
  #elsewhere = $state.raw<FromElsewhere | null>(null)
  #labelsShown = $state(false)
  #orderDraft = $state.raw<OrderDraft | null>(null)

  /** In the language of the window. */
  readonly spec: EngineSpec = $derived.by(() => this.#specs.in(this.#language()))
  /** The specs that it went by before, in order. */
  readonly earlier: readonly SpecUntil[] = $derived.by(() =>
    this.#earlier.map(({ specs, until }) => ({ spec: specs.in(this.#language()), until })),
  )
  /** The spec as its file has it: with its values as the manual prints them. */
  readonly document = $derived.by(() => documentIn(this.specText))
  readonly steps = $derived.by(() => stepStates(this.spec, this.#recorded.state))
  /** The step on the table: the one a person went to, else the one to work on; null when all steps are done. */
  readonly step = $derived.by(() => {
    const chosen = this.steps.find(({ step }) => step.id === this.#chosenStep)
    const left = this.steps.find(({ step, state }) => step.id === this.#stayAt && state !== 'done')
    return (chosen ?? left)?.step ?? currentStep(this.spec, this.#recorded.state)
  })

  readonly #elsewhereBench = $derived.by(() =>
    builtElsewhere(this.#recorded.state, this.benches?.here ?? null),
  )
  /** Why nothing can be added here; null while it is open for work. */
  readonly readOnly: Problem | null = $derived.by(
    () => this.#readOnly ?? this.benches?.apart ?? this.#elsewhereBench,
  )
  /** Whether another bench has the build. */
  readonly isElsewhere = $derived.by(() => this.#elsewhereBench !== null)
  /** Whether another bench recorded something else, and nobody settled which counts. */
  readonly isApart = $derived.by(() => this.benches?.apart?.code === 'build-apart')

  private constructor(
    client: Client,
    opened: StoredBuild,
    specs: SpecInLanguages,
    crew: Crew,
    confirmed: (seq: number) => void,
    language: () => Language,
    outdated: () => void,
  ) {
    this.#client = client
    this.line = opened.line
    this.#specs = specs
    this.#language = language
    this.#readOnly = opened.readOnly
    this.specText = opened.specText
    this.#earlier = (opened.earlier ?? []).flatMap(({ specText, until }) => {
      const read = SpecInLanguages.read(specText, language())
      return read.ok ? [{ specs: read.value, until }] : []
    })
    this.crew = crew
    this.#recorded = new RecordedBuild(client, opened, {
      person: () => crew.name,
      recorded: () => this.#recordedHere(),
      refused: (problem) => (this.#problem = problem),
      cameFromElsewhere: (news) => this.#cameFromElsewhere(news),
      ...{ language, confirmed, outdated },
    })
  }

  /**
   * `confirmed` hears the number of the last entry after each command of this window. The spec is always in `language`. `outdated` is
   * called once the build goes on by another revision, in another window: it has to be opened again.
   */
  static from(
    client: Client,
    opened: StoredBuild,
    crew: Crew,
    confirmed: (seq: number) => void = () => undefined,
    language: () => Language = () => 'en',
    outdated: () => void = () => undefined,
  ): Outcome<OpenBuild> {
    const specs = SpecInLanguages.read(opened.specText, language())
    if (specs.ok) return done(new OpenBuild(client, opened, specs.value, crew, confirmed, language, outdated))
    const [first] = specs.problems
    return first ? { ok: false, problem: first } : refused('program-fault', {})
  }

  get events() {
    return this.#recorded.events
  }
  get state() {
    return this.#recorded.state
  }
  /** How it stands among the benches of a shop; undefined in practice. */
  get benches() {
    return this.#recorded.benches
  }
  get person() {
    return this.crew.name
  }
  /** True from asking until the entry is on disk; nothing counts as confirmed meanwhile. */
  get saving() {
    return this.#recorded.saving
  }
  get problem() {
    return this.#problem
  }
  get last() {
    return this.events.at(-1) ?? null
  }

  /** Whether the order list and the tray labels lie on top of the build. */
  get labelsShown() {
    return this.#labelsShown
  }
  showLabels(shown: boolean) {
    this.#labelsShown = shown
  }

  /** An order of a person's own while it is made; kept here, so that it is still there after a look at its clamp map. */
  get orderDraft() {
    return this.#orderDraft
  }
  makeOrder(draft: OrderDraft | null) {
    this.#orderDraft = draft
  }

  /** A procedure in a person's own order: as its run was begun, else as it is being made; null where it has none. */
  inOwnOrder(procedure: Procedure): Procedure | null {
    const run = this.#recorded.state.runs[procedure.id]
    if (run !== undefined) return run.ownOrder && asRun(procedure, run)
    return this.#orderDraft?.procedure.id === procedure.id ? this.#orderDraft.made : null
  }

  /** Puts another step on the table to look at or to redo. */
  goTo(step: string | null) {
    this.#chosenStep = step
    this.#begunAt = this.#stayAt = null
    this.#problem = null
  }

  /** The step that a person went to; null while the program says which is next. */
  get chosen() {
    return this.#chosenStep
  }

  forgetProblem() {
    this.#problem = null
  }

  /** What another window has confirmed since something was last done here; null for nothing. */
  get elsewhere() {
    return this.#elsewhere
  }
  /** A revision of the library that is newer than the one it goes by, as the host last said; null for none. */
  get newer() {
    return this.#recorded.newer
  }
  /** The person has seen it. */
  readElsewhere() {
    this.#elsewhere = null
  }
  /** Something is typed at the step on the table: what another window confirms takes it off the table no more. */
  begin() {
    this.#begunAt = this.step?.id ?? null
  }

  /**
   * Asks the host; true once what follows from the command is on disk and shown. Ignored while another is being saved. Where
   * another window was first, it is refused, and shown as it is now.
   */
  async act(command: BuildCommand): Promise<boolean> {
    const here = this.step
    const asked = this.#asksForParts(here)
    const done = await this.#recorded.add((base) => this.#client.request('builds.act', { ...base, command }))
    if (done && !asked && this.#asksForParts(here)) this.#chosenStep = here?.id ?? null
    return done
  }

  /** Whether the work of the step is done and parts of it are not ticked: it stays on the table for them. */
  #asksForParts(step: Step | null): boolean {
    return step !== null && untickedAfter(this.spec, this.#recorded.state, step).length > 0
  }

  /** Like `act`. */
  addPhoto(photo: NewPhoto): Promise<boolean> {
    return this.#recorded.add((base) => this.#client.request('photos.add', { ...base, ...photo }))
  }

  /** The bytes of the photo that an entry names; refused where they are not those recorded. */
  readPhoto(entry: number): Promise<Answer<'photos.read'>> {
    return this.#client.request('photos.read', { build: this.line.id, entry })
  }

  /** Takes in what another window has confirmed. What is typed here stays, and so does the step it is typed at, until it is done. */
  follow(): Promise<void> {
    return this.#recorded.follow()
  }

  /** Something was recorded here: what was typed for it is done with. */
  #recordedHere() {
    this.#problem = null
    this.#elsewhere = null
    this.#begunAt = this.#stayAt = null
  }

  #cameFromElsewhere(news: readonly RecordedEvent[]) {
    const last = news.at(-1)
    if (last === undefined) return
    const here = this.step?.id ?? null
    const isBegun = here !== null && this.#begunAt === here
    if (isBegun) this.#stayAt = here
    const { entries = 0, wasBegun = false } = this.#elsewhere ?? {}
    this.#elsewhere = {
      entries: entries + news.length,
      person: last.person,
      wasBegun: wasBegun || isBegun,
    }
  }

  /** Like `act`, and back to whatever is to be done next: the step on the table may just have been finished. */
  async finishStep(command: BuildCommand): Promise<boolean> {
    const here = this.step
    const done = await this.act(command)
    if (done) this.#chosenStep = this.#asksForParts(here) ? (here?.id ?? null) : null
    return done
  }
}
