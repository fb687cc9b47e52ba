import type { Place } from '../../../core/tightening/index.ts'

/**
 * Columns 100 mm apart from the nose on, in rows a, b, c … at the given heights: `b3` is the second row's
 * third.
 */
export function grid(columns: number, rows: readonly number[]): readonly Place[] {
  return rows.flatMap((y, row) =>
    Array.from({ length: columns }, (_, column) => ({
      id: `${'abcdef'[row]}${column + 1}`,
      x: column * 100,
      y,
    })),
  )
}

/** Evenly on a circle, `1` at the top and then clockwise. */
export function circle(count: number): readonly Place[] {
  return Array.from({ length: count }, (_, index) => {
    const angle = (2 * Math.PI * index) / count
    return { id: String(index + 1), x: 60 * Math.sin(angle), y: 60 * Math.cos(angle) }
  })
}

/** Every third first: another order of the same, always the same one. */
export function shuffled<Item>(items: readonly Item[]): readonly Item[] {
  return [0, 1, 2].flatMap((rest) => items.filter((_, index) => index % 3 === rest))
}
