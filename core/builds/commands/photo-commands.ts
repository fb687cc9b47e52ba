import { z } from 'zod'
import { mostCaption } from '../../photo/index.ts'
import { photoFacts } from '../events/photo-events.ts'

/** What is asked of the photos and notes of a build. */
export const photoCommands = [
  /** The host makes it of the bytes that come with it, by the request `photos.add`. */
  z.strictObject({
    type: z.literal('add-photo'),
    /** Null in a finished build. */
    step: z.string().nullable(),
    photo: photoFacts,
    caption: z.string().max(mostCaption),
    part: z.string().nullable(),
  }),
  z.strictObject({ type: z.literal('withdraw-photo'), entry: z.int().min(1), reason: z.string().max(600) }),
  z.strictObject({ type: z.literal('skip-photo'), step: z.string(), reason: z.string().max(600) }),
  z.strictObject({ type: z.literal('write-note'), step: z.string(), text: z.string().max(600) }),
] as const
