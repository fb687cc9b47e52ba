import { measurePicture } from '../measure-picture.ts'
import {
  arc,
  axis,
  box,
  edge,
  hollow,
  metal,
  pinch,
  pointer,
  span,
  turn,
  type PictureLine,
  type PictureLines,
} from '../small-picture.ts'

const whole = 2 * Math.PI
const hexagon = (x: number, y: number): PictureLine =>
  hollow(
    [0, 1, 2, 3, 4, 5].flatMap((corner) =>
      arc(x, y, 24, (corner * Math.PI) / 3, (corner * Math.PI) / 3).slice(0, 2),
    ),
  )

const wrench = (): PictureLines => [
  metal(box(70, 50, 190, 20)),
  metal(arc(70, 60, 36, 0, whole)),
  hexagon(70, 60),
  ...pointer(250, 4, 250, 46),
]
const angle = (): PictureLines => [
  metal(arc(90, 70, 40, 0, whole)),
  hexagon(90, 70),
  edge([90, 70, 90, 2]),
  ...turn(90, 70, 56, Math.PI, Math.PI * 1.5),
]
const longer = (): PictureLines => [
  metal(box(40, 30, 26, 52)),
  metal(box(66, 44, 180, 24)),
  axis(20, 56, 280, 56),
  edge([40, 56, 40, 112]),
  edge([246, 56, 246, 112]),
  ...span(40, 104, 246, 104),
]

/** Pictures of what a pass wants, by its kind. */
export const ofPasses: Readonly<Record<string, () => PictureLines>> = {
  'procedures.passes.torque': wrench,
  'procedures.passes.recheck': wrench,
  'procedures.passes.angle': angle,
  'procedures.passes.stretch': longer,
  'procedures.passes.tighten-to-stretch': longer,
  'procedures.passes.tighten-to-stretch.torque': wrench,
  'procedures.passes.seat.gap': () => [
    metal(box(40, 14, 220, 40)),
    metal(box(40, 66, 220, 40)),
    ...pinch(150, 54, 150, 66),
  ],
  'procedures.passes.action.turning': () => [
    metal(arc(150, 60, 34, 0, whole)),
    metal(arc(196, 60, 16, 0, whole)),
    axis(90, 60, 230, 60),
    ...turn(150, 60, 54, Math.PI, Math.PI * 2),
  ],
  'procedures.passes.action.reading': () => measurePicture('other').lines,
}
