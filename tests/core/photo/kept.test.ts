import { describe, expect, it } from 'vitest'
import { checkKept, mostPhotoBytes, mostPhotoSidePx } from '../../../core/photo/index.ts'
import { jpegOf, pictureFile } from '../../photos/files.ts'

const refusedWith = (bytes: Uint8Array) => {
  const checked = checkKept(bytes)
  return checked.ok ? null : checked.problem.code
}

describe('a photo as it is kept', () => {
  it('has the size that its header says', () => {
    expect(checkKept(pictureFile('gears.jpg'))).toEqual({ ok: true, value: { widthPx: 320, heightPx: 240 } })
  })

  it.each([
    ['no JPEG', pictureFile('gears.png')],
    ['cut off', pictureFile('gears.jpg').slice(0, -40)],
    ['larger than it is scaled to', jpegOf({ widthPx: mostPhotoSidePx + 1 })],
    ['higher than it is scaled to', jpegOf({ heightPx: mostPhotoSidePx + 1 })],
    ['more than it may take', jpegOf({ filler: '.'.repeat(mostPhotoBytes) })],
    ['with what a camera wrote, the place too', jpegOf({ annotation: 'Exif\0\0II*\0' })],
    ['with what a program wrote', jpegOf({ annotation: 'http://ns.adobe.com/xap/1.0/\0<x/>' })],
    ['empty', new Uint8Array()],
  ])('is refused where it is %s', (_, bytes) => {
    expect(refusedWith(bytes)).toBe('photo-not-prepared')
  })

  it('may be as large as the window makes it', () => {
    expect(refusedWith(jpegOf({ widthPx: mostPhotoSidePx, heightPx: mostPhotoSidePx }))).toBeNull()
  })
})
