import { languageOfTerminal, languages, systemLanguage } from '../terminal-language.mjs'
import { de } from './de.mjs'
import { en } from './en.mjs'
import { es } from './es.mjs'

/** @typedef {import('./en.mjs').LauncherWords} LauncherWords */
/** @typedef {import('../terminal-language.mjs').Language} Language */

/** @type {Readonly<Record<Language, LauncherWords>>} */
export const launcherWords = { en, de, es }

/**
 * The language a command line asks for, as `parseOptions` will find it: needed before, to say what is wrong with the rest.
 *
 * @param {readonly string[]} typed
 * @returns {Language | undefined}
 */
export function languageAsked(typed) {
  const asked = typed.map((each, at) =>
    each === '--language' ? typed[at + 1] : each.replace(/^--language=/, ''),
  )
  const at = typed.findLastIndex((each) => /^--language(=|$)/.test(each))
  return languages.find((each) => each === asked[at])
}

/**
 * What is said until TypeScript runs: in the language that is asked for, else in that of the terminal.
 *
 * @param {readonly string[]} typed What stands after `npm start --`.
 * @returns {LauncherWords}
 */
export function wordsFor(typed) {
  return launcherWords[languageAsked(typed) ?? languageOfTerminal(process.env, systemLanguage())]
}
