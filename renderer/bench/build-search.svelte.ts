import type { BenchName } from '../../core/builds/index.ts'
import type { Client, FoundLine, Input, Output } from '../../core/contract/index.ts'
import type { Problem } from '../../core/problem/index.ts'
import type { Language } from '../../core/words/index.ts'

/** What is looked for in the archive; what is absent does not narrow it. */
export type BuildQuery = Omit<Input<'builds.find'>, 'before' | 'language' | 'of'>

/** The archive as it was last searched: one page of builds, and which of them are chosen. */
export class BuildSearch {
  readonly #client: Client
  readonly #language: () => Language
  #wanted = $state.raw<BuildQuery>({ words: '' })
  #lines = $state.raw<readonly FoundLine[] | null>(null)
  #more = $state(false)
  /** For each page before this one, the last build before it; the first page has none. */
  #pages = $state.raw<readonly (string | undefined)[]>([undefined])
  #chosen = $state.raw<readonly FoundLine[]>([])
  #problem = $state.raw<Problem | null>(null)
  #opened = $state<string | null>(null)
  #shop = $state.raw<Output<'builds.find'>['shop'] | null>(null)
  #benches = $state.raw<readonly BenchName[]>([])
  #asked = 0

  constructor(client: Client, language: () => Language = () => 'en') {
    this.#client = client
    this.#language = language
  }

  get wanted() {
    return this.#wanted
  }
  /** Null until the first answer. */
  get lines() {
    return this.#lines
  }
  get hasOlder() {
    return this.#more
  }
  /** 1, 2, 3 … */
  get page() {
    return this.#pages.length
  }
  get chosen() {
    return this.#chosen
  }
  get problem() {
    return this.#problem
  }
  /** The build that was opened from here last, to come back to. */
  get opened() {
    return this.#opened
  }

  /** What the archive of the shop said; null where the bench belongs to none. */
  get shop() {
    return this.#shop
  }

  /** The benches of the shop that are known here, by name; this one too. */
  get benches() {
    return this.#benches
  }

  /** Asks which benches have joined the shop. */
  async readBenches(): Promise<void> {
    const answer = await this.#client.request('shop.read', {})
    if (answer.ok) this.#meet(answer.value.joined?.benches ?? [])
  }

  /** A build of the page is opened. */
  open(build: string) {
    this.#opened = build
  }

  /** Searches again with what has changed, from the first page on. */
  look(change: Partial<BuildQuery> = {}): Promise<void> {
    this.#wanted = { ...this.#wanted, ...change }
    return this.#turnTo([undefined])
  }

  /** The same page again: something may have been added. */
  lookAgain(): Promise<void> {
    return this.#turnTo(this.#pages)
  }

  older(): Promise<void> {
    return this.#turnTo([...this.#pages, this.#lines?.at(-1)?.id])
  }

  newer(): Promise<void> {
    return this.#turnTo(this.#pages.length > 1 ? this.#pages.slice(0, -1) : this.#pages)
  }

  /**
   * Chooses a build or lets go of it; of more than two the one chosen first gives way. One of another bench is taken in here first, so that it can
   * be verified, compared and given out.
   */
  async choose(line: FoundLine): Promise<void> {
    const others = this.#chosen.filter(({ id }) => id !== line.id)
    if (others.length < this.#chosen.length) {
      this.#chosen = others
      return
    }
    if (line.at && !line.at.isHere) {
      const taken = await this.#client.request('shop.open', { build: line.id })
      this.#problem = taken.ok ? null : taken.problem
      if (!taken.ok) return
    }
    this.#chosen = [...this.#chosen.filter(({ id }) => id !== line.id), line].slice(-2)
  }

  /** An answer to what is no longer asked is dropped: a person types faster than a disk turns. */
  async #turnTo(pages: readonly (string | undefined)[]) {
    const request = ++this.#asked
    const answer = await this.#client.request('builds.find', {
      ...this.#wanted,
      of: 'shop',
      before: pages.at(-1),
      language: this.#language(),
    })
    if (request !== this.#asked) return
    this.#problem = answer.ok ? null : answer.problem
    if (!answer.ok) return
    this.#pages = pages
    this.#lines = answer.value.lines
    this.#more = answer.value.more
    this.#shop = answer.value.shop ?? null
    this.#meet(answer.value.lines.flatMap(({ at }) => (at ? [at.bench] : [])))
    if (this.#shop === null) this.#forgetShop()
    this.#chosen = this.#chosen.map((line) => answer.value.lines.find(({ id }) => id === line.id) ?? line)
  }

  /** With the network down the archive names none: those that were named before stay. */
  #meet(benches: readonly BenchName[]): void {
    const all = [...this.#benches, ...benches]
    this.#benches = all
      .filter(({ id }, index) => !all.slice(index + 1).some((later) => later.id === id))
      .map(({ id, name }) => ({ id, name }))
      .toSorted((one, other) => one.name.localeCompare(other.name, this.#language()))
  }

  /** What only a shop can be asked for narrows nothing at a bench that left it. */
  #forgetShop(): void {
    this.#benches = []
    const { bench: _, state, ...rest } = this.#wanted
    this.#wanted = { ...rest, ...(state !== undefined && state !== 'forked' && { state }) }
  }
}
