import { readFileSync } from 'node:fs'
import { spawnSync } from 'node:child_process'

/** What the host did to its files, or said, in the order in which the system carried it out. */
export type Act =
  | { readonly kind: 'write'; readonly file: string; readonly at: number; readonly bytes: Buffer }
  | { readonly kind: 'cut'; readonly file: string; readonly length: number }
  | { readonly kind: 'sync'; readonly file: string }
  | { readonly kind: 'said'; readonly text: string }

/** Why nothing can be traced here; null when it can. */
export function noStrace(): string | null {
  if (process.platform !== 'linux') return 'strace is of Linux'
  const tried = spawnSync('strace', ['-o', '/dev/null', 'true'])
  return tried.status === 0 ? null : 'strace is not installed, or may not trace here'
}

/** The words that trace what follows them into `file`. */
export function tracing(file: string): readonly string[] {
  const calls = 'trace=write,pwrite64,ftruncate,fsync,fdatasync'
  return ['strace', '-f', '-y', '-xx', '-s', '100000', '-e', calls, '-e', 'signal=none', '-o', file]
}

/** Reads a trace. A call that another thread interrupted counts at its end for a sync, at its begin for the rest. */
export function readTrace(file: string): readonly Act[] {
  const begun = new Map<string, string>()
  return readFileSync(file, 'latin1')
    .split('\n')
    .flatMap((line) => {
      const [, thread = '', call = ''] = /^(\d+) +(.*)$/.exec(line) ?? []
      if (call.endsWith('<unfinished ...>')) {
        begun.set(thread, call)
        return call.startsWith('f') && call.includes('sync') ? [] : actOf(call)
      }
      if (/^<\.\.\. f\w*sync resumed>/.test(call)) return actOf(begun.get(thread) ?? '')
      return actOf(call)
    })
}

function actOf(call: string): readonly Act[] {
  const [, name = '', descriptor = '', path = '', rest = ''] = /^(\w+)\((\d+)<([^>]*)>(.*)$/.exec(call) ?? []
  const file = text(path)
  switch (name) {
    case 'pwrite64': {
      const [, hex = '', at = ''] = /^, "([^"]*)", \d+, (\d+)/.exec(rest) ?? []
      return [{ kind: 'write', file, at: Number(at), bytes: bytesOf(hex) }]
    }
    case 'ftruncate':
      return [{ kind: 'cut', file, length: Number(/^, (\d+)/.exec(rest)?.[1]) }]
    case 'fsync':
    case 'fdatasync':
      return [{ kind: 'sync', file }]
    case 'write':
      return descriptor === '1'
        ? [{ kind: 'said', text: bytesOf(/^, "([^"]*)"/.exec(rest)?.[1] ?? '').toString() }]
        : []
    default:
      return []
  }
}

/** With `-xx`, strace writes every byte as `\xNN`, those of a path too. */
function bytesOf(hex: string): Buffer {
  return Buffer.from(hex.replaceAll('\\x', ''), 'hex')
}

function text(path: string): string {
  return path.startsWith('\\x') ? bytesOf(path).toString() : path
}
