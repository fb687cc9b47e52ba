import { LineWatch, type ReceivedLines } from '../../core/instrument/index.ts'
import type { Port } from './serial-port.ts'

/** So many breaks and wrong bits in a row, with nothing between them: the settings are not those of the instrument. Nor does a port that ends its streams at once keep the page busy. */
const mostFaultsInARow = 50

export interface LineListener {
  /** What a chunk of bytes came to. */
  heard(heard: ReceivedLines): void
  /** The line is no longer read: it was closed here, was unplugged, or sends nothing but faults. */
  ended(why: 'closed' | 'unplugged' | 'garbled', isMidLine: boolean): void
}

/** Reads an open port until it is closed or unplugged. */
export class SerialLine {
  readonly #port: Port
  readonly #listener: LineListener
  readonly #watch = new LineWatch()
  #reader: ReadableStreamDefaultReader<Uint8Array> | null = null
  #isClosing = false
  readonly done: Promise<void>

  constructor(port: Port, listener: LineListener) {
    this.#port = port
    this.#listener = listener
    this.done = this.#read()
  }

  async close(): Promise<void> {
    this.#isClosing = true
    await this.#reader?.cancel().catch(() => undefined)
    await this.done
  }

  /** A break or a wrong bit ends the stream, and the port has another one; once it is unplugged it has none. */
  async #read(): Promise<void> {
    let faults = 0
    while (this.#port.readable !== null && !this.#isClosing && faults < mostFaultsInARow) {
      faults += 1
      this.#reader = this.#port.readable.getReader()
      try {
        for (;;) {
          const { value, done } = await this.#reader.read()
          if (done) break
          faults = 0
          this.#listener.heard(this.#watch.take(value, performance.now()))
        }
      } catch {
        // What was wrong with the line is in what comes next: another stream, or none.
      } finally {
        this.#reader.releaseLock()
        this.#reader = null
      }
    }
    await this.#port.close().catch(() => undefined)
    const why = this.#isClosing ? 'closed' : faults >= mostFaultsInARow ? 'garbled' : 'unplugged'
    this.#listener.ended(why, this.#watch.isMidLine)
  }
}
