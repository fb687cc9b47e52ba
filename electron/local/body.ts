import type { IncomingMessage } from 'node:http'

export type Body = { readonly text: string } | { readonly refused: 400 | 413 | 'unlike' }

/** What the beginning of a body must be like for the rest to be kept. */
export type BodyCheck = (head: string) => boolean

/** As much of the beginning as is looked at. */
const headBytes = 64

/**
 * Reads a body up to a limit; what is over it is not kept. One that does not begin as it must is read to its end, so that
 * the sender hears the answer, and not kept either: `unlike`.
 */
export async function readBody(
  request: IncomingMessage,
  limitBytes: number,
  beginsWell: BodyCheck = () => true,
): Promise<Body> {
  if (Number(request.headers['content-length'] ?? 0) > limitBytes) return { refused: 413 }
  let parts: Buffer[] = []
  let length = 0
  let isUnlike = false
  let looked = false
  for await (const part of request as AsyncIterable<Buffer>) {
    length += part.length
    if (length > limitBytes) return { refused: 413 }
    if (isUnlike) continue
    parts.push(part)
    if (looked || length < headBytes) continue
    looked = true
    isUnlike = !beginsWell(Buffer.concat(parts).toString('utf8', 0, headBytes))
    if (isUnlike) parts = []
  }
  if (isUnlike) return { refused: 'unlike' }
  try {
    return { text: new TextDecoder('utf-8', { fatal: true }).decode(Buffer.concat(parts)) }
  } catch {
    return { refused: 400 }
  }
}
