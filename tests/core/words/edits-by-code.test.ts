import { expect, it } from 'vitest'
import { undoText, type EditMessage } from '../../../core/drafts/index.ts'
import { loadWords } from '../../../core/words/index.ts'

it.each([
  ['en', 'Undo: take out WARNING', 'Undo: take out WARNING'],
  ['de', 'Rückgängig: WARNUNG entfernen', 'Rückgängig: WARNING entfernen'],
  ['es', 'Deshacer: quitar ADVERTENCIA', 'Deshacer: quitar WARNING'],
] as const)(
  'an edit of a caution is said in %s by its code; one that an earlier version named, by that name',
  async (language, said, older) => {
    const words = await loadWords(language)
    const what: EditMessage = { code: 'cautionTakenOut', facts: { signal: 'WARNING' } }
    expect(undoText(words, what)).toBe(said)
    expect(undoText(words, { code: 'entryTakenOut', facts: { name: 'WARNING' } })).toBe(older)
  },
)
