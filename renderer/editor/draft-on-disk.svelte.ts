import type { EditMessage, OpenDocument } from '../../core/drafts/index.ts'
import type { EngineSpec, SpecDocument } from '../../core/engine/index.ts'
import type { Problem } from '../../core/problem/index.ts'
import type { Change, DraftAtWork } from './draft-at-work.ts'
import type { OpenedDraftState } from './draft.svelte.ts'

/** A draft that the record keeps, as the editor works on it. */
export class DraftOnDisk implements DraftAtWork {
  readonly #opened: OpenedDraftState
  readonly #spec: EngineSpec

  /** `spec` is what the draft is read as when it is opened: a document that cannot be read is not worked on. */
  constructor(opened: OpenedDraftState, spec: EngineSpec) {
    this.#opened = opened
    this.#spec = spec
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
  get undoable() {
    return this.#opened.undoable
  }
  get redoable() {
    return this.#opened.redoable
  }

  async change(what: EditMessage, make: Change): Promise<Problem | null> {
    let refused: Problem | null = null
    const isDone = await this.#opened.edit(what, (document) => {
      const outcome = make(document)
      if (outcome.ok) become(document, outcome.value)
      else refused = outcome.problem
    })
    return refused ?? (isDone ? null : this.#opened.problem)
  }
  undo() {
    return this.#opened.undo()
  }
  redo() {
    return this.#opened.redo()
  }
}

/** Makes an open document the same as another one. */
function become(open: OpenDocument, document: SpecDocument): void {
  for (const key of Object.keys(open) as (keyof OpenDocument)[]) if (!(key in document)) delete open[key]
  Object.assign(open, document)
}
