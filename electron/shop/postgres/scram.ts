import { createHash, createHmac, pbkdf2Sync, randomBytes } from 'node:crypto'

/** As PostgreSQL does by itself (its `scram_iterations`). */
const iterations = 4096

/**
 * What a server keeps of a password, so that the password itself never goes to it, where a statement may be written to a log:
 * `SCRAM-SHA-256$iterations:salt$stored key:server key` (RFC 5803; PostgreSQL, 53.8, “pg_authid”).
 */
export function scramVerifier(password: string, salt: Buffer = randomBytes(16)): string {
  const salted = pbkdf2Sync(password, salt, iterations, 32, 'sha256')
  const keyed = (text: string) => createHmac('sha256', salted).update(text).digest()
  const stored = createHash('sha256').update(keyed('Client Key')).digest('base64')
  return `SCRAM-SHA-256$${iterations}:${salt.toString('base64')}$${stored}:${keyed('Server Key').toString('base64')}`
}

/** 144 bits as letters and digits that need no quotes in an address. */
export function newPassword(): string {
  return randomBytes(18).toString('base64url')
}
