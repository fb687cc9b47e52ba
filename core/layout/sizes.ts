import type { Sheet } from './facts.ts'
import { grown, middleOf, type Point } from './box.ts'
import type { Box } from './scene.ts'

/** How large things are drawn that have no size of their own on the engine. All in mm on the sheet. */
export interface Sizes {
  /** One pixel at zoom 1. */
  readonly px: number
  /** Capitals of a fastener's number, where there is room for its disc. */
  readonly number: number
  /** Capitals of names: of saddles, of the nose. */
  readonly name: number
  /** Capitals of what is said beside the names. */
  readonly quiet: number
  /** Capitals of the value at the next fastener. */
  readonly value: number
}

/**
 * The sheet's frame and the sizes on it, so that the engine with what must stand round it fills the sheet. The frame has
 * the sheet's own proportions.
 */
export function fitted(engine: Box, sheet: Sheet, axisAcrossSheet: boolean): { frame: Box; sizes: Sizes } {
  const capital = sheet.capitalPx
  const name = clamp(capital * 0.8, 9, 16)
  // From two metres the number is already as large as the value must be.
  const value = Math.min(capital * 1.35, Math.max(capital, 30))
  // Room for NOSE and DRIVE END beyond the ends of the axis, and for a value on the other two sides.
  const ends = 5 * name + 38
  const sides = value * 2.2 + 30
  const beside = axisAcrossSheet ? ends : sides
  const over = axisAcrossSheet ? sides : ends
  const px = Math.max(
    engine.width / room(sheet.widthPx, beside),
    engine.height / room(sheet.heightPx, over),
    1e-6,
  )
  const middle: Point = middleOf(engine)
  const width = sheet.widthPx * px
  const height = sheet.heightPx * px
  return {
    frame: { left: middle.x - width / 2, top: middle.y - height / 2, width, height },
    sizes: {
      px,
      number: capital * px,
      name: name * px,
      quiet: clamp(capital * 0.64, 8, 13) * px,
      value: value * px,
    },
  }
}

/** What is left of a side of the sheet between two margins; no margin takes more than a quarter of it. */
function room(side: number, margin: number): number {
  return Math.max(side - 2 * Math.min(margin, side / 4), 1)
}

function clamp(value: number, least: number, most: number): number {
  return Math.min(Math.max(value, least), most)
}

/** Where labels may stand: the frame less a narrow edge. */
export function writable(frame: Box, sizes: Sizes): Box {
  return grown(frame, -6 * sizes.px)
}
