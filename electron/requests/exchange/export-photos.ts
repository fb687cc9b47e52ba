import { setImmediate } from 'node:timers/promises'
import canonicalize from 'canonicalize'
import { z } from 'zod'
import type { PhotoFacts, RecordedEvent } from '../../../core/builds/index.ts'
import { checkKept } from '../../../core/photo/index.ts'
import { photoHash } from '../../store/index.ts'
import type { StoredEntry } from '../../store/index.ts'

/** Longer than any line of a photo: `mostPhotoBytes` in base64, and what stands around it. */
const longestLine = 1_100_000

const photoLine = z.strictObject({
  /** Base64; null where the bytes were not as recorded when the export was written. */
  bytes: z.string().nullable(),
  /** The hash that the entries name. */
  photo: z.string().regex(/^[0-9a-f]{64}$/),
})

/** The photos of an export that are as its entries name them. */
export interface ExportedPhotos {
  readonly sound: readonly Uint8Array[]
  /** The hashes of those that the entries name and the file does not have as recorded. */
  readonly lost: readonly string[]
}

/** The hashes of all photos that entries name and none withdraws, each once, in the order of their first. */
export function photosNamed(entries: readonly StoredEntry[]): readonly string[] {
  const about = entries.flatMap(({ body }) =>
    body.includes('"type":"photo-') ? [JSON.parse(body) as Pick<RecordedEvent, 'seq' | 'event'>] : [],
  )
  return [...new Set(factsOf(about).map(({ sha256 }) => sha256))]
}

/** The lines of an export that follow its entries: one for each photo, its bytes in base64. */
export function photoLines(
  named: readonly string[],
  bytesOf: (sha256: string) => Buffer | null,
): readonly string[] {
  return named.map((sha256) => {
    const bytes = bytesOf(sha256)
    const isSound = bytes !== null && photoHash(bytes) === sha256
    return canonicalize({ bytes: isSound ? bytes.toString('base64') : null, photo: sha256 })!
  })
}

/**
 * Reads the lines of photos, one at a time, so that others are answered meanwhile. A line that was altered, cut off or is
 * missing costs its photo and nothing else: the entries prove the build without it, and say which photo it was.
 */
export async function readPhotos(
  lines: readonly string[],
  events: readonly RecordedEvent[],
): Promise<ExportedPhotos> {
  const named = new Map(factsOf(events).map((facts) => [facts.sha256, facts]))
  const sound = new Map<string, Uint8Array>()
  for (const line of lines) {
    await setImmediate()
    const bytes = line.length > longestLine ? null : bytesIn(line, named)
    if (bytes !== null) sound.set(photoHash(bytes), bytes)
  }
  return { sound: [...sound.values()], lost: [...named.keys()].filter((sha256) => !sound.has(sha256)) }
}

/** Null unless the bytes are those that an entry names, and the picture has the size that it says. */
function bytesIn(line: string, named: ReadonlyMap<string, PhotoFacts>): Uint8Array | null {
  let inside: unknown
  try {
    inside = JSON.parse(line)
  } catch {
    return null
  }
  const read = photoLine.safeParse(inside)
  if (!read.success || read.data.bytes === null) return null
  const bytes = Buffer.from(read.data.bytes, 'base64')
  const facts = named.get(photoHash(bytes))
  const size = checkKept(bytes)
  const isNamed =
    size.ok &&
    facts?.widthPx === size.value.widthPx &&
    facts.heightPx === size.value.heightPx &&
    facts.sizeBytes === bytes.length
  return isNamed ? bytes : null
}

/** Of the photos that count: one that was withdrawn is given to nobody. */
function factsOf(entries: readonly Pick<RecordedEvent, 'seq' | 'event'>[]): readonly PhotoFacts[] {
  const withdrawn = new Set(
    entries.flatMap(({ event }) => (event.type === 'photo-withdrawn' ? [event.entry] : [])),
  )
  return entries.flatMap(({ seq, event }) =>
    event.type === 'photo-added' && !withdrawn.has(seq) ? [event.photo] : [],
  )
}
