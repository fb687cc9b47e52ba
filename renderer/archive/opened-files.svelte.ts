import type { Client, ImportResult, OpenedFile } from '../../core/contract/index.ts'
import type { Problem } from '../../core/problem/index.ts'

/** What became of a file that the program was asked to open. */
export interface Arrival {
  readonly number: number
  readonly fileName: string
  readonly result:
    | { readonly kind: 'build'; readonly outcome: ImportResult }
    | { readonly kind: 'engine'; readonly name: string }
    | { readonly kind: 'refused'; readonly problem: Problem }
}

/** Takes in what the program is asked to open from outside, by its command line or by the system, and keeps what became of it. */
export class OpenedFiles {
  readonly #client: Client
  #arrivals = $state.raw<readonly Arrival[]>([])
  #stopped = false

  constructor(client: Client) {
    this.#client = client
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
    if (content.kind !== 'build') return content
    const answer = await this.#client.request('builds.import', { text: content.text })
    return answer.ok ? { kind: 'build', outcome: answer.value } : { kind: 'refused', problem: answer.problem }
  }
}
