import { X509Certificate } from 'node:crypto'
import { readFileSync } from 'node:fs'
import { done, refused, type Outcome } from '../../core/problem/index.ts'

/** The certificates of the authorities by whom a server’s own may be issued, in PEM. */
export function readAuthority(file: string): Outcome<string> {
  try {
    const text = readFileSync(file, 'utf8')
    void new X509Certificate(text)
    return done(text)
  } catch {
    return refused('shop-authority-unreadable', { file })
  }
}
