import type { BuildCommand } from '../../core/builds/index.ts'
import { checkKept } from '../../core/photo/index.ts'
import { gearsPhoto } from '../../tests/photos/gears-photo.ts'

type AddPhoto = Extract<BuildCommand, { type: 'add-photo' }>

/** The bytes of the photos that builds in memory have, in base64, by what stands for their hash. */
export const samplePhotos = new Map<string, string>()

function bytesOf(base64: string): Uint8Array<ArrayBuffer> {
  return Uint8Array.from(atob(base64), (character) => character.charCodeAt(0))
}

/** The command that a host makes of a photo. Nothing in memory is verified, so that a number does for the hash. */
export function addPhotoOf(
  base64: string,
  { step, caption, part }: Pick<AddPhoto, 'step' | 'caption' | 'part'>,
): AddPhoto {
  const bytes = bytesOf(base64)
  const size = checkKept(bytes)
  if (!size.ok) throw new Error('it is no photo')
  const sha256 = (samplePhotos.size + 1).toString(16).padStart(64, '0')
  samplePhotos.set(sha256, base64)
  const photo = { sha256, mediaType: 'image/jpeg', ...size.value, sizeBytes: bytes.length } as const
  return { type: 'add-photo', step, caption, part, photo }
}

export const gearsBytes = () => bytesOf(gearsPhoto)

/** A photo of two gears whose lines meet. */
export function gearsAt(step: string, caption: string): AddPhoto {
  return addPhotoOf(gearsPhoto, { step, caption, part: null })
}
