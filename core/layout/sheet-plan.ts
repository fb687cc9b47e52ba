import { middleOf } from '../plane/index.ts'
import type { Sheet } from './facts.ts'
import type { Box } from './scene/scene.ts'

/** What stands round the case on the sheet, in px from each of its sides. */
export interface Margins {
  readonly left: number
  readonly top: number
  readonly right: number
  readonly bottom: number
}

/** How a face lies on its sheet. */
export interface SheetPlan {
  /** One pixel, in mm along the engine. */
  readonly px: number
  /** How many times larger the engine is drawn across than along. */
  readonly stretch: number
  /** The whole sheet, in mm. */
  readonly frame: Box
}

/** A long thin case may be stretched by no more: further, it would no longer be known for what it is. */
export const mostStretch = 1.8
/** Less than this is not worth that nothing can be measured across. */
const leastStretch = 1.08
/** What stands round the case takes no more of a side of the sheet than this. */
export const mostOfMargins = 0.8

/**
 * The case as large as it goes between what stands round it, in the middle of what is left. `body` is what it takes on the
 * sheet, in mm, not stretched; `overhang` what its symbols reach beyond that on every side, in px. `across` is the side of the
 * sheet along which a face may be stretched; null for one that may not.
 */
export function planOf(
  body: Box,
  sheet: Sheet,
  margins: Margins,
  overhang: number,
  across: 'width' | 'height' | null,
): SheetPlan {
  const { left, right } = shrunk(margins.left, margins.right, sheet.widthPx)
  const { left: top, right: bottom } = shrunk(margins.top, margins.bottom, sheet.heightPx)
  const free = {
    width: Math.max(sheet.widthPx - left - right - 2 * overhang, 1),
    height: Math.max(sheet.heightPx - top - bottom - 2 * overhang, 1),
  }
  const wide = body.width / free.width
  const high = body.height / free.height
  const px = Math.max(wide, high, 1e-6)
  const wanted = across === null ? 1 : px / Math.max(across === 'width' ? wide : high, 1e-9)
  const stretch = wanted < leastStretch ? 1 : Math.min(wanted, mostStretch)
  const middle = middleOf(body)
  // What is stretched keeps its middle at its place times the stretch.
  const x = middle.x * (across === 'width' ? stretch : 1)
  const y = middle.y * (across === 'height' ? stretch : 1)
  const frame = {
    left: x - (left + overhang + free.width / 2) * px,
    top: y - (top + overhang + free.height / 2) * px,
    width: sheet.widthPx * px,
    height: sheet.heightPx * px,
  }
  return { px, stretch, frame }
}

function shrunk(
  before: number,
  after: number,
  side: number,
): { readonly left: number; readonly right: number } {
  const share = Math.min(1, (side * mostOfMargins) / Math.max(before + after, 1))
  return { left: before * share, right: after * share }
}
