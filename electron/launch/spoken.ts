import { en, languageOf, liveWords, loadWords, type Language, type Words } from '../../core/words/index.ts'

let now: Words = en

/** The texts of this process, in the language that it speaks at the time: each is looked up when it is said. */
export const words = liveWords(() => now)

/** From here on this process speaks that language. */
export async function speak(language: Language): Promise<void> {
  now = await loadWords(language)
}

/**
 * The language that a terminal is set to (POSIX, Base Definitions 8.2: `LC_ALL` goes before `LC_MESSAGES`, and that before `LANG`),
 * else that of the system; English where there are no words of it.
 */
export function languageOfTerminal(
  env: Readonly<Record<string, string | undefined>>,
  system: string,
): Language {
  const set = [env['LC_ALL'], env['LC_MESSAGES'], env['LANG']].find((tag) => tag !== undefined && tag !== '')
  return languageOf(set === undefined ? [system] : [set]) ?? 'en'
}

/** What `Intl` takes for the language of this machine. */
export function systemLanguage(): string {
  return new Intl.DateTimeFormat().resolvedOptions().locale
}
