import type { Socket } from 'node:net'
import type { Limits } from './limits.ts'

interface Peer {
  /** It has shown the token: it is a window of ours. */
  trusted: boolean
  /** Requests that came and are not answered yet. */
  waiting: number
  /** Bytes that had left this process at the last look, and for how many looks none more have. */
  sent: number
  stalled: number
}

/**
 * The connections to the host. A client that reads its answers stays; one that does not holds memory and a place, and
 * is disconnected. Where places run out, those without the token go first.
 */
export class Connections {
  readonly #limits: Limits
  /** The oldest first. */
  readonly #peers = new Map<Socket, Peer>()
  readonly #timer: ReturnType<typeof setInterval>

  constructor(limits: Limits) {
    this.#limits = limits
    this.#timer = setInterval(() => this.#look(), limits.checkEveryMs).unref()
  }

  add(socket: Socket): void {
    if (this.#peers.size >= this.#limits.connections && !this.#makeRoom()) {
      socket.destroy()
      return
    }
    this.#peers.set(socket, { trusted: false, waiting: 0, sent: 0, stalled: 0 })
    socket.once('close', () => this.#peers.delete(socket))
  }

  trust(socket: Socket): void {
    const peer = this.#peers.get(socket)
    if (peer !== undefined) peer.trusted = true
  }

  /**
   * A request has come. False where it is not to be carried out, and its connection is closed: where the peer sends on and
   * on without taking its answers, and where it can be answered no more. A browser that was answered 408 on a connection it
   * had not used yet sends its request again on another: done here too, it would be done twice.
   */
  begin(socket: Socket): boolean {
    if (!socket.writable) {
      socket.destroy()
      return false
    }
    const peer = this.#peers.get(socket)
    if (peer === undefined) return !socket.destroyed
    peer.waiting += 1
    if (peer.waiting <= this.#limits.pipelined && socket.writableLength <= this.#limits.unreadBytes)
      return true
    socket.destroy()
    return false
  }

  end(socket: Socket): void {
    const peer = this.#peers.get(socket)
    if (peer !== undefined) peer.waiting -= 1
  }

  stop(): void {
    clearInterval(this.#timer)
  }

  #makeRoom(): boolean {
    for (const [socket, { trusted }] of this.#peers)
      if (!trusted) {
        this.#peers.delete(socket)
        socket.destroy()
        return true
      }
    return false
  }

  #look(): void {
    const looks = Math.ceil(this.#limits.writeTimeoutMs / this.#limits.checkEveryMs)
    for (const [socket, peer] of this.#peers) {
      const sent = socket.bytesWritten - socket.writableLength
      peer.stalled = socket.writableLength > 0 && sent === peer.sent ? peer.stalled + 1 : 0
      peer.sent = sent
      if (peer.stalled >= looks) socket.destroy()
    }
  }
}
