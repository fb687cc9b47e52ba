import type { EngineSpec } from '../../engine/index.ts'
import type { RecordedEvent } from '../events/events.ts'
import type { PhotoFacts } from '../events/photo-events.ts'
import { stampOf, type Stamp } from '../events/stamp.ts'

/** A step by its place in the plan, counted from 1, and its name. */
export interface SheetStepPlace {
  readonly id: string
  readonly place: number
  readonly name: string
}

/** A photo as the sheet shows it. */
export interface SheetPhoto extends Stamp {
  /** Null for one that was added to the finished build. */
  readonly step: SheetStepPlace | null
  readonly photo: PhotoFacts
  readonly caption: string
  /** The name of the part that it shows. */
  readonly part: string | null
}

/** What somebody wrote at a step. */
export interface SheetNote extends Stamp {
  readonly step: SheetStepPlace
  readonly text: string
}

/** A step that asked for a photo and has a reason instead. */
export interface SheetPhotoSkipped extends Stamp {
  readonly step: SheetStepPlace
  readonly reason: string
}

/** A photo that is named, and not shown. */
export interface SheetPhotoWithdrawn extends Stamp {
  readonly step: SheetStepPlace | null
  readonly sha256: string
  readonly reason: string
}

export function photosWithdrawnOn(
  spec: EngineSpec,
  entries: readonly RecordedEvent[],
): readonly SheetPhotoWithdrawn[] {
  return entries.flatMap((entry) => {
    const { event } = entry
    if (event.type !== 'photo-withdrawn') return []
    const { sha256, reason } = event
    const step = event.step === null ? null : stepPlace(spec, event.step)
    return [{ ...stampOf(entry), step, sha256, reason }]
  })
}

export function photosOn(spec: EngineSpec, entries: readonly RecordedEvent[]): readonly SheetPhoto[] {
  const withdrawn = new Set(
    entries.flatMap(({ event }) => (event.type === 'photo-withdrawn' ? [event.entry] : [])),
  )
  return entries.flatMap((entry) => {
    const { event } = entry
    if (event.type !== 'photo-added' || withdrawn.has(entry.seq)) return []
    const { photo, caption } = event
    const part = event.part && (spec.parts.find(({ id }) => id === event.part)?.name ?? event.part)
    const step = event.step === null ? null : stepPlace(spec, event.step)
    return [{ ...stampOf(entry), step, photo, caption, part }]
  })
}

export function notesOn(spec: EngineSpec, entries: readonly RecordedEvent[]): readonly SheetNote[] {
  return entries.flatMap((entry) =>
    entry.event.type === 'note-written'
      ? [{ ...stampOf(entry), step: stepPlace(spec, entry.event.step), text: entry.event.text }]
      : [],
  )
}

/** Those that did not get one after all. */
export function photosSkippedOn(
  spec: EngineSpec,
  entries: readonly RecordedEvent[],
): readonly SheetPhotoSkipped[] {
  const shown = photosOn(spec, entries)
  return entries.flatMap((entry) => {
    const { event, seq } = entry
    if (event.type !== 'photo-skipped') return []
    if (shown.some((photo) => photo.step?.id === event.step && photo.seq > seq)) return []
    return [{ ...stampOf(entry), step: stepPlace(spec, event.step), reason: event.reason }]
  })
}

export function stepPlace({ steps }: EngineSpec, id: string): SheetStepPlace {
  const index = steps.findIndex((step) => step.id === id)
  return { id, place: index + 1, name: steps[index]?.name ?? id }
}
