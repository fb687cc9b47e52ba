import type { Socket } from 'node:net'

/** What a message may say of its own length, and all messages of one answer together: far more than anything that is asked for. */
const mostMessageBytes = 64 * 1024 * 1024
const mostAnswerBytes = 256 * 1024 * 1024

/** A message of the server: its kind in one byte, then its length with these four bytes of it (PostgreSQL, 55.7). */
const headBytes = 5
const readyForQuery = 'Z'.charCodeAt(0)

/**
 * Counts what a server sends, before anything of it is kept: one that says a row has a gigabyte would have this program hold it. Calls `over` at the
 * first message that is too long, or ends no answer. Knows of an answer’s end by ReadyForQuery.
 */
export function answerBound(over: () => void): (chunk: Uint8Array) => void {
  const head = Buffer.alloc(headBytes)
  let headHas = 0
  let left = 0
  let answer = 0
  return (chunk) => {
    answer += chunk.length
    for (let at = 0; at < chunk.length;) {
      if (left > 0) {
        const taken = Math.min(left, chunk.length - at)
        left -= taken
        at += taken
        continue
      }
      head[headHas] = chunk[at]!
      headHas += 1
      at += 1
      if (headHas < headBytes) continue
      headHas = 0
      const length = head.readInt32BE(1)
      if (length < 4 || length > mostMessageBytes) return over()
      left = length - 4
      if (head[0] === readyForQuery) answer = 0
    }
    if (answer > mostAnswerBytes) over()
  }
}

/** Ends a socket to a server that sends more than anybody asked for. */
export function bounded<Any extends Socket>(socket: Any, fault: () => Error): Any {
  socket.on(
    'data',
    answerBound(() => socket.destroy(fault())),
  )
  return socket
}
