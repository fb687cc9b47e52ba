import { sha256 } from './chain/chain.ts'
import type { Database } from './file/sqlite.ts'

/** A spec as a build keeps it, with what the list of builds says of it. */
export interface KeptSpec {
  readonly text: string
  /** The engine's name. */
  readonly engine: string
  readonly demo: boolean
}

/** The texts of specs that builds rest on, each once, under the hash of its text. */
export function specsOn(db: Database) {
  const keep = db.prepare(
    'INSERT INTO spec (sha256, text, engine, demo) VALUES (?, ?, ?, ?) ON CONFLICT DO NOTHING',
  )
  const read = db.prepare<[string], { text: string }>('SELECT text FROM spec WHERE sha256 = ?')
  const hashes = db.prepare<[], string>('SELECT sha256 FROM spec').pluck()
  return {
    keep({ text, engine, demo }: KeptSpec): void {
      keep.run(sha256(text), text, engine, demo ? 1 : 0)
    },
    hashes: (): readonly string[] => hashes.all(),
    text: (hash: string): string | null => read.get(hash)?.text ?? null,
  }
}

export type Specs = ReturnType<typeof specsOn>
