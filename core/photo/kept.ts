import { done, refused, type Outcome } from '../problem/index.ts'
import { isWholeJpeg, jpegHead } from './jpeg.ts'
import { mostPhotoBytes, mostPhotoSidePx } from './limits.ts'

/** The size of a photo as it is kept. */
export interface KeptSize {
  readonly widthPx: number
  readonly heightPx: number
}

/**
 * Whether bytes are a photo as the window makes one: a whole JPEG, scaled, with nothing written about it. Refuses
 * `photo-not-prepared`. What the picture shows is not looked at: bytes after a right header may still be no picture.
 */
export function checkKept(bytes: Uint8Array): Outcome<KeptSize> {
  const head = jpegHead(bytes)
  const isKept =
    head !== null &&
    isWholeJpeg(bytes) &&
    !head.isAnnotated &&
    bytes.length <= mostPhotoBytes &&
    Math.max(head.widthPx, head.heightPx) <= mostPhotoSidePx
  return isKept ? done({ widthPx: head.widthPx, heightPx: head.heightPx }) : refused('photo-not-prepared', {})
}
