import type { Session, WebRequest, OnHeadersReceivedListenerDetails } from 'electron'
import { life } from './life.ts'
import { onTheWay, sessionProtocol } from './scheme.ts'
import { eventsOf, PlayedEvents, strict } from './strict.ts'

type Handler<Name extends keyof Session> = Session[Name] extends (handler: infer Taken) => void
  ? Taken
  : never

const events = eventsOf<Session>()('will-download', 'select-serial-port')

class PlayedSession
  extends PlayedEvents
  implements
    Pick<
      Session,
      | 'setPermissionRequestHandler'
      | 'setPermissionCheckHandler'
      | 'setDevicePermissionHandler'
      | 'setSpellCheckerEnabled'
    >
{
  readonly protocol = sessionProtocol
  readonly webRequest: Pick<WebRequest, 'onHeadersReceived'> = strict('session.webRequest', {
    onHeadersReceived(...values: readonly unknown[]): void {
      const listener = values.at(-1) as Parameters<WebRequest['onHeadersReceived']>[0]
      onTheWay.headers =
        listener === null
          ? null
          : (sent, url, method, statusCode) =>
              new Promise((resolve) => {
                const details = { url, method, statusCode, responseHeaders: structuredClone(sent) }
                listener(details as OnHeadersReceivedListenerDetails, ({ responseHeaders }) =>
                  resolve(listed(responseHeaders ?? sent)),
                )
              })
    },
  })

  request: Handler<'setPermissionRequestHandler'> = null
  check: Handler<'setPermissionCheckHandler'> = null
  device: Handler<'setDevicePermissionHandler'> = null

  setPermissionRequestHandler(handler: Handler<'setPermissionRequestHandler'>): void {
    this.request = handler
  }

  setPermissionCheckHandler(handler: Handler<'setPermissionCheckHandler'>): void {
    this.check = handler
  }

  setDevicePermissionHandler(handler: Handler<'setDevicePermissionHandler'>): void {
    this.device = handler
  }

  setSpellCheckerEnabled(): void {}
}

function listed(headers: Record<string, string | string[]>): Record<string, string[]> {
  return Object.fromEntries(Object.entries(headers).map(([name, value]) => [name, [value].flat()]))
}

export const playedSession = new PlayedSession('session', events)
const defaultSession = strict('session', playedSession)

/** Session::FromPartition: 'Session can only be received when app is ready' */
export const session = strict('session module', {
  get defaultSession(): typeof defaultSession {
    if (!life.isReady) throw new TypeError('Session can only be received when app is ready')
    return defaultSession
  },
})
