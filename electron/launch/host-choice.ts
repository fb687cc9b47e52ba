import { type FoundElectron } from './electron-binary.ts'
import { type Options } from './options.mjs'

export type HostChoice =
  | { readonly kind: 'desktop'; readonly binary: string }
  | { readonly kind: 'fetch-electron' }
  | { readonly kind: 'local'; readonly why: string }

export type HostFacts = {
  readonly options: Pick<Options, 'local' | 'window' | 'fetchElectron'>
  readonly isRoot: boolean
  readonly hasDisplay: boolean
  readonly electron: FoundElectron
  /** Why Electron could not make its sandbox here, as a clause. */
  readonly noSandbox: string | undefined
  /** Why this version of Electron could not be had the last time. */
  readonly lastFailure: string | undefined
}

/**
 * Which host carries the program, and why it is not the desktop one. What keeps Electron's window from opening comes before
 * Electron itself, so that nothing large is fetched in vain.
 */
export function hostChoice(facts: HostFacts): HostChoice {
  const { options, electron, noSandbox, lastFailure } = facts
  const local = (why: string): HostChoice => ({ kind: 'local', why })
  if (!options.window) return local('no window was asked for')
  if (options.local) return local('it was asked for by --local')
  if (facts.isRoot) return local('as root a window would have to run without its sandbox')
  if (!facts.hasDisplay) return local('there is no display')
  if (electron.kind === 'unfit') return local(electron.why)
  if (noSandbox !== undefined) return local(noSandbox)
  if (electron.kind === 'there') return { kind: 'desktop', binary: electron.binary }
  if (lastFailure === undefined || options.fetchElectron) return { kind: 'fetch-electron' }
  return local(
    `Electron could not be fetched (${lastFailure}); \`npm start -- --fetch-electron\` tries again`,
  )
}
