import { connect } from 'node:net'
import type { Socket } from 'node:net'

/** What came back over the wire. */
export interface Reply {
  readonly status: number
  /** By name in small letters. */
  readonly headers: Readonly<Record<string, string>>
  readonly body: string
}

/** Sends these very bytes and reads until the host hangs up. */
export function send(port: number, text: string | Buffer): Promise<Reply> {
  const socket = connect({ host: '127.0.0.1', port })
  socket.write(text)
  return reply(socket)
}

/** A request as text, its lines joined and its headers closed. */
export function lines(...parts: readonly string[]): string {
  return [...parts, '', ''].join('\r\n')
}

export function reply(socket: Socket): Promise<Reply> {
  return new Promise((resolve, reject) => {
    const parts: Buffer[] = []
    socket.on('data', (part) => parts.push(Buffer.from(part)))
    socket.on('error', (error: NodeJS.ErrnoException) => {
      if (parts.length === 0) reject(error)
    })
    socket.on('close', () => {
      const [head = '', ...body] = Buffer.concat(parts).toString('utf8').split('\r\n\r\n')
      const [first = '', ...rest] = head.split('\r\n')
      const headers = Object.fromEntries(
        rest.map((line) => {
          const at = line.indexOf(':')
          return [line.slice(0, at).toLowerCase(), line.slice(at + 1).trim()]
        }),
      )
      resolve({ status: Number(first.split(' ')[1]), headers, body: body.join('\r\n\r\n') })
    })
  })
}
