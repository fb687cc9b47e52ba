import { spawn } from 'node:child_process'
import { existsSync, mkdirSync, readFileSync, readdirSync, rmSync, statSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'

/** Longest time without a byte before a download counts as failed, in seconds. */
const patience = 20

/** Path of Electron's program below the project, or `undefined` where only its package is there. */
export function electronBinary(root: string): string | undefined {
  try {
    const folder = join(root, 'node_modules/electron')
    const binary = join(folder, 'dist', readFileSync(join(folder, 'path.txt'), 'utf8'))
    return existsSync(binary) ? binary : undefined
  } catch {
    return undefined
  }
}

/** Whether the installed version of Electron was asked for before. A newer one is asked for anew. */
export function wasTried(root: string): boolean {
  try {
    return readFileSync(attemptFile(root), 'utf8') === wantedVersion(root)
  } catch {
    return false
  }
}

/**
 * Downloads Electron once, and remembers that it was tried. It is given up when nothing arrives for a while; how long it
 * takes in all depends on the line, so that is not limited.
 */
export async function fetchElectron(root: string): Promise<boolean> {
  mkdirSync(join(root, 'dist'), { recursive: true })
  writeFileSync(attemptFile(root), wantedVersion(root))
  console.error('Fetching Electron for a window of its own (tried once) …')
  const arriving = join(root, 'dist/electron-download')
  mkdirSync(arriving, { recursive: true })
  const fetching = spawn(process.execPath, [join(root, 'node_modules/electron/install.js')], {
    env: { ...process.env, TMPDIR: arriving, TEMP: arriving, TMP: arriving },
    stdio: 'ignore',
  })
  const unpacking = join(root, 'node_modules/electron')
  const watching = stopWhenStalled(
    () => sizeBelow(arriving) + sizeBelow(unpacking),
    () => fetching.kill(),
  )
  const code = await new Promise<number | null>((resolve) => {
    fetching.on('error', () => resolve(null))
    fetching.on('close', resolve)
  })
  clearInterval(watching)
  rmSync(arriving, { recursive: true, force: true })
  return code === 0 && electronBinary(root) !== undefined
}

function stopWhenStalled(arrived: () => number, stop: () => void): NodeJS.Timeout {
  let last = 0
  let idle = 0
  return setInterval(() => {
    const size = arrived()
    idle = size === last ? idle + 1 : 0
    last = size
    if (idle >= patience) stop()
  }, 1000)
}

function sizeBelow(folder: string): number {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .map((name) => statSync(join(folder, name), { throwIfNoEntry: false })?.size ?? 0)
    .reduce((sum, size) => sum + size, 0)
}

function wantedVersion(root: string): string {
  const { version } = JSON.parse(readFileSync(join(root, 'node_modules/electron/package.json'), 'utf8')) as {
    version: string
  }
  return version
}

function attemptFile(root: string): string {
  return join(root, 'dist/electron-tried')
}
