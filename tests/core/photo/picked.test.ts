import { describe, expect, it } from 'vitest'
import { checkPicked, mostPickedBytes, pictureHeadBytes } from '../../../core/photo/index.ts'
import { jpegOf, pictureFile } from '../../photos/files.ts'
import { lineOf } from '../../problem-line.ts'

const codeOf = (name: string, size: number, head: Uint8Array) => {
  const checked = checkPicked(name, size, head)
  return checked.ok ? null : checked.problem.code
}
const bytes = (...texts: readonly string[]) => new Uint8Array(Buffer.from(texts.join(''), 'latin1'))

describe('a picture that somebody brings', () => {
  it.each([
    ['gears.jpg', { kind: 'jpeg', widthPx: 320, heightPx: 240 }],
    ['gears.png', { kind: 'png', widthPx: 40, heightPx: 30 }],
    ['gears.webp', { kind: 'webp', widthPx: 40, heightPx: 30 }],
  ] as const)('is known by its own header: %s', (name, found) => {
    const file = pictureFile(name)
    expect(checkPicked(name, file.length, file)).toEqual({ ok: true, value: found })
  })

  it('is known by its header however it is called', () => {
    const file = pictureFile('gears.png')
    expect(checkPicked('crank.txt', file.length, file)).toMatchObject({ ok: true, value: { kind: 'png' } })
  })

  it('of 200 MB is refused by its size alone, whatever its head says', () => {
    expect(codeOf('panorama.jpg', 200_000_000, jpegOf())).toBe('photo-too-large')
    expect(codeOf('panorama.jpg', mostPickedBytes, jpegOf())).toBeNull()
    const checked = checkPicked('panorama.jpg', 200_000_000, new Uint8Array())
    expect(checked.ok ? '' : lineOf(checked.problem)).toContain(
      'photo-too-large: name=panorama.jpg, megabytes=200, most=60',
    )
  })

  it.each([
    ['an empty file', bytes(), 'photo-empty'],
    ['a text', bytes('Torque 24 N·m'), 'photo-no-picture'],
    ['a program', bytes('MZ\u{90}\0'), 'photo-no-picture'],
    ['a page that is called a picture', bytes('<!doctype html><script>'), 'photo-no-picture'],
    ['a drawing as SVG', bytes('<svg xmlns="http://www.w3.org/2000/svg"/>'), 'photo-no-picture'],
    ['the beginning of a JPEG and no more', bytes('\u{FF}\u{D8}\u{FF}'), 'photo-no-picture'],
    ['a JPEG whose size never comes', bytes('\u{FF}\u{D8}\u{FF}\u{FE}\0\u{2}'), 'photo-no-picture'],
    ['a JPEG of no height', jpegOf({ heightPx: 0 }), 'photo-no-picture'],
    ['a PNG that ends in its head', bytes('\u{89}PNG\r\n\u{1A}\n\0\0\0\rIHDR\0\0'), 'photo-no-picture'],
    ['a photo of a phone in HEIC', bytes('\0\0\0\u{18}ftypheic\0\0\0\0'), 'photo-kind-unread'],
    ['a scan in TIFF', bytes('II*\0\u{8}\0\0\0'), 'photo-kind-unread'],
    ['a manual in PDF', bytes('%PDF-1.7'), 'photo-kind-unread'],
  ] as const)('that is %s is refused', (_, head, code) => {
    expect(codeOf('crank.jpg', head.length, head)).toBe(code)
  })

  it('of more pixels than can be scaled is refused before it is opened', () => {
    expect(codeOf('wall.jpg', 9_000_000, jpegOf({ widthPx: 65_000, heightPx: 65_000 }))).toBe(
      'photo-too-many-pixels',
    )
    expect(codeOf('bench.jpg', 9_000_000, jpegOf({ widthPx: 8000, heightPx: 8000 }))).toBeNull()
  })

  it('of a camera that writes 60 kB about it first is still known', () => {
    const head = jpegOf({ widthPx: 4000, heightPx: 3000, annotation: `Exif\0\0${'.'.repeat(60_000)}` })
    expect(head.length).toBeLessThan(pictureHeadBytes)
    expect(checkPicked('dsc.jpg', 5_000_000, head)).toMatchObject({ ok: true, value: { widthPx: 4000 } })
  })
})
