import { preferences } from '../../../core/contract/index.ts'
import type { Answer, Preferences, RequestName } from '../../../core/contract/index.ts'

/** The look that a bench has chosen, as an answer to the window says it; null for any other answer. */
export function themeIn(name: string, answer: Answer<RequestName>): Preferences['theme'] | null {
  if ((name !== 'preferences.read' && name !== 'preferences.keep') || !answer.ok) return null
  const read = preferences.safeParse(answer.value)
  return read.success ? read.data.theme : null
}
