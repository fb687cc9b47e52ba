import { isToken } from './token.ts'

/** The header that carries the launch token. */
export const tokenHeader = 'x-bedplate-token'

/** What the guard looks at of a request, before anything of it is carried out. */
export interface RequestHead {
  readonly method: string
  /** As it came, neither decoded nor resolved. */
  readonly target: string
  /** Names and values by turns, as they came: a header that came twice is here twice. */
  readonly rawHeaders: readonly string[]
}

export interface HostIdentity {
  readonly port: number
  readonly token: string
}

/** Where a request goes that may come in. */
export type Admission =
  | { readonly to: 'page'; readonly target: string }
  | { readonly to: 'request'; readonly name: string }
  | { readonly to: 'nowhere'; readonly status: number }

/** An address longer than any of ours. */
const longestTarget = 2048

/**
 * Decides on a request by its headers alone. A page of another site can send requests here from the person's own
 * browser; it cannot give them our Host (against rebinding), our Origin, or the token.
 */
export function authorize(
  { method, target, rawHeaders }: RequestHead,
  { port, token }: HostIdentity,
): Admission {
  const all = (name: string) =>
    rawHeaders.filter((_, at) => at % 2 === 1 && rawHeaders[at - 1]?.toLowerCase() === name)
  const only = (name: string) => (all(name).length === 1 ? all(name)[0] : undefined)
  const away = (status: number): Admission => ({ to: 'nowhere', status })
  const own = `127.0.0.1:${port}`

  if (only('host') !== own) return away(421)
  if (target.length > longestTarget) return away(414)
  if (!/^\/[\x21-\x7e]*$/.test(target) || target.startsWith('//')) return away(400)
  if (
    isFromElsewhere(all('sec-fetch-site')) &&
    !isOpening(method, all('sec-fetch-mode'), all('sec-fetch-dest'))
  )
    return away(403)

  if (method === 'GET') return { to: 'page', target }
  if (method !== 'POST') return away(405)
  if (only('origin') !== `http://${own}`) return away(403)
  if (!isToken(only(tokenHeader) ?? '', token)) return away(401)
  if (!/^application\/json(; *charset=utf-8)?$/i.test(only('content-type') ?? '')) return away(415)
  const name = /^\/request\/([a-z][a-z.-]{0,60})$/.exec(target)?.[1]
  return name === undefined ? away(404) : { to: 'request', name }
}

function isFromElsewhere(site: readonly string[]): boolean {
  return site.some((value) => value !== 'same-origin' && value !== 'none')
}

/**
 * A tab that goes to our page from elsewhere, as the browser does when a file on disk leads it to this launch's address.
 * It shows the page, in no frame and without the token, and the site it came from learns nothing.
 */
function isOpening(method: string, mode: readonly string[], dest: readonly string[]): boolean {
  return method === 'GET' && mode.join() === 'navigate' && dest.join() === 'document'
}
