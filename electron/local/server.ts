import { createServer } from 'node:http'
import type { IncomingMessage, Server, ServerResponse } from 'node:http'
import type { AddressInfo } from 'node:net'
import { guardHeaders, pageAt } from '../pages/index.ts'
import type { Pages } from '../pages/index.ts'
import type { RequestName } from '../../core/contract/index.ts'
import { problem } from '../../core/problem/index.ts'
import { isRequestName } from '../requests/index.ts'
import type { AnswerRequest } from '../requests/index.ts'
import { readBody } from './body.ts'
import type { BodyCheck, Body } from './body.ts'
import { Connections } from './connections.ts'
import { authorize } from './request-guard.ts'
import type { HostIdentity } from './request-guard.ts'
import { usualLimits } from './limits.ts'
import type { Limits } from './limits.ts'

/** What the local host serves. `onRequest` is called at each admitted request: somebody's window is open. */
export interface HostParts {
  readonly pages: Pages
  readonly answer: AnswerRequest
  readonly token: string
  readonly limits?: Limits
  readonly onRequest?: () => void
}

export interface LocalHost {
  readonly port: number
  /** With the token in its fragment: who has it is let in. */
  readonly address: string
  readonly close: () => Promise<void>
}

/** Serves on this machine's own loopback address, at a port of the system's choice. */
export async function startLocalHost(served: HostParts): Promise<LocalHost> {
  const limits = served.limits ?? usualLimits
  const server = createServer(
    {
      requireHostHeader: false, // the guard answers that itself, like any other wrong Host
      connectionsCheckingInterval: limits.checkEveryMs,
      headersTimeout: limits.headersTimeoutMs,
      requestTimeout: limits.requestTimeoutMs,
      keepAliveTimeout: limits.keepAliveTimeoutMs,
    },
    (request, response) => take(request, response),
  )
  const connections = new Connections(limits)
  /** A body of many megabytes is read one at a time. */
  const files = { reading: false }
  const take = (request: IncomingMessage, response: ServerResponse, goOn = () => undefined): void => {
    if (!connections.begin(request.socket)) return
    response.once('close', () => connections.end(request.socket))
    void serve({ request, response, goOn }, { ...served, limits, port, connections, files })
  }
  server.on('connection', (socket) => connections.add(socket))
  // A client that asks first whether to send a body is answered after the guard has looked at the headers, not before.
  server.on('checkContinue', (request: IncomingMessage, response: ServerResponse) =>
    take(request, response, () => void response.writeContinue()),
  )
  server.on('checkExpectation', (_: IncomingMessage, response: ServerResponse) => {
    guard(response)
    end(response, 417)
  })
  server.on('clientError', (error: NodeJS.ErrnoException, socket) => {
    if (socket.writable) socket.end(plainAnswer(statusOf(error)))
  })
  const port = await listen(server)
  return {
    port,
    address: `http://127.0.0.1:${port}/#${served.token}`,
    close: () =>
      new Promise((resolve) => {
        connections.stop()
        server.close(() => resolve())
        server.closeAllConnections()
      }),
  }
}

interface Exchange {
  readonly request: IncomingMessage
  readonly response: ServerResponse
  /** Tells a sender that waits for it to send the body. */
  readonly goOn: () => void
}

interface ServerParts extends HostParts {
  readonly limits: Limits
  readonly port: number
  readonly connections: Connections
  readonly files: { reading: boolean }
}

/** Requests that bring a file, and how such a body begins: as JSON, with the file as a text in it. */
const bringsFile: ReadonlyMap<string, BodyCheck> = new Map([
  ['builds.import', (head: string) => /^\s*\{\s*"text"\s*:\s*"\{\\"bedplateBuild/.test(head)],
  ['verification.compare', (head: string) => /^\s*\{\s*"(name|base64)"\s*:/.test(head)],
])

async function serve({ request, response, goOn }: Exchange, around: ServerParts): Promise<void> {
  const { pages, token, onRequest, port, connections } = around
  try {
    guard(response)
    const identity: HostIdentity = { port, token }
    const { method = '', url: target = '', rawHeaders } = request
    const admission = authorize({ method, target, rawHeaders }, identity)
    switch (admission.to) {
      case 'nowhere':
        return end(response, admission.status)
      case 'page': {
        const page = pageAt(pages, admission.target)
        return page ? send(response, page.type, page.bytes, cachingOf(admission.target)) : end(response, 404)
      }
      case 'request': {
        connections.trust(request.socket)
        if (!isRequestName(admission.name)) return end(response, 404)
        onRequest?.()
        const answer = await answerRequest(admission.name, request, goOn, around)
        if (typeof answer === 'number') return end(response, answer)
        return send(response, 'application/json; charset=utf-8', JSON.stringify(answer))
      }
      default:
        return admission satisfies never
    }
  } catch {
    response.destroy() // the client went away while it was sending
  }
}

/** The answer to a request that was let in, or the status with which it is turned away. */
async function answerRequest(
  name: RequestName,
  request: IncomingMessage,
  goOn: () => void,
  { answer, limits, files }: ServerParts,
): Promise<unknown> {
  const begins = bringsFile.get(name)
  if (begins === undefined) {
    goOn()
    return fromBody(await readBody(request, limits.bodyBytes(name)))
  }
  const isBusy = files.reading
  if (!isBusy) files.reading = true
  try {
    goOn()
    const body = await readBody(request, limits.bodyBytes(name), isBusy ? () => false : begins)
    if ('refused' in body && body.refused === 'unlike')
      return { ok: false, problem: problem(isBusy ? 'import-busy' : 'import-not-ours', {}) }
    return await fromBody(body)
  } finally {
    if (!isBusy) files.reading = false
  }

  async function fromBody(body: Body): Promise<unknown> {
    if ('refused' in body) return body.refused
    const input = parsed(body.text)
    return input === undefined ? 400 : answer(name, input)
  }
}

function guard(response: ServerResponse): void {
  for (const [name, value] of Object.entries(guardHeaders)) response.setHeader(name, value)
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text) as unknown
  } catch {
    return undefined
  }
}

/** The name of a file below `assets` has a hash of its content: a page that is loaded again need not fetch and compile it again. */
function cachingOf(target: string): string {
  return target.startsWith('/assets/') ? 'private, max-age=31536000, immutable' : 'no-store'
}

function send(
  response: ServerResponse,
  type: string,
  content: string | Buffer,
  caching: string = 'no-store',
): void {
  const length = Buffer.byteLength(content)
  response
    .writeHead(200, { 'content-type': type, 'content-length': length, 'cache-control': caching })
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
