import { done, refused, type Outcome } from '../problem/index.ts'
import { jpegHead } from './jpeg.ts'
import { mostPickedBytes, mostPickedPixels } from './limits.ts'

/** A picture as a person brings it, by its own header. */
export interface PickedPicture {
  readonly kind: 'jpeg' | 'png' | 'webp'
  readonly widthPx: number
  readonly heightPx: number
}

/**
 * Looks at a file before it is read: `sizeBytes` is its size, `head` its beginning, at most `pictureHeadBytes` of it. Refuses
 * `photo-too-large`, `photo-empty`, `photo-kind-unread` for a picture of a kind that no browser opens, `photo-no-picture`, and
 * `photo-too-many-pixels`.
 */
export function checkPicked(name: string, sizeBytes: number, head: Uint8Array): Outcome<PickedPicture> {
  if (sizeBytes > mostPickedBytes)
    return refused('photo-too-large', {
      name,
      megabytes: Math.ceil(sizeBytes / 1e6),
      most: mostPickedBytes / 1e6,
    })
  if (sizeBytes === 0) return refused('photo-empty', { name })
  const unread = unreadKind(head)
  if (unread !== null) return refused('photo-kind-unread', { name, kind: unread })
  const found = pictureHead(head)
  if (found === null) return refused('photo-no-picture', { name })
  const pixels = found.widthPx * found.heightPx
  if (pixels > mostPickedPixels)
    return refused('photo-too-many-pixels', {
      name,
      megapixels: Math.ceil(pixels / 1e6),
      most: mostPickedPixels / 1e6,
    })
  return done(found)
}

function pictureHead(bytes: Uint8Array): PickedPicture | null {
  const jpeg = jpegHead(bytes)
  if (jpeg !== null) return { kind: 'jpeg', widthPx: jpeg.widthPx, heightPx: jpeg.heightPx }
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength)
  if (isPng(bytes) && textAt(bytes, 12, 4) === 'IHDR' && bytes.length >= 24)
    return sized('png', view.getUint32(16), view.getUint32(20))
  if (startsWith(bytes, 'RIFF') && textAt(bytes, 8, 4) === 'WEBP' && bytes.length >= 30)
    return webp(view, bytes)
  return null
}

/** By its signature (PNG, third edition, section 5.2). */
function isPng(bytes: Uint8Array): boolean {
  return [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a].every((byte, at) => bytes[at] === byte)
}

/** By RFC 9649, sections 2.5 to 2.7. */
function webp(view: DataView, bytes: Uint8Array): PickedPicture | null {
  switch (textAt(bytes, 12, 4)) {
    case 'VP8X':
      return sized('webp', 1 + uint24(view, 24), 1 + uint24(view, 27))
    case 'VP8L': {
      const bits = view.getUint32(21, true)
      return sized('webp', 1 + (bits & 0x3fff), 1 + ((bits >>> 14) & 0x3fff))
    }
    case 'VP8 ':
      return sized('webp', view.getUint16(26, true) & 0x3fff, view.getUint16(28, true) & 0x3fff)
    default:
      return null
  }
}

function sized(kind: PickedPicture['kind'], widthPx: number, heightPx: number): PickedPicture | null {
  return widthPx === 0 || heightPx === 0 ? null : { kind, widthPx, heightPx }
}

/** Pictures that cameras and scanners write and no browser opens everywhere. HEIF by ISO/IEC 23008-12: `ftyp` with its brands. */
function unreadKind(bytes: Uint8Array): 'HEIC' | 'TIFF' | 'PDF' | null {
  if (textAt(bytes, 4, 4) === 'ftyp' && /^(heic|heix|hevc|heim|heis|mif1|msf1)$/.test(textAt(bytes, 8, 4)))
    return 'HEIC'
  if (startsWith(bytes, 'II*\0') || startsWith(bytes, 'MM\0*')) return 'TIFF'
  return startsWith(bytes, '%PDF-') ? 'PDF' : null
}

function startsWith(bytes: Uint8Array, text: string): boolean {
  return textAt(bytes, 0, text.length) === text
}

function textAt(bytes: Uint8Array, at: number, length: number): string {
  return String.fromCharCode(...bytes.subarray(at, at + length))
}

function uint24(view: DataView, at: number): number {
  return view.getUint16(at, true) | (view.getUint8(at + 2) << 16)
}
