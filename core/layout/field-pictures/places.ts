import { measurePicture } from '../measure-picture.ts'
import {
  arc,
  axis,
  box,
  edge,
  hollow,
  metal,
  pinch,
  span,
  turn,
  type PictureLines,
} from '../small-picture.ts'

const whole = 2 * Math.PI

/** From the nose of a case and from the axis of the crank. */
const place = (measured: PictureLines): PictureLines => [
  metal(box(36, 12, 240, 96)),
  hollow(arc(196, 32, 12, 0, whole)),
  axis(10, 74, 296, 74),
  ...measured,
]
const along = () => place(span(36, 32, 196, 32))
const across = () => place(span(196, 74, 196, 32))
const round = (): PictureLines => [hollow(arc(150, 60, 40, 0, whole)), ...span(110, 60, 190, 60)]
const sized = (measured: PictureLines): PictureLines => [hollow(box(90, 30, 120, 60)), ...measured]
const sizeAlong = () => sized(span(90, 60, 210, 60))
const sizeAcross = () => sized(span(150, 30, 150, 90))
const gapAt = (): PictureLines => [
  metal(arc(150, 60, 54, 0, whole)),
  hollow(arc(150, 60, 44, Math.PI * 1.5 + 0.1, Math.PI * 3.5 - 0.1)),
  edge([150, 60, 150, 2]),
  ...turn(150, 60, 30, Math.PI, Math.PI * 1.5),
]

/** Pictures of where things lie on a face, and how large they are there. */
export const ofPlaces: Readonly<Record<string, () => PictureLines>> = {
  ...Object.fromEntries(
    [
      'fasteners.at',
      'case.dowels.at',
      'case.oilPassages.at',
      'case.faceParts.at',
      'beads.keepOut.at',
      'beads.path',
      'case.faces.outline',
    ].flatMap((path) => [
      [`${path}.0`, along],
      [`${path}.1`, across],
    ]),
  ),
  'case.dowels.diameter': round,
  'case.faceParts.diameter': round,
  ...Object.fromEntries(
    ['case.oilPassages.size', 'case.faceParts.size', 'beads.keepOut.size'].flatMap((path) => [
      [`${path}.0`, sizeAlong],
      [`${path}.1`, sizeAcross],
    ]),
  ),
  'beads.width': () => [metal(box(20, 4, 260, 112)), metal(box(40, 50, 220, 20)), ...pinch(150, 50, 150, 70)],
}

/** Pictures of what is said of rings and of the room beside a rod. */
export const ofClearances: Readonly<Record<string, () => PictureLines>> = {
  rodSideClearance: () => measurePicture('rod-side').lines,
  'ringSets.rings.endGap': () => measurePicture('ring-gap').lines,
  'ringSets.rings.grooveClearance': () => measurePicture('groove-clearance').lines,
  'ringSets.rings.gapAt': gapAt,
  'ringSets.clock': gapAt,
}
