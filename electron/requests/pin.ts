import { randomBytes, scrypt, timingSafeEqual } from 'node:crypto'
import { promisify } from 'node:util'

const derive = promisify<string, Buffer, number, Buffer>(scrypt)
const keyBytes = 32
const triesAtOnce = 5
const firstWaitMs = 30_000
const longestWaitMs = 15 * 60_000

/**
 * Salt and scrypt of a PIN. A PIN keeps entries honest; it does not keep a thief out: who has the file can try a short one
 * out, and who can start the program again begins to count again.
 */
export async function sealPin(pin: string): Promise<string> {
  const salt = randomBytes(16)
  return `${salt.toString('hex')}:${(await derive(pin, salt, keyBytes)).toString('hex')}`
}

export async function isPin(pin: string, sealed: string): Promise<boolean> {
  const [salt = '', kept = ''] = sealed.split(':')
  return timingSafeEqual(await derive(pin, Buffer.from(salt, 'hex'), keyBytes), Buffer.from(kept, 'hex'))
}

/**
 * How often a PIN may be tried: five wrong ones, then a wait, twice as long each time up to a quarter of an hour. Each
 * person is counted alone, so that who knows one PIN cannot try out another in between.
 */
export class PinTries {
  readonly #people = new Map<string, { readonly wrong: number; readonly waitUntil: number }>()

  /**
   * Counts a try as wrong until `succeeded` says otherwise: the check takes its time, and many at once are no way round.
   * Times in milliseconds of one clock. How long there is still to wait; 0 where the PIN may be looked at.
   */
  begin(person: string, now: number): number {
    const { wrong, waitUntil } = this.#people.get(person) ?? { wrong: 0, waitUntil: 0 }
    if (now < waitUntil) return waitUntil - now
    const waits = (wrong + 1) / triesAtOnce
    const waitMs = Number.isInteger(waits) ? Math.min(longestWaitMs, firstWaitMs * 2 ** (waits - 1)) : 0
    this.#people.set(person, { wrong: wrong + 1, waitUntil: now + waitMs })
    return 0
  }

  succeeded(person: string): void {
    this.#people.delete(person)
  }
}
