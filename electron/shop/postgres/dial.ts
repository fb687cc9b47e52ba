import { connect as connectSocket, isIP, type Socket } from 'node:net'
import { checkServerIdentity, connect as connectTls, type TLSSocket } from 'node:tls'
import postgres, { type Sql } from 'postgres'
import { unreadableAnswer } from '../fault.ts'
import { bounded } from './answer-bound.ts'
import { isOnThisMachine, type ShopAddress } from '../address.ts'

/** Where to go, and with what. `authority`: certificates in PEM, or null for those that Node knows. */
export interface Destination {
  readonly address: ShopAddress
  readonly authority: string | null
  /** Asked for at each connection, and kept nowhere else. Null where none is known. */
  readonly password: () => string | null
}

export interface Line {
  readonly connections: number
  readonly onNotice?: (payload: string) => void
  readonly onClose?: () => void
}

/** How long a connection may take to be made, and a statement to be carried out. */
export const mostConnectingSeconds = 10
const mostStatementMs = 30_000
/**
 * How long a line that is lost in the midst of a transaction keeps the build it sends, and the counter that all send by, from others: a machine that
 * was put to sleep, or a network that drops what it carries, says no goodbye.
 */
const mostIdleMs = 15_000
/** How long a statement waits for another transaction. */
const mostLockedMs = 10_000

/** A client that connects when it is first asked something. */
export function dial(
  { address, authority, password }: Destination,
  { connections, onNotice, onClose }: Line,
): Sql {
  const { host, port, user, database, shop } = address
  const options = {
    // `host` and `port` are what the client names in its errors; the way there is `socket`, below.
    host: host.startsWith('/') ? 'localhost' : host,
    port,
    user,
    database,
    // A function, as an empty password would be looked for in the environment of the process. What the server is to hear
    // where there is none is answered by it as a wrong one.
    password: () => password() ?? '',
    max: connections,
    ssl: false,
    prepare: true,
    connect_timeout: mostConnectingSeconds,
    idle_timeout: 0,
    keep_alive: 30,
    connection: {
      application_name: 'bedplate',
      search_path: shop,
      statement_timeout: mostStatementMs,
      idle_in_transaction_session_timeout: mostIdleMs,
      lock_timeout: mostLockedMs,
    },
    // Asked at each connection otherwise; where the line is cut in the midst of it, nobody hears of that and the process ends.
    fetch_types: false,
    types: { integers: listOf(1007), texts: listOf(1009) },
    onnotice: () => {},
    // The client has some that its types do not.
    ...(onNotice === undefined ? {} : { onnotify: (_channel: string, payload: string) => onNotice(payload) }),
    ...(onClose === undefined ? {} : { onclose: onClose }),
    socket: async () => bounded(await openSocket(address, authority), () => coded(unreadableAnswer)),
  }
  return postgres(options)
}

/** How lists of a type (PostgreSQL, pg_type.dat, `array_type_oid`) are written: PostgreSQL, 8.15.2. */
function listOf(type: number) {
  return {
    to: type,
    from: [],
    serialize: (list: readonly (string | number)[]) =>
      `{${list.map((each) => `"${String(each).replace(/["\\]/g, '\\$&')}"`).join(',')}}`,
    parse: (text: string) => text,
  }
}

/**
 * A socket to the server, encrypted and its certificate checked before anything is sent, unless it is on this machine. (The client
 * itself does not check the name in a certificate where the address is a number, and goes on where the server refuses TLS.)
 */
export async function openSocket(
  { host, port, ...address }: ShopAddress,
  authority: string | null,
): Promise<Socket | TLSSocket> {
  const socket = host.startsWith('/')
    ? connectSocket({ path: `${host}/.s.PGSQL.${port}` })
    : connectSocket({ host, port })
  try {
    await happens(socket, 'connect')
    if (isOnThisMachine({ host }) && address.authority === null) return socket
    socket.write(sslRequest)
    const answer = await firstByte(socket)
    if (answer !== agreed) throw coded('SHOP_NO_TLS')
    const secure = connectTls({
      socket,
      // A number is not to be sent as a name (RFC 6066, 3).
      ...(isIP(host) === 0 ? { servername: host } : {}),
      ...(authority === null ? {} : { ca: authority }),
      minVersion: 'TLSv1.2',
      checkServerIdentity: (_, certificate) => checkServerIdentity(host, certificate),
    })
    await happens(secure, 'secureConnect')
    return secure
  } catch (error) {
    socket.destroy()
    throw error
  }
}

/** SSLRequest and the server’s answer to it: PostgreSQL, 55.7, “Message Formats”. */
const sslRequest = Buffer.from([0, 0, 0, 8, 4, 210, 22, 47])
const agreed = 'S'

function happens(socket: Socket, event: 'connect' | 'secureConnect'): Promise<void> {
  return new Promise((resolve, reject) => {
    const timer = setTimeout(() => failed(coded('ETIMEDOUT')), mostConnectingSeconds * 1000)
    const ended = () => failed(coded('ECONNRESET'))
    const done = () => {
      leave()
      resolve()
    }
    const failed = (error: Error) => {
      leave()
      reject(error)
    }
    const leave = () => {
      clearTimeout(timer)
      socket.off(event, done).off('error', failed).off('close', ended)
    }
    socket.once(event, done).once('error', failed).once('close', ended)
  })
}

/** One byte, and not more: what comes after it is for TLS (CVE-2021-23222). */
function firstByte(socket: Socket): Promise<string> {
  return new Promise((resolve, reject) => {
    const timer = setTimeout(() => reject(coded('ETIMEDOUT')), mostConnectingSeconds * 1000)
    const closed = () => reject(coded('ECONNRESET'))
    socket.once('error', reject).once('close', closed)
    socket.once('readable', () => {
      clearTimeout(timer)
      socket.off('error', reject).off('close', closed)
      const bytes = socket.read() as Buffer | null
      if (bytes?.length === 1) resolve(bytes.toString('latin1'))
      else reject(coded(bytes === null ? 'ECONNRESET' : 'EPROTO'))
    })
  })
}

function coded(code: string): Error {
  return Object.assign(new Error(code), { code })
}
