/** What the markers of a JPEG before its picture data say (ITU-T T.81, annex B). */
export interface JpegHead {
  readonly widthPx: number
  readonly heightPx: number
  /** Whether it carries what a camera or a program wrote about it: Exif, XMP, IPTC. A place and a name may be in there. */
  readonly isAnnotated: boolean
}

const startOfImage = 0xd8
const startOfScan = 0xda
const endOfImage = 0xd9
/** Exif and XMP lie in APP1 (CIPA DC-008, section 4.7), IPTC in APP13. */
const annotations: readonly number[] = [0xe1, 0xed]

/** Null for what is no JPEG, or one whose size does not stand in the bytes that are there. */
export function jpegHead(bytes: Uint8Array): JpegHead | null {
  if (bytes[0] !== 0xff || bytes[1] !== startOfImage) return null
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength)
  let size: Pick<JpegHead, 'widthPx' | 'heightPx'> | null = null
  let isAnnotated = false
  for (let at = 2; at + 4 <= bytes.length;) {
    if (bytes[at] !== 0xff) return null
    const marker = bytes[at + 1]!
    if (marker === 0xff) {
      at += 1 // filling before a marker
      continue
    }
    if (marker === startOfScan) break
    const length = view.getUint16(at + 2)
    if (length < 2) return null
    if (isFrame(marker) && at + 9 <= bytes.length)
      size = { heightPx: view.getUint16(at + 5), widthPx: view.getUint16(at + 7) }
    if (annotations.includes(marker)) isAnnotated = true
    at += 2 + length
  }
  return size === null || size.widthPx === 0 || size.heightPx === 0 ? null : { ...size, isAnnotated }
}

/** Whether the last bytes are those that end a JPEG: one that was cut off has others. */
export function isWholeJpeg(bytes: Uint8Array): boolean {
  return bytes.at(-2) === 0xff && bytes.at(-1) === endOfImage
}

/** SOF0 to SOF15, without the three of that range that begin something else. */
function isFrame(marker: number): boolean {
  return marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker)
}
