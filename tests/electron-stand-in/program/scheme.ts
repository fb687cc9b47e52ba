import type { CustomScheme, Protocol } from 'electron'
import { life } from './life.ts'
import { answers } from './outside.ts'
import { strict } from './strict.ts'

const failed = -2 // ERR_FAILED
const unexpected = -9 // ERR_UNEXPECTED
const unknownScheme = -302 // ERR_UNKNOWN_URL_SCHEME

type Handler = Parameters<Protocol['handle']>[1]

const privileged = new Map<string, NonNullable<CustomScheme['privileges']>>()
const handlers = new Map<string, Handler>()

/** Set by `session.webRequest`: what is put on every answer on its way to a page. */
export const onTheWay: {
  headers:
    | ((
        sent: Record<string, string[]>,
        url: string,
        method: string,
        status: number,
      ) => Promise<Record<string, string[]>>)
    | null
} = { headers: null }

type Played = 'handle' | 'unhandle' | 'isProtocolHandled'

/** lib/browser/api/protocol.ts, shell/browser/api/electron_api_protocol.cc */
export const sessionProtocol: Pick<Protocol, Played> = strict('session.protocol', {
  handle(scheme: string, handler: Handler): void {
    if (handlers.has(scheme)) throw new Error(`Failed to register protocol: ${scheme}`)
    if (privileged.get(scheme)?.standard !== true)
      throw new Error(
        `stand-in: ${scheme} is not registered as a standard scheme, so its pages have no origin`,
      )
    handlers.set(scheme, handler)
  },
  unhandle(scheme: string): void {
    if (!handlers.delete(scheme)) throw new Error(`Failed to unhandle protocol: ${scheme}`)
  },
  isProtocolHandled: (scheme: string): boolean => handlers.has(scheme),
})

let wasCalled = false

export function registerSchemesAsPrivileged(schemes: CustomScheme[]): void {
  if (life.isReady)
    throw new Error('protocol.registerSchemesAsPrivileged should be called before app is ready')
  if (wasCalled) throw new Error('stand-in: registerSchemesAsPrivileged has an effect only once')
  wasCalled = true
  for (const { scheme, privileges = {} } of schemes) {
    if (privileges.codeCache === true && privileges.standard !== true)
      throw new Error(
        'Code cache can only be enabled when the custom scheme is registered as standard scheme.',
      )
    privileged.set(scheme, privileges)
  }
}

answers.fetch = async ({ url, method, headers }) => {
  const handler = handlers.get(new URL(url).protocol.slice(0, -1))
  if (handler === undefined) return { error: unknownScheme }
  try {
    const response = await handler(new Request(url, { method, headers }))
    if (typeof response !== 'object') return { error: unexpected }
    if (response.type === 'error') return { error: failed }
    const body = new Uint8Array(await response.arrayBuffer())
    const sent = Object.fromEntries([...response.headers].map(([name, value]) => [name, [value]]))
    const changed = await (onTheWay.headers?.(sent, url, method, response.status) ?? sent)
    return { status: response.status, headers: changed, body }
  } catch (error) {
    console.error(error)
    return { error: unexpected }
  }
}
