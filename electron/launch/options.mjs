/**
 * What may stand after `npm start --`.
 *
 * @typedef {object} Options
 * @property {boolean} local The local host even where Electron is there.
 * @property {boolean} window Whether a window is opened; without one the local host serves until it is ended.
 * @property {boolean} doctor Only to say how the program and its record stand.
 * @property {string} [data] The data folder as typed.
 */

export const usage = `npm start                   open Bedplate
npm start -- --local        in a browser window, even where Electron is there
npm start -- --no-window    open nothing: print the address and serve until ended
npm start -- --data DIR     keep builds in DIR
npm start -- --doctor       say how the program and its record stand, and open nothing
npm start -- --help         print this`

/**
 * @param {readonly string[]} words
 * @returns {{ kind: 'options', options: Options } | { kind: 'help' } | { kind: 'refused', why: string }}
 */
export function parseOptions(words) {
  /** @type {Options} */
  const options = { local: false, window: true, doctor: false }
  const rest = [...words]
  for (let word = rest.shift(); word !== undefined; word = rest.shift()) {
    if (word === '--help' || word === '-h') return { kind: 'help' }
    if (word === '--local') options.local = true
    else if (word === '--no-window') options.window = false
    else if (word === '--doctor') options.doctor = true
    else if (word === '--data' || word.startsWith('--data=')) {
      const folder = word === '--data' ? rest.shift() : word.slice('--data='.length)
      if (folder === undefined || folder === '' || folder.startsWith('--'))
        return { kind: 'refused', why: 'After --data comes a folder, for example --data ./bench-2.' }
      options.data = folder
    } else return { kind: 'refused', why: `“${word}” is not an option of Bedplate. These are:\n${usage}` }
  }
  return { kind: 'options', options }
}
