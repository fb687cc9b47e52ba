import type { EditMessage } from '../../../core/drafts/index.ts'
import type { EngineSpec } from '../../../core/engine/index.ts'
import type { Problem } from '../../../core/problem/index.ts'
import type { BesideDraft, Change, DraftAtWork } from './draft-at-work.ts'
import type { OpenedDraftState } from './draft.svelte.ts'

/** A draft that the record keeps, as the editor works on it. */
export class DraftOnDisk implements DraftAtWork {
  readonly #opened: OpenedDraftState
  readonly #spec: EngineSpec
  readonly beside: BesideDraft

  /** `spec` is what the draft is read as when it is opened: a document that cannot be read is not worked on. */
  constructor(opened: OpenedDraftState, spec: EngineSpec, beside: BesideDraft) {
    this.#opened = opened
    this.#spec = spec
    this.beside = beside
  }

  get document() {
    return this.#opened.document
  }
  get spec() {
    return this.#opened.spec ?? this.#spec
  }
  get findings() {
    return this.#opened.findings
  }
  get ahead() {
    return this.#opened.ahead
  }
  get typists() {
    return this.#opened.typists
  }
  get undoable() {
    return this.#opened.undoable
  }
  get redoable() {
    return this.#opened.redoable
  }

  change(what: EditMessage, make: Change): Promise<Problem | null> {
    return this.#opened.change(what, make)
  }
  undo() {
    return this.#opened.undo()
  }
  redo() {
    return this.#opened.redo()
  }
}
