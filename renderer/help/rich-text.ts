import type { HelpText, RichText, Words } from '../../core/words/index.ts'
import { withNoBreakSpaces } from '../no-break-spaces.ts'

/** A text of the help as it is shown, with the names of the window as they stand there. */
export function richText(text: HelpText, words: Words): RichText {
  const parts = typeof text === 'string' ? [text] : text(words)
  return parts.map((part) => (typeof part === 'string' ? withNoBreakSpaces(part) : part))
}
