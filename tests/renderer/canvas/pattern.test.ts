import { describe, expect, it } from 'vitest'
import { patterns } from '../../../core/engine/index.ts'
import { patternMarks, slanting } from '../../../renderer/canvas/pattern.ts'

const box = { left: 10, top: 20, width: 22, height: 27 }
const step = 4

function reach(values: readonly number[]): readonly [number, number] {
  return [Math.min(...values), Math.max(...values)]
}

describe.each(patterns)('the pattern %s', (pattern) => {
  const marks = patternMarks(pattern, box, step)

  it('stays in its box', () => {
    const xs = marks.lines.flatMap((line) => line.filter((_, index) => index % 2 === 0))
    const ys = marks.lines.flatMap((line) => line.filter((_, index) => index % 2 === 1))
    for (const { x, y, radius } of [...marks.dots, ...marks.rings]) {
      xs.push(x - radius, x + radius)
      ys.push(y - radius, y + radius)
    }
    if (pattern === 'plain') return expect(xs).toEqual([])
    const [left, right] = reach(xs)
    const [top, bottom] = reach(ys)
    expect(left).toBeGreaterThanOrEqual(10 - 1e-9)
    expect(right).toBeLessThanOrEqual(32 + 1e-9)
    expect(top).toBeGreaterThanOrEqual(20 - 1e-9)
    expect(bottom).toBeLessThanOrEqual(47 + 1e-9)
  })

  it('differs from every other one', () => {
    const others = patterns.filter((other) => other !== pattern)
    for (const other of others) expect(patternMarks(other, box, step), other).not.toEqual(marks)
  })
})

describe('hatching', () => {
  it('rises to the right at 45° from edge to edge of its box', () => {
    const lines = slanting(box, step)
    expect(lines).toHaveLength(12)
    for (const [x0, y0, x1, y1] of lines) {
      expect(x1! - x0!).toBeCloseTo(y0! - y1!, 9)
      expect(x0 === 10 || y0 === 47).toBe(true)
      expect(x1 === 32 || y1 === 20).toBe(true)
    }
  })
})
