import type { EngineSpec, SpecDocument } from '../../engine/index.ts'

/** A spec as a build rests on it: read, as it is written, and the hash of its text. */
export interface SpecRevision {
  readonly spec: EngineSpec
  /** Held against another as it is written: so nothing hangs on a language, and what is written otherwise counts as other. */
  readonly document: SpecDocument
  /** SHA-256 of its text, in hexadecimal. */
  readonly sha256: string
}
