import type { Problem } from '../../core/problem/index.ts'
import type { ShopFork } from '../../core/contract/index.ts'
import type { OpenBuild } from './open-build.svelte.ts'

/** Where the person is. The build and its sheet carry the open build they show. */
export type Place =
  | { readonly at: 'opening' }
  /** The record cannot be used: nothing else is shown until a backup is in its place. */
  | { readonly at: 'rescue'; readonly problem: Problem }
  | { readonly at: 'engines' }
  | { readonly at: 'archive' }
  | { readonly at: 'library' }
  /** A spec while it is written, by the id of its draft. */
  | { readonly at: 'draft'; readonly draft: string }
  | { readonly at: 'record' }
  /** How this bench’s screen is measured and which keys it has. */
  | { readonly at: 'screen-and-keys' }
  /** The instruments on serial lines, and the voice. */
  | { readonly at: 'instruments' }
  | { readonly at: 'comparison'; readonly first: OpenBuild; readonly second: OpenBuild }
  /** Two lines of a build that went on at two benches apart, side by side. */
  | {
      readonly at: 'lines'
      readonly openBuild: OpenBuild
      readonly there: OpenBuild
      readonly fork: ShopFork
    }
  | { readonly at: 'build'; readonly openBuild: OpenBuild }
  /** What a newer revision of the build's spec has otherwise. */
  | { readonly at: 'revision'; readonly openBuild: OpenBuild }
  | { readonly at: 'sheet'; readonly openBuild: OpenBuild }
  /** The shop's wrenches; the open build is the one to go back to, null for the start page. */
  | { readonly at: 'wrenches'; readonly openBuild: OpenBuild | null }
  /** Who works at this bench; the open build as for the wrenches. */
  | { readonly at: 'people'; readonly openBuild: OpenBuild | null }
  /** The benches that share an archive. */
  | { readonly at: 'shop' }
  /** All open builds of the shop, to be read from afar. */
  | { readonly at: 'wall' }
  | { readonly at: 'practice' }
  | { readonly at: 'bench-card'; readonly openBuild: OpenBuild; readonly procedure: string }
  /** The clocks of a set of rings; `rings` is its id. */
  | { readonly at: 'ring-card'; readonly openBuild: OpenBuild; readonly rings: string }
  | { readonly at: 'clamp-map'; readonly openBuild: OpenBuild; readonly procedure: string }
