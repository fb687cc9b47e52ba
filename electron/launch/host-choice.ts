import { type Options } from './options.mjs'

export type HostChoice =
  | { readonly kind: 'desktop'; readonly binary: string }
  | { readonly kind: 'fetch-electron' }
  | { readonly kind: 'local'; readonly why: string }

export type HostFacts = {
  readonly options: Pick<Options, 'local' | 'window'>
  readonly isRoot: boolean
  readonly hasDisplay: boolean
  /** Path of Electron's program, if it is there. */
  readonly electron: string | undefined
  /** Whether this version of Electron was tried for already, and could not be had. */
  readonly wasTried: boolean
}

/** Which host carries the program, and why it is not the desktop one. */
export function hostChoice({ options, isRoot, hasDisplay, electron, wasTried }: HostFacts): HostChoice {
  if (!options.window) return { kind: 'local', why: 'no window was asked for' }
  if (options.local) return { kind: 'local', why: 'it was asked for by --local' }
  if (isRoot) return { kind: 'local', why: 'as root a window would have to run without its sandbox' }
  if (!hasDisplay) return { kind: 'local', why: 'there is no display' }
  if (electron !== undefined) return { kind: 'desktop', binary: electron }
  if (!wasTried) return { kind: 'fetch-electron' }
  return { kind: 'local', why: 'Electron could not be fetched; `npx install-electron` tries again' }
}
