import type { IncomingMessage } from 'node:http'

export type Body = { readonly text: string } | { readonly refused: 400 | 413 }

/** Reads a body up to a limit; what is over it is not kept. */
export async function readBody(request: IncomingMessage, limitBytes: number): Promise<Body> {
  if (Number(request.headers['content-length'] ?? 0) > limitBytes) return { refused: 413 }
  const parts: Buffer[] = []
  let length = 0
  for await (const part of request as AsyncIterable<Buffer>) {
    length += part.length
    if (length > limitBytes) return { refused: 413 }
    parts.push(part)
  }
  try {
    return { text: new TextDecoder('utf-8', { fatal: true }).decode(Buffer.concat(parts)) }
  } catch {
    return { refused: 400 }
  }
}
