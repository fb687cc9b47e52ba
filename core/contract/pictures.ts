import { z } from 'zod'
import { pictureLook } from '../drafts/index.ts'
import { mostPhotoBytes } from '../photo/index.ts'
import { nothing } from './problem-message.ts'

const mostBase64 = 4 * Math.ceil(mostPhotoBytes / 3)
const ofFace = { draft: z.uuid(), face: z.string().min(1).max(60) }

const pictureLine = z.strictObject({
  face: z.string(),
  /** Of its bytes: another picture has another one. */
  sha256: z.string(),
  widthPx: z.int(),
  heightPx: z.int(),
  look: pictureLook,
})
export type PictureLine = z.output<typeof pictureLine>

/**
 * Requests about the pictures of a manual that lie under the drawings of a draft, one under each face. They are no part of the draft: they
 * stay in the record of this bench, and go when the draft is published.
 */
export const pictureRequests = {
  'pictures.list': { input: z.strictObject({ draft: z.uuid() }), output: z.array(pictureLine) },
  /** Refuses `picture-missing`, and `picture-damaged` where the bytes are not those that were kept. */
  'pictures.read': { input: z.strictObject(ofFace), output: z.strictObject({ base64: z.base64() }) },
  /** Puts a picture under a face, in place of the one that is there. A JPEG as the window makes it, or `photo-not-prepared`. */
  'pictures.put': {
    input: z.strictObject({ ...ofFace, look: pictureLook, base64: z.base64().max(mostBase64) }),
    output: pictureLine,
    mostBytes: mostBase64 + 16 * 1024,
  },
  /** Refuses `picture-missing` where another window took it away. */
  'pictures.place': { input: z.strictObject({ ...ofFace, look: pictureLook }), output: pictureLine },
  'pictures.remove': { input: z.strictObject(ofFace), output: nothing },
} as const
