import { audit } from '../../core/audit/index.ts'
import { typistsOf, type EditMessage, type SpecDocument } from '../../core/drafts/index.ts'
import { readSpec } from '../../core/engine/index.ts'
import type { Problem } from '../../core/problem/index.ts'
import type { Language } from '../../core/words/index.ts'
import type { BesideDraft, Change, DraftAtWork } from '../editor/draft/draft-at-work.ts'
import type { DraftPictures } from '../editor/draft/draft-pictures.ts'
import { PicturesInMemory } from './pictures-in-memory.ts'
import { holdAsData } from './sample-data.ts'

interface State {
  readonly what: EditMessage | null
  readonly document: SpecDocument
}

/** A draft that is kept nowhere: for the gallery. */
export class DraftInMemory implements DraftAtWork {
  readonly beside: BesideDraft
  readonly ahead = null
  readonly #language: () => Language
  /** All of it is as it was entered. */
  readonly typists: ReadonlyMap<string, string>
  #states = $state.raw<readonly State[]>([])
  #at = $state(0)

  readonly document = $derived.by(() => this.#states[this.#at]!.document)
  readonly #reading = $derived.by(() => readSpec(JSON.stringify(this.document), this.#language()))
  readonly spec = $derived.by(() => {
    if (!this.#reading.ok) throw new Error('a draft that cannot be read')
    return this.#reading.spec
  })
  readonly findings = $derived.by(() => audit(this.spec))
  readonly undoable = $derived.by(() => this.#states[this.#at]!.what)
  readonly redoable = $derived.by(() => this.#states[this.#at + 1]?.what ?? null)

  constructor(text: string, language: () => Language, pictures: DraftPictures = new PicturesInMemory()) {
    this.beside = { pictures, sketch: () => null, keepSketch: () => Promise.resolve() }
    this.#language = language
    this.#states = [{ what: null, document: JSON.parse(text) as SpecDocument }]
    holdAsData(this.document)
    this.typists = typistsOf(this.document, [])
  }

  change(what: EditMessage, make: Change): Promise<Problem | null> {
    const outcome = make(this.document)
    if (!outcome.ok) return Promise.resolve(outcome.problem)
    const read = readSpec(JSON.stringify(outcome.value))
    if (!read.ok) return Promise.resolve(read.problems[0]!)
    this.#states = [...this.#states.slice(0, this.#at + 1), { what, document: outcome.value }]
    this.#at += 1
    return Promise.resolve(null)
  }
  undo() {
    if (this.#at > 0) this.#at -= 1
    return Promise.resolve()
  }
  redo() {
    if (this.#at + 1 < this.#states.length) this.#at += 1
    return Promise.resolve()
  }
}
