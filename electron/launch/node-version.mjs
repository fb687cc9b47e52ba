/**
 * Which Node carries the program. Electron aside, it needs one that runs TypeScript as it is. On Linux with an x64
 * processor the packages bring one along; elsewhere the person's own must do.
 *
 * @typedef {object} Machine
 * @property {string} version Of the Node that runs now, for example `20.20.2`.
 * @property {string} platform As in `process.platform`.
 * @property {string} arch As in `process.arch`.
 * @property {boolean} bundled Whether the Node that comes with the packages is installed and runs here.
 */

/** As it is said. */
export const leastOfOwn = '22.12'
const enough = `${leastOfOwn}.0`

/**
 * @param {string} version
 * @param {string} least
 * @returns {boolean} Whether `version` is `least` or newer.
 */
export function isAtLeast(version, least) {
  const [a, b] = [version, least].map((text) => text.split('.').map(Number))
  const differing = [0, 1, 2].find((at) => a?.[at] !== b?.[at])
  return differing === undefined || (a?.[differing] ?? 0) > (b?.[differing] ?? 0)
}

/**
 * @param {import('./words/index.mjs').LauncherWords} words
 * @param {Machine} machine
 * @returns {string | undefined} Why nothing can be done with the Node of this machine, before anything is installed.
 */
export function refusalBeforeInstall(words, { version, platform, arch, bundled }) {
  if (bundled || isAtLeast(version, enough)) return undefined
  const comesAlong = platform === 'linux' && arch === 'x64'
  const least = comesAlong ? '20' : leastOfOwn
  if (comesAlong && isAtLeast(version, '20.0.0')) return undefined
  return words.nodeTooOld({ least, version })
}

/**
 * @param {Machine} machine
 * @returns {'bundled' | 'own' | 'none'}
 */
export function nodeToUse({ version, bundled }) {
  if (bundled) return 'bundled'
  return isAtLeast(version, enough) ? 'own' : 'none'
}

/**
 * @param {string} version
 * @returns {readonly string[]} The options that Node needs so that it runs TypeScript, and does so without a warning.
 */
export function flagsFor(version) {
  const silent = version.startsWith('22.') ? isAtLeast(version, '22.18.0') : isAtLeast(version, '24.3.0')
  return silent ? [] : ['--experimental-strip-types', '--disable-warning=ExperimentalWarning']
}
