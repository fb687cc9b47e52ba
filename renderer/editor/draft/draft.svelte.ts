import { rememberingAudit, type Finding } from '../../../core/audit/index.ts'
import type { Client, DraftLine, OpenedDraft } from '../../../core/contract/index.ts'
import {
  changesBetween,
  decideDraft,
  documentIn,
  documentOf,
  evolveDraft,
  isSame,
  messageOfPatches,
  patched,
  patchesBy,
  redoable,
  replayDraft,
  typistsIn,
  undoable,
  type Draft,
  type DraftAct,
  type EditMessage,
  type Json,
  type OpenDocument,
  type Patch,
} from '../../../core/drafts/index.ts'
import { readDocument, type SpecDocument } from '../../../core/engine/index.ts'
import type { Outcome, Problem } from '../../../core/problem/index.ts'
import type { Language } from '../../../core/words/index.ts'
import type { Change, ReadDocument } from './draft-at-work.ts'

/** Who edits, and in which language the spec is read to them. */
interface AtDraft {
  readonly person: () => string
  readonly language: () => Language
  /** Hears the number of the last entry after each edit of this window. */
  readonly edited?: (seq: number) => void
}

/**
 * A draft as a window has it. What it shows is on disk: an edit is seen when the host has confirmed it. Edits wait for each
 * other, and each is made to the document as it is when its turn comes.
 */
export class OpenedDraftState {
  readonly id: string
  readonly #client: Client
  readonly #at: AtDraft
  #draft: Draft = $state.raw({} as Draft)
  #line: DraftLine = $state.raw({} as DraftLine)
  #problem = $state.raw<Problem | null>(null)
  #ahead = $state.raw<ReadDocument | null>(null)
  #last: Promise<unknown> = Promise.resolve()
  readonly #audit = rememberingAudit()

  /** The spec as it is written. */
  readonly document = $derived.by(() => documentOf(this.#draft))
  /** The same as a spec, with its texts in the language of the window; a draft can always be read. */
  readonly #reading = $derived.by(() => readDocument(this.document, this.#at.language()))
  /** Null where a version of the program that read more than this one wrote it. */
  readonly spec = $derived.by(() => (this.#reading.ok ? this.#reading.spec : null))
  /** What the audit says of it, faults first; each has its place in the document as `path`. */
  readonly findings: readonly Finding[] = $derived.by(() => {
    const reading = this.#reading
    if (reading.ok) return this.#audit(reading.spec)
    return reading.problems.map((problem) => ({ weight: 'fault', problem }))
  })
  /** Who typed each value last, by its path. */
  readonly typists = $derived.by(() => typistsIn(this.#draft))
  readonly undoable = $derived.by(() => undoable(this.#draft))
  readonly redoable = $derived.by(() => redoable(this.#draft))
  readonly isOpen = $derived.by(() => this.#draft.state === 'open')

  constructor(client: Client, opened: OpenedDraft, at: AtDraft) {
    this.id = opened.line.id
    this.#client = client
    this.#at = at
    this.#take(opened)
  }

  static async open(client: Client, draft: string, at: AtDraft): Promise<Outcome<OpenedDraftState>> {
    const answer = await client.request('drafts.open', { draft })
    return answer.ok ? { ok: true, value: new OpenedDraftState(client, answer.value, at) } : answer
  }

  /** Of the draft as it was when it was opened: who began it, and so on. */
  get line() {
    return this.#line
  }
  /** The number of its last entry. */
  get seq() {
    return this.#draft.seq
  }
  /** What it will be once what this window did last is kept; null while nothing is waited for. */
  get ahead() {
    return this.#ahead
  }
  /** Why the last thing was not done; null after one that was. */
  get problem() {
    return this.#problem
  }

  /**
   * Changes the document as `recipe` does to a copy of it; `what` says what it did, null for its place alone. Answers whether it was done, or changes nothing; where it was not,
   * `problem` says why and the document is as it was.
   */
  edit(what: EditMessage | null, recipe: (document: OpenDocument) => void): Promise<boolean> {
    return this.#inTurn(() => this.#patch(what, patchesBy(this.document, recipe)))
  }

  /** The same by what `make` makes of the document, which it leaves as it is. Gives why it was not done; null where it was. */
  async change(what: EditMessage, make: Change): Promise<Problem | null> {
    let refused: Problem | null = null
    const isDone = await this.#inTurn(async () => {
      const made = make(this.document)
      if (made.ok) return this.#patch(what, changesBetween(this.document, made.value))
      refused = made.problem
      return false
    })
    return refused ?? (isDone ? null : this.problem)
  }

  undo(): Promise<boolean> {
    return this.#inTurn(() => this.#act({ type: 'undo' }))
  }

  redo(): Promise<boolean> {
    return this.#inTurn(() => this.#act({ type: 'redo' }))
  }

  /** Reads the draft again: what other windows have edited meanwhile. Where they have not, everything stays the same object. */
  reload(): Promise<boolean> {
    return this.#inTurn(async () => {
      const answer = await this.#client.request('drafts.open', { draft: this.id })
      if (answer.ok && answer.value.line.entries !== this.#draft.seq) this.#take(answer.value)
      this.#problem = answer.ok ? null : answer.problem
      return answer.ok
    })
  }

  dismissProblem() {
    this.#problem = null
  }

  #inTurn(work: () => Promise<boolean>): Promise<boolean> {
    const turn = this.#last.then(work)
    this.#last = turn.catch(() => undefined)
    return turn
  }

  async #patch(what: EditMessage | null, patches: readonly Patch[]): Promise<boolean> {
    const before = this.document
    if (patches.length === 0) return true
    const said = what ?? messageOfPatches(before, patched(before, patches) as SpecDocument, patches)
    return this.#act({ type: 'edit', edit: { what: said, patches: [...patches] } })
  }

  async #act(act: DraftAct): Promise<boolean> {
    const person = this.#at.person()
    const asked = this.#client.request('drafts.act', {
      ...{ draft: this.id, after: this.#draft.seq, person },
      act,
    })
    const next = this.#lookAhead(act, person)
    const answer = await asked
    this.#problem = answer.ok ? null : answer.problem
    this.#ahead = null
    if (answer.ok) {
      const isNext = next !== null && isSame(answer.value.event as Json, next.event as Json)
      this.#draft = isNext ? next.draft : evolveDraft(this.#draft, answer.value)
      this.#at.edited?.(this.#draft.seq)
    } else if (answer.problem.code === 'draft-moved-on') await this.#readAgain()
    return answer.ok
  }

  /** While the host writes, what it will answer is worked out, so that it has only to be shown then; null for what it will refuse. */
  #lookAhead(act: DraftAct, person: string) {
    const decided = decideDraft(this.#draft, act, person)
    if (!decided.ok) return null
    const event = decided.value
    const draft = evolveDraft(this.#draft, { event, person })
    const document = documentOf(draft)
    const reading = readDocument(document, this.#at.language())
    if (reading.ok) this.#ahead = { document, spec: reading.spec, findings: this.#audit(reading.spec) }
    return { event, draft }
  }

  /** What is there now is shown beside the problem that said so. */
  async #readAgain() {
    const answer = await this.#client.request('drafts.open', { draft: this.id })
    if (answer.ok) this.#take(answer.value)
  }

  #take({ line, base, entries }: OpenedDraft) {
    this.#line = line
    this.#draft = replayDraft(documentIn(base), entries)
  }
}
