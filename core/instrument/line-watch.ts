import { nothingPending, readLines, type PendingLine } from './line-reader.ts'
import { readSentLine, type SentLine } from './read-line.ts'

/** More readings than this in a second are not sent by the press of a button. */
const mostInASecond = 3
/** So many lines in a row without a reading: the settings are wrong, or it is no instrument. */
const noiseIsTooMuch = 20

/** What has come of a line, apart from the readings. */
export type LineState = 'good' | 'streams' | 'garbled'

export interface ReceivedLines {
  /** The readings that count, in order. */
  readonly sent: readonly Extract<SentLine, { kind: 'value' }>[]
  /** The last number in a unit that is not known, as it was named; null where none came. */
  readonly unknownUnit: string | null
  readonly state: LineState
}

/** Listens to one line from when it is opened: takes bytes, gives readings. Times are in milliseconds of one clock. */
export class LineWatch {
  #pending: PendingLine = nothingPending
  #latest: number[] = []
  #noise = 0

  take(chunk: Uint8Array, at_ms: number): ReceivedLines {
    const { lines, pending } = readLines(this.#pending, chunk)
    this.#pending = pending
    const values: Extract<SentLine, { kind: 'value' }>[] = []
    let unknownUnit: string | null = null
    for (const line of lines) {
      const read: SentLine = line === null ? { kind: 'noise' } : readSentLine(line)
      this.#noise = read.kind === 'noise' ? this.#noise + 1 : 0
      if (read.kind === 'value') values.push(read)
      if (read.kind === 'unit-unknown') unknownUnit = read.unit
    }
    const sameSecond = this.#latest.filter((earlier) => at_ms - earlier < 1000)
    this.#latest = [...sameSecond, ...values.map(() => at_ms)].slice(-mostInASecond - 1)
    const streams = this.#latest.length > mostInASecond
    const garbled = this.#noise >= noiseIsTooMuch
    return {
      sent: streams ? [] : values,
      unknownUnit,
      state: streams ? 'streams' : garbled ? 'garbled' : 'good',
    }
  }

  /** Whether it was in the middle of a line: what came of it is half a reading. */
  get isMidLine(): boolean {
    return this.#pending.bytes.length > 0 || this.#pending.isTooLong
  }
}
