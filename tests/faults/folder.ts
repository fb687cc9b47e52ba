import { mkdirSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'

/** A data folder of its own for one round, gone after it. */
export async function withFolder<Result>(use: (folder: string) => Promise<Result>): Promise<Result> {
  const around = mkdtempSync(join(tmpdir(), 'bedplate-fault-'))
  const folder = join(around, 'data') // beside it stands the note that a record was there
  mkdirSync(folder, { mode: 0o700 })
  try {
    return await use(folder)
  } finally {
    rmSync(around, { recursive: true, force: true })
  }
}
