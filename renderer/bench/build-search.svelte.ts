import type { BuildLine, Client, Input } from '../../core/contract/index.ts'
import type { Problem } from '../../core/problem/index.ts'
import type { Language } from '../../core/words/index.ts'

/** What is looked for in the archive; what is absent does not narrow it. */
export type BuildQuery = Omit<Input<'builds.find'>, 'before' | 'language'>

/** The archive as it was last searched: one page of builds, and which of them are chosen. */
export class BuildSearch {
  readonly #client: Client
  readonly #language: () => Language
  #wanted = $state.raw<BuildQuery>({ words: '' })
  #lines = $state.raw<readonly BuildLine[] | null>(null)
  #more = $state(false)
  /** For each page before this one, the last build before it; the first page has none. */
  #pages = $state.raw<readonly (string | undefined)[]>([undefined])
  #chosen = $state.raw<readonly BuildLine[]>([])
  #problem = $state.raw<Problem | null>(null)
  #opened = $state<string | null>(null)
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

  /** Chooses a build or lets go of it; of more than two the one chosen first gives way. */
  choose(line: BuildLine) {
    const others = this.#chosen.filter(({ id }) => id !== line.id)
    this.#chosen = others.length < this.#chosen.length ? others : [...others, line].slice(-2)
  }

  /** An answer to what is no longer asked is dropped: a person types faster than a disk turns. */
  async #turnTo(pages: readonly (string | undefined)[]) {
    const request = ++this.#asked
    const answer = await this.#client.request('builds.find', {
      ...this.#wanted,
      before: pages.at(-1),
      language: this.#language(),
    })
    if (request !== this.#asked) return
    this.#problem = answer.ok ? null : answer.problem
    if (!answer.ok) return
    this.#pages = pages
    this.#lines = answer.value.lines
    this.#more = answer.value.more
    this.#chosen = this.#chosen.map((line) => answer.value.lines.find(({ id }) => id === line.id) ?? line)
  }
}
