import type { PhotoEvent } from './photo-events.ts'

type PhotoAdded = Extract<PhotoEvent, { type: 'photo-added' }>
type NoteWritten = Extract<PhotoEvent, { type: 'note-written' }>

/** A photo that a build has, by the entry that says so. */
export interface BuildPhoto extends Omit<PhotoAdded, 'type' | 'version'> {
  readonly seq: number
  /** UTC, ISO 8601. */
  readonly at: string
}

export interface BuildNote extends Omit<NoteWritten, 'type' | 'version'> {
  readonly seq: number
  /** UTC, ISO 8601. */
  readonly at: string
}

/** A photo that was withdrawn: named with its reason, and not shown. */
export interface WithdrawnPhoto extends BuildPhoto {
  readonly reason: string
}

/** What a build has of photos and notes. */
export interface PhotoRecord {
  /** Those that count, in the order in which they were added. */
  readonly photos: readonly BuildPhoto[]
  readonly photosWithdrawn: readonly WithdrawnPhoto[]
  readonly notes: readonly BuildNote[]
  /** By step id: why a step that asks for a photo has none. */
  readonly photosSkipped: Readonly<Record<string, string>>
}

/** The record after one more entry about photos and notes. */
export function evolvePhotos(
  { photos, photosWithdrawn, notes, photosSkipped }: PhotoRecord,
  { seq, at }: { readonly seq: number; readonly at: string },
  event: PhotoEvent,
): PhotoRecord {
  const before = { photos, photosWithdrawn, notes, photosSkipped }
  switch (event.type) {
    case 'photo-added': {
      const { type: _, version: __, ...added } = event
      return { ...before, photos: [...photos, { seq, at, ...added }] }
    }
    case 'photo-withdrawn': {
      const withdrawn = photos.filter((photo) => photo.seq === event.entry)
      return {
        ...before,
        photos: photos.filter((photo) => !withdrawn.includes(photo)),
        photosWithdrawn: [
          ...photosWithdrawn,
          ...withdrawn.map((photo) => ({ ...photo, reason: event.reason })),
        ],
      }
    }
    case 'photo-skipped': {
      const { step, reason } = event
      return { ...before, photosSkipped: { ...photosSkipped, [step]: reason } }
    }
    case 'note-written': {
      const { step, text } = event
      return { ...before, notes: [...notes, { seq, at, step, text }] }
    }
    default:
      return event satisfies never
  }
}

/** The photos of a step, in order; with null those of the finished build. */
export function photosAt(
  { photos }: Pick<PhotoRecord, 'photos'>,
  step: string | null,
): readonly BuildPhoto[] {
  return photos.filter((photo) => photo.step === step)
}
