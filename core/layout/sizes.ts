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
  /** Capitals of what is next: of its number, where there is room for its disc, and of its value. */
  readonly next: number
  /** The least capitals of what is next that can be read from where the sheet is read. */
  readonly asked: number
}

/** Larger numbers would leave a full case no room; from further away only what is next has to be read. */
const mostOfNumber = 18

/** The sizes on a sheet on which one pixel is so many mm. */
export function sizesOn({ capitalPx }: Sheet, px: number): Sizes {
  const number = Math.min(capitalPx, mostOfNumber)
  return {
    px,
    number: number * px,
    name: clamp(number * 0.8, 9, 15) * px,
    quiet: clamp(number * 0.64, 8, 13) * px,
    next: Math.max(capitalPx, Math.min(number * 1.5, 30)) * px,
    asked: capitalPx * px,
  }
}

/**
 * The sheet's frame and the sizes on it, so that the engine with what must stand round it fills the sheet. The frame has
 * the sheet's own proportions. `ends` is what stands beyond the two ends of the drawn face, in px: of the crank axis, or
 * from side to side where one looks along it.
 */
export function fitted(
  engine: Box,
  sheet: Sheet,
  axisAcrossSheet: boolean,
  ends: { readonly width: number; readonly height: number },
): { frame: Box; sizes: Sizes } {
  // On the other two sides there is room for what is next, in its frame.
  const sides = sizesOn(sheet, 1).next * 1.8 + 18
  const beside = axisAcrossSheet ? ends.width + 16 : sides
  const over = axisAcrossSheet ? sides : Math.max(ends.height + 16, sides)
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
    sizes: sizesOn(sheet, px),
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
