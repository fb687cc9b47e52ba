import { readFileSync, readdirSync } from 'node:fs'
import { matchesGlob } from 'node:path'
import { join } from 'node:path/posix'
import { configuration, type Platform } from './configuration.ts'

/**
 * The files that go into the package of a platform, relative to the project and sorted: those that the configuration names,
 * and the production dependencies. As electron-builder has it (app-builder-lib, fileMatcher.ts): of several patterns that fit
 * the last one counts, and the own files hold no `node_modules` but by way of the dependencies. It leaves out some more of its
 * own accord, as type declarations and lock files.
 */
export function packedFiles(root: string, platform: Platform): readonly string[] {
  const patterns: readonly string[] = [...configuration.files, ...configuration[platform].files]
  const own = patterns
    .filter((pattern) => !pattern.startsWith('!'))
    .flatMap((pattern) => filesBelow(root, fixedPart(pattern)))
  const packages = productionPackages(root).flatMap((folder) => filesBelow(root, folder))
  return [
    ...new Set([
      ...own.filter((file) => isTaken(file, patterns)),
      ...packages.filter((file) => !isLeftOut(file, patterns)),
    ]),
  ]
    .filter((file) => !/\.d\.[cm]?ts$/.test(file))
    .sort()
}

/** Folders of the packages that `dependencies` leads to, by the lock file, without optional ones. */
function productionPackages(root: string): readonly string[] {
  const { packages } = JSON.parse(readFileSync(join(root, 'package-lock.json'), 'utf8')) as {
    packages: Readonly<Record<string, { dev?: boolean; optional?: boolean; devOptional?: boolean }>>
  }
  return Object.entries(packages)
    .filter(([path, kind]) => path !== '' && !(kind.dev ?? kind.optional ?? kind.devOptional ?? false))
    .map(([path]) => path)
}

function isTaken(file: string, patterns: readonly string[]): boolean {
  const last = patterns.findLast((pattern) => fits(file, pattern.replace(/^!/, '')))
  return last !== undefined && !last.startsWith('!')
}

function isLeftOut(file: string, patterns: readonly string[]): boolean {
  return patterns.some((pattern) => pattern.startsWith('!') && fits(file, pattern.slice(1)))
}

/** A leading dot is a sign like any other for electron-builder, and not for Node: it is covered up. */
function fits(file: string, pattern: string): boolean {
  return matchesGlob(file.replace(/(^|\/)\./g, '$1_'), pattern)
}

function fixedPart(pattern: string): string {
  return pattern
    .split('/')
    .slice(0, -1)
    .filter((part) => !part.includes('*'))
    .join('/')
}

function filesBelow(root: string, folder: string): readonly string[] {
  if (folder === '')
    return readdirSync(root, { withFileTypes: true })
      .filter((one) => one.isFile())
      .map(({ name }) => name)
  try {
    return readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
      .filter((one) => one.isFile())
      .map(({ parentPath, name }) => join(parentPath.replaceAll('\\', '/'), name).slice(root.length + 1))
  } catch {
    return []
  }
}
