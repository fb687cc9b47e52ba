import { z } from 'zod'
import { standing, type Standing } from '../../core/builds/index.ts'

/** Where a build stood after its entry with the hash `head`; null where it cannot be read to its end. */
export interface KeptStanding {
  readonly build: string
  readonly head: string
  readonly standing: Standing | null
}

const kept = z.strictObject({ head: z.string(), standing: standing.nullable() })

export function writeStanding({ head, standing }: KeptStanding): string {
  return JSON.stringify({ head, standing })
}

/**
 * Where a build stands by what was kept beside it; `head_sha256` is null where that came with the entries themselves. `stale` where nothing was kept, where entries came after it, and where
 * it cannot be read: it is then found from the entries.
 */
export function readStanding(row: {
  readonly standing: string | null
  readonly head_sha256: string | null
}): Standing | null | 'stale' {
  if (row.standing === null) return 'stale'
  let json: unknown
  try {
    json = JSON.parse(row.standing)
  } catch {
    return 'stale'
  }
  const read = kept.safeParse(json)
  const isOfHead = read.success && (row.head_sha256 ?? read.data.head) === read.data.head
  return isOfHead ? read.data.standing : 'stale'
}
