import type { PassChoice } from '../../../core/drafts/index.ts'
import type { Words } from '../../../core/words/index.ts'

/** What a pass of a kind is called where it is chosen. */
export function choiceText(words: Words, choice: PassChoice): string {
  const { kinds } = words.passes
  return choice === 'in-all' ? `${kinds.angle}, ${words.editor.passes.inAll}` : kinds[choice]
}
