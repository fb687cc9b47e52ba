import { expect, it } from 'vitest'
import { languageOfTerminal } from '../../../electron/launch/spoken.ts'
import { languages } from '../../../core/words/index.ts'
import { languages as languagesOfLauncher } from '../../../electron/launch/terminal-language.mjs'

it.each([
  [{ LANG: 'de_DE.UTF-8' }, 'en-GB', 'de'],
  [{ LANG: 'de_DE.UTF-8', LC_MESSAGES: 'es_ES.UTF-8' }, 'en-GB', 'es'],
  [{ LANG: 'de_DE.UTF-8', LC_MESSAGES: 'es_ES.UTF-8', LC_ALL: 'en_GB.UTF-8' }, 'de-DE', 'en'],
  [{ LANG: '' }, 'es-MX', 'es'],
  [{ LANG: 'C.UTF-8' }, 'de-DE', 'en'],
  [{}, 'fr-FR', 'en'],
])('a terminal set to %j on a machine in %s is spoken to in %s', (env, system, language) => {
  expect(languageOfTerminal(env, system)).toBe(language)
})

it('the launcher knows the languages of the program', () => {
  expect(languagesOfLauncher).toEqual(languages)
})
