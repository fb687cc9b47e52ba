import { z } from 'zod'

const rectangle = z.strictObject({ x: z.int(), y: z.int(), width: z.int(), height: z.int() })
export type Rectangle = z.output<typeof rectangle>

/** How a window was left: where it is when it is neither maximized nor on the full screen, and which of them it was. */
export const windowPlace = z.strictObject({
  bounds: rectangle,
  state: z.enum(['normal', 'maximized', 'full-screen']),
})
export type WindowPlace = z.output<typeof windowPlace>

/** In px of the screen, as large as the drawing and the panel beside it want at first, and as small as they go. */
const usual = { width: 1280, height: 840 }
export const least = { width: 720, height: 520 }

/** So much of the old place must lie on a screen for the window to be found and moved, in px. */
const grip = 120

/**
 * Where the window opens: as it was left, moved and made smaller until it lies on a screen that is there now. At first, or
 * where its screen is gone, in the middle of the main screen, and maximized where that has no room for the usual size.
 *
 * @param screens Work areas of the screens, the main one first; never empty.
 */
export function placeFor(
  left: WindowPlace | null,
  screens: readonly [Rectangle, ...Rectangle[]],
): WindowPlace {
  const [main] = screens
  if (left !== null) {
    const screen = screens
      .map((area) => ({ area, shared: shared(left.bounds, area) }))
      .reduce((best, each) =>
        each.shared.width * each.shared.height > best.shared.width * best.shared.height ? each : best,
      )
    if (screen.shared.width >= grip && screen.shared.height >= grip)
      return { bounds: within(left.bounds, screen.area), state: left.state }
  }
  const size = left === null ? usual : left.bounds
  const isCramped = main.width < usual.width || main.height < usual.height
  const state = left?.state ?? (isCramped ? 'maximized' : 'normal')
  return { bounds: within({ ...middle(size, main), width: size.width, height: size.height }, main), state }
}

function middle(size: { width: number; height: number }, area: Rectangle): { x: number; y: number } {
  return {
    x: area.x + Math.round((area.width - size.width) / 2),
    y: area.y + Math.round((area.height - size.height) / 2),
  }
}

/** No larger than the area unless that is smaller than the least size, and with every edge in it that can be. */
function within(bounds: Rectangle, area: Rectangle): Rectangle {
  const width = Math.max(least.width, Math.min(bounds.width, area.width))
  const height = Math.max(least.height, Math.min(bounds.height, area.height))
  return {
    width,
    height,
    x: Math.max(area.x, Math.min(bounds.x, area.x + area.width - width)),
    y: Math.max(area.y, Math.min(bounds.y, area.y + area.height - height)),
  }
}

function shared(one: Rectangle, other: Rectangle): { width: number; height: number } {
  const width = Math.min(one.x + one.width, other.x + other.width) - Math.max(one.x, other.x)
  const height = Math.min(one.y + one.height, other.y + other.height) - Math.max(one.y, other.y)
  return { width: Math.max(0, width), height: Math.max(0, height) }
}
