import type { PhotoEvent } from './photo-events.ts'
import type { BuildState } from './state.ts'

type Added = Extract<PhotoEvent, { type: 'photo-added' }>
type Written = Extract<PhotoEvent, { type: 'note-written' }>

/** A photo that a build has, by the entry that says so. */
export interface BuildPhoto extends Omit<Added, 'type' | 'version'> {
  readonly seq: number
  /** UTC, ISO 8601. */
  readonly at: string
}

export interface BuildNote extends Omit<Written, 'type' | 'version'> {
  readonly seq: number
  /** UTC, ISO 8601. */
  readonly at: string
}

type PhotoState = Pick<BuildState, 'photos' | 'notes' | 'photosSkipped' | 'workedOn'>

/**
 * What follows from an entry about photos and notes. Neither is work on its step, so that a person comes back to where the
 * work was left.
 */
export function evolvePhotos(
  { photos, notes, photosSkipped, workedOn }: PhotoState,
  { seq, at }: { readonly seq: number; readonly at: string },
  event: PhotoEvent,
): PhotoState {
  switch (event.type) {
    case 'photo-added': {
      const { type: _, version: __, ...added } = event
      return { photos: [...photos, { seq, at, ...added }], notes, photosSkipped, workedOn }
    }
    case 'photo-skipped': {
      const { step, reason } = event
      return { photos, notes, photosSkipped: { ...photosSkipped, [step]: reason }, workedOn: { step } }
    }
    case 'note-written': {
      const { step, text } = event
      return { photos, notes: [...notes, { seq, at, step, text }], photosSkipped, workedOn }
    }
    default:
      return event satisfies never
  }
}

/** The photos of a step, in order; with null those of the finished build. */
export function photosAt(
  { photos }: Pick<BuildState, 'photos'>,
  step: string | null,
): readonly BuildPhoto[] {
  return photos.filter((photo) => photo.step === step)
}
