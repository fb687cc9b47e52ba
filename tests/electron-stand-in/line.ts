import type { Socket } from 'node:net'
import { deserialize, serialize } from 'node:v8'

/** What one side can be asked: for each name what goes with it and what comes back. */
export type Questions<Asked> = { readonly [Name in keyof Asked]: readonly [input: unknown, answer: unknown] }

export type Answers<Asked extends Questions<Asked>> = {
  readonly [Name in keyof Asked]: (input: Asked[Name][0]) => Asked[Name][1] | Promise<Asked[Name][1]>
}

type Message =
  | { readonly id: number; readonly name: string; readonly input: unknown }
  | { readonly of: number; readonly value: unknown }
  | { readonly of: number; readonly error: string }

/**
 * The line between the played main process and the test that holds its page. Both sides ask and answer. Values travel
 * in V8's own serialisation, so that what has no clone throws here as it does on its way through Electron.
 */
export class Line<Theirs extends Questions<Theirs>, Ours extends Questions<Ours>> {
  readonly #socket: Socket
  readonly #answers: Answers<Ours>
  readonly #waiting = new Map<number, { done: (value: unknown) => void; failed: (error: Error) => void }>()
  #next = 1
  #rest = Buffer.alloc(0)

  constructor(socket: Socket, answers: Answers<Ours>) {
    this.#socket = socket
    this.#answers = answers
    socket.on('data', (chunk: Buffer) => this.#take(chunk))
    socket.on('close', () => {
      for (const { failed } of this.#waiting.values()) failed(new Error('the other side has ended'))
      this.#waiting.clear()
    })
  }

  ask<Name extends keyof Theirs & string>(name: Name, input: Theirs[Name][0]): Promise<Theirs[Name][1]> {
    const id = this.#next++
    return new Promise<Theirs[Name][1]>((resolve, reject) => {
      this.#waiting.set(id, { done: (value) => resolve(value), failed: reject })
      this.#put({ id, name, input })
    })
  }

  /** Asks where nobody waits for the answer. */
  tell<Name extends keyof Theirs & string>(name: Name, input: Theirs[Name][0]): void {
    this.ask(name, input).catch((error: unknown) => {
      if (!this.#socket.destroyed) console.error(`${name}:`, error)
    })
  }

  /** Ends the line once all that was said has left. */
  end(ended: () => void): void {
    this.#socket.end(ended)
  }

  #put(message: Message): void {
    const body = serialize(message)
    const size = Buffer.alloc(4)
    size.writeUInt32LE(body.length)
    if (!this.#socket.destroyed) this.#socket.write(Buffer.concat([size, body]))
  }

  #take(chunk: Buffer): void {
    this.#rest = Buffer.concat([this.#rest, chunk])
    while (this.#rest.length >= 4) {
      const end = 4 + this.#rest.readUInt32LE(0)
      if (this.#rest.length < end) return
      const message = deserialize(this.#rest.subarray(4, end)) as Message
      this.#rest = this.#rest.subarray(end)
      if ('name' in message) void this.#answer(message)
      else this.#settle(message)
    }
  }

  async #answer({ id, name, input }: Extract<Message, { name: string }>): Promise<void> {
    try {
      const answer = (this.#answers as Record<string, (input: unknown) => unknown>)[name]
      if (answer === undefined) throw new Error(`nobody answers “${name}”`)
      this.#put({ of: id, value: await answer(input) })
    } catch (error) {
      this.#put({ of: id, error: error instanceof Error ? error.message : String(error) })
    }
  }

  #settle(message: Extract<Message, { of: number }>): void {
    const waiting = this.#waiting.get(message.of)
    this.#waiting.delete(message.of)
    if ('error' in message) waiting?.failed(new Error(message.error))
    else waiting?.done(message.value)
  }
}
