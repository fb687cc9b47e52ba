import {
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

/** A bolt through a part and into another, cut open, its head at the left. */
function bolt(...measured: readonly PictureLines[]): PictureLines {
  const crests = [0, 1, 2, 3, 4, 5]
  return [
    metal(box(60, 14, 70, 30)),
    metal(box(60, 76, 70, 30)),
    metal(box(130, 14, 118, 92)),
    hollow(box(130, 48, 98, 24)),
    metal(box(34, 34, 26, 52)),
    metal(box(60, 52, 70, 16)),
    metal(box(130, 48, 88, 24)),
    ...[50, 70]
      .map((y) =>
        edge([142, y, ...crests.flatMap((at) => [148 + at * 12, y === 50 ? 56 : 64, 154 + at * 12, y])]),
      )
      .map((line): PictureLine => ({ ...line, closed: false })),
    axis(6, 60, 294, 60),
    ...measured.flat(),
  ]
}

const diameter: PictureLines = [
  edge([218, 48, 276, 48]),
  edge([218, 72, 276, 72]),
  ...pinch(268, 48, 268, 72),
]
const pitch: PictureLines = [edge([166, 22, 166, 50]), edge([178, 22, 178, 50]), ...pinch(166, 28, 178, 28)]

/** Pictures of what is said of a group of fasteners. */
export const ofFasteners: Readonly<Record<string, () => PictureLines>> = {
  'fastenerGroups.thread': () => bolt(diameter, pitch),
  'fastenerGroups.thread.diameter': () => bolt(diameter),
  'fastenerGroups.thread.pitch': () => bolt(pitch),
  'fastenerGroups.grip': () => bolt(span(60, 114, 130, 114)),
  'fastenerGroups.acrossFlats': () => bolt(span(22, 34, 22, 86)),
  'fastenerGroups.shank': () => bolt(pinch(96, 52, 96, 68)),
  'fastenerGroups.prevailing': () => bolt(turn(47, 60, 40, 2.6, 0.5)),
  'fastenerGroups.headFace.outer': () => bolt(span(52, 34, 52, 86)),
  'fastenerGroups.headFace.hole': () => bolt(span(72, 44, 72, 76)),
  'fastenerGroups.workingLoad.force': () => bolt(pointer(96, 28, 40, 28), pointer(190, 28, 280, 28)),
  'fastenerGroups.layers.thickness': () => bolt(span(60, 7, 130, 7)),
}
