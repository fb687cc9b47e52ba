import { builtinModules } from 'node:module'
import { posix } from 'node:path'
import { coreFolders, dependencies, mayImport, type Layer } from './table.ts'

const layers = ['core', 'electron', 'renderer', 'tests'] as const

/**
 * The layer of a file, by its path from the root of the project with `/` between the parts. The gallery is for
 * development alone: it may use what tests use, and nothing that is shipped may import it.
 */
export function layerOf(path: string): Layer {
  if (path.startsWith('renderer/gallery/')) return 'tests'
  return layers.find((layer) => path.startsWith(`${layer}/`)) ?? 'tooling'
}

/** What is wrong with one import and how to put it right, or `undefined`. */
export function faultOf(path: string, specifier: string): string | undefined {
  if (specifier.startsWith('.')) return faultOfPath(path, posix.join(posix.dirname(path), specifier))
  return isBuiltIn(specifier) ? faultOfBuiltIn(path, specifier) : faultOfPackage(path, specifier)
}

function faultOfPath(path: string, target: string): string | undefined {
  const from = layerOf(path)
  const to = layerOf(target)
  if (target.startsWith('../')) return 'This is outside the project. Move what is needed into it.'
  if (/^(assets|specs|dist)\//.test(target))
    return from === 'tests' || (from === 'renderer' && target.startsWith('assets/'))
      ? undefined
      : `${posix.dirname(target)}/ holds data, not code. Read it as a file where it is used, in electron/.`
  if (from !== to && !mayImport[from].includes(to)) return crossing(from, to)
  if (to !== 'core') return undefined
  return faultOfReach(path, target) ?? (from === 'core' ? faultOfOrder(path, target) : undefined)
}

function crossing(from: Layer, to: Layer): string {
  if (from === 'core')
    return `core/ may not know ${to}/. Take what is needed as an argument, or move the pure part of it into core/.`
  if (to === 'tests' || to === 'tooling')
    return `${from}/ may not import ${to === 'tests' ? 'tests/' : 'the configuration'}. Move what is needed into ${from}/.`
  if (from === 'tooling')
    return `The configuration may not import ${to}/. Move what is needed to the root of the project.`
  return `${from}/ and ${to}/ may not import each other. Add a request to core/contract/, or move what both need into core/.`
}

/** A folder of core is entered by its `index.ts`, except from itself and from the tests that mirror it. */
function faultOfReach(path: string, target: string): string | undefined {
  const folder = posix.dirname(target)
  if (folder === 'core') return `core/ has no files of its own. Move ${target} into a folder of the trade.`
  if (target === `${folder}/index.ts` && folder.split('/').length === 2) return undefined
  const subject = target.split('/').slice(0, 2).join('/')
  if (path.startsWith(`${subject}/`) || path.startsWith(`tests/${subject}/`)) return undefined
  return `This reaches past ${subject}/index.ts. Import from ${subject}/index.ts, and export there what is missing.`
}

/** A folder of core stands on those that its row in the table names, and on no other. */
function faultOfOrder(path: string, target: string): string | undefined {
  const [from = '', to = ''] = [path, target].map((each) => each.split('/')[1])
  const allowed = coreFolders[from]
  if (allowed === undefined)
    return `core/${from}/ has no row in tests/layers/table.ts. Add it to coreFolders, after the folders it stands on.`
  if (from === to || allowed.includes(to)) return undefined
  return Object.keys(coreFolders).indexOf(to) < Object.keys(coreFolders).indexOf(from)
    ? `core/${from}/ does not stand on core/${to}/ so far. Add it in tests/layers/table.ts with good reason, or do without.`
    : `core/${from}/ comes before core/${to}/ and may not know it. Take what is needed as an argument, or move it to core/${from}/.`
}

function isBuiltIn(specifier: string): boolean {
  return specifier.startsWith('node:') || builtinModules.includes(specifier)
}

function faultOfBuiltIn(path: string, specifier: string): string | undefined {
  const layer = layerOf(path)
  if (layer === 'core' || layer === 'renderer')
    return `${layer}/ may not use Node (${specifier}). Do it in electron/ and hand the result over${layer === 'core' ? ' as an argument' : ' by a request of core/contract/'}.`
  return specifier.startsWith('node:')
    ? undefined
    : `Write node:${specifier}, so that no package can take its name.`
}

function faultOfPackage(path: string, specifier: string): string | undefined {
  const parts = specifier.split('/')
  const name = parts.slice(0, specifier.startsWith('@') ? 2 : 1).join('/')
  const layer = layerOf(path)
  const allowed = dependencies[name]
  if (allowed === undefined)
    return `“${name}” is in no layer. Add it to package.json and to tests/layers/table.ts, or do without it.`
  if (layer === 'tests' || allowed.includes(layer)) return undefined
  if (layer === 'core')
    return `core/ imports zod and nothing else. Take what “${name}” gives as an argument, or use it in ${allowed.join(' or ')}.`
  return allowed.length === 0
    ? `“${name}” is run, not imported. Leave the import out.`
    : `“${name}” belongs to ${allowed.join(' and ')}, not to ${layer}. Use it there, or give it ${layer} in tests/layers/table.ts with good reason.`
}

/** Packages without a layer, and layers without a package. */
export function faultsOfTable(listed: readonly string[]): readonly string[] {
  const inTable = Object.keys(dependencies)
  return [
    ...listed
      .filter((name) => !inTable.includes(name))
      .map(
        (name) =>
          `“${name}” has no layer. Add it to tests/layers/table.ts with the layers that may import it.`,
      ),
    ...inTable
      .filter((name) => !listed.includes(name))
      .map((name) => `“${name}” is no longer in package.json. Take it out of tests/layers/table.ts.`),
  ]
}

/** Rows of core's table that name a folder which does not come before their own. */
export function faultsOfOrder(): readonly string[] {
  const folders = Object.keys(coreFolders)
  return folders.flatMap((folder, index) =>
    (coreFolders[folder] ?? [])
      .filter((other) => !folders.slice(0, index).includes(other))
      .map((other) => `core/${folder}/ may import core/${other}/, which is not listed before it.`),
  )
}
