import { describe, expect, it } from 'vitest'
import { en, languageNames, languages, loadWords } from '../../../core/words/index.ts'

/** Every message by its whole path, with what it is. */
function messagesOf(part: unknown, path = ''): readonly string[] {
  if (typeof part !== 'object' || part === null || Array.isArray(part)) return [`${path}: ${typeof part}`]
  return Object.entries(part)
    .flatMap(([key, each]) => messagesOf(each, `${path}.${key}`))
    .sort()
}

describe.each(languages)('the table of %s', (language) => {
  it('has every message of the English one, each of the same kind, and no other', async () => {
    const messages = messagesOf(await loadWords(language))
    expect(messages.length).toBeGreaterThan(1000)
    expect(messages).toEqual(messagesOf(en))
  })

  it('is found by a name that is its own', () => {
    expect(languageNames[language].length).toBeGreaterThan(3)
  })
})
