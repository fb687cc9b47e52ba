import { createHash } from 'node:crypto'
import { existsSync, readFileSync, readdirSync, statSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'

/** What must be built before it runs: the renderer, the local host, and main and preload of the desktop host. */
export const targets = ['renderer', 'local', 'desktop'] as const
export type Target = (typeof targets)[number]

export function isTarget(word: string): word is Target {
  return (targets as readonly string[]).includes(word)
}

const hostSources = ['electron', 'core', 'package-lock.json']
const sources: Readonly<Record<Target, readonly string[]>> = {
  renderer: ['renderer', 'core', 'assets', 'vite.config.ts', 'package-lock.json'],
  local: hostSources,
  desktop: hostSources,
}

/** Whether a build is missing, or was made from other sources than those that are there. */
export function isStale(root: string, target: Target): boolean {
  const isThere = existsSync(join(root, 'dist', target)) && existsSync(noteOf(root, target))
  return !isThere || readFileSync(noteOf(root, target), 'utf8') !== digestOfSources(root, target)
}

/** Notes the sources that a build was made from, as they were when it began. */
export function noteBuilt(root: string, target: Target, digest: string): void {
  writeFileSync(noteOf(root, target), digest)
}

export function digestOfSources(root: string, target: Target): string {
  return digestOf(root, sources[target])
}

/** SHA-256 over names and contents of all files below the given paths, of which some may be missing. */
export function digestOf(root: string, paths: readonly string[]): string {
  const hash = createHash('sha256')
  for (const path of paths.flatMap((below) => filesBelow(root, below)))
    hash
      .update(`${path}\0`)
      .update(readFileSync(join(root, path)))
      .update('\0')
  return hash.digest('hex')
}

function filesBelow(root: string, path: string): readonly string[] {
  const found = statSync(join(root, path), { throwIfNoEntry: false })
  if (found === undefined) return []
  if (found.isFile()) return [path]
  return readdirSync(join(root, path))
    .sort()
    .flatMap((name) => filesBelow(root, `${path}/${name}`))
}

function noteOf(root: string, target: Target): string {
  return join(root, `dist/${target}.sources`)
}
