import type { Step } from '../../core/engine/index.ts'
import type { Preferences } from '../../core/contract/index.ts'
import type { HelpTopicId } from '../../core/words/index.ts'
import { topicOfStep } from './topic-of.ts'

type StoredGuide = NonNullable<Preferences['guide']>

/** What the note beside the work is chosen by. */
export interface GuidedPlace {
  /** Null once every step is done and the build itself is to be finished. */
  readonly step: Step | null
  readonly awaitsSecond: boolean
  /** A build that is finished or void asks for nothing. */
  readonly closed: boolean
}

/** The guided first build: which build it is, and which note has been read. It is kept with the preferences of the bench. */
export class Guide {
  readonly #kept: () => StoredGuide | null
  readonly #keep: (kept: StoredGuide | null) => Promise<unknown>

  constructor(kept: () => StoredGuide | null, keep: (kept: StoredGuide | null) => Promise<unknown>) {
    this.#kept = kept
    this.#keep = keep
  }

  /** The topic that the note is made from; null where none is to be shown. */
  noteAt(build: string, { step, awaitsSecond, closed }: GuidedPlace): HelpTopicId | null {
    const kept = this.#kept()
    if (closed || kept?.build !== build || kept.read === nameOf(step)) return null
    if (step === null) return 'finish'
    return awaitsSecond ? 'second-person' : topicOfStep[step.kind]
  }

  /** Of two guided builds the later one has the notes. */
  begin(build: string) {
    return this.#keep({ build, read: null })
  }

  /** The note of this step is not shown again until another step comes. */
  async read(step: Step | null) {
    const kept = this.#kept()
    if (kept !== null) await this.#keep({ ...kept, read: nameOf(step) })
  }

  leave() {
    return this.#keep(null)
  }
}

/** No step of a spec is without an id. */
const nameOf = (step: Step | null) => step?.id ?? ''
