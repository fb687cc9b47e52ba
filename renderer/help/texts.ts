import { helpWords } from '../../core/words/index.ts'
import { onDemand } from '../on-demand.ts'

/** The texts of the help, by language. */
export const helpTexts = {
  en: onDemand(helpWords.en),
  de: onDemand(helpWords.de),
  es: onDemand(helpWords.es),
} as const
