import { preferences } from '../../../core/contract/index.ts'
import type { Answer, Preferences, RequestName } from '../../../core/contract/index.ts'

/** The look and the language that a bench has chosen, as an answer to the window says them; null for any other answer. */
export function chosenIn(
  name: string,
  answer: Answer<RequestName>,
): Pick<Preferences, 'theme' | 'language'> | null {
  if ((name !== 'preferences.read' && name !== 'preferences.keep') || !answer.ok) return null
  const read = preferences.safeParse(answer.value)
  return read.success ? { theme: read.data.theme, language: read.data.language } : null
}
