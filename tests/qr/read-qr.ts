/**
 * A reader of QR codes, written from ISO/IEC 18004 and from nothing that writes them: versions 1 to 6, the levels L to H, the
 * three ways of packing text that this program can meet. It mends nothing: a symbol with one wrong codeword is refused.
 */

/** Dark is true; without the quiet zone, row by row. */
export type Modules = readonly (readonly boolean[])[]

interface Blocks {
  /** Codewords of error correction in each block. */
  readonly correction: number
  /** Data codewords of each block, in order. */
  readonly data: readonly number[]
}

const times = (count: number, words: number) => Array<number>(count).fill(words)

/** Table 9 of the standard, versions 1 to 6. */
const blocksOf: readonly Readonly<Record<'L' | 'M' | 'Q' | 'H', Blocks>>[] = [
  {
    L: { correction: 7, data: [19] },
    M: { correction: 10, data: [16] },
    Q: { correction: 13, data: [13] },
    H: { correction: 17, data: [9] },
  },
  {
    L: { correction: 10, data: [34] },
    M: { correction: 16, data: [28] },
    Q: { correction: 22, data: [22] },
    H: { correction: 28, data: [16] },
  },
  {
    L: { correction: 15, data: [55] },
    M: { correction: 26, data: [44] },
    Q: { correction: 18, data: times(2, 17) },
    H: { correction: 22, data: times(2, 13) },
  },
  {
    L: { correction: 20, data: [80] },
    M: { correction: 18, data: times(2, 32) },
    Q: { correction: 26, data: times(2, 24) },
    H: { correction: 16, data: times(4, 9) },
  },
  {
    L: { correction: 26, data: [108] },
    M: { correction: 24, data: times(2, 43) },
    Q: { correction: 18, data: [15, 15, 16, 16] },
    H: { correction: 22, data: [11, 11, 12, 12] },
  },
  {
    L: { correction: 18, data: times(2, 68) },
    M: { correction: 16, data: times(4, 27) },
    Q: { correction: 24, data: times(4, 19) },
    H: { correction: 28, data: times(4, 15) },
  },
]

/** By the two bits of the format, table 12. */
const levels = ['M', 'L', 'H', 'Q'] as const

/** Table 10: where a data module is turned over. */
const masks: readonly ((row: number, column: number) => boolean)[] = [
  (i, j) => (i + j) % 2 === 0,
  (i) => i % 2 === 0,
  (_, j) => j % 3 === 0,
  (i, j) => (i + j) % 3 === 0,
  (i, j) => (Math.floor(i / 2) + Math.floor(j / 3)) % 2 === 0,
  (i, j) => ((i * j) % 2) + ((i * j) % 3) === 0,
  (i, j) => (((i * j) % 2) + ((i * j) % 3)) % 2 === 0,
  (i, j) => (((i + j) % 2) + ((i * j) % 3)) % 2 === 0,
]

const alphanumeric = '0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ $%*+-./:'

/** Throws with what is wrong where the symbol is not a whole and faultless one. */
export function readQr(modules: Modules): string {
  const size = modules.length
  const version = (size - 17) / 4
  const ofVersion = blocksOf[version - 1]
  if (ofVersion === undefined) throw new Error(`no symbol of ${size} modules`)
  checkFinders(modules)
  const format = readFormat(modules)
  const blocks = ofVersion[levels[format >> 3]!]
  const mask = masks[format & 7]!
  const bits: number[] = []
  for (const [row, column] of dataModules(size, version))
    bits.push(modules[row]![column]! === mask(row, column) ? 0 : 1)
  const words = Array.from({ length: Math.floor(bits.length / 8) }, (_, index) =>
    Number.parseInt(bits.slice(index * 8, index * 8 + 8).join(''), 2),
  )
  return textOf(dataOf(words, blocks))
}

/** Each corner but the last has a square of 7 with a square of 3 in it. */
function checkFinders(modules: Modules) {
  const far = modules.length - 7
  for (const [top, left] of [
    [0, 0],
    [0, far],
    [far, 0],
  ] as const)
    for (let row = 0; row < 7; row++)
      for (let column = 0; column < 7; column++) {
        const ring = Math.max(Math.abs(row - 3), Math.abs(column - 3))
        if (modules[top + row]![left + column]! !== (ring !== 2)) throw new Error('a finder is broken')
      }
}

/** Level and mask from the bits around the first finder; they must be a word of the standard's BCH (15, 5) code. */
function readFormat(modules: Modules): number {
  const along = [0, 1, 2, 3, 4, 5, 7, 8].map((column) => modules[8]![column]!)
  const up = [7, 5, 4, 3, 2, 1, 0].map((row) => modules[row]![8]!)
  const word = Number.parseInt([...along, ...up].map(Number).join(''), 2) ^ 0b101010000010010
  let rest = word
  for (let bit = 14; bit >= 10; bit--) if (rest & (1 << bit)) rest ^= 0b10100110111 << (bit - 10)
  if (rest !== 0) throw new Error('the format is broken')
  return word >> 10
}

/** The modules that carry codewords, two columns at a time from the right, up and down in turn. */
function* dataModules(size: number, version: number): Generator<readonly [row: number, column: number]> {
  let upwards = true
  for (let right = size - 1; right > 0; right -= 2) {
    if (right === 6) right -= 1
    for (let step = 0; step < size; step++) {
      const row = upwards ? size - 1 - step : step
      for (const column of [right, right - 1])
        if (!isFunction(row, column, size, version)) yield [row, column]
    }
    upwards = !upwards
  }
}

/** Finders with their separators and the format, timing, and from version 2 on the one alignment square. */
function isFunction(row: number, column: number, size: number, version: number): boolean {
  const atCorner = (row < 9 && (column < 9 || column >= size - 8)) || (row >= size - 8 && column < 9)
  const inAlignment = version > 1 && Math.abs(row - (size - 7)) <= 2 && Math.abs(column - (size - 7)) <= 2
  return atCorner || row === 6 || column === 6 || inAlignment
}

/** Takes the blocks apart, checks each, and puts their data one behind the other. */
function dataOf(words: readonly number[], { correction, data }: Blocks): readonly number[] {
  const blocks = data.map((): number[] => [])
  let at = 0
  for (let index = 0; index < Math.max(...data); index++)
    for (const [block, length] of data.entries()) if (index < length) blocks[block]!.push(words[at++]!)
  for (let index = 0; index < correction; index++) for (const block of blocks) block.push(words[at++]!)
  for (const block of blocks) if (!isFaultless(block, correction)) throw new Error('a codeword is wrong')
  return blocks.flatMap((block, index) => block.slice(0, data[index]))
}

/** A Reed-Solomon block is faultless when α⁰, α¹, … are roots of it, over GF(256) with x⁸ + x⁴ + x³ + x² + 1. */
export function isFaultless(block: readonly number[], correction: number): boolean {
  let root = 1
  for (let index = 0; index < correction; index++) {
    if (block.reduce((sum, word) => product(sum, root) ^ word, 0) !== 0) return false
    root = product(root, 2)
  }
  return true
}

function product(a: number, b: number): number {
  let result = 0
  for (let bit = 7; bit >= 0; bit--) {
    result = (result << 1) ^ (result & 0x80 ? 0x11d : 0)
    if (b & (1 << bit)) result ^= a
  }
  return result
}

/** The segments of a symbol of version 1 to 9 until the terminator or the end. */
export function textOf(data: readonly number[]): string {
  const bits = data.map((word) => word.toString(2).padStart(8, '0')).join('')
  let at = 0
  const take = (count: number) => {
    at += count
    return Number.parseInt(bits.slice(at - count, at), 2)
  }
  let text = ''
  while (bits.length - at >= 4) {
    const mode = take(4)
    if (mode === 0) break
    if (mode === 1) text += numbers(take, take(10))
    else if (mode === 2) text += characters(take, take(9))
    else if (mode === 4) text += new TextDecoder().decode(Uint8Array.from({ length: take(8) }, () => take(8)))
    else throw new Error(`mode ${mode} is not read here`)
  }
  return text
}

function numbers(take: (bits: number) => number, count: number): string {
  let text = ''
  for (let left = count; left > 0; left -= 3) {
    const digits = Math.min(left, 3)
    text += String(take([0, 4, 7, 10][digits]!)).padStart(digits, '0')
  }
  return text
}

function characters(take: (bits: number) => number, count: number): string {
  let text = ''
  for (let left = count; left > 0; left -= 2) {
    const pair = take(left > 1 ? 11 : 6)
    if (left > 1) text += alphanumeric[Math.floor(pair / 45)]
    text += alphanumeric[pair % 45]
  }
  return text
}
