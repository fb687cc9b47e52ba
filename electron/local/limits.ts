import { mostBytesOf, type RequestName } from '../../core/contract/index.ts'

/** What one client may take of the host, so that a slow or greedy one does not keep others out. */
export interface Limits {
  readonly bodyBytes: (name: RequestName) => number
  /** From the first byte of a request to the end of its headers, and to the end of its body. */
  readonly headersTimeoutMs: number
  readonly requestTimeoutMs: number
  readonly checkEveryMs: number
  readonly keepAliveTimeoutMs: number
  readonly connections: number
  /** Requests of one connection that came and are not answered; a browser sends one after the other. */
  readonly pipelined: number
  /** What one connection may leave unread. */
  readonly unreadBytes: number
  /** How long a connection may take nothing of what is sent to it. */
  readonly writeTimeoutMs: number
}

export const usualLimits: Limits = {
  bodyBytes: mostBytesOf,
  headersTimeoutMs: 8_000,
  requestTimeoutMs: 15_000,
  checkEveryMs: 1_000,
  keepAliveTimeoutMs: 5_000,
  connections: 256,
  pipelined: 8,
  unreadBytes: 8 * 1024 * 1024,
  writeTimeoutMs: 20_000,
}
