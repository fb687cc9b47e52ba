import type { Finding } from '../../../core/audit/index.ts'
import type { EditMessage, Sketch, SpecDocument } from '../../../core/drafts/index.ts'
import type { DraftPictures } from './draft-pictures.ts'
import type { EngineSpec } from '../../../core/engine/index.ts'
import type { Outcome, Problem } from '../../../core/problem/index.ts'

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

/** A document with what it is read as, in the language of the window, and what the audit says of it. */
export interface ReadDocument {
  readonly document: SpecDocument
  readonly spec: EngineSpec
  readonly findings: readonly Finding[]
}

/** A draft that somebody works on. */
export interface DraftAtWork extends ReadDocument {
  /** What it will be once what was done last is kept; null while nothing is waited for. It is not there yet: nobody is shown it. */
  readonly ahead: ReadDocument | null
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
