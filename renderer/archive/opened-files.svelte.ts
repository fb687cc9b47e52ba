import type { Client, ImportResult, OpenedFile, Output } from '../../core/contract/index.ts'
import type { Problem } from '../../core/problem/index.ts'

/** What became of a file that the program was asked to open. */
export interface Arrival {
  readonly number: number
  readonly fileName: string
  readonly result:
    | { readonly kind: 'build'; readonly outcome: ImportResult }
    | { readonly kind: 'spec'; readonly taken: Output<'library.import'> }
    | { readonly kind: 'engine'; readonly name: string }
    | { readonly kind: 'refused'; readonly problem: Problem }
}

/** Takes in what the program is asked to open from outside, by its command line or by the system, and keeps what became of it. */
export class OpenedFiles {
  readonly #client: Client
  readonly #person: () => string
  #arrivals = $state.raw<readonly Arrival[]>([])
  #stopped = false

  /** `person` is who is at the bench: a spec goes into the library in somebody's name. */
  constructor(client: Client, person: () => string) {
    this.#client = client
    this.#person = person
  }

  /** The ones that nobody has closed yet, the oldest first. */
  get arrivals() {
    return this.#arrivals
  }

  /** Goes on until no more can come; `arrived` is called after each. */
  async follow(arrived: (arrival: Arrival) => void): Promise<void> {
    for (let after = 0; !this.#stopped;) {
      const answer = await this.#client.request('files.opened', { after })
      if (!answer.ok || this.#stopped) return
      const { file, more } = answer.value
      if (file !== null) {
        const arrival = {
          number: file.number,
          fileName: file.fileName,
          result: await this.#take(file.content),
        }
        this.#arrivals = [...this.#arrivals, arrival]
        after = file.number
        arrived(arrival)
      } else if (!more) return
    }
  }

  stop(): void {
    this.#stopped = true
  }

  close(number: number): void {
    this.#arrivals = this.#arrivals.filter((arrival) => arrival.number !== number)
  }

  async #take(content: OpenedFile['content']): Promise<Arrival['result']> {
    if (content.kind === 'spec') {
      const { text } = content
      const taken = await this.#client.request('library.import', { text, person: this.#person() })
      return taken.ok ? { kind: 'spec', taken: taken.value } : { kind: 'refused', problem: taken.problem }
    }
    if (content.kind !== 'build') return content
    const answer = await this.#client.request('builds.import', { text: content.text })
    return answer.ok ? { kind: 'build', outcome: answer.value } : { kind: 'refused', problem: answer.problem }
  }
}
