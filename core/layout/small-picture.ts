/** A line of a small picture: what is metal is closed and filled, a gauge points at what it is about. */
export interface PictureLine {
  readonly role: 'metal' | 'edge' | 'axis' | 'gauge'
  /** x0, y0, x1, y1, … in the picture's own units. */
  readonly points: readonly number[]
  readonly closed: boolean
}

export type PictureLines = readonly PictureLine[]

/** A text of a small picture, such as a depth. */
export interface PictureText {
  readonly x: number
  /** The middle of its height. */
  readonly y: number
  readonly text: string
  readonly anchor: 'start' | 'middle' | 'end'
}

/** A small picture, 300 wide and 120 high. */
export interface SmallPicture {
  readonly width: number
  readonly height: number
  readonly lines: PictureLines
  readonly texts: readonly PictureText[]
}

export function smallPicture(lines: PictureLines, texts: readonly PictureText[] = []): SmallPicture {
  return { width: 300, height: 120, lines, texts }
}

export function metal(points: readonly number[]): PictureLine {
  return { role: 'metal', points, closed: true }
}
export function hollow(points: readonly number[]): PictureLine {
  return { role: 'edge', points, closed: true }
}
export function edge(points: readonly number[]): PictureLine {
  return { role: 'edge', points, closed: points.length > 4 }
}
export function axis(...points: readonly number[]): PictureLine {
  return { role: 'axis', points, closed: false }
}

/** Metal around a hole. */
export function pipe(outer: readonly number[], inner: readonly number[]): PictureLines {
  return [metal(outer), hollow(inner)]
}

export function box(x: number, y: number, w: number, h: number): readonly number[] {
  return [x, y, x + w, y, x + w, y + h, x, y + h]
}

/** Points on a circle from one angle to another, in radians clockwise from straight down; backwards where the second is less. */
export function arc(x: number, y: number, radius: number, from: number, to: number): readonly number[] {
  const steps = 48
  return Array.from({ length: steps + 1 }, (_, step) => {
    const angle = from + ((to - from) * step) / steps
    return [round(x - radius * Math.sin(angle)), round(y + radius * Math.cos(angle))]
  }).flat()
}

/** An arrow whose head is where the gauge goes. */
export function pointer(fromX: number, fromY: number, toX: number, toY: number): PictureLines {
  const length = Math.hypot(toX - fromX, toY - fromY)
  const [x, y] = [(toX - fromX) / length, (toY - fromY) / length]
  const barb = (side: number) => [round(toX - 9 * x + side * 5 * y), round(toY - 9 * y - side * 5 * x)]
  return [
    { role: 'gauge', points: [fromX, fromY, toX, toY], closed: false },
    { role: 'gauge', points: [...barb(1), toX, toY, ...barb(-1)], closed: false },
  ]
}

/** A dimension with an arrow at each end, from inside what is measured. */
export function span(fromX: number, fromY: number, toX: number, toY: number): PictureLines {
  const [x, y] = [(fromX + toX) / 2, (fromY + toY) / 2]
  return [...pointer(x, y, fromX, fromY), ...pointer(x, y, toX, toY)]
}

/** The same for what is too thin for its arrows: they point at it from outside. */
export function pinch(fromX: number, fromY: number, toX: number, toY: number): PictureLines {
  const length = Math.hypot(toX - fromX, toY - fromY)
  const [x, y] = [((toX - fromX) / length) * 30, ((toY - fromY) / length) * 30]
  return [...pointer(fromX - x, fromY - y, fromX, fromY), ...pointer(toX + x, toY + y, toX, toY)]
}

/** An arrow along a circle, its angles as those of `arc`. */
export function turn(x: number, y: number, radius: number, from: number, to: number): PictureLines {
  const points = arc(x, y, radius, from, to)
  const [beforeX = x, beforeY = y, endX = x, endY = y] = points.slice(-4)
  return [{ role: 'gauge', points, closed: false }, ...pointer(beforeX, beforeY, endX, endY)]
}

function round(value: number): number {
  return Math.round(value * 10) / 10
}
