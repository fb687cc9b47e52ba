import type { Client } from '../../core/contract/index.ts'
import { readSpec } from '../../core/engine/index.ts'
import { loadWords, type Words } from '../../core/words/index.ts'
import type { Theme } from '../look/theme.svelte.ts'

/** An SVG for each look of the window. */
type Picture = (theme: Theme) => string

/** Small pictures of the engines, each made once, when it is first looked for and nothing else is to be done. */
export class EnginePictures {
  readonly #client: Client
  readonly #words: Words | undefined
  readonly #whenIdle: () => Promise<unknown>
  #asked: readonly string[] = []
  #pictures = $state.raw<Readonly<Record<string, Picture>>>({})
  #last: Promise<unknown> = Promise.resolve()

  /** `words` are those of the window, English without one; `leisure` comes back when there is time to draw one. */
  constructor(client: Client, words?: Words, leisure: () => Promise<unknown> = idle) {
    this.#client = client
    this.#words = words
    this.#whenIdle = leisure
  }

  /** Null until it is drawn, and for good where the engine cannot be read. */
  of(engine: string): Picture | null {
    return this.#pictures[engine] ?? null
  }

  ask(engine: string): Promise<unknown> {
    if (!this.#asked.includes(engine)) {
      this.#asked = [...this.#asked, engine]
      this.#last = this.#last.then(() => this.#whenIdle()).then(() => this.#draw(engine))
    }
    return this.#last
  }

  async #draw(engine: string) {
    const answer = await this.#client.request('engines.read', { id: engine })
    const read = answer.ok && readSpec(answer.value.specText)
    if (!read || !read.ok) return
    // What draws comes with the first picture: the first page does not wait for it.
    const drawing = await import('../canvas/thumbnail.ts').catch(() => null) // the host has gone: a page says so
    const words = this.#words ?? (await loadWords('en').catch(() => null))
    if (drawing && words)
      this.#pictures = { ...this.#pictures, [engine]: drawing.engineSvg(words, read.spec) }
  }
}

function idle(): Promise<unknown> {
  return new Promise((done) => requestIdleCallback(done, { timeout: 1000 }))
}
