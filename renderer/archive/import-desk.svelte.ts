import { mostExportCharacters, type Client, type ImportResult } from '../../core/contract/index.ts'
import { refused, type Problem } from '../../core/problem/index.ts'

/** Takes exported builds in, one file at a time, and keeps what became of the last one. */
export class ImportDesk {
  readonly #client: Client
  #fileName = $state('')
  #reading = $state(false)
  #outcome = $state.raw<ImportResult | null>(null)
  #problem = $state.raw<Problem | null>(null)

  constructor(client: Client) {
    this.#client = client
  }

  get fileName() {
    return this.#fileName
  }
  get reading() {
    return this.#reading
  }
  get outcome() {
    return this.#outcome
  }
  get problem() {
    return this.#problem
  }

  async take(file: File): Promise<void> {
    if (this.#reading) return
    this.#fileName = file.name
    this.#outcome = null
    this.#problem = null
    this.#reading = true
    const answer = await this.#read(file)
    this.#reading = false
    if (answer.ok) this.#outcome = answer.value
    else this.#problem = answer.problem
  }

  /** A mark of byte order is a byte that was added: it is not dropped, as a browser otherwise would. */
  async #read(file: File) {
    if (file.size > mostExportCharacters)
      return refused('import-too-large', { most: mostExportCharacters / 1024 / 1024 })
    const text = new TextDecoder('utf-8', { ignoreBOM: true }).decode(await file.arrayBuffer())
    return this.#client.request('builds.import', { text })
  }
}
