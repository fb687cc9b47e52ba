import type { Phrase } from '../../core/problem/index.ts'
import { type FoundElectron } from './electron-binary.ts'
import { type Options } from './options.mjs'

export type HostChoice =
  | { readonly kind: 'desktop'; readonly binary: string }
  | { readonly kind: 'fetch-electron' }
  | { readonly kind: 'local'; readonly why: Phrase }

export type HostFacts = {
  readonly options: Pick<Options, 'local' | 'window' | 'fetchElectron'>
  readonly isRoot: boolean
  readonly hasDisplay: boolean
  readonly electron: FoundElectron
  /** Why Electron could not make its sandbox here. */
  readonly noSandbox: Phrase | undefined
  /** Why this version of Electron could not be had the last time. */
  readonly lastFailure: Phrase | undefined
}

/**
 * Which host carries the program, and why it is not the desktop one. What keeps Electron's window from opening comes before
 * Electron itself, so that nothing large is fetched for nothing.
 */
export function hostChoice(facts: HostFacts): HostChoice {
  const { options, electron, noSandbox, lastFailure } = facts
  const local = (why: Phrase): HostChoice => ({ kind: 'local', why })
  if (!options.window) return local({ code: 'noWindowAsked', facts: {} })
  if (options.local) return local({ code: 'localAsked', facts: {} })
  if (facts.isRoot) return local({ code: 'windowAsRoot', facts: {} })
  if (!facts.hasDisplay) return local({ code: 'noDisplay', facts: {} })
  if (electron.kind === 'unfit') return local(electron.why)
  if (noSandbox !== undefined) return local(noSandbox)
  if (electron.kind === 'there') return { kind: 'desktop', binary: electron.binary }
  if (lastFailure === undefined || options.fetchElectron) return { kind: 'fetch-electron' }
  return local({ code: 'electronNotFetched', facts: { why: lastFailure } })
}
