import { appendFileSync, readFileSync } from 'node:fs'
import { join } from 'node:path'

/**
 * Copied beside the changed sources: whether the change of a number is the one that is tried. Where none is tried it leaves
 * which test file came to which change, a line each.
 */
const tried = Number(readFileSync(join(import.meta.dirname, 'tried'), 'utf8'))
const left = new Set<string>()

export function is(number: number): boolean {
  if (tried < 0) {
    const { filepath = '' } =
      (globalThis as { __vitest_worker__?: { filepath?: string } }).__vitest_worker__ ?? {}
    const line = `${number} ${filepath}\n`
    if (!left.has(line)) appendFileSync(join(import.meta.dirname, 'reached'), line)
    left.add(line)
  }
  return tried === number
}
