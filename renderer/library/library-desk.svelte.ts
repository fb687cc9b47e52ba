import type { Client, DraftLine, DraftOrigin, LibraryLine, Output } from '../../core/contract/index.ts'
import { mostSpecFileCharacters } from '../../core/drafts/index.ts'
import { refused, type Outcome, type Problem } from '../../core/problem/index.ts'
import type { Language } from '../../core/words/index.ts'

/** What was done last, until the next thing is done. */
export type LastAction =
  | { readonly kind: 'published'; readonly line: LibraryLine }
  | { readonly kind: 'discarded'; readonly line: DraftLine }
  | { readonly kind: 'imported'; readonly result: Output<'library.import'> }

/** The library and the drafts, as the host last said they are. */
export class LibraryDesk {
  readonly #client: Client
  readonly #person: () => Promise<string>
  readonly #language: () => Language
  readonly #revised: () => unknown
  #lines = $state.raw<readonly LibraryLine[] | null>(null)
  #drafts = $state.raw<readonly DraftLine[]>([])
  #last = $state.raw<LastAction | null>(null)
  #problem = $state.raw<Problem | null>(null)
  #reading = $state<string | null>(null)

  /** `revised` is called once the library has another revision. */
  constructor(
    client: Client,
    person: () => Promise<string>,
    language: () => Language,
    revised: () => unknown = () => undefined,
  ) {
    this.#revised = revised
    this.#client = client
    this.#language = language
    this.#person = person
  }

  /** Null until it was read. */
  get lines() {
    return this.#lines
  }
  /** Those that are open. */
  get drafts() {
    return this.#drafts.filter(({ state }) => state === 'open')
  }
  get last() {
    return this.#last
  }
  get problem() {
    return this.#problem
  }
  /** The name of the file that is being read; null for none. */
  get reading() {
    return this.#reading
  }

  async load(): Promise<void> {
    const [lines, drafts] = await Promise.all([
      this.#client.request('library.list', { language: this.#language() }),
      this.#client.request('drafts.list', {}),
    ])
    if (lines.ok) this.#lines = lines.value
    else this.#problem = lines.problem
    if (drafts.ok) this.#drafts = drafts.value
    else this.#problem = drafts.problem
  }

  /** The id of the draft that is begun; the form says a problem beside its field. */
  async begin(origin: DraftOrigin, name: string, from: string): Promise<Outcome<string>> {
    this.#last = null
    const answer = await this.#client.request('drafts.begin', {
      person: await this.#person(),
      name,
      from,
      origin,
    })
    if (!answer.ok) return answer
    this.#problem = null
    await this.load()
    return { ok: true, value: answer.value.line.id }
  }

  async publish({ id, entries }: DraftLine): Promise<void> {
    const answer = await this.#client.request('drafts.publish', {
      ...{ draft: id, after: entries, person: await this.#person() },
    })
    await this.#done(answer.ok ? { kind: 'published', line: answer.value } : answer.problem)
  }

  async discard(line: DraftLine): Promise<void> {
    const answer = await this.#act(line, 'discard')
    await this.#done(
      answer.ok ? { kind: 'discarded', line: { ...line, entries: answer.value.seq } } : answer.problem,
    )
  }

  async bringBack(line: DraftLine): Promise<void> {
    const answer = await this.#act(line, 'bring-back')
    await this.#done(answer.ok ? null : answer.problem)
  }

  /** A mark of byte order is dropped here as anywhere: the hash is of the spec, not of the file around it. */
  async import(file: File): Promise<void> {
    if (this.#reading !== null) return
    this.#reading = file.name
    const answer =
      file.size > mostSpecFileCharacters
        ? refused('spec-file-foreign', {})
        : await this.#client.request('library.import', {
            text: await file.text(),
            person: await this.#person(),
          })
    this.#reading = null
    await this.#done(answer.ok ? { kind: 'imported', result: answer.value } : answer.problem)
  }

  revisions(engine: string) {
    return this.#client.request('library.revisions', { engine })
  }
  read(engine: string, revision: number) {
    return this.#client.request('library.read', { engine, revision })
  }
  export(engine: string, revision: number) {
    return this.#client.request('library.export', { engine, revision })
  }
  get client() {
    return this.#client
  }

  async #act({ id, entries }: DraftLine, type: 'discard' | 'bring-back') {
    return this.#client.request('drafts.act', {
      ...{ draft: id, after: entries, person: await this.#person(), act: { type } },
    })
  }

  async #done(outcome: LastAction | Problem | null): Promise<void> {
    const isAction = outcome !== null && 'kind' in outcome
    this.#last = isAction ? outcome : null
    this.#problem = isAction ? null : outcome
    if (isAction && outcome.kind !== 'discarded') void this.#revised()
    await this.load()
  }
}
