import { createHash, randomBytes, timingSafeEqual } from 'node:crypto'

/** 256 random bits for one launch. Only the address fragment carries it to the window: a fragment is never sent. */
export function newToken(): string {
  return randomBytes(32).toString('base64url')
}

/** Compares in a time that reveals nothing of where two tokens differ, nor of how long the right one is. */
export function isToken(offered: string, token: string): boolean {
  return timingSafeEqual(digestOf(offered), digestOf(token))
}

function digestOf(text: string): Buffer {
  return createHash('sha256').update(text, 'utf8').digest()
}
