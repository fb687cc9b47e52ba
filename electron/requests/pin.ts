import { randomBytes, scrypt, timingSafeEqual } from 'node:crypto'
import { promisify } from 'node:util'

const derive = promisify<string, Buffer, number, Buffer>(scrypt)
const keyBytes = 32

/** Salt and scrypt of a PIN. A short PIN can still be tried out by whoever has the file: it keeps honest hands honest. */
export async function sealPin(pin: string): Promise<string> {
  const salt = randomBytes(16)
  return `${salt.toString('hex')}:${(await derive(pin, salt, keyBytes)).toString('hex')}`
}

export async function isPin(pin: string, sealed: string): Promise<boolean> {
  const [salt = '', kept = ''] = sealed.split(':')
  return timingSafeEqual(await derive(pin, Buffer.from(salt, 'hex'), keyBytes), Buffer.from(kept, 'hex'))
}
