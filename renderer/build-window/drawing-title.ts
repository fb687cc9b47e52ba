import { capitalShare } from '../../core/layout/index.ts'
import type { Scene, TextShape } from '../../core/layout/index.ts'

/** The lines of a drawing's title, and where they stand on its board, in px. */
export interface PlacedTitle {
  readonly lines: readonly string[]
  readonly left: number
  readonly top: number
  readonly size: number
  readonly leading: number
}

const isTitle = (shape: Scene['shapes'][number]): shape is TextShape =>
  shape.kind === 'text' && /^title(\/\d+)?$/.test(shape.id)

/** Null for a drawing without one. `width` is that of the board, in px. */
export function titleOf({ shapes, frame }: Scene, width: number): PlacedTitle | null {
  const lines = shapes.filter(isTitle)
  const [first] = lines
  if (!first) return null
  const px = width / frame.width
  return {
    lines: lines.map(({ text }) => text),
    left: (first.x - frame.left) * px,
    top: (first.y - frame.top - first.capital * 0.81) * px,
    size: (first.capital * px) / capitalShare,
    leading: first.capital * 1.62 * px,
  }
}

/** What is left for the canvas. */
export function withoutTitle(scene: Scene): Scene {
  return { ...scene, shapes: scene.shapes.filter((shape) => !isTitle(shape)) }
}
