import type { FacePart, PlacedPicture } from '../engine/index.ts'
import { facePartPictures, type FacePartShown } from './face-part-picture.ts'
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
  type PictureLine,
  type PictureLines,
  type SmallPicture,
} from './small-picture.ts'

const noDetails: FacePartShown = { depth: null, way: null, split: 'upper-lower' }

/** The small picture of work at one place, as the person sees it who does it; the nose of the engine is at the left. */
export function placedPicture(what: PlacedPicture, shown: FacePartShown = noDetails): SmallPicture {
  if (!isOfPart(what)) return smallPicture(pictures[what]())
  const { lines, texts } = facePartPictures[partsShown[what]](shown)
  return smallPicture(lines, texts)
}

/** The pictures of parts that sit in a face, which say more of them than their form. */
const partsShown = {
  'seal-lip': 'seal',
  'two-piece-seal': 'two-piece-seal',
  'core-plug': 'plug',
  'check-valve': 'check-valve',
  strainer: 'strainer',
} as const satisfies Partial<Record<PlacedPicture, FacePart['kind']>>
type PartPicture = keyof typeof partsShown

function isOfPart(what: PlacedPicture): what is PartPicture {
  return what in partsShown
}

const circle = (x: number, y: number, radius: number) => arc(x, y, radius, 0, 2 * Math.PI)
/** A drop that hangs above the point. */
const drop = (x: number, y: number): PictureLine => ({
  role: 'gauge',
  points: [x, y - 34, ...arc(x, y - 12, 10, -2.2, 2.2), x, y - 34],
  closed: false,
})
const stroke = (...points: readonly number[]): PictureLine => ({ role: 'gauge', points, closed: false })
const open = (...points: readonly number[]): PictureLine => ({ role: 'edge', points, closed: false })
const pictures: { readonly [What in Exclude<PlacedPicture, PartPicture>]: () => PictureLines } = {
  oil: () => [...saddle(), drop(150, 80)],
  dry: () => [...saddle(), drop(150, 80), stroke(124, 84, 176, 42)],
  'oil-way': () => [
    metal(box(40, 34, 220, 52)),
    hollow(box(40, 52, 220, 16)),
    ...pointer(6, 60, 36, 60),
    ...pointer(262, 60, 294, 60),
  ],
  face: () => [
    metal(box(30, 70, 240, 34)),
    hollow(circle(60, 87, 7)),
    hollow(circle(240, 87, 7)),
    edge([110, 52, 190, 52, 196, 70, 104, 70]),
    ...pointer(120, 34, 60, 34),
    ...pointer(180, 34, 240, 34),
  ],
  plug: () => [
    metal(box(40, 24, 130, 72)),
    hollow(box(40, 50, 130, 20)),
    metal(box(150, 48, 44, 24)),
    edge(box(194, 40, 16, 40)),
    ...pointer(288, 60, 214, 60),
  ],
  'piston-front': () => [
    metal(circle(160, 60, 54)),
    axis(96, 60, 224, 60),
    ...pointer(190, 60, 124, 60),
    ...pointer(76, 60, 20, 60),
  ],
  'rod-side': () => [
    ...pipe(circle(110, 60, 46), circle(110, 60, 28)),
    metal([150, 46, 262, 52, 262, 68, 150, 74]),
    edge(circle(186, 60, 5)),
    ...pointer(186, 112, 186, 72),
  ],
  'cap-numbers': () => [
    metal([60, 10, 240, 10, 240, 58, 196, 58, ...arc(150, 58, 40, -Math.PI / 2, -1.5 * Math.PI), 60, 58]),
    metal([60, 62, 104, 62, ...arc(150, 62, 40, Math.PI / 2, -Math.PI / 2), 240, 62, 240, 110, 60, 110]),
    edge(box(64, 22, 26, 32)),
    edge(box(64, 68, 26, 32)),
    stroke(72, 28, 72, 48),
    stroke(80, 28, 80, 48),
    stroke(72, 74, 72, 94),
    stroke(80, 74, 80, 94),
  ],
  'washer-grooves': () => [
    metal(box(40, 16, 66, 88)),
    metal(box(112, 26, 14, 68)),
    hollow(box(121, 40, 5, 10)),
    hollow(box(121, 70, 5, 10)),
    metal(box(150, 8, 34, 104)),
    metal(box(184, 40, 80, 40)),
    axis(20, 60, 284, 60),
    ...pointer(138, 116, 127, 84),
  ],
  'circlip-gap': () => [
    ...pipe(circle(150, 60, 54), circle(150, 60, 40)),
    hollow(box(142, 98, 16, 10)),
    edge([...arc(150, 60, 38, 3.5, 9.07), ...arc(150, 60, 32, 9.07, 3.5)]),
    ...pointer(150, 60, 150, 30),
  ],
  // Cut along the pin: bosses left and right, the circlip in its groove outside the end of the pin.
  'circlip-seated': () => [
    metal(box(56, 20, 60, 80)),
    metal(box(184, 20, 60, 80)),
    metal(box(80, 44, 140, 32)),
    hollow(box(68, 38, 8, 44)),
    edge(arc(72, 42, 5, 0, 2 * Math.PI)),
    edge(arc(72, 78, 5, 0, 2 * Math.PI)),
    axis(40, 60, 260, 60),
    ...pointer(72, 4, 72, 34),
    ...pointer(72, 116, 72, 86),
  ],
  // From the nose: the middle of the piston as an axis, the pin beside it.
  'pin-offset': () => [
    metal([86, 14, 214, 14, 214, 106, 176, 106, 176, 84, 124, 84, 124, 106, 86, 106]),
    edge([86, 28, 214, 28]),
    edge([86, 38, 214, 38]),
    ...pipe(circle(162, 66, 15), circle(162, 66, 8)),
    axis(150, 2, 150, 118),
    ...pointer(262, 66, 180, 66),
  ],
  'piston-heated': () => [
    metal(box(70, 96, 160, 14)),
    metal([100, 26, 200, 26, 200, 94, 172, 94, 172, 76, 128, 76, 128, 94, 100, 94]),
    ...pipe(circle(150, 58, 14), circle(150, 58, 9)),
    stroke(84, 92, 78, 82, 84, 72),
    stroke(218, 92, 212, 82, 218, 72),
    ...pointer(284, 58, 168, 58),
  ],
  'timing-marks': () => [
    ...pipe(circle(98, 60, 50), circle(98, 60, 10)),
    ...pipe(circle(202, 60, 50), circle(202, 60, 10)),
    axis(20, 60, 280, 60),
    stroke(132, 60, 146, 60),
    stroke(154, 60, 168, 60),
    ...pointer(150, 6, 150, 50),
  ],
  // A chain that comes from the right around its wheel: its bright link lies on the dot.
  'chain-link': () => [
    ...pipe(circle(150, 60, 42), circle(150, 60, 10)),
    open(290, 6, 150, 6, ...arc(150, 60, 54, Math.PI, 0), 290, 114),
    open(290, 14, 150, 14, ...arc(150, 60, 46, Math.PI, 0), 290, 106),
    ...[0, 0.5, 1, 2.14, 2.64, 3.14].map((at) =>
      open(...arc(150, 60, 46, at, at).slice(0, 2), ...arc(150, 60, 54, at, at).slice(0, 2)),
    ),
    ...[186, 222, 258].flatMap((x) => [open(x, 6, x, 14), open(x, 106, x, 114)]),
    { role: 'gauge', points: [...arc(150, 60, 54, 1.3, 1.84), ...arc(150, 60, 46, 1.84, 1.3)], closed: true },
    stroke(...circle(122, 60, 4)),
    ...pointer(30, 60, 90, 60),
  ],
  // A wheel beside what stands still, line by line.
  'mark-at-line': () => [
    metal(box(40, 44, 62, 32)),
    ...pipe(circle(166, 60, 50), circle(166, 60, 10)),
    stroke(84, 60, 102, 60),
    stroke(118, 60, 136, 60),
    ...pointer(110, 4, 110, 48),
  ],
  'wheel-on-key': () => [
    ...pipe(circle(150, 60, 54), circle(150, 60, 24)),
    metal(circle(150, 60, 24)),
    metal(box(143, 29, 14, 16)),
    ...pointer(250, 12, 160, 34),
  ],
  'ring-heated': () => [
    metal(box(70, 96, 160, 14)),
    metal(box(94, 58, 112, 38)),
    hollow(box(126, 58, 48, 38)),
    stroke(84, 92, 78, 82, 84, 72),
    stroke(218, 92, 212, 82, 218, 72),
    ...pointer(150, 4, 150, 50),
  ],
  // The outer ring of a bearing in its bore, the ring around it half in the groove of the case.
  'ring-in-groove': () => [
    metal(box(40, 64, 220, 46)),
    hollow(box(138, 64, 24, 14)),
    metal(box(84, 20, 132, 44)),
    metal(box(142, 54, 16, 22)),
    ...pointer(270, 40, 166, 66),
  ],
  'oil-jet': () => [
    metal([96, 8, 204, 8, 204, 52, 190, 52, 190, 24, 110, 24, 110, 52, 96, 52]),
    metal(box(56, 92, 70, 18)),
    open(126, 101, 150, 101, 150, 80),
    ...pointer(150, 80, 150, 28),
  ],
  'flat-side': () => [
    metal(arc(150, 54, 50, 0.7, 2 * Math.PI - 0.7)),
    hollow(circle(150, 54, 22)),
    ...pointer(150, 118, 150, 96),
  ],
  'drive-slot': () => [
    metal(circle(150, 60, 50)),
    hollow(box(110, 44, 80, 12)),
    axis(20, 60, 280, 60),
    ...pointer(250, 8, 178, 44),
  ],
  // Webs and pin from the side: the second web goes onto the pin.
  'crank-pressed': () => [
    metal(box(70, 14, 32, 92)),
    metal(box(102, 46, 108, 28)),
    metal(box(184, 14, 32, 92)),
    axis(50, 60, 236, 60),
    ...pointer(290, 60, 222, 60),
  ],
  writing: () => [
    metal(box(60, 22, 180, 76)),
    edge([78, 44, 214, 44]),
    edge([78, 60, 190, 60]),
    edge([78, 76, 206, 76]),
  ],
}

/** The lower half of a bore with its shell. */
function saddle(): PictureLines {
  const [left, right] = [Math.PI / 2, -Math.PI / 2]
  return [
    metal([40, 30, 88, 30, ...arc(150, 30, 62, left, right), 260, 30, 260, 116, 40, 116]),
    metal([88, 30, ...arc(150, 30, 62, left, right), 212, 30, ...arc(150, 30, 54, right, left)]),
    axis(150, 4, 150, 118),
  ]
}
