import { createContext } from 'svelte'
import type { Words } from '../core/words/index.ts'

/** The texts of the window, in the language of the person who reads them. */
export const [useWords, provideWords] = createContext<Words>()
