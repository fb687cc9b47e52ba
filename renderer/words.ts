import { createContext } from 'svelte'
import { amountsIn, type ShownAmounts } from '../core/quantity/index.ts'
import type { Words } from '../core/words/index.ts'

/** The texts of the window, in the language of the person who reads them. */
export const [useWords, provideWords] = createContext<Words>()

/** Quantities as that person writes them. */
export function useAmounts(): ShownAmounts {
  return amountsIn(useWords())
}
