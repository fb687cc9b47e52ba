import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'

/** A data folder of its own for one round, gone after it. */
export async function withFolder<Result>(use: (folder: string) => Promise<Result>): Promise<Result> {
  const folder = mkdtempSync(join(tmpdir(), 'bedplate-fault-'))
  try {
    return await use(folder)
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}
