import type { BackupList, Client } from '../../core/contract/index.ts'
import type { Outcome, Problem } from '../../core/problem/index.ts'

/** The backups of the record as the host last reported them, and what is being done about them. */
export class BackupDesk {
  readonly #client: Client
  #list = $state.raw<BackupList | null>(null)
  #doing = $state<'making' | 'restoring' | null>(null)
  #problem = $state.raw<Problem | null>(null)
  #restored = $state.raw<{ readonly name: string; readonly kept: string | null } | null>(null)

  constructor(client: Client) {
    this.#client = client
  }

  /** Null until the first answer. */
  get list() {
    return this.#list
  }
  get doing() {
    return this.#doing
  }
  get problem() {
    return this.#problem
  }
  /** What was put in place, and under what name the file that was there is kept. */
  get restored() {
    return this.#restored
  }

  async read() {
    this.#take(await this.#client.request('backups.list', {}))
  }

  async make() {
    this.#doing = 'making'
    this.#take(await this.#client.request('backups.make', {}))
    this.#doing = null
  }

  /** True when backups go to that folder from now on. */
  async keepIn(folder: string | null): Promise<boolean> {
    const answer = await this.#client.request('backups.keep-in', { folder })
    this.#take(answer)
    return answer.ok
  }

  async restore(name: string) {
    this.#doing = 'restoring'
    const answer = await this.#client.request('backups.restore', { name })
    this.#doing = null
    this.#problem = answer.ok ? null : answer.problem
    if (answer.ok) this.#restored = { name, kept: answer.value.kept }
  }

  #take(answer: Outcome<BackupList>) {
    this.#problem = answer.ok ? null : answer.problem
    if (answer.ok) this.#list = answer.value
  }
}
