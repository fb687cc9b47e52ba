import { getContext, setContext, untrack } from 'svelte'
import type { Confirm } from './confirm.ts'

/** The big button is now, or a sentence why there is none. */
export type MainAction = Confirm | { readonly whyNot: string }

/** The big button while questions are open: what was asked last has it, and gives it back when it is answered. */
export class MainButton {
  #actions = $state.raw<readonly (() => MainAction)[]>([])

  /** Null while no question is open: then the step says what the button does. */
  get action(): MainAction | null {
    return this.#actions.at(-1)?.() ?? null
  }

  /** Takes the button until the function given back is called; an effect that takes it does not depend on who has it. */
  take(action: () => MainAction): () => void {
    this.#actions = [...untrack(() => this.#actions), action]
    return () => {
      this.#actions = this.#actions.filter((each) => each !== action)
    }
  }
}

const key = Symbol('mainButton')

export function provideMainButton(): MainButton {
  return setContext(key, new MainButton())
}

/** Null for a form that stands where there is no big button, as on the sheet. */
export function useMainButton(): MainButton | null {
  return getContext<MainButton | undefined>(key) ?? null
}
