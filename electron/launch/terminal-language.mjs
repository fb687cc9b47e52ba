/** @typedef {import('../../core/words/index.ts').Language} Language */

/**
 * As in core/words/language.ts, which cannot be read before TypeScript runs.
 *
 * @type {readonly Language[]}
 */
export const languages = ['en', 'de', 'es']

/**
 * The language that a terminal is set to (POSIX, Base Definitions 8.2: `LC_ALL` goes before `LC_MESSAGES`, and that before `LANG`),
 * else that of the system; English where there are no words of it.
 *
 * @param {Readonly<Record<string, string | undefined>>} env
 * @param {string} system
 * @returns {Language}
 */
export function languageOfTerminal(env, system) {
  const set = [env.LC_ALL, env.LC_MESSAGES, env.LANG].find((tag) => tag !== undefined && tag !== '')
  const [language] = (set ?? system).toLowerCase().split(/[-_]/)
  return languages.find((each) => each === language) ?? 'en'
}

/** @returns {string} What `Intl` takes for the language of this machine. */
export function systemLanguage() {
  return new Intl.DateTimeFormat().resolvedOptions().locale
}
