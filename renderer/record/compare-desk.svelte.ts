import { mostComparedBytes } from '../../core/contract/index.ts'
import type { Client, HeldAgainst } from '../../core/contract/index.ts'
import { problem, type Problem } from '../../core/problem/index.ts'

/** Holds what somebody brings against the record, one thing at a time. */
export class CompareDesk {
  readonly #client: Client
  #comparing = $state(false)
  #lines = $state.raw<HeldAgainst['lines']>([])
  #problem = $state.raw<Problem | null>(null)

  constructor(client: Client) {
    this.#client = client
  }

  get comparing() {
    return this.#comparing
  }
  get lines() {
    return this.#lines
  }
  get problem() {
    return this.#problem
  }

  /** By its content where that can be read, else by the code in its name. */
  async compareFile(file: File): Promise<void> {
    if (file.size > mostComparedBytes) return this.#refuse()
    const isRead = /\.(bedplate|sqlite)$/i.test(file.name)
    await this.#compare(file.name, isRead ? base64Of(new Uint8Array(await file.arrayBuffer())) : null)
  }

  /** As it was typed from a sheet. */
  async compareCode(typed: string): Promise<void> {
    await this.#compare(typed, null)
  }

  async #compare(name: string, base64: string | null): Promise<void> {
    if (this.#comparing) return
    this.#comparing = true
    this.#lines = []
    const answer = await this.#client.request('verification.compare', { name, base64 })
    this.#comparing = false
    this.#problem = answer.ok ? null : answer.problem
    if (answer.ok) this.#lines = answer.value.lines
  }

  #refuse(): void {
    this.#problem = problem('request-too-large', {})
  }
}

/** In pieces: a call cannot take a million arguments. */
function base64Of(bytes: Uint8Array): string {
  let text = ''
  for (let at = 0; at < bytes.length; at += 32_768)
    text += String.fromCharCode(...bytes.subarray(at, at + 32_768))
  return btoa(text)
}
