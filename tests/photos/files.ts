import { readFileSync } from 'node:fs'
import { join } from 'node:path'

/** Pictures as Chromium writes them: the JPEG of 320 × 240 px, the others of 40 × 30. */
export function pictureFile(name: 'gears.jpg' | 'gears.png' | 'gears.webp'): Uint8Array {
  return new Uint8Array(readFileSync(join(import.meta.dirname, name)))
}

/** What a JPEG is made of, after `FF D8`: a marker and what follows its length. */
function segment(marker: number, content: readonly number[]): readonly number[] {
  const length = content.length + 2
  return [0xff, marker, length >> 8, length & 0xff, ...content]
}

const text = (written: string) => [...Buffer.from(written, 'latin1')]

/** The head and foot of a JPEG around bytes that are no picture: enough to be looked at, not to be shown. */
export function jpegOf({
  widthPx = 800,
  heightPx = 600,
  annotation = '',
  filler = 'as on the bench',
}: { widthPx?: number; heightPx?: number; annotation?: string; filler?: string } = {}): Uint8Array {
  const head = [
    ...[0xff, 0xd8],
    ...segment(0xe0, text('JFIF\0\u{1}\u{1}\0\0\u{1}\0\u{1}\0\0')),
    ...(annotation === '' ? [] : segment(0xe1, text(annotation))),
    ...segment(0xc0, [8, heightPx >> 8, heightPx & 0xff, widthPx >> 8, widthPx & 0xff, 1, 1, 0x11, 0]),
    ...segment(0xda, [1, 1, 0, 0, 63, 0]),
  ]
  return new Uint8Array(
    Buffer.concat([Buffer.from(head), Buffer.from(filler, 'latin1'), Buffer.from([0xff, 0xd9])]),
  )
}
