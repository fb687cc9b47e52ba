import { describe, expect, it } from 'vitest'
import { sentenceIn } from '../../../core/problem/index.ts'
import { parseNumber } from '../../../core/quantity/index.ts'
import { loadWords } from '../../../core/words/index.ts'

/** What a person typed is repeated in quotes, in front of what to type instead. */
async function adviceOn(typed: string, language: 'en' | 'de' | 'es'): Promise<string> {
  const read = parseNumber(typed)
  if (read.ok) throw new Error(`${typed} is read`)
  const sentence = sentenceIn(await loadWords(language), read.problem)
  expect(sentence).toContain(typed)
  return sentence.replace(typed, '')
}

describe.each([
  ['en', '12.5', '1234.5'],
  ['de', '12,5', '1234,5'],
  ['es', '12,5', '1234,5'],
] as const)('what is said in %s of a number that cannot be read', (language, plain, large) => {
  it.each(['1.234,5', '1,234.5'])(
    'shows how %s is typed, with the decimal sign of the language',
    async (typed) => {
      const [example] = (await adviceOn(typed, language)).match(/\d[\d.,]*\d/) ?? []
      expect(example).toBe(large)
      expect(parseNumber(example!)).toEqual({ ok: true, value: 1234.5 })
    },
  )

  it('has an example first that this language would write', async () => {
    for (const typed of ['', 'abc']) {
      const [example] = (await adviceOn(typed, language)).match(/\d[\d.,]*\d/) ?? []
      expect(example).toBe(plain)
      expect(parseNumber(example!)).toEqual({ ok: true, value: 12.5 })
    }
  })
})
