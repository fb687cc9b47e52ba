import { copyFileSync, existsSync, mkdtempSync, readdirSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'

/**
 * Two demos with plans that are short enough to be gone through by hand, as they were before their plans had every part. What is not
 * about the plans of the demos themselves is tested on these.
 */
const short = join(import.meta.dirname, 'engines')
const shipped = join(import.meta.dirname, '../specs')

/** The spec of an engine for tests: the short one, where there is one. */
export function engineFile(id: string): string {
  const file = join(short, `${id}.json`)
  return existsSync(file) ? file : shippedFile(id)
}

/** The spec of a demo as it ships. */
export function shippedFile(id: string): string {
  return join(shipped, `${id}.json`)
}

let made: string | null = null

/** A folder with the engines for tests, for a host to read; it goes with this process. */
export function engineFolder(): string {
  if (made !== null) return made
  const folder = mkdtempSync(join(tmpdir(), 'bedplate-engines-'))
  for (const from of [shipped, short])
    for (const name of readdirSync(from).filter((each) => each.endsWith('.json')))
      copyFileSync(join(from, name), join(folder, name))
  process.once('exit', () => rmSync(folder, { recursive: true, force: true }))
  made = folder
  return folder
}
