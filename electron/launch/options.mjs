import { parseArgs } from 'node:util'
import { languages } from './terminal-language.mjs'

/**
 * What may stand after `npm start --`.
 *
 * @typedef {object} Options
 * @property {boolean} local The local host even where Electron is there.
 * @property {boolean} window Whether a window is opened; without one the local host serves until it is ended.
 * @property {boolean} doctor Only to say how the program and its record stand.
 * @property {boolean} fetchElectron Whether Electron is asked for again though an attempt has failed.
 * @property {string} [data] The data folder as typed.
 * @property {string} [specs] The folder of engine specs as typed.
 * @property {import('./terminal-language.mjs').Language} [language] What the program speaks from now on.
 * @property {string} [shop] The address of the shop's archive as typed.
 * @property {string} [bench] What the bench is to be called, as typed.
 * @property {readonly string[]} files Files to open, as typed.
 */

const known = /** @type {const} */ ({
  local: { type: 'boolean' },
  'no-window': { type: 'boolean' },
  doctor: { type: 'boolean' },
  'fetch-electron': { type: 'boolean' },
  help: { type: 'boolean', short: 'h' },
  data: { type: 'string' },
  specs: { type: 'string' },
  language: { type: 'string' },
  shop: { type: 'string' },
  bench: { type: 'string' },
})

/**
 * @param {import('./words/index.mjs').LauncherWords} words Says what is wrong.
 * @param {readonly string[]} typed
 * @returns {{ kind: 'options', options: Options } | { kind: 'help' } | { kind: 'refused', why: string }}
 */
export function parseOptions(words, typed) {
  // Not strict, so that what is wrong is said in this program's words; `data` and `specs` are texts or absent by then.
  const { values, positionals, tokens } = parseArgs({
    args: [...typed],
    options: known,
    strict: false,
    allowPositionals: true,
    tokens: true,
  })
  if (values.help === true) return { kind: 'help' }
  for (const token of tokens) {
    const why = token.kind === 'option' ? refusalOf(words, token) : undefined
    if (why !== undefined) return { kind: 'refused', why }
  }
  return {
    kind: 'options',
    options: {
      local: values.local === true,
      window: values['no-window'] !== true,
      doctor: values.doctor === true,
      fetchElectron: values['fetch-electron'] === true,
      ...(typeof values.data === 'string' ? { data: values.data } : {}),
      ...(typeof values.specs === 'string' ? { specs: values.specs } : {}),
      ...(typeof values.shop === 'string' ? { shop: values.shop } : {}),
      ...(typeof values.bench === 'string' ? { bench: values.bench } : {}),
      ...languageIn(values.language),
      files: positionals,
    },
  }
}

/**
 * @param {unknown} typed
 * @returns {{ language?: import('./terminal-language.mjs').Language }}
 */
function languageIn(typed) {
  const language = languages.find((each) => each === typed)
  return language === undefined ? {} : { language }
}

/**
 * @param {import('./words/index.mjs').LauncherWords} words
 * @param {{ name: string, rawName: string, value?: string | undefined }} token
 */
function refusalOf(words, { name, rawName, value }) {
  const option = Object.entries(known).find(([each]) => each === name)?.[1]
  if (option === undefined) return words.optionUnknown({ option: rawName })
  if (option.type === 'boolean')
    return value === undefined ? undefined : words.optionAlone({ option: rawName, value })
  if (name === 'language')
    return languageIn(value).language === undefined
      ? words.languageUnknown({ language: value ?? '' })
      : undefined
  if (name === 'shop') return /^postgres(ql)?:\/\//.test(value ?? '') ? undefined : words.shopMissing
  if (value !== undefined && value.trim() !== '' && !value.startsWith('--')) return undefined
  return name === 'bench' ? words.benchMissing : words.folderMissing({ option: rawName })
}
