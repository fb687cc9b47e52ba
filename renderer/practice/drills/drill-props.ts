import type { Snippet } from 'svelte'
import type { Tally } from '../../../core/practice/index.ts'
import type { OpenDrill } from '../practice-desk.svelte.ts'

/** What each drill is given. */
export interface DrillProps {
  readonly open: OpenDrill
  readonly onleave: () => void
  /** Called once, when the last question is answered. */
  readonly ondone: (tally: Tally) => void
  /** What the round came to, once it is done: it stands where the questions stood. */
  readonly result: Snippet | undefined
}
