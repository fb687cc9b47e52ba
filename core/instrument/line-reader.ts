/** A longer line is no reading: what comes is thrown away until the next end of a line. In bytes. */
export const longestLine = 120

/** What has come since the last end of a line: never more than `longestLine` bytes, however much is sent. */
export interface PendingLine {
  readonly bytes: readonly number[]
  /** Whether the line is longer than a reading can be, and the rest of it is thrown away. */
  readonly isTooLong: boolean
}

export const nothingPending: PendingLine = { bytes: [], isTooLong: false }

export interface LinesRead {
  /** Whole lines in the order in which they came, without their ends and without empty ones; null for one that was too long. */
  readonly lines: readonly (string | null)[]
  readonly pending: PendingLine
}

const carriageReturn = 13
const lineFeed = 10

/**
 * Puts the bytes of a serial line together into lines, however they are split: one ends with CR, LF or both. Bytes above 127 are
 * read as ISO 8859-1, as most instruments send them; `lineText` brings the UTF-8 of a unit back.
 */
export function readLines({ bytes, isTooLong }: PendingLine, chunk: Uint8Array): LinesRead {
  const lines: (string | null)[] = []
  let pending = [...bytes]
  let overflows = isTooLong
  for (const byte of chunk) {
    if (byte === carriageReturn || byte === lineFeed) {
      if (overflows) lines.push(null)
      else if (pending.length > 0) lines.push(String.fromCharCode(...pending))
      pending = []
      overflows = false
    } else if (!overflows) {
      pending.push(byte)
      if (pending.length > longestLine) {
        pending = []
        overflows = true
      }
    }
  }
  return { lines, pending: { bytes: pending, isTooLong: overflows } }
}
