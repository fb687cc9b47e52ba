import {
  checkKept,
  checkPicked,
  mostPhotoBytes,
  mostPhotoSidePx,
  pictureHeadBytes,
} from '../../core/photo/index.ts'
import { done, refused, type Outcome } from '../../core/problem/index.ts'

/** A photo as it goes to the host. */
export interface PreparedPhoto {
  readonly bytes: Uint8Array<ArrayBuffer>
  readonly widthPx: number
  readonly heightPx: number
}

/** A picture that can be drawn: one that was opened, or what a camera shows. */
export interface OpenedPicture {
  readonly widthPx: number
  readonly heightPx: number
  /** As JPEG of this size. */
  encode(widthPx: number, heightPx: number, quality: number): Promise<Uint8Array<ArrayBuffer>>
  close(): void
}

/** Opens what a file holds, the right way up; rejects where it is no whole picture. */
export type OpenPicture = (file: Blob) => Promise<OpenedPicture>

/** Tried in turn until the photo takes no more than it may. */
const qualities = [0.85, 0.75, 0.6, 0.45] as const
/** Where even the last of them is too large, the picture is made smaller by this, and all are tried again. */
const shrinking = 0.7

/**
 * Looks at a file before it is read, then scales it. Refuses what `checkPicked` refuses, and `photo-damaged-file` where the
 * picture does not open.
 */
export async function prepareFile(
  name: string,
  file: Blob,
  open: OpenPicture = openPicture,
): Promise<Outcome<PreparedPhoto>> {
  const head = new Uint8Array(
    await file
      .slice(0, pictureHeadBytes)
      .arrayBuffer()
      .catch(() => new ArrayBuffer()),
  )
  const checked = checkPicked(name, file.size, head)
  if (!checked.ok) return checked
  try {
    const picture = await open(file)
    try {
      return await prepare(picture)
    } finally {
      picture.close()
    }
  } catch {
    return refused('photo-damaged-file', { name })
  }
}

/** A picture as the photo that is kept. Drawing it again leaves behind whatever was written about it. */
export async function prepare(picture: OpenedPicture): Promise<Outcome<PreparedPhoto>> {
  const longestSide = Math.max(picture.widthPx, picture.heightPx)
  for (let side = Math.min(longestSide, mostPhotoSidePx); ; side *= shrinking) {
    const widthPx = Math.max(1, Math.round((picture.widthPx * side) / longestSide))
    const heightPx = Math.max(1, Math.round((picture.heightPx * side) / longestSide))
    for (const quality of qualities) {
      const bytes = await picture.encode(widthPx, heightPx, quality)
      if (bytes.length > mostPhotoBytes) continue
      const kept = checkKept(bytes)
      return kept.ok ? done({ bytes, ...kept.value }) : kept
    }
  }
}

/** By the browser, which turns a picture as its camera says it was held (HTML, `imageOrientation`). */
async function openPicture(file: Blob): Promise<OpenedPicture> {
  const bitmap = await createImageBitmap(file, { imageOrientation: 'from-image' })
  return drawable(bitmap, bitmap.width, bitmap.height, () => bitmap.close())
}

export function drawable(
  source: CanvasImageSource,
  widthPx: number,
  heightPx: number,
  close: () => void = () => undefined,
): OpenedPicture {
  return {
    widthPx,
    heightPx,
    close,
    async encode(width, height, quality) {
      const canvas = new OffscreenCanvas(width, height)
      const context = canvas.getContext('2d')
      if (context === null) throw new Error('there is no canvas to draw on')
      context.fillStyle = '#ffffff' // under what can be seen through
      context.fillRect(0, 0, width, height)
      context.imageSmoothingQuality = 'high'
      context.drawImage(source, 0, 0, width, height)
      const made = await canvas.convertToBlob({ type: 'image/jpeg', quality })
      return new Uint8Array(await made.arrayBuffer())
    },
  }
}
