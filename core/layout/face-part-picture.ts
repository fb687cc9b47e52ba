import type { FacePart, Fit } from '../engine/index.ts'
import {
  arc,
  axis,
  box,
  edge,
  hollow,
  metal,
  pointer,
  type PictureLine,
  type PictureLines,
  type PictureText,
} from './small-picture.ts'

/** What a picture of a part in a face says of it beside its form. */
export interface FacePartShown {
  /** How far below the face it stands, as a text; null where it is flush, or nothing is said of it. */
  readonly depth: string | null
  /** Which way its lip points, or the oil flows; null where it has neither. */
  readonly way: 'inwards' | 'outwards' | null
  /** How the case is split at the mains: the joint of a seal in two halves lies in the joint of the case. */
  readonly split: Fit['split']
}

/** Lines and texts of one picture, before it is framed. */
export interface Sketch {
  readonly lines: PictureLines
  readonly texts: readonly PictureText[]
}

type SketchPart = (shown: FacePartShown) => Sketch

const whole = 2 * Math.PI
/** The face is at the left of the wall, where the person stands; oil is at the right. */
const faceAt = 92

/**
 * Each part cut open, the face that it sits in at the left, where the person stands. A lip or a flow that is outwards is drawn
 * towards the person.
 */
export const facePartPictures: { readonly [Kind in FacePart['kind']]: SketchPart } = {
  seal: (shown) => {
    const section = sealSection(shown)
    return {
      lines: [
        metal(box(20, 90, 270, 26)),
        axis(6, 103, 296, 103),
        metal(box(faceAt, 4, 160, 22)),
        ...section.lines,
        ...oil(268, 74),
      ],
      texts: section.texts,
    }
  },
  'two-piece-seal': (shown) => {
    const section = sealSection(shown)
    const turned = (line: PictureLine) => (shown.split === 'left-right' ? onItsSide(line, 40, 60) : line)
    return {
      lines: [
        metal(box(150, 90, 140, 26)),
        axis(146, 103, 296, 103),
        ...[section].flatMap(({ lines }) => lines.map((line) => movedBy(line, 74))),
        metal(box(faceAt + 74, 4, 120, 22)),
        ...[
          metal([...arc(40, 57, 36, 1.62, 4.66), ...arc(40, 57, 22, 4.66, 1.62)]),
          metal([...arc(40, 63, 36, -1.52, 1.52), ...arc(40, 63, 22, 1.52, -1.52)]),
          ...[11, 69].map((x): PictureLine => ({
            role: 'gauge',
            points: arc(x, 60, 4, 0, whole),
            closed: true,
          })),
        ].map(turned),
      ],
      texts: section.texts.map((text) => ({ ...text, x: text.x + 74 })),
    }
  },
  plug: ({ depth }) => {
    const back = faceAt + (depth === null ? 0 : 24)
    return {
      lines: [
        metal(box(faceAt, 4, 150, 30)),
        metal(box(faceAt, 86, 150, 30)),
        metal([
          back,
          34,
          back + 52,
          34,
          back + 52,
          86,
          back,
          86,
          back,
          78,
          back + 44,
          78,
          back + 44,
          42,
          back,
          42,
        ]),
        ...pointer(20, 60, back + 40, 60),
        ...(depth === null ? [] : dimension(faceAt, back, 22)),
      ],
      texts: depth === null ? [] : [{ x: faceAt - 30, y: 22, text: depth, anchor: 'end' }],
    }
  },
  'check-valve': ({ way }) => {
    // Oil that flows into the face lifts the ball off its seat, which is at the left then.
    const turned = (line: PictureLine) => (way === 'outwards' ? mirrored(line, 150) : line)
    const spring = Array.from({ length: 9 }, (_, at) => [164 + at * 6, at % 2 === 0 ? 50 : 70]).flat()
    return {
      lines: [
        metal(box(70, 20, 160, 80)),
        hollow([70, 50, 110, 50, 122, 40, 230, 40, 230, 80, 122, 80, 110, 70, 70, 70]),
        edge(arc(136, 60, 16, 0, whole)),
        { role: 'edge', points: spring, closed: false } as const,
        ...pointer(6, 60, 104, 60),
      ].map(turned),
      texts: [],
    }
  },
  strainer: () => ({
    lines: [
      metal(box(50, 10, 200, 100)),
      hollow(box(74, 30, 152, 60)),
      ...[0, 1, 2, 3, 4, 5, 6].map((at) => edge([93 + at * 19, 30, 93 + at * 19, 90])),
      ...[0, 1, 2].map((at) => edge([74, 45 + at * 15, 226, 45 + at * 15])),
      ...[62, 238].flatMap((x) => [20, 100].map((y) => hollow(arc(x, y, 5, 0, whole)))),
    ],
    texts: [],
  }),
}

/** The seal's ring with its lip on the shaft, and how far it stands below the face. */
function sealSection({ depth, way }: FacePartShown): Sketch {
  const back = faceAt + (depth === null ? 0 : 24)
  const ring = [
    metal([
      ...[back, 26, back + 70, 26, back + 70, 38, back + 14, 38, back + 14, 56],
      ...[back + 58, 82, back + 50, 90, back, 66],
    ]),
    edge(arc(back + 50, 64, 6, 0, whole)),
  ]
  const lines = way === 'outwards' ? ring.map((line) => mirrored(line, back + 35)) : ring
  return {
    lines: [...lines, ...(depth === null ? [] : dimension(faceAt, back, 40))],
    texts: depth === null ? [] : [{ x: faceAt - 30, y: 40, text: depth, anchor: 'end' }],
  }
}

/** A short dimension line between two places, its arrows from outside. */
function dimension(from: number, to: number, y: number): PictureLines {
  const arrow = (tip: number, side: 1 | -1): PictureLines => [
    edge([tip + side * 26, y, tip, y]),
    { role: 'edge', points: [tip + side * 7, y - 4, tip, y, tip + side * 7, y + 4], closed: false },
  ]
  return [edge([to, y - 10, to, y + 10]), ...arrow(from, -1), ...arrow(to, 1)]
}

/** A drop, for the side on which the oil is. */
function oil(x: number, y: number): PictureLines {
  return [{ role: 'gauge', points: [x, y - 28, ...arc(x, y - 10, 8, -2.2, 2.2), x, y - 28], closed: false }]
}

function movedBy(line: PictureLine, by: number): PictureLine {
  return { ...line, points: line.points.map((value, at) => (at % 2 === 0 ? value + by : value)) }
}

/** A quarter of a turn round a point. */
function onItsSide(line: PictureLine, x: number, y: number): PictureLine {
  const { points } = line
  return {
    ...line,
    points: points.map((_, at) =>
      at % 2 === 0 ? x + y - (points[at + 1] ?? y) : y - x + (points[at - 1] ?? x),
    ),
  }
}

function mirrored(line: PictureLine, about: number): PictureLine {
  return { ...line, points: line.points.map((value, at) => (at % 2 === 0 ? 2 * about - value : value)) }
}
