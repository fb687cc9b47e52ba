import { en, liveWords, loadWords, type Language, type Words } from '../../core/words/index.ts'

export { languageOfTerminal, systemLanguage } from './terminal-language.mjs'

let now: Words = en

/** The texts of this process, in the language that it speaks at the time: each is looked up when it is said. */
export const words = liveWords(() => now)

/** From here on this process speaks that language. */
export async function speak(language: Language): Promise<void> {
  now = await loadWords(language)
}
