import {
  aboutOf,
  aligned,
  isAtOrIn,
  mirrored,
  moved,
  placed,
  pathOfThing,
  removed,
  repeated,
  repeatedRound,
  subjectOf,
  subjects,
  thingNamed,
  thingsOn,
  toggled,
  unitOf,
  valueIn,
  withValueAt,
  type Alignment,
  type DocumentWithCopies,
  type EditMessage,
  type NewThing,
  type SpecDocument,
  type Subject,
  type Thing,
  type ValuePath,
} from '../../core/drafts/index.ts'
import { placeInSpec } from '../../core/engine/index.ts'
import type { Finding } from '../../core/audit/index.ts'
import type { Point } from '../../core/plane/index.ts'
import { done, type Outcome, type Problem } from '../../core/problem/index.ts'
import { parseLength } from '../../core/quantity/index.ts'
import type { Change, DraftAtWork } from './draft/draft-at-work.ts'

export const actions = [
  'place',
  'move',
  'align',
  'mirror',
  'repeat',
  'order',
  'group',
  'position',
  'remove',
  'picture',
] as const
export type Action = (typeof actions)[number]

/** Where a person is in the editor: the face, what is chosen on it, what is being done. What is done goes to the draft. */
export class EditorDesk {
  readonly #draft: () => DraftAtWork
  #face = $state('')
  #subject = $state<Subject>('parts')
  #action = $state<Action | null>(null)
  #selected = $state.raw<readonly string[]>([])
  #problem = $state.raw<Problem | null>(null)
  #follows = $state.raw<Problem | null>(null)
  /** How far an arrow key moves, as it was typed. */
  step = $state('1 mm')

  readonly document = $derived.by(() => this.#draft().document)
  readonly spec = $derived.by(() => this.#draft().spec)
  /** What the audit says and nobody accepted. */
  readonly findings = $derived.by(() => this.#draft().findings.filter(({ accepted }) => !accepted))
  /** The doubts that somebody accepted, with the reason. */
  readonly accepted = $derived.by(() => this.#draft().findings.filter(({ accepted }) => accepted))
  readonly things = $derived.by(() => thingsOn(this.document, this.face, subjects[this.subject]))
  /** What is chosen and still there, in the order in which it was chosen. */
  readonly selected: readonly Thing[] = $derived.by(() => {
    const there = this.things.map(aboutOf)
    return this.#selected.flatMap((about) => {
      const thing = there.includes(about) ? thingNamed(about) : null
      return thing === null ? [] : [thing]
    })
  })
  /** The unit in which this manual gives lengths. */
  readonly unit = $derived.by(() => unitOf(this.document.case.bore))

  constructor(draft: () => DraftAtWork) {
    this.#draft = draft
  }

  get draft(): DraftAtWork {
    return this.#draft()
  }
  get face(): string {
    const faces = this.document.case.faces
    return faces.some(({ id }) => id === this.#face) ? this.#face : faces[0]!.id
  }
  get subject() {
    return this.#subject
  }
  get action() {
    return this.#action
  }
  get problem() {
    return this.#problem
  }
  isSelected(thing: Thing): boolean {
    return this.selected.some((each) => aboutOf(each) === aboutOf(thing))
  }

  look(face: string) {
    this.#face = face
    this.#selected = []
  }
  /** What of the face is worked on: nothing else can be chosen or drawn about then. */
  work(subject: Subject) {
    this.#subject = subject
    this.#selected = []
    if (subject !== 'parts' && (this.#action === 'order' || this.#action === 'group')) this.#action = null
  }
  begin(action: Action | null) {
    if (action === 'order' || action === 'group') this.work('parts')
    this.#action = action
    this.#problem = null
  }
  choose(things: readonly Thing[]) {
    this.#selected = things.map(aboutOf)
  }
  /** A tap chooses; a second one leaves it out again. */
  toggle(thing: Thing) {
    const about = aboutOf(thing)
    const there = this.selected.map(aboutOf)
    this.#selected = there.includes(about) ? there.filter((each) => each !== about) : [...there, about]
  }
  /** Shows the thing that a finding is about, on its face. */
  show(thing: Thing, face: string) {
    this.#face = face
    this.#subject = subjectOf(thing.kind)
    this.#selected = [aboutOf(thing)]
  }

  /** The one thing that is chosen, with where its entry stands in the document; null for none and for several. */
  readonly chosen = $derived.by(() => {
    const [thing] = this.selected
    if (this.selected.length !== 1 || thing === undefined) return null
    const path = pathOfThing(this.document, thing)
    return path === null ? null : { thing, path }
  })

  /** A finding is being mended, from now on or not any more. */
  follow(problem: Problem | null) {
    this.#follows = problem
  }
  /** The finding that is being mended, as far as it is not: itself, or what else is said of the same there. */
  readonly followed: Finding | null = $derived.by(() => {
    const to = this.#follows
    if (to === null) return null
    const said = this.findings.filter(({ problem }) => problem.code === to.code && problem.path === to.path)
    const same = JSON.stringify(to.facts)
    return said.find(({ problem }) => JSON.stringify(problem.facts) === same) ?? said[0] ?? null
  })
  /** Which entry of a list of the document the finding is about; null for none of it. */
  followedIn(list: string): number | null {
    const { path = '' } = this.#follows ?? {}
    const [, at] = path.startsWith(`${list}[`) ? (/\[(\d+)\]/.exec(path) ?? []) : []
    return at === undefined ? null : Number(at)
  }

  /** What the audit says of something at a place of the document. */
  findingsAt(path: string): readonly Finding[] {
    return this.findings.filter(({ problem }) => isAtOrIn(problem.path, path))
  }

  /** Whether it was done; `problem` says why where it was not. */
  async change(what: EditMessage, make: Change): Promise<boolean> {
    this.#problem = await this.#draft().change(what, make)
    return this.#problem === null
  }

  /** Sets a value as it was typed; undefined takes it out. Gives why it cannot be that, and then nothing is changed. */
  async set(path: ValuePath, value: unknown): Promise<Problem | null> {
    const place = placeInSpec(this.document, path)
    this.#problem = null
    return this.#draft().change({ code: 'valueChanged', facts: { place } }, (document) =>
      done(withValueAt(document, path, value)),
    )
  }

  /** A tick in a list, or none: of the list as it is when its turn comes, however fast ticks are set. */
  tick(path: ValuePath, all: readonly string[], id: string): Promise<Problem | null> {
    const place = placeInSpec(this.document, path)
    this.#problem = null
    return this.#draft().change({ code: 'valueChanged', facts: { place } }, (document) => {
      const chosen = valueIn(document, path) as readonly string[] | undefined
      return done(withValueAt(document, path, toggled(all, chosen, id)))
    })
  }

  /** What was refused has been read. */
  dismiss() {
    this.#problem = null
  }

  /** A length as it was typed, in the manual's unit where none was; null, with a sentence, where it cannot be read. */
  lengthOf(typed: string): number | null {
    const read = parseLength(typed, this.unit)
    this.#problem = read.ok ? null : read.problem
    return read.ok ? read.value : null
  }

  async place(at: Point, thing: NewThing): Promise<void> {
    const { face } = this
    let made: Thing | null = null
    const what = { code: 'placed', facts: { kind: thing.kind } } as const
    const isDone = await this.change(what, (document) => {
      const outcome = placed(document, face, at, thing)
      if (!outcome.ok) return outcome
      made = outcome.value.thing
      return done(outcome.value.document)
    })
    if (isDone && made !== null) this.choose([made])
  }
  move(by: Point): void {
    const { selected } = this
    void this.change(this.#editMessage('moved'), (document) => moved(document, selected, by))
  }
  align(how: Alignment): void {
    const { selected } = this
    void this.change(this.#editMessage('aligned'), (document) => aligned(document, selected, how))
  }
  mirror(): void {
    void this.#copy('mirrored', (document, things) => mirrored(document, things))
  }
  repeat(count: number, pitch: Point): void {
    void this.#copy('repeated', (document, things) => repeated(document, things, count, pitch))
  }
  repeatRound(count: number, centre: Point): void {
    void this.#copy('repeated', (document, things) => repeatedRound(document, things, count, centre))
  }
  takeOut(): void {
    const { selected } = this
    void this.change(this.#editMessage('takenOut'), (document) => removed(document, selected))
  }
  stepBy(direction: Point): void {
    const step = this.lengthOf(this.step)
    if (step === null || this.selected.length === 0) return
    this.move({ x: direction.x * step, y: direction.y * step })
  }

  /** What was copied and its copies are chosen then. */
  async #copy(
    code: 'mirrored' | 'repeated',
    make: (document: SpecDocument, things: readonly Thing[]) => Outcome<DocumentWithCopies>,
  ): Promise<void> {
    const { selected } = this
    let copies: readonly Thing[] = []
    const isDone = await this.change(this.#editMessage(code), (document) => {
      const outcome = make(document, selected)
      if (!outcome.ok) return outcome
      copies = outcome.value.copies
      return done(outcome.value.document)
    })
    // Points are called by their number, and a copy between two others changes those.
    const isNumbered = this.#subject === 'outline' || this.#subject === 'beads'
    if (isDone) this.choose(isNumbered ? [] : [...selected, ...copies])
  }
  #editMessage(code: 'moved' | 'aligned' | 'mirrored' | 'repeated' | 'takenOut') {
    return { code, facts: { count: this.selected.length } } as const
  }
}
