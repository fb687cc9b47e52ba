import { refused, type Outcome } from '../../core/problem/index.ts'
import type { Language } from '../../core/words/index.ts'
import type { LibraryRow, Store } from '../store/index.ts'
import { engineIn, readText, takeSpec, type Engine } from './specs.ts'

/** As many engines of the library as the first page lists; the library itself has all. */
const mostOnFirstPage = 60

/**
 * All engines that a build can begin from: those of the folder of specs, those of files that were opened, and the latest revision
 * of each in the library. A spec of the library is read when it is first asked for, and then kept.
 */
export class EngineShelf {
  readonly #own: Engine[]
  readonly #library: Store['library']
  readonly #specText: Store['specText']
  readonly #read = new Map<string, Engine>()

  constructor(own: readonly Engine[], { library, specText }: Pick<Store, 'library' | 'specText'>) {
    this.#own = [...own]
    this.#library = library
    this.#specText = specText
  }

  /** For the first page: those of the library that were published last, up to a number, by name in the language of the window. */
  listed(language: Language): readonly Engine[] {
    const order = new Intl.Collator(language)
    const latest = [...this.#library.latest()]
      .sort((a, b) => b.published_at_utc.localeCompare(a.published_at_utc))
      .slice(0, mostOnFirstPage)
      .sort((a, b) => order.compare(a.name, b.name))
    const engines = [...this.#own, ...latest.flatMap((row) => this.#engineOf(row) ?? [])]
    return engines.map((engine) => engineIn(language, engine))
  }

  /** Of the folder or opened from a file. */
  get own(): readonly Engine[] {
    return this.#own
  }

  find(id: string): Engine | undefined {
    const own = this.#own.find((engine) => engine.id === id)
    if (own !== undefined) return own
    const [latest] = this.#library.revisions(id)
    return latest && this.#engineOf(latest)
  }

  /** Adds the engine of a file, until the program ends: see `takeSpec`. */
  take(fileName: string, text: string): Outcome<{ id: string; name: string }> {
    const before = this.#own.length
    const taken = takeSpec(this.#own, fileName, text)
    if (!taken.ok || this.#own.length === before) return taken
    if (this.#library.revisions(taken.value.id).length === 0) return taken
    this.#own.pop()
    return refused('engine-named-twice', { engine: taken.value.id, file: fileName }, 'id')
  }

  #engineOf(row: LibraryRow): Engine | undefined {
    const kept = this.#read.get(row.sha256)
    if (kept !== undefined) return kept
    const text = this.#specText(row.sha256)
    if (text === null) return undefined
    const engine = readText(row.engine, text)
    this.#read.set(row.sha256, engine)
    return engine
  }
}
