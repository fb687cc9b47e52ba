import { readFileSync, readdirSync } from 'node:fs'
import { join, posix } from 'node:path'
import { importsOf, type Import } from './imports.ts'

/** Every module that each source file of the program and its tests names, by the file's path from the root. */
export function importsByFile(root: string): ReadonlyMap<string, readonly Import[]> {
  const below = (folder: string) =>
    readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile())
      .map((entry) =>
        join(entry.parentPath, entry.name)
          .slice(root.length + 1)
          .replaceAll('\\', '/'),
      )
  return new Map(
    [...readdirSync(root), ...['core', 'electron', 'renderer', 'tests'].flatMap(below)]
      .filter((path) => /\.(ts|mts|js|mjs|svelte)$/.test(path))
      .map((path) => [path, importsOf(path, readFileSync(join(root, path), 'utf8'))]),
  )
}

/** The same with each module as a path from the root; a package keeps no path that is there. */
export function graphOf(
  imports: ReadonlyMap<string, readonly Import[]>,
): ReadonlyMap<string, readonly string[]> {
  return new Map(
    [...imports].map(([path, found]) => [
      path,
      found.map(({ specifier }) => posix.join(posix.dirname(path), specifier)),
    ]),
  )
}
