import { connect } from 'node:net'
import type { Socket } from 'node:net'
import { describe, expect, it, onTestFinished } from 'vitest'
import { usualLimits } from '../../../electron/local/limits.ts'
import type { Limits } from '../../../electron/local/limits.ts'
import { startLocalHost } from '../../../electron/local/server.ts'
import { newToken } from '../../../electron/local/token.ts'
import { folder, store } from '../bench.ts'
import { asking } from '../requests/asking.ts'
import { lines, send } from './raw.ts'

/** A host with a window of sixteen megabytes, more than the system takes for somebody who does not read. */
async function host(limits: Partial<Limits> = {}) {
  const { answer } = asking(await store(folder()))
  const token = newToken()
  const page = { type: 'text/html', bytes: Buffer.alloc(16_000_000, 0x61) }
  const pages = new Map([['/index.html', page]])
  const started = await startLocalHost({ pages, answer, token, limits: { ...usualLimits, ...limits } })
  onTestFinished(() => started.close())
  const own = `127.0.0.1:${started.port}`
  const ask = (...more: readonly string[]) =>
    send(
      started.port,
      lines(
        'POST /request/host.read HTTP/1.1',
        `Host: ${own}`,
        `Origin: http://${own}`,
        `x-bedplate-token: ${token}`,
        'Content-Type: application/json',
        'Connection: close',
        'Content-Length: 2',
        ...more,
      ) + '{}',
    )
  return { ...started, own, token, ask }
}

/** A connection that sends and never reads. */
function deaf(port: number, text: string): { socket: Socket; ended: Promise<void> } {
  const socket = connect({ host: '127.0.0.1', port })
  socket.pause()
  socket.write(text)
  const ended = new Promise<void>((resolve) => {
    socket.once('error', () => resolve())
    socket.once('close', () => resolve())
  })
  onTestFinished(() => void socket.destroy())
  return { socket, ended }
}

/** Whether the far end has hung up: what was sent already has to be read to hear it. */
async function isHungUpOn({ socket, ended }: { socket: Socket; ended: Promise<void> }): Promise<boolean> {
  socket.resume()
  await ended
  return true
}

describe('connections that do not read', () => {
  it('are hung up on when they send one request after another', async () => {
    const { port, own, ask } = await host()
    const page = lines('GET /index.html HTTP/1.1', `Host: ${own}`)
    const peer = deaf(port, page.repeat(300))
    expect(await isHungUpOn(peer)).toBe(true)
    expect((await ask()).status).toBe(200)
  })

  it('are hung up on when they take nothing for a while', async () => {
    const { port, own } = await host({ checkEveryMs: 50, writeTimeoutMs: 300 })
    const peer = deaf(port, lines('GET /index.html HTTP/1.1', `Host: ${own}`))
    await new Promise((resolve) => setTimeout(resolve, 1000))
    let read = 0
    peer.socket.on('data', (part) => (read += part.length))
    expect(await isHungUpOn(peer)).toBe(true)
    expect(read).toBeLessThan(16_000_000)
  })

  it('keep no window out: 300 of them without the token go before one that has it', async () => {
    const { port, own, ask } = await host({ connections: 64 })
    const peers = Array.from({ length: 300 }, () =>
      deaf(port, lines('GET /index.html HTTP/1.1', `Host: ${own}`)),
    )
    await Promise.all(peers.map(({ socket }) => new Promise((resolve) => socket.once('connect', resolve))))
    for (let press = 0; press < 10; press += 1) expect((await ask()).status).toBe(200)
  })
})

describe('a request that asks first whether to send its body', () => {
  it('is told to go on where it may come in', async () => {
    const { ask } = await host()
    const { status, body } = await ask('Expect: 100-continue')
    expect(status).toBe(100)
    expect(body).toContain('200 OK')
  })

  it('is turned away by its headers alone where it may not', async () => {
    const { port, own } = await host()
    const head = lines(
      'POST /request/host.read HTTP/1.1',
      `Host: ${own}`,
      'Origin: http://evil.test',
      'Content-Length: 1000000',
      'Expect: 100-continue',
    )
    expect((await send(port, head)).status).toBe(403)
  })

  it('is refused what is not known', async () => {
    const { port, own } = await host()
    expect((await send(port, lines('GET / HTTP/1.1', `Host: ${own}`, 'Expect: a miracle'))).status).toBe(417)
  })
})

describe('a file that is sent to be taken in', () => {
  async function sent(body: string) {
    const { port, own, token } = await host()
    const head = lines(
      'POST /request/builds.import HTTP/1.1',
      `Host: ${own}`,
      `Origin: http://${own}`,
      `x-bedplate-token: ${token}`,
      'Content-Type: application/json',
      'Connection: close',
      `Content-Length: ${Buffer.byteLength(body)}`,
    )
    return JSON.parse((await send(port, head + body)).body)
  }

  it('is not kept when it does not begin like one', async () => {
    const body = JSON.stringify({ text: 'x'.repeat(20_000_000) })
    expect(await sent(body)).toMatchObject({ ok: false, problem: { code: 'import-not-ours' } })
  })

  it('is looked at when it does', async () => {
    const body = JSON.stringify({ text: `{"bedplateBuild":1,"build":"none"}\n${'x'.repeat(1000)}` })
    expect(await sent(body)).toMatchObject({ ok: false, problem: { code: 'import-altered' } })
  })
})
