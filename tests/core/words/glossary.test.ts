import { readFileSync, readdirSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { inDictionaryOrder, termIds, terms, type TermId } from '../../../core/words/index.ts'
import { textsOfSpecs } from '../../texts-of-specs.ts'

const root = join(import.meta.dirname, '../../../core/words')
const ofDemos = [...(await textsOfSpecs())].join('\n')

/** What the program and its demo engines say in a language, without the help. */
function saidIn(language: string): string {
  const files = readdirSync(join(root, language), { recursive: true, encoding: 'utf8' })
  return files
    .filter((file) => file.endsWith('.ts') && !file.startsWith('help'))
    .map((file) => readFileSync(join(root, language, file), 'utf8'))
    .join('\n')
}

/** Words that are explained although the program itself says a shorter one, such as `case` and `cap`, or none. */
const explainedAlone: readonly TermId[] = [
  'crankcase',
  'case-half',
  'rod-cap',
  'deck-height',
  'crush',
  'stud',
]

/** The part of a word that its forms have in common. */
const stem = (word: string) => word.toLowerCase().slice(0, Math.max(4, word.length - 2))

describe.each(['de', 'es'] as const)('the glossary in %s', (language) => {
  it('has the words that the program itself uses', () => {
    const said = `${saidIn(language)}\n${ofDemos}`.toLowerCase()
    const strange = termIds.filter(
      (id) =>
        !explainedAlone.includes(id) &&
        terms[id][language].split(/[ -]/).every((word) => word.length < 3 || !said.includes(stem(word))),
    )
    expect(strange).toEqual([])
  })
})

describe('the order of the glossary', () => {
  // By code units ö would stand behind z, and á, é, í behind u.
  it.each([
    ['de', ['Nachprüfung', 'Offenzeit', 'Ölkanal', 'Passstift']],
    ['es', ['alojamiento', 'ángulo de apriete', 'anillo de retención']],
    ['es', ['conicidad', 'cordón de sellador', 'espárrago', 'espesor de pared']],
    ['es', ['junta', 'límite de servicio', 'límite elástico', 'llave dinamométrica']],
  ] as const)('is that of a dictionary in %s: %j', (language, some) => {
    const words: readonly string[] = inDictionaryOrder(language, termIds).map((id) => terms[id][language])
    expect(words).toHaveLength(termIds.length)
    expect(words.filter((word) => (some as readonly string[]).includes(word))).toEqual(some)
  })
})
