import type { Phrase } from '../../core/problem/index.ts'

/** What a host says of itself. */
export interface HostFacts {
  readonly host: 'desktop' | 'local'
  /** Why this one and not the other. */
  readonly why: Phrase
  readonly version: string
  readonly dataFolder: string
}
