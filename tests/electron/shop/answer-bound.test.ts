import { describe, expect, it } from 'vitest'
import { answerBound } from '../../../electron/shop/postgres/answer-bound.ts'

const mebi = 1024 * 1024

/** A message of the server: its kind, its length with these four bytes, and what it holds (PostgreSQL, 55.7). */
function message(kind: string, bytes: number): Buffer {
  const all = Buffer.alloc(5 + bytes)
  all.write(kind, 'latin1')
  all.writeInt32BE(4 + bytes, 1)
  return all
}

function isOver(chunks: Iterable<Uint8Array>): boolean {
  let over = false
  const bound = answerBound(() => (over = true))
  for (const chunk of chunks) bound(chunk)
  return over
}

describe('what a server may send', () => {
  it('is any number of answers of some size, wherever they are cut on the way', () => {
    const answer = Buffer.concat([message('T', 40), message('D', 1000), message('C', 9), message('Z', 1)])
    expect(isOver([answer, answer, answer])).toBe(false)
    expect(isOver([...answer].map((byte) => Uint8Array.of(byte)))).toBe(false)
    const large = [message('D', 50 * mebi), message('Z', 1)]
    expect(isOver(Array.from({ length: 6 }, () => large).flat())).toBe(false)
  })

  it('is no message that says it has a gigabyte, of which nothing else has come yet', () => {
    const head = message('D', 0)
    head.writeInt32BE(1024 * mebi, 1)
    expect(isOver([head])).toBe(true)
    expect(isOver([message('Z', 1), ...[...head].map((byte) => Uint8Array.of(byte))])).toBe(true)
  })

  it('is no length that is none', () => {
    for (const length of [3, 0, -1]) {
      const head = message('D', 0)
      head.writeInt32BE(length, 1)
      expect(isOver([head])).toBe(true)
    }
  })

  it('is no answer without an end', () => {
    const row = message('D', 50 * mebi)
    expect(isOver([row, row, row, row, row])).toBe(false)
    expect(isOver([row, row, row, row, row, row])).toBe(true)
  })
})
