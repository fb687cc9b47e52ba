import type { Scene, Shape } from './scene.ts'

/**
 * The next scene with every shape that is equal to the previous scene's shape of the same id replaced by that very
 * object, so that a renderer can skip it by its reference.
 */
export function keepUnchanged(previous: Scene | null, next: Scene): Scene {
  if (previous === null) return next
  const before = new Map(previous.shapes.map((shape) => [shape.id, shape]))
  const shapes = next.shapes.map((shape) => {
    const old = before.get(shape.id)
    return old !== undefined && same(old, shape) ? old : shape
  })
  return { ...next, shapes }
}

function same(a: Shape, b: Shape): boolean {
  const one = Object.entries(a)
  const other = b as unknown as Readonly<Record<string, unknown>>
  return (
    one.length === Object.keys(b).length &&
    one.every(([key, value]) => {
      const twin = other[key]
      return Array.isArray(value) ? Array.isArray(twin) && sameNumbers(value, twin) : value === twin
    })
  )
}

function sameNumbers(a: readonly number[], b: readonly number[]): boolean {
  return a.length === b.length && a.every((value, index) => value === b[index])
}
