import { createServer } from 'node:http'
import type { IncomingMessage, Server, ServerResponse } from 'node:http'
import type { AddressInfo } from 'node:net'
import { guardHeaders, pageAt } from '../pages/index.ts'
import type { Pages } from '../pages/index.ts'
import { isRequestName } from '../requests/index.ts'
import type { Answering } from '../requests/index.ts'
import { readBody } from './body.ts'
import { authorize } from './request-guard.ts'
import type { HostIdentity } from './request-guard.ts'
import { usualLimits } from './limits.ts'
import type { Limits } from './limits.ts'

/** What the local host serves. `heard` is told of each admitted request: somebody's window is open. */
export interface Served {
  readonly pages: Pages
  readonly answer: Answering
  readonly token: string
  readonly limits?: Limits
  readonly heard?: () => void
}

export interface LocalHost {
  readonly port: number
  /** With the token in its fragment: whoever has it is let in. */
  readonly address: string
  readonly close: () => Promise<void>
}

/** Serves on this machine's own loopback address, at a port of the system's choice. */
export async function startLocalHost(served: Served): Promise<LocalHost> {
  const limits = served.limits ?? usualLimits
  const server = createServer(
    {
      requireHostHeader: false, // the guard answers that itself, like any other wrong Host
      connectionsCheckingInterval: limits.checkEveryMs,
      headersTimeout: limits.headersTimeoutMs,
      requestTimeout: limits.requestTimeoutMs,
      keepAliveTimeout: limits.keepAliveTimeoutMs,
    },
    (request, response) => void serve(request, response, served, limits, port),
  )
  server.maxConnections = limits.connections
  server.on('clientError', (error: NodeJS.ErrnoException, socket) => {
    if (socket.writable) socket.end(plainAnswer(statusOf(error)))
  })
  const port = await listen(server)
  return {
    port,
    address: `http://127.0.0.1:${port}/#${served.token}`,
    close: () =>
      new Promise((resolve) => {
        server.close(() => resolve())
        server.closeAllConnections()
      }),
  }
}

async function serve(
  request: IncomingMessage,
  response: ServerResponse,
  { pages, answer, token, heard }: Served,
  limits: Limits,
  port: number,
): Promise<void> {
  try {
    for (const [name, value] of Object.entries(guardHeaders)) response.setHeader(name, value)
    const identity: HostIdentity = { port, token }
    const { method = '', url: target = '', rawHeaders } = request
    const admission = authorize({ method, target, rawHeaders }, identity)
    switch (admission.to) {
      case 'nowhere':
        return end(response, admission.status)
      case 'page': {
        const page = pageAt(pages, admission.target)
        return page ? send(response, page.type, page.bytes) : end(response, 404)
      }
      case 'request': {
        if (!isRequestName(admission.name)) return end(response, 404)
        heard?.()
        const most = admission.name === 'builds.import' ? limits.fileBytes : limits.bodyBytes
        const body = await readBody(request, most)
        if ('refused' in body) return end(response, body.refused)
        const input = parsed(body.text)
        if (input === undefined) return end(response, 400)
        return send(
          response,
          'application/json; charset=utf-8',
          JSON.stringify(await answer(admission.name, input)),
        )
      }
      default:
        return admission satisfies never
    }
  } catch {
    response.destroy() // the client went away while it was sending
  }
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text) as unknown
  } catch {
    return undefined
  }
}

function send(response: ServerResponse, type: string, content: string | Buffer): void {
  const length = Buffer.byteLength(content)
  response
    .writeHead(200, { 'content-type': type, 'content-length': length, 'cache-control': 'no-store' })
    .end(content)
}

/** Turns away, and hangs up: what is left of a body that nobody wants is not waited for. */
function end(response: ServerResponse, status: number): void {
  response.writeHead(status, { connection: 'close', 'content-length': 0 }).end()
}

function statusOf(error: NodeJS.ErrnoException): string {
  if (error.code === 'ERR_HTTP_REQUEST_TIMEOUT') return '408 Request Timeout'
  if (error.code === 'HPE_HEADER_OVERFLOW') return '431 Request Header Fields Too Large'
  return '400 Bad Request'
}

function plainAnswer(status: string): string {
  const guards = Object.entries(guardHeaders).map(([name, value]) => `${name}: ${value}\r\n`)
  return `HTTP/1.1 ${status}\r\n${guards.join('')}connection: close\r\ncontent-length: 0\r\n\r\n`
}

function listen(server: Server): Promise<number> {
  return new Promise((resolve, reject) => {
    server.once('error', reject)
    server.listen({ host: '127.0.0.1', port: 0 }, () => resolve((server.address() as AddressInfo).port))
  })
}
