import { writeFileSync } from 'node:fs'
import { join } from 'node:path'

const start = join(import.meta.dirname, 'program/start.ts')

/** Writes a program that behaves as Electron's, so that a launcher can spawn it, and answers with its path. */
export function writeBinary(folder: string, socket: string): string {
  const file = join(folder, 'electron')
  const quoted = (text: string): string => `'${text.replaceAll("'", "'\\''")}'`
  writeFileSync(
    file,
    `#!/bin/sh
export STAND_IN_BINARY="$0" STAND_IN_SOCKET=${quoted(socket)}
exec ${quoted(process.execPath)} ${quoted(start)} "$@"
`,
    { mode: 0o755 },
  )
  return file
}
