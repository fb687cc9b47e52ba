import type { Grade, EngineSpec } from '../../engine/index.ts'
import type { Units } from '../../tightening/index.ts'
import type { Words } from '../../words/index.ts'
import type { RecordedEvent } from '../events/events.ts'
import type { Stamp } from '../events/stamp.ts'
import type { BuildState } from '../events/state.ts'

/** What one thing of the drawing is and what became of it, in words. */
export interface Description {
  readonly title: string
  readonly lines: readonly DescriptionLine[]
  /** The shell's, to be shown with its colour and pattern beside the words. */
  readonly grade?: Grade
}

/** `flagged` wants an answer or another look; `next` is to be done now; `open` later. */
export interface DescriptionLine {
  readonly text: string
  readonly state: 'plain' | 'open' | 'next' | 'done' | 'flagged'
  /** Who did or noted it, and when. */
  readonly by?: Stamp
}

/** A build as it is described: its spec, where it stands, and all its entries, which know who did what. */
export interface DescribedBuild {
  readonly spec: EngineSpec
  readonly state: BuildState
  readonly entries: readonly RecordedEvent[]
  readonly units: Units
  readonly words: Words
}

export function plain(text: string): DescriptionLine {
  return { text, state: 'plain' }
}
