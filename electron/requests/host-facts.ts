/** What a host says of itself. */
export interface HostFacts {
  readonly host: 'desktop' | 'local'
  /** Why this one and not the other, as a clause. */
  readonly why: string
  readonly version: string
  readonly dataFolder: string
}
