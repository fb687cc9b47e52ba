import { z } from 'zod'
import { mostCaption, mostPhotoBytes, mostPhotoSidePx } from '../../photo/index.ts'

const version = z.literal(1)
const side = z.int().min(1).max(mostPhotoSidePx)

/** A photo by what can be held against its bytes. They lie beside the entries, under their hash. */
export const photoFacts = z.strictObject({
  /** SHA-256 of the bytes, in hexadecimal. */
  sha256: z.string().regex(/^[0-9a-f]{64}$/),
  mediaType: z.literal('image/jpeg'),
  widthPx: side,
  heightPx: side,
  sizeBytes: z.int().min(1).max(mostPhotoBytes),
})

/** Photos and notes. */
export const photoEvents = [
  z.strictObject({
    type: z.literal('photo-added'),
    version,
    /** Null for one of a finished build. */
    step: z.string().nullable(),
    photo: photoFacts,
    /** Empty where nobody wrote one. */
    caption: z.string().trim().max(mostCaption),
    /** The part of the list that it shows; null where nobody said so. */
    part: z.string().nullable(),
  }),
  /** A photo counts no more: it is not shown, printed or given away from here on. The entry that names its hash stays. */
  z.strictObject({
    type: z.literal('photo-withdrawn'),
    version,
    step: z.string().nullable(),
    /** The entry that added it. */
    entry: z.int().min(1),
    sha256: z.string().regex(/^[0-9a-f]{64}$/),
    reason: z.string().trim().min(1).max(600),
  }),
  /** A step that asks for a photo goes without one. */
  z.strictObject({
    type: z.literal('photo-skipped'),
    version,
    step: z.string(),
    reason: z.string().trim().min(1).max(600),
  }),
  z.strictObject({
    type: z.literal('note-written'),
    version,
    step: z.string(),
    text: z.string().trim().min(1).max(600),
  }),
] as const

export type PhotoEvent = z.output<(typeof photoEvents)[number]>
export type PhotoFacts = z.output<typeof photoFacts>
