import type { Client, OpenedDraft } from '../../../core/contract/index.ts'
import {
  newPass,
  nextId,
  positionsFromRows,
  withFit,
  withPositions,
  withProcedure,
  withValueAt,
  type BareParameters,
  type PassChoice,
  type SpecDocument,
  type Thing,
  type TypedFit,
  type TypedPass,
} from '../../../core/drafts/index.ts'
import { done, sentenceOf, type Problem } from '../../../core/problem/index.ts'
import { en } from '../../../core/words/index.ts'
import { DraftOnDisk } from '../../../renderer/editor/draft/draft-on-disk.svelte.ts'
import { OpenedDraftState } from '../../../renderer/editor/draft/draft.svelte.ts'
import { EditorDesk } from '../../../renderer/editor/editor-desk.svelte.ts'
import { OrderWork } from '../../../renderer/editor/orders/order-work.svelte.ts'
import { PlaceWork } from '../../../renderer/editor/actions/place-work.svelte.ts'
import { folder, store } from '../../electron/bench.ts'
import { asking } from '../../electron/requests/asking.ts'
import { besideDraft } from './draft/beside-draft.ts'

const here = { person: () => 'Ana Ruiz', language: () => 'en' as const }
const mm = 1_000_000

export interface TypedGroup {
  readonly name: string
  readonly thread: string
  readonly propertyClass: string
  readonly grip: string
  readonly acrossFlats: string
  readonly threadState: 'dry' | 'oiled'
}

/**
 * A person who enters an engine on the editor's page, on a real record: does what the page's forms send, and counts what the page takes
 * for it: a press for each button, choice and tap on the drawing, the keys that are typed, and one key to go on to the next field.
 */
export class Hand {
  presses = 0
  keys = 0
  readonly desk: EditorDesk
  readonly order: OrderWork
  readonly place: PlaceWork
  readonly #draft: OpenedDraftState
  readonly #get: ReturnType<typeof asking>['get']

  private constructor(get: ReturnType<typeof asking>['get'], client: Client, opened: OpenedDraftState) {
    const draft = new DraftOnDisk(opened, opened.spec!, besideDraft(client, opened.id))
    this.#get = get
    this.#draft = opened
    this.desk = new EditorDesk(() => draft)
    this.order = new OrderWork(this.desk)
    this.place = new PlaceWork(this.desk, () => en)
  }

  /** “New engine” in the library: name, manual, kind of case, and the measures that are given. */
  static async begin(name: string, from: string, parameters: BareParameters): Promise<Hand> {
    const { ask, get } = asking(await store(folder()))
    const client: Client = { request: (request, input) => ask(request, input) }
    const begun: OpenedDraft = await get('drafts.begin', {
      ...{ person: here.person(), name, from, origin: { kind: 'bare', parameters } },
    })
    const hand = new Hand(get, client, new OpenedDraftState(client, begun, here))
    hand.#press(3)
    hand.#type(name, from)
    hand.#type(
      ...Object.values(parameters).flatMap((each) =>
        typeof each === 'string' || typeof each === 'number' ? [String(each)] : [],
      ),
    )
    return hand
  }

  #press(times = 1) {
    this.presses += times
  }
  #type(...texts: readonly string[]) {
    for (const text of texts) this.keys += text.length + 1
  }
  /** Nothing that a person enters here is refused. */
  #good(problem: Problem | null) {
    if (problem !== null) throw new Error(sentenceOf(problem))
  }
  async settled() {
    await this.desk.draft.change({ code: 'moved', facts: { count: 0 } }, (document) => done(document))
    this.#good(this.desk.problem)
  }

  async group(typed: TypedGroup): Promise<string> {
    this.#press(2 + 2 * 3)
    const { threadState, ...texts } = typed
    this.#type(...Object.values(texts))
    const id = nextId(new Set(this.desk.document.fastenerGroups.map((each) => each.id)), 'group-0')
    const group = { id, ...texts, threadState, reuse: 'reusable', clamped: 'cast-iron' } as const
    const problem = await this.desk.draft.change(
      { code: 'groupAdded', facts: { group: typed.name } },
      (document) => done({ ...document, fastenerGroups: [...document.fastenerGroups, group] }),
    )
    this.#good(problem)
    return id
  }

  /** The first bearing by numbers on the drawing, the others at a pitch. */
  async bearings(width: string, diameter: string, first: number, pitch: number, count: number) {
    const { desk, place } = this
    this.#press(2 + 2)
    desk.work('bearings')
    desk.begin('place')
    this.#type(width, diameter, String(first))
    Object.assign(place.sizes, { width, diameter })
    await place.place({ x: first * mm, y: 0 })
    this.#good(desk.problem)
    if (count > 1) await this.#repeat(pitch, count)
  }

  async #repeat(pitch: number, count: number) {
    this.#press(2)
    this.#type(String(count), String(pitch))
    this.desk.begin('repeat')
    this.desk.repeat(count, { x: pitch * mm, y: 0 })
    await this.settled()
  }

  /** A row of fasteners beside the crank: the first by a tap or by numbers, then at a pitch, then mirrored. */
  async rows(group: string, first: readonly [number, number], pitch: number, count: number) {
    const { desk, place } = this
    this.#press(5)
    desk.work('parts')
    desk.begin('place')
    place.choose('fastener')
    place.group = group
    const [x, y] = first
    this.#type(String(x), String(y))
    await place.place({ x: x * mm, y: y * mm })
    this.#good(desk.problem)
    if (count > 1) await this.#repeat(pitch, count)
    this.#press(2)
    desk.begin('mirror')
    desk.mirror()
    await this.settled()
  }

  /** Places with their numbers from a spreadsheet. */
  async paste(group: string, rows: readonly (readonly string[])[]) {
    this.#press(4)
    this.keys += 2
    const read = positionsFromRows(rows, 'mm')
    if (!read.ok) throw new Error(read.problem.code)
    const { face } = this.desk
    const problem = await this.desk.draft.change(
      { code: 'pasted', facts: { count: rows.length } },
      (document) =>
        withPositions(document, face, read.value, {
          usualGroup: group,
          where: (at) => this.place.whereOf(at),
        }),
    )
    this.#good(problem)
  }

  async procedure(name: string) {
    this.#press(2)
    const { face } = this.desk
    const problem = await this.desk.draft.change({ code: 'procedureAdded', facts: { face } }, (document) =>
      withProcedure(document, face, name),
    )
    this.#good(problem)
  }

  /** An order tapped on the drawing, by the numbers that stand there. */
  async tapped(numbers: readonly string[]) {
    this.#press(2 + numbers.length)
    this.desk.begin('order')
    this.order.begin()
    const { fasteners } = this.desk.document
    for (const number of numbers) {
      this.order.tap(fasteners.find((each) => each.number === number && each.face === this.desk.face)!.id)
      await this.settled()
    }
  }

  async pass(choice: PassChoice, typed: TypedPass = {}) {
    this.#press(2)
    this.#type(...Object.values(typed))
    const { procedures } = this.desk.document
    const at = procedures.findIndex(({ face }) => face === this.desk.face)
    const { orders, passes } = procedures[at]!
    const pass = newPass(choice, orders[0]!.id, typed)
    if (pass === null) throw new Error('something that the pass needs was not typed')
    const problem = await this.desk.draft.change(
      { code: 'passAdded', facts: { pass: passes.length + 1 } },
      (document) => done(withValueAt(document, ['procedures', at, 'passes', passes.length], pass)),
    )
    this.#good(problem)
  }

  /** A field of a form. */
  async field(path: readonly (string | number)[], value: unknown, typed = String(value)) {
    this.#press()
    this.#type(typed)
    this.#good(await this.desk.set(path, value))
  }

  async fit(typed: TypedFit) {
    this.#press(4)
    const { kind: _, mixing: __, housing, journal, ...texts } = typed
    this.#type(...Object.values(texts), housing.marks, journal.marks)
    const names = { housing: 'Case marks', journal: 'Crank marks', choose: 'Shells', fitting: 'Lay in' }
    const problem = await this.desk.draft.change(
      { code: 'fitAdded', facts: { fit: typed.name } },
      (document) => done(withFit(document, typed, names).document),
    )
    this.#good(problem)
  }

  async choose(things: readonly Thing[]) {
    this.#press(things.length)
    this.desk.choose(things)
    await this.settled()
  }

  get document(): SpecDocument {
    return this.desk.document
  }
  get faults() {
    return this.desk.findings
      .filter(({ weight }) => weight === 'fault')
      .map(({ problem }) => sentenceOf(problem))
  }

  /** Publishes it and starts a build of it. */
  async build() {
    this.#press(4)
    const draft = await this.#get('drafts.open', { draft: this.#draft.id })
    const line = await this.#get('drafts.publish', {
      ...{ draft: this.#draft.id, after: draft.entries.length, person: here.person() },
    })
    return this.#get('builds.start', {
      ...{ engine: line.engine, name: 'On the bench', serial: '1', person: here.person(), apprentice: false },
    })
  }
}
