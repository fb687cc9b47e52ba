import { existsSync, readFileSync, statSync } from 'node:fs'
import { dirname, join } from 'node:path'
import type { Phrase } from '../../core/problem/index.ts'

/** Electron's program as far as is known without running it. */
export type FoundElectron =
  | { readonly kind: 'there'; readonly binary: string }
  | { readonly kind: 'absent' }
  /** One that was named and cannot be it. */
  | { readonly kind: 'unfit'; readonly why: Phrase }

/**
 * Electron's program: the one that `BEDPLATE_ELECTRON` names, else the one below the project. The one below the project is
 * absent unless it has the version of its package, as `isInstalled` in node_modules/electron/install.js has it: another
 * one is fetched over it. A named one may be of another minor version, but not of another major one.
 */
export function findElectron(root: string, named: string | undefined): FoundElectron {
  const wanted = wantedVersion(root)
  if (named !== undefined && named !== '') {
    const why = faultOf(named, wanted)
    return why === undefined ? { kind: 'there', binary: named } : { kind: 'unfit', why }
  }
  const folder = join(root, 'node_modules/electron')
  const path = readText(join(folder, 'path.txt'))
  const version = readText(join(folder, 'dist/version'))
  const binary = join(folder, 'dist', path ?? '')
  const isThere = path !== undefined && isFile(binary) && plain(version) === wanted
  return isThere ? { kind: 'there', binary } : { kind: 'absent' }
}

/** The version of Electron that the packages ask for, for example `45.4.1`. */
export function wantedVersion(root: string): string {
  const { version } = JSON.parse(readFileSync(join(root, 'node_modules/electron/package.json'), 'utf8')) as {
    version: string
  }
  return version
}

function faultOf(named: string, wanted: string): Phrase | undefined {
  if (!existsSync(named)) return { code: 'electronNamedNowhere', facts: { named } }
  if (!isFile(named)) return { code: 'electronNamedNoProgram', facts: { named } }
  const version = plain(versionBeside(named))
  if (version === undefined) return { code: 'electronNamedOther', facts: { named } }
  if (version.split('.', 1).join() !== wanted.split('.', 1).join())
    return { code: 'electronNamedVersion', facts: { named, version, wanted } }
  return undefined
}

/** Electron's archives have a file `version` at their top; on macOS the program lies three folders below it. */
function versionBeside(binary: string): string | undefined {
  const folder = dirname(binary)
  return readText(join(folder, 'version')) ?? readText(join(folder, '../../../version'))
}

function plain(version: string | undefined): string | undefined {
  const text = version?.trim().replace(/^v/, '')
  return text !== undefined && /^\d+\.\d+\.\d+/.test(text) ? text : undefined
}

function isFile(path: string): boolean {
  return statSync(path, { throwIfNoEntry: false })?.isFile() ?? false
}

function readText(file: string): string | undefined {
  try {
    return readFileSync(file, 'utf8')
  } catch {
    return undefined
  }
}
