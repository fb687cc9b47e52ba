import { createHash } from 'node:crypto'
import { setImmediate } from 'node:timers/promises'
import type { Database } from './file/sqlite.ts'

/** What became of the bytes of a photo that an entry names. */
export type PhotoState = 'good' | 'damaged' | 'missing'

/** What of all photos that builds have is there as it was recorded. */
export interface PhotoCount {
  /** How many entries name a photo. */
  readonly photos: number
  readonly damaged: number
  readonly missing: number
  /** Of what is kept. */
  readonly bytes: number
}

/** The hash that a photo is kept under, in hexadecimal. */
export function photoHash(bytes: Uint8Array): string {
  return createHash('sha256').update(bytes).digest('hex')
}

/** The bytes of photos. What they must be, the entries say: each is held against its hash whenever it is read. */
export function photosOn(db: Database) {
  const read = db.prepare<[string], Buffer>('SELECT bytes FROM photo WHERE sha256 = ?').pluck()
  const insert = db.prepare('INSERT INTO photo (sha256, bytes) VALUES (?, ?)')
  const repair = db.prepare('UPDATE photo SET bytes = ? WHERE sha256 = ?')
  const named = db.prepare<[], { build: string; seq: number; sha256: string }>(
    `SELECT build, seq, json_extract(body, '$.event.photo.sha256') AS sha256 FROM event INDEXED BY event_with_photo
     WHERE instr(body, '"type":"photo-added"') > 0 AND json_valid(body)`,
  )
  const withdrawn = db
    .prepare<[string], number>(
      `SELECT json_extract(body, '$.event.entry') FROM event
       WHERE build = ? AND instr(body, '"type":"photo-withdrawn"') > 0 AND json_valid(body)`,
    )
    .pluck()
  const size = db.prepare<[], number>('SELECT coalesce(sum(length(bytes)), 0) FROM photo').pluck()

  function stateOf(sha256: string): PhotoState {
    const bytes = read.get(sha256)
    if (bytes === undefined) return 'missing'
    return photoHash(bytes) === sha256 ? 'good' : 'damaged'
  }

  return {
    /** In the transaction of the caller. Bytes that are there already, and sound, are kept as they are. */
    keep(bytes: Uint8Array): string {
      const sha256 = photoHash(bytes)
      const state = stateOf(sha256)
      if (state === 'missing') insert.run(sha256, bytes)
      else if (state === 'damaged') repair.run(bytes, sha256)
      return sha256
    },
    /** As they lie there, damaged or not; null where there are none. */
    bytes: (sha256: string): Buffer | null => read.get(sha256) ?? null,
    stateOf,
    /** Reads every photo, one at a time, so that others are answered meanwhile. */
    async count(): Promise<PhotoCount> {
      const states = new Map<string, PhotoState>()
      const count = { photos: 0, damaged: 0, missing: 0 }
      for (const { build, seq, sha256 } of named.all()) {
        if (!states.has(sha256)) {
          states.set(sha256, stateOf(sha256))
          await setImmediate()
        }
        const state = states.get(sha256)
        count.photos += 1
        // An export does not carry what was withdrawn. To look for that reads the build: only for what is not sound.
        if (state !== 'good' && withdrawn.all(build).includes(seq)) continue
        if (state === 'damaged') count.damaged += 1
        if (state === 'missing') count.missing += 1
      }
      return { ...count, bytes: size.get() ?? 0 }
    },
  }
}

export type Photos = ReturnType<typeof photosOn>
