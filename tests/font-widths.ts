import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { brotliDecompressSync } from 'node:zlib'

const root = join(import.meta.dirname, '..')
const next = 'node_modules/@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin'
const weights = { regular: 400, bold: 700 } as const

/**
 * How wide each character of the program's own font is, in thousandths of the font size: the faces that `renderer/look/fonts.css`
 * names, the first that has the character.
 */
export function fontWidths(weight: keyof typeof weights): ReadonlyMap<string, number> {
  const faces = [
    `${next}-${weights[weight]}-normal.woff2`,
    `${next}-ext-${weights[weight]}-normal.woff2`,
    `assets/fonts/atkinson-hyperlegible-latin-${weights[weight]}-normal.woff2`,
  ].map((file) => widthsIn(readFileSync(join(root, file))))
  // Of the last face the page takes one character alone.
  const [latin = [], extended = [], micro = []] = faces
  return new Map([...micro.filter(([character]) => character === 'µ'), ...extended, ...latin])
}

/** What a table is called by its number in a WOFF2 directory, of those that are read here (WOFF2, 5.1). */
const tags = ['cmap', 'head', 'hhea', 'hmtx'] as const
/** The tables that are always transformed, unless they say version 3. */
const outlines = [10, 11]

/** The advances in a WOFF2 file, by its tables `cmap`, `head`, `hhea` and `hmtx`, of which none may be transformed. */
function widthsIn(font: Buffer): readonly (readonly [character: string, thousandths: number])[] {
  const tables = tablesOf(font)
  const unitsPerEm = tables.head.readUInt16BE(18)
  const advances = tables.hhea.readUInt16BE(34)
  return glyphsIn(tables.cmap).map(([character, glyph]) => {
    const advance = tables.hmtx.readUInt16BE(4 * Math.min(glyph, advances - 1))
    return [character, (advance * 1000) / unitsPerEm]
  })
}

function tablesOf(font: Buffer): Readonly<Record<(typeof tags)[number], Buffer>> {
  let at = 48
  const number = (): number => {
    for (let value = 0; ;) {
      const byte = font[at++]!
      value = value * 128 + (byte & 127)
      if (byte < 128) return value
    }
  }
  const directory = Array.from({ length: font.readUInt16BE(12) }, () => {
    const flags = font[at++]!
    const tag = flags & 63
    if (tag === 63) at += 4
    const plainLength = number()
    const isTransformed = outlines.includes(tag) ? flags >> 6 === 0 : flags >> 6 !== 0
    if (isTransformed && tag < tags.length) throw new Error(`${tags[tag]} is transformed`)
    return { tag, length: isTransformed ? number() : plainLength }
  })
  const data = brotliDecompressSync(font.subarray(at, at + font.readUInt32BE(20)))
  const found: Partial<Record<(typeof tags)[number], Buffer>> = {}
  let from = 0
  for (const { tag, length } of directory) {
    const name = tags[tag]
    if (name !== undefined) found[name] = data.subarray(from, from + length)
    from += length
  }
  return found as Record<(typeof tags)[number], Buffer>
}

/** What a `cmap` maps, by its subtables of format 4, which cover the Basic Multilingual Plane (OpenType, cmap). */
function glyphsIn(cmap: Buffer): readonly (readonly [character: string, glyph: number])[] {
  const found: [string, number][] = []
  for (let index = 0; index < cmap.readUInt16BE(2); index++) {
    const table = cmap.subarray(cmap.readUInt32BE(8 + 8 * index))
    if (table.readUInt16BE(0) !== 4) continue
    const twice = table.readUInt16BE(6)
    for (let segment = 0; segment < twice; segment += 2) {
      const [end, start] = [table.readUInt16BE(14 + segment), table.readUInt16BE(16 + twice + segment)]
      const delta = table.readInt16BE(16 + 2 * twice + segment)
      const at = 16 + 3 * twice + segment
      const offset = table.readUInt16BE(at)
      for (let code = start; code <= end && code < 0xffff; code++) {
        const listed = offset === 0 ? code : table.readUInt16BE(at + offset + 2 * (code - start))
        const glyph = offset !== 0 && listed === 0 ? 0 : (listed + delta) & 0xffff
        if (glyph !== 0) found.push([String.fromCodePoint(code), glyph])
      }
    }
  }
  return found
}
