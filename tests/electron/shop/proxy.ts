import { createServer, connect, type Socket } from 'node:net'

/** A network between the benches and the server, which drops what it carries when it is cut. */
export async function proxyTo(port: number) {
  const pairs = new Set<readonly [Socket, Socket]>()
  const server = createServer((near) => {
    const far = connect({ port, host: '127.0.0.1' })
    const pair = [near, far] as const
    pairs.add(pair)
    for (const [one, other] of [pair, [far, near] as const]) {
      one.on('error', () => {})
      one.pipe(other)
      one.on('close', () => {
        other.destroy()
        pairs.delete(pair)
      })
    }
  })
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve))
  const at = server.address()
  return {
    port: typeof at === 'object' && at !== null ? at.port : 0,
    cut() {
      for (const pair of pairs) for (const socket of pair) socket.resetAndDestroy()
    },
    close() {
      for (const pair of pairs) for (const socket of pair) socket.destroy()
      server.close()
    },
  }
}
