import { createContext } from 'svelte'
import type { HelpTopicId } from '../../core/words/index.ts'

/** Whether the help lies over the window, and at which topic. */
export class HelpDesk {
  #topic = $state.raw<HelpTopicId | null>(null)

  /** Null while the help is closed. */
  get topic() {
    return this.#topic
  }
  open(topic: HelpTopicId) {
    this.#topic = topic
  }
  close() {
    this.#topic = null
  }
}

/** The help of this window. */
export const [useHelp, provideHelp] = createContext<HelpDesk>()
