import { en, languages, loadWords, type Language, type Words } from '../../core/words/index.ts'
import { pseudo } from '../../tests/core/words/pseudo.ts'
import { ShownLanguage } from '../shown-language.svelte.ts'
import { wordsWithNoBreakSpaces } from '../no-break-spaces.ts'

/** What the stage speaks: also a language that nobody does, a third longer than English, in brackets. */
export const stageLanguages = [...languages, 'pseudo'] as const

export type StageLanguage = (typeof stageLanguages)[number]

/** The language of its specs and its bench: what has no words of its own has those of English. */
const spokenIn = (lang: StageLanguage): Language => (lang === 'pseudo' ? 'en' : lang)

/** Made when it is first spoken. */
let ofNobody: Words | null = null

export async function wordsOnStage(lang: StageLanguage): Promise<Words> {
  return wordsWithNoBreakSpaces(lang === 'pseudo' ? (ofNobody ??= pseudo(en)) : await loadWords(lang))
}

/** A language that a bench is opened in; it can be shown in another of the program's. */
export function languageOnStage(lang: StageLanguage): Promise<ShownLanguage> {
  const load = (language: Language) => wordsOnStage(lang === 'pseudo' ? lang : language)
  return ShownLanguage.first({ system: [spokenIn(lang)], load })
}
