import { z } from 'zod'
import { recordedEvent } from '../builds/index.ts'
import { mostCaption, mostPhotoBytes } from '../photo/index.ts'
import { languages } from '../words/index.ts'

const mostBase64 = 4 * Math.ceil(mostPhotoBytes / 3)

/** Requests about the photos of a build. */
export const photoRequests = {
  /**
   * Adds a photo to a build, as `builds.act` adds other things: its bytes and the entry that names them become durable in one
   * go, or neither does. The bytes are a JPEG as the window makes it (`checkKept`): refused with `photo-not-prepared` otherwise,
   * and with what `decide` refuses.
   */
  'photos.add': {
    input: z.strictObject({
      build: z.uuid(),
      after: z.int().min(0),
      person: z.string().max(200),
      /** Null in a finished build. */
      step: z.string().nullable(),
      caption: z.string().max(mostCaption),
      part: z.string().nullable(),
      base64: z.base64().max(mostBase64),
      /** Of the names of steps in a refusal. */
      language: z.enum(languages).default('en'),
    }),
    output: z.strictObject({ events: z.array(recordedEvent) }),
    mostBytes: mostBase64 + 16 * 1024,
  },
  /**
   * The bytes of the photo that an entry of a build names, held against the hash in the entry. Refuses `photo-missing` and
   * `photo-damaged`: the rest of the build is as it was.
   */
  'photos.read': {
    input: z.strictObject({ build: z.uuid(), entry: z.int().min(1) }),
    output: z.strictObject({ base64: z.base64() }),
  },
} as const
