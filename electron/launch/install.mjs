import { spawn } from 'node:child_process'
import { readFileSync } from 'node:fs'
import { basename, join } from 'node:path'

/**
 * @typedef {Record<string, { version?: string, optional?: boolean, devOptional?: boolean }>} Packages
 * As in the `packages` of a lock file; `''` is the project itself.
 */

/**
 * @param {Packages} locked What the lock file asks for.
 * @param {Packages | undefined} installed What npm noted when it last installed.
 * @returns {boolean} Whether every package is there at its locked version. Optional ones may be left out: they are for other machines.
 */
export function isInstalled(locked, installed) {
  if (installed === undefined) return false
  return Object.entries(locked).every(([path, { version, optional, devOptional }]) => {
    const found = installed[path]
    return (
      path === '' || (found === undefined ? (optional ?? devOptional ?? false) : found.version === version)
    )
  })
}

/**
 * Installs with npm what is missing, saying so while it lasts.
 *
 * @param {import('./words/index.mjs').LauncherWords} words
 * @param {string} root Folder of the project.
 * @returns {Promise<boolean>} Whether all is there now.
 */
export async function install(words, root) {
  const locked = packagesOf(join(root, 'package-lock.json'))
  if (isInstalled(locked ?? {}, packagesOf(join(root, 'node_modules/.package-lock.json')))) return true
  console.error(words.installing)
  const start = Date.now()
  const ticking = setInterval(
    () => console.error(words.stillInstalling({ seconds: secondsSince(start) })),
    5000,
  )
  const { ended, output } = await npm(words, root, [
    'ci',
    '--include=dev',
    '--include=optional',
    '--loglevel=error',
  ])
  clearInterval(ticking)
  if (ended === 0) console.error(words.installed({ seconds: secondsSince(start) }))
  else console.error(`${output}\n${words.installingFailed}`)
  return ended === 0
}

/**
 * @param {string} file
 * @returns {Packages | undefined}
 */
function packagesOf(file) {
  try {
    return /** @type {{ packages: Packages }} */ (JSON.parse(readFileSync(file, 'utf8'))).packages
  } catch {
    return undefined
  }
}

/**
 * @param {import('./words/index.mjs').LauncherWords} words
 * @param {string} root
 * @param {readonly string[]} asked
 * @returns {Promise<{ ended: number | null, output: string }>}
 */
function npm(words, root, asked) {
  // Under `npm start` npm says where it is; that spares the search, and the command shell on Windows.
  const own = process.env.npm_execpath
  const child =
    own !== undefined && basename(own) === 'npm-cli.js'
      ? spawn(process.execPath, [own, ...asked], { cwd: root, stdio: ['ignore', 'pipe', 'pipe'] })
      : spawn('npm', asked, {
          cwd: root,
          stdio: ['ignore', 'pipe', 'pipe'],
          shell: process.platform === 'win32',
        })
  let output = ''
  for (const stream of [child.stdout, child.stderr]) stream.on('data', (text) => (output += text))
  return new Promise((resolve) => {
    child.on('error', (error) => resolve({ ended: null, output: words.npmNotStarted(error) }))
    child.on('close', (ended) => resolve({ ended, output }))
  })
}

/** @param {number} start */
function secondsSince(start) {
  return Math.round((Date.now() - start) / 1000)
}
