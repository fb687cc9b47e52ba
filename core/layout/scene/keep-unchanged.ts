import type { Scene, SceneRow, Shape } from './scene.ts'

/**
 * The next scene with every shape and every row that is equal to the previous scene's of the same id replaced by that very
 * object, so that a renderer can skip it by its reference.
 */
export function keepUnchanged(previous: Scene | null, next: Scene): Scene {
  if (previous === null) return next
  const before = new Map(previous.shapes.map((shape) => [shape.id, shape]))
  const shapes = next.shapes.map((shape) => {
    const old = before.get(shape.id)
    return old !== undefined && same(old, shape) ? old : shape
  })
  return { ...next, shapes, rows: rowsKept(previous.rows, next.rows) }
}

/** The list itself too, where nothing in it is new. */
function rowsKept(previous: readonly SceneRow[], next: readonly SceneRow[]): readonly SceneRow[] {
  const before = new Map(previous.map((row) => [row.about, row]))
  const rows = next.map((row) => {
    const old = before.get(row.about)
    return old !== undefined && old.text === row.text && old.state === row.state ? old : row
  })
  const isSame = rows.length === previous.length && rows.every((row, index) => row === previous[index])
  return isSame ? previous : rows
}

/** Plain loops: a scene of a thousand fasteners has thousands of shapes, and all are compared at every pull. */
function same(a: Shape, b: Shape): boolean {
  const one = a as unknown as Readonly<Record<string, unknown>>
  const other = b as unknown as Readonly<Record<string, unknown>>
  let keys = 0
  for (const key in one) {
    const value = one[key]
    const twin = other[key]
    if (value !== twin && !(Array.isArray(value) && Array.isArray(twin) && sameNumbers(value, twin)))
      return false
    keys += 1
  }
  for (const _ in other) keys -= 1
  return keys === 0
}

function sameNumbers(a: readonly number[], b: readonly number[]): boolean {
  return a.length === b.length && a.every((value, index) => value === b[index])
}
