import type { Finding } from '../../core/audit/index.ts'
import type { EditMessage, Sketch, SpecDocument } from '../../core/drafts/index.ts'
import type { DraftPictures } from './draft-pictures.ts'
import type { EngineSpec } from '../../core/engine/index.ts'
import type { Outcome, Problem } from '../../core/problem/index.ts'

/** The document after a change, or why it is not made. */
export type Change = (document: SpecDocument) => Outcome<SpecDocument>

/** What lies beside a draft on its bench, and is no part of it. */
export interface BesideDraft {
  /** The manual's pictures under its drawings. */
  readonly pictures: DraftPictures
  /** The points of an outline or a bead that are too few to be in the document, as they are kept; null for none. */
  readonly sketch: () => Sketch | null
  readonly keepSketch: (sketch: Sketch | null) => Promise<unknown>
}

/** A draft that somebody works on. */
export interface DraftAtWork {
  readonly document: SpecDocument
  /** The document as it is read, in the language of the window. */
  readonly spec: EngineSpec
  readonly findings: readonly Finding[]
  /** Who typed each value last, by its path, of those that an edit changed. */
  readonly typists: ReadonlyMap<string, string>
  readonly undoable: EditMessage | null
  readonly redoable: EditMessage | null
  /**
   * Changes the document as it is when its turn comes. Gives why it cannot be like that, and then nothing is changed; null where
   * it is now, on disk as well.
   */
  change(what: EditMessage, make: Change): Promise<Problem | null>
  readonly beside: BesideDraft
  undo(): Promise<unknown>
  redo(): Promise<unknown>
}
