import { problem, type Problem } from '../../core/problem/index.ts'
import type { ShopAddress } from './address.ts'

/**
 * The first that is asked for: row triggers on partitioned tables (13), and what is still maintained when this is written (14). Tried
 * on 15.
 */
export const leastServer = 14

/** The code of an error about an answer of which nothing is to be believed. */
export const unreadableAnswer = 'SHOP_ANSWER'

/** By SQLSTATE (PostgreSQL, appendix A), the codes of Node, and those of certificates (OpenSSL, X509_verify_cert_error_string). */
const problems: Readonly<Record<string, (address: ShopAddress) => Problem>> = {
  ENOTFOUND: ({ host }) => problem('shop-host-unknown', { host }),
  EAI_AGAIN: ({ host }) => problem('shop-host-unknown', { host }),
  '28P01': ({ host, user }) => problem('shop-password-wrong', { user, host }),
  '28000': ({ host, user }) => problem('shop-not-let-in', { user, host }),
  '3D000': ({ database }) => problem('shop-database-missing', { database }),
  '3F000': ({ database, shop }) => problem('shop-not-set-up', { database, shop }),
  '42P01': ({ database, shop }) => problem('shop-not-set-up', { database, shop }),
  '42501': ({ user }) => problem('shop-not-allowed', { user }),
  '53100': ({ host }) => problem('shop-full', { host }),
  '53300': ({ host }) => problem('shop-crowded', { host }),
  ERR_TLS_CERT_ALTNAME_INVALID: ({ host }) => problem('shop-certificate', { host, fault: 'other-name' }),
  HOSTNAME_MISMATCH: ({ host }) => problem('shop-certificate', { host, fault: 'other-name' }),
  CERT_HAS_EXPIRED: ({ host }) => problem('shop-certificate', { host, fault: 'expired' }),
  CERT_NOT_YET_VALID: ({ host }) => problem('shop-certificate', { host, fault: 'expired' }),
  [unreadableAnswer]: ({ host }) => problem('shop-answer-unreadable', { host }),
  SHOP_NO_TLS: ({ host }) => problem('shop-tls-missing', { host }),
}

/**
 * What an error of the client, of Node's sockets or of the server means. Nothing of its text is kept: a server may repeat what it
 * was sent. A server that was given no password answers as to a wrong one.
 */
export function problemOf(error: unknown, address: ShopAddress, hasPassword = true): Problem {
  const { host, user } = address
  const code = codeIn(error)
  if (code === '28P01' && !hasPassword) return problem('shop-password-missing', { user })
  const known = problems[code]
  if (known !== undefined) return known(address)
  if (/CERT|ISSUER|SELF_SIGNED|LEAF_SIGNATURE|CRL/.test(code))
    return problem('shop-certificate', { host, fault: 'untrusted' })
  // Classes 08 (connection) and 57P (shutdown, crash, starting) are as good as no answer.
  const isState = /^[0-9A-Z]{5}$/.test(code) && !/^(E[A-Z]+|08...|57P..)$/.test(code)
  if (isState) return problem('shop-server-fault', { host, code })
  return problem('shop-unreachable', { host, code: code === '' ? '?' : code })
}

/** Whether to try the same again later may help. What is not so needs a person first. */
export function mayPass({ code }: Problem): boolean {
  return passing.has(code)
}

const passing: ReadonlySet<Problem['code']> = new Set<Problem['code']>([
  'shop-unreachable',
  'shop-host-unknown',
  'shop-full',
  'shop-crowded',
  'shop-server-fault',
  'shop-answer-unreadable',
])

function codeIn(error: unknown): string {
  if (typeof error !== 'object' || error === null) return ''
  if ('code' in error && typeof error.code === 'string') return error.code
  // What `net` throws where a name has several numbers and none answers.
  if (error instanceof AggregateError) return codeIn(error.errors[0])
  return ''
}
