import { evolve, type BuildState, type Mention, type RecordedEvent } from '../../core/builds/index.ts'
import { done, type Outcome } from '../../core/problem/index.ts'
import type { EngineSpec, NamesOf } from '../../core/engine/index.ts'
import type { Store } from '../store/index.ts'
import { openBuild, type OpenedBuild } from './open-build.ts'

/** A build being worked on: kept so that a confirmation need not read the whole build again. */
export interface CachedBuild {
  readonly spec: EngineSpec
  /** In each language of its spec. */
  readonly namesOf: NamesOf
  /** Of the spec that it goes by. */
  readonly specSha256: string
  readonly state: BuildState
  /** Words that the index of builds has of it for certain: most confirmations say nothing new. */
  readonly indexedWords: ReadonlySet<string>
}

/** More builds than lie open on one bench; the least recently used gives way. */
const mostBuilds = 8

/** The builds that were worked on last. What is kept here is what the record holds, or it is let go of. */
export class OpenBuildCache {
  readonly #store: Store
  readonly #builds = new Map<string, CachedBuild>()

  constructor(store: Store) {
    this.#store = store
  }

  /** The build as it is to be worked on; refused where it cannot be opened or nothing may be added. */
  get(build: string): Outcome<CachedBuild> {
    const known = this.#builds.get(build)
    if (known) return done(known)
    const opened = openBuild(this.#store, build)
    if (!opened.ok) return opened
    const { readOnly } = opened.value
    if (readOnly) return { ok: false, problem: readOnly }
    return done(this.keepOpened(build, opened.value))
  }

  /** The build where it is kept here already; null where it would have to be read. */
  known(build: string): CachedBuild | null {
    return this.#builds.get(build) ?? null
  }

  /** Takes in what was just recorded. */
  advance(
    build: string,
    { indexedWords, state, ...of }: CachedBuild,
    added: readonly RecordedEvent[],
    mentions: readonly Mention[],
  ): void {
    const news = mentions.map(wordOf).filter((word) => !indexedWords.has(word))
    this.#keep(build, {
      ...of,
      state: added.reduce(evolve, state),
      indexedWords: news.length === 0 ? indexedWords : new Set([...indexedWords, ...news]),
    })
  }

  keepOpened(
    build: string,
    { spec, namesOf, specSha256, state }: Pick<OpenedBuild, 'spec' | 'namesOf' | 'specSha256' | 'state'>,
  ): CachedBuild {
    return this.#keep(build, { spec, namesOf, specSha256, state, indexedWords: new Set() })
  }

  #keep(build: string, cached: CachedBuild): CachedBuild {
    this.#builds.delete(build)
    this.#builds.set(build, cached)
    const [oldest] = this.#builds.keys()
    if (this.#builds.size > mostBuilds && oldest !== undefined) this.#builds.delete(oldest)
    return cached
  }

  /** The next one to ask starts from what the disk holds. */
  drop(build: string): void {
    this.#builds.delete(build)
  }
}

/** The mentions that the list of builds may not have yet. */
export function newMentions({ indexedWords }: CachedBuild, mentions: readonly Mention[]): readonly Mention[] {
  return mentions.filter((mention) => !indexedWords.has(wordOf(mention)))
}

function wordOf({ kind, word }: Mention): string {
  return `${kind} ${word}`
}
