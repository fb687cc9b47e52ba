import { spanOf, type Point } from '../../plane/index.ts'

const rounds = 80
/** A symbol is not moved further than so many of its own radii: it would no longer be where its fastener is. */
const furthest = 1.3

/**
 * Places moved apart until no two symbols of these radii meet, each as little as that takes; null where some would come too
 * far from their own. All pairs push at once, so that a mirrored face is spread to its mirror.
 */
export function spread(
  places: readonly Point[],
  radii: readonly number[],
  gap: number,
): readonly Point[] | null {
  const moved = places.map(({ x, y }) => ({ x, y }))
  for (let round = 0; round < rounds; round += 1) {
    const push = moved.map(() => ({ x: 0, y: 0 }))
    let met = false
    for (let one = 0; one < moved.length; one += 1)
      for (let other = one + 1; other < moved.length; other += 1) {
        const least = radii[one]! + radii[other]! + gap
        const dx = moved[other]!.x - moved[one]!.x
        if (dx > least || dx < -least) continue
        const dy = moved[other]!.y - moved[one]!.y
        const apart = spanOf(dx, dy)
        if (apart >= least - 1e-6) continue
        met = true
        // What stands at one and the same place is parted along the engine.
        const [x, y] = apart < 1e-9 ? [1, 0] : [dx / apart, dy / apart]
        const by = (least - apart) * 0.52
        push[one]!.x -= x * by
        push[one]!.y -= y * by
        push[other]!.x += x * by
        push[other]!.y += y * by
      }
    if (!met) return near(places, moved, radii) ? moved : null
    push.forEach(({ x, y }, index) => {
      moved[index]!.x += x
      moved[index]!.y += y
    })
  }
  return null
}

function near(places: readonly Point[], moved: readonly Point[], radii: readonly number[]): boolean {
  return places.every(({ x, y }, index) => {
    const at = moved[index]!
    return spanOf(at.x - x, at.y - y) <= radii[index]! * furthest
  })
}
