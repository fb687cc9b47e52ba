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

const made = new Map<string, string>()

/** A folder with the engines for tests, all of them or some, for a host to read; it goes with this process. */
export function engineFolder(engines: readonly string[] = all()): string {
  const before = made.get(engines.join())
  if (before !== undefined) return before
  const folder = mkdtempSync(join(tmpdir(), 'bedplate-engines-'))
  for (const id of engines) copyFileSync(engineFile(id), join(folder, `${id}.json`))
  process.once('exit', () => rmSync(folder, { recursive: true, force: true }))
  made.set(engines.join(), folder)
  return folder
}

function all(): readonly string[] {
  const files = [shipped, short].flatMap((from) => readdirSync(from))
  return [...new Set(files)].flatMap((name) => (name.endsWith('.json') ? [name.replace(/\.json$/, '')] : []))
}
