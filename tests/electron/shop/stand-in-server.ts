import { createServer, type Socket } from 'node:net'
import { onTestFinished } from 'vitest'

/** Listens on this machine until the test is over; answers the port. */
export async function serving(each: (socket: Socket) => void): Promise<number> {
  const sockets = new Set<Socket>()
  const server = createServer((socket) => {
    sockets.add(socket)
    socket.on('error', () => {})
    each(socket)
  })
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve))
  onTestFinished(() => {
    for (const socket of sockets) socket.destroy()
    server.close()
  })
  const at = server.address()
  return typeof at === 'object' && at !== null ? at.port : 0
}

/** As much of PostgreSQL’s protocol as it takes to say a version: PostgreSQL, 55.7, “Message Formats”. */
export function speakAs(socket: Socket, version: string): void {
  const message = (kind: string, ...parts: readonly (Buffer | string)[]) => {
    const body = Buffer.concat(parts.map((part) => Buffer.from(part)))
    const head = Buffer.alloc(5)
    head.write(kind, 'latin1')
    head.writeInt32BE(body.length + 4, 1)
    return Buffer.concat([head, body])
  }
  const int16 = (number: number) => Buffer.from([number >> 8, number & 255])
  const int32 = (number: number) => Buffer.from([0, 0, number >> 8, number & 255])
  const ready = message('Z', 'I')
  let begun = false
  socket.on('data', (bytes) => {
    if (!begun) {
      begun = true
      socket.write(Buffer.concat([message('R', int32(0)), ready]))
      return
    }
    const isVersion = bytes.includes('server_version')
    const text = isVersion ? [version] : []
    const column = Buffer.concat([
      Buffer.from('server_version\0'),
      int32(0),
      int16(0),
      int32(25),
      int16(0),
      int32(0),
      int16(0),
    ])
    socket.write(
      Buffer.concat([
        message('1'),
        message('T', int16(1), column),
        message('2'),
        ...text.map((each) => message('D', int16(1), int32(each.length), each)),
        message('C', `SELECT ${text.length}\0`),
        ready,
      ]),
    )
  })
}
