import type { MeasuredKind } from '../engine/index.ts'
import {
  arc,
  axis,
  box,
  edge,
  hollow,
  metal,
  pipe,
  pointer,
  smallPicture,
  type PictureLines,
  type SmallPicture,
} from './small-picture.ts'

/** The picture of each thing that is measured: the part as it lies in the hand, and the gauge in the gap. */
export function measurePicture(what: MeasuredKind): SmallPicture {
  return smallPicture(pictures[what]())
}

const pictures: { readonly [What in MeasuredKind]: () => PictureLines } = {
  'ring-gap': () => {
    const gap = 0.16
    return [
      ...pipe(arc(150, 62, 56, 0, 2 * Math.PI), arc(150, 62, 48, 0, 2 * Math.PI)),
      metal([...arc(150, 62, 46, gap, 2 * Math.PI - gap), ...arc(150, 62, 37, 2 * Math.PI - gap, gap)]),
      ...pointer(150, 40, 150, 98),
      axis(150, 0, 150, 120),
    ]
  },
  'groove-clearance': () => [
    metal(box(40, 18, 130, 84)),
    hollow(box(118, 46, 52, 26)),
    metal(box(126, 52, 66, 20)),
    ...pointer(262, 49, 172, 49),
  ],
  'piston-clearance': () => [
    metal(box(30, 8, 34, 104)),
    metal(box(236, 8, 34, 104)),
    metal(box(64, 28, 162, 62)),
    edge(box(136, 50, 18, 18)),
    axis(150, 4, 150, 116),
    ...pointer(231, 112, 231, 74),
  ],
  'rod-side': () => [
    metal(box(40, 10, 44, 100)),
    metal(box(216, 10, 44, 100)),
    metal(box(84, 44, 132, 30)),
    metal(box(90, 22, 112, 76)),
    axis(20, 59, 280, 59),
    ...pointer(209, 4, 209, 40),
  ],
  'run-out': () => [
    metal([40, 112, 66, 76, 92, 112]),
    metal([208, 112, 234, 76, 260, 112]),
    metal(box(24, 54, 252, 22)),
    axis(10, 65, 290, 65),
    edge(arc(150, 22, 18, 0, 2 * Math.PI)),
    ...pointer(150, 22, 150, 53),
  ],
  'deck-height': () => [
    metal(box(30, 30, 56, 84)),
    metal(box(214, 30, 56, 84)),
    metal(box(90, 46, 120, 68)),
    edge([20, 30, 280, 30]),
    ...pointer(150, 6, 150, 45),
  ],
  other: () => [
    metal(box(40, 76, 220, 34)),
    edge(arc(150, 26, 20, 0, 2 * Math.PI)),
    ...pointer(150, 26, 150, 75),
  ],
}
