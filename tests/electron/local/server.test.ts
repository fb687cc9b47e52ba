import { connect } from 'node:net'
import type { Socket } from 'node:net'
import { networkInterfaces } from 'node:os'
import { mkdirSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it, onTestFinished } from 'vitest'
import { guardHeaders, readPages } from '../../../electron/pages/index.ts'
import { usualLimits } from '../../../electron/local/limits.ts'
import type { Limits } from '../../../electron/local/limits.ts'
import { startLocalHost } from '../../../electron/local/server.ts'
import { newToken } from '../../../electron/local/token.ts'
import { folder, store } from '../bench.ts'
import { asking } from '../requests/asking.ts'
import { lines, reply, send } from './raw.ts'

/** A host on a real port with a real record, and a small window. */
async function host(limits: Partial<Limits> = {}) {
  const around = folder()
  const built = join(around, 'built')
  mkdirSync(join(built, 'assets'), { recursive: true })
  writeFileSync(join(built, 'index.html'), '<!doctype html><title>Bedplate</title>')
  writeFileSync(join(built, 'assets/main.js'), 'export {}')
  writeFileSync(join(around, 'outside.html'), 'not ours')
  const record = await store(folder())
  const { answer } = asking(record)
  const token = newToken()
  const started = await startLocalHost({
    pages: readPages(built),
    answer,
    token,
    limits: { ...usualLimits, ...limits },
  })
  onTestFinished(() => started.close())
  const own = `127.0.0.1:${started.port}`
  const good = [
    `Host: ${own}`,
    `Origin: http://${own}`,
    `x-bedplate-token: ${token}`,
    'Content-Type: application/json',
    'Connection: close',
  ]
  const ask = (name: string, input: unknown) => {
    const body = JSON.stringify(input)
    const length = Buffer.byteLength(body)
    return send(
      started.port,
      lines(`POST /request/${name} HTTP/1.1`, ...good, `Content-Length: ${length}`) + body,
    )
  }
  const get = (target: string) =>
    send(started.port, lines(`GET ${target} HTTP/1.1`, `Host: ${own}`, 'Connection: close'))
  return { ...started, token, own, good, ask, get, record }
}

/** A socket that is open for as long as the test. */
function open(port: number): Socket {
  const socket = connect({ host: '127.0.0.1', port })
  socket.on('error', () => undefined)
  onTestFinished(() => void socket.destroy())
  return socket
}

describe('the local host', () => {
  it('answers its own window from the record', async () => {
    const { ask, record } = await host()
    const { status, body } = await ask('builds.start', {
      engine: 'skerry-3',
      name: 'Ferry',
      serial: '',
      person: 'Ana Ruiz',
    })
    expect(status).toBe(200)
    expect(JSON.parse(body)).toMatchObject({ ok: true, value: { line: { name: 'Ferry' } } })
    expect(record.builds()).toHaveLength(1)
  })

  it('answers a request that core refuses with 200 and the problem', async () => {
    const { ask } = await host()
    const { status, body } = await ask('builds.start', {
      engine: 'skerry-3',
      name: '',
      serial: '',
      person: 'Ana',
    })
    expect(status).toBe(200)
    expect(JSON.parse(body)).toMatchObject({ ok: false, problem: { path: 'name' } })
  })

  it('listens on this machine alone', async () => {
    const { port } = await host()
    const others = Object.values(networkInterfaces())
      .flat()
      .filter((it) => it !== undefined && it.family === 'IPv4' && !it.internal)
    for (const address of ['127.0.0.2', '::1', ...others.map((it) => it?.address ?? '')]) {
      const reached = await new Promise((resolve) => {
        const socket = connect({ host: address, port, timeout: 500 })
        const say = (word: string) => {
          socket.destroy()
          resolve(word)
        }
        socket
          .on('connect', () => say('reached'))
          .on('error', () => say('closed'))
          .on('timeout', () => say('closed'))
      })
      expect(reached, address).toBe('closed')
    }
  })

  it('has a token of 256 random bits in the fragment of its address, another at each launch', async () => {
    const first = await host()
    const second = await host()
    expect(first.address).toBe(`http://127.0.0.1:${first.port}/#${first.token}`)
    expect(Buffer.from(first.token, 'base64url')).toHaveLength(32)
    expect(first.token).not.toBe(second.token)
    const withOther = first.good.map((line) => line.replace(first.token, second.token))
    const { status } = await send(
      first.port,
      lines('POST /request/host.read HTTP/1.1', ...withOther, 'Content-Length: 2') + '{}',
    )
    expect(status).toBe(401)
  })

  it('lets the browser keep only files whose names have a hash of their content', async () => {
    const { get, ask } = await host()
    const caching = async (reply: Promise<{ headers: Readonly<Record<string, string>> }>) =>
      (await reply).headers['cache-control']
    expect(await caching(get('/assets/main.js'))).toBe('private, max-age=31536000, immutable')
    expect(await caching(get('/'))).toBe('no-store')
    expect(await caching(ask('host.read', {}))).toBe('no-store')
  })

  it('sends its guards with every answer, good or bad, and never a header that lets another site read', async () => {
    const { port, get, ask, own } = await host()
    const replies = [
      await get('/'),
      await get('/assets/main.js'),
      await get('/nothing'),
      await ask('host.read', {}),
      await ask('host.nothing', {}),
      await send(port, lines('GET / HTTP/1.1', 'Host: evil.test')),
      await send(
        port,
        lines('OPTIONS /request/builds.act HTTP/1.1', `Host: ${own}`, 'Origin: http://evil.test'),
      ),
      await send(port, 'nonsense\r\n\r\n'),
    ]
    expect(replies.map(({ status }) => status)).toEqual([200, 200, 404, 200, 404, 421, 405, 400])
    for (const { headers } of replies) {
      expect(headers).toMatchObject(guardHeaders)
      expect(Object.keys(headers).filter((name) => name.startsWith('access-control-'))).toEqual([])
    }
  })

  it('turns away what a page of another site can make a browser send', async () => {
    const { port, own, token, good, record } = await host()
    const body = JSON.stringify({ engine: 'skerry-3', name: 'Ferry', serial: '', person: 'Mallory' })
    const post = (headers: readonly string[]) =>
      send(
        port,
        lines('POST /request/builds.start HTTP/1.1', ...headers, `Content-Length: ${body.length}`) + body,
      )
    const but = (name: string, line: string) => good.map((it) => (it.startsWith(name) ? line : it))
    expect((await post(but('Host', `Host: rebound.evil.test:${port}`))).status).toBe(421)
    expect((await post(but('Origin', 'Origin: http://evil.test'))).status).toBe(403)
    expect((await post(but('Origin', 'Origin: null'))).status).toBe(403)
    expect((await post(but('Origin', `Origin: http://${own}.evil.test`))).status).toBe(403)
    expect((await post(good.filter((it) => !it.includes(token)))).status).toBe(401)
    expect((await post(but('Content-Type', 'Content-Type: text/plain'))).status).toBe(415)
    expect((await post([...good, 'Sec-Fetch-Site: cross-site'])).status).toBe(403)
    expect((await send(port, lines('GET /request/builds.start HTTP/1.1', ...good))).status).toBe(404)
    expect((await send(port, lines('POST / HTTP/1.0', 'Content-Length: 0'))).status).toBe(421)
    expect(record.builds()).toEqual([])
    expect((await post(good)).status).toBe(200)
  })

  it.each([
    '/../outside.html',
    '/assets/../../outside.html',
    '/%2e%2e/outside.html',
    '/%2e%2e%2foutside.html',
    '/..%5coutside.html',
    '/..\\outside.html',
    '/index.html%00',
    '/index.html/',
    '/assets',
    '/assets/',
    '//127.0.0.1/index.html',
    '/./index.html',
    '/index%2ehtml',
  ])('has no page at %s', async (target) => {
    const { get } = await host()
    const { status, body } = await get(target)
    expect(status).toBeGreaterThanOrEqual(400)
    expect(status).toBeLessThan(500)
    expect(body).toBe('')
  })

  it('has no page at an address of 8 kB', async () => {
    const { get } = await host()
    expect((await get(`/${'x'.repeat(8000)}`)).status).toBe(414)
  })

  it('takes what comes after a question mark as no part of the path', async () => {
    const { get } = await host()
    expect((await get('/index.html?v=1')).body).toContain('Bedplate')
  })
})

describe('a request that asks for too much', () => {
  it('is told so by its announced length', async () => {
    const { port, good } = await host({ bodyBytes: () => 1000 })
    const { status } = await send(
      port,
      lines('POST /request/host.read HTTP/1.1', ...good, 'Content-Length: 1001'),
    )
    expect(status).toBe(413)
  })

  it('is told so while it is sent, where no length was announced', async () => {
    const { port, good } = await host({ bodyBytes: () => 1000 })
    const chunk = `258\r\n${'x'.repeat(600)}\r\n`
    const head = lines('POST /request/host.read HTTP/1.1', ...good, 'Transfer-Encoding: chunked')
    expect((await send(port, head + chunk + chunk)).status).toBe(413)
  })

  it('has nothing done for it once it was told 408: what cannot be answered is not done', async () => {
    const { port, good, record } = await host({ headersTimeoutMs: 200, checkEveryMs: 50 })
    const socket = connect({ host: '127.0.0.1', port, allowHalfOpen: true })
    socket.on('error', () => undefined)
    onTestFinished(() => void socket.destroy())
    const reply = await new Promise<string>((resolve) =>
      socket.once('data', (data) => resolve(data.toString())),
    )
    expect(reply).toContain('408')
    const body = JSON.stringify({ person: 'Ana Ruiz' })
    socket.end(
      lines('POST /request/preferences.keep HTTP/1.1', ...good, `Content-Length: ${body.length}`) + body,
    )
    await new Promise((resolve) => socket.once('close', resolve).resume())
    expect(record.preferences()).not.toHaveProperty('person')
  })

  it('is told 408 when its headers or its body do not come', async () => {
    const { port, good } = await host({ headersTimeoutMs: 200, requestTimeoutMs: 400, checkEveryMs: 50 })
    const slowHead = open(port)
    slowHead.write('POST /request/host.read HTTP/1.1\r\nHost: 127')
    const slowBody = open(port)
    slowBody.write(lines('POST /request/host.read HTTP/1.1', ...good, 'Content-Length: 100') + '{')
    expect((await reply(slowHead)).status).toBe(408)
    expect((await reply(slowBody)).status).toBe(408)
  })

  it.each([
    ['not JSON', '{"a":'],
    ['empty', ''],
    ['not UTF-8', Buffer.from([0x22, 0xff, 0x22])],
  ])('is told 400 when its body is %s', async (_, body) => {
    const { port, good } = await host()
    const head = lines('POST /request/host.read HTTP/1.1', ...good, `Content-Length: ${body.length}`)
    expect((await send(port, Buffer.concat([Buffer.from(head), Buffer.from(body)]))).status).toBe(400)
  })

  it('is hung up on when its headers are endless', async () => {
    const { port, own } = await host()
    const { status } = await send(port, lines('GET / HTTP/1.1', `Host: ${own}`, `X: ${'x'.repeat(40_000)}`))
    expect(status).toBe(431)
  })
})

describe('a hundred idle sockets', () => {
  it('keep nobody out, and are hung up on', async () => {
    const { port, ask } = await host({ headersTimeoutMs: 300, checkEveryMs: 50 })
    const idle = Array.from({ length: 100 }, () => open(port))
    await Promise.all(idle.map((socket) => new Promise((resolve) => socket.once('connect', resolve))))
    expect((await ask('host.read', {})).status).toBe(200)
    await Promise.all(idle.map(reply))
  })

  it('beyond the number that is let in are turned away, and the host goes on', async () => {
    const { port, ask } = await host({ connections: 20, headersTimeoutMs: 200, checkEveryMs: 50 })
    const idle = Array.from({ length: 60 }, () => open(port))
    await Promise.all(idle.map((socket) => reply(socket).catch(() => undefined)))
    expect((await ask('host.read', {})).status).toBe(200)
  })
})

describe('a host that ends', () => {
  it('leaves no listener behind', async () => {
    const { port, close } = await host()
    open(port)
    await close()
    await expect(send(port, 'x')).rejects.toThrow('ECONNREFUSED')
  })
})
