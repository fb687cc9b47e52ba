import {
  arc,
  axis,
  box,
  edge,
  hollow,
  metal,
  pinch,
  pipe,
  span,
  turn,
  type PictureLine,
  type PictureLines,
} from '../small-picture.ts'

const whole = 2 * Math.PI
const nose = 36
/** Where two bores, three mains and the axis of the crank lie. */
const [first, second, middle] = [104, 204, 62]
const mains = [54, 154, 254]

const circle = (x: number, y: number, radius: number) => hollow(arc(x, y, radius, 0, whole))
const bearing = (x: number, y = middle): PictureLine => metal(box(x - 8, y - 22, 16, 44))
/** From the nose to what lies at x. */
const fromNose = (x: number): PictureLines => [edge([x, middle, x, 118]), ...span(nose, 113, x, 113)]

/** A case from above, its nose at the left. */
function plan(parts: PictureLines, ...measured: readonly PictureLines[]): PictureLines {
  return [metal(box(nose, 18, 240, 88)), ...parts, axis(10, middle, 296, middle), ...measured.flat()]
}
const bores: PictureLines = [circle(first, middle, 30), circle(second, middle, 30)]
const ofMains: PictureLines = mains.map((x) => bearing(x))
const ofRods: PictureLines = [bearing(first), bearing(second)]
const balance = 84

/** What is said of each bearing of a kind, by the field. */
function bearings(
  kind: string,
  parts: PictureLines,
  x: number,
  y = middle,
): Readonly<Record<string, () => PictureLines>> {
  const half = y === middle ? 22 : 12
  return {
    [`case.${kind}.at`]: () => plan(parts, fromNose(x)),
    [`case.${kind}.width`]: () => plan(parts, pinch(x - 8, y, x + 8, y)),
    [`case.${kind}.diameter`]: () => plan(parts, span(x, y - half, x, y + half)),
  }
}

/** Pictures of what is said of the case and the crank. */
export const ofCase: Readonly<Record<string, () => PictureLines>> = {
  'case.bore': () => plan(bores, span(first - 30, middle, first + 30, middle)),
  'case.pitch': () =>
    plan(bores, [
      edge([first, middle, first, 118]),
      edge([second, middle, second, 118]),
      ...span(first, 113, second, 113),
    ]),
  'case.firstBoreAt': () => plan(bores, fromNose(first)),
  'case.bankOffset': () =>
    plan(
      [circle(first, 42, 20), circle(first + 40, 82, 20)],
      [
        edge([first, 42, first, 118]),
        edge([first + 40, 82, first + 40, 118]),
        ...span(first, 113, first + 40, 113),
      ],
    ),
  'case.bankAngle': () => [
    circle(150, 100, 16),
    edge([150, 100, 90, 8]),
    edge([150, 100, 210, 8]),
    ...turn(150, 100, 72, Math.PI - 0.52, Math.PI + 0.52),
  ],
  ...bearings('saddles', ofMains, mains[1]!),
  ...bearings('rods', ofRods, first),
  ...bearings('balanceBearings', [metal(box(146, balance - 12, 16, 24))], 154, balance),
  'case.balanceBearings.across': () =>
    plan([metal(box(146, balance - 12, 16, 24))], span(176, middle, 176, balance)),
  'case.faces.gasket.width': () => [
    ...pipe(box(40, 14, 220, 92), box(76, 40, 148, 40)),
    ...span(40, 60, 76, 60),
  ],
  'crank.throwRadius': () => [
    circle(110, 60, 24),
    circle(190, 60, 18),
    axis(70, 60, 230, 60),
    ...span(110, 60, 190, 60),
  ],
  'crank.throws.angle': () => [
    circle(150, 60, 16),
    ...[Math.PI, Math.PI + 2.1].map((at) => {
      const [x = 0, y = 0] = arc(150, 60, 44, at, at)
      return circle(x, y, 12)
    }),
    axis(150, 2, 150, 118),
    ...turn(150, 60, 28, Math.PI, Math.PI + 2.1),
  ],
}

/** A journal in its shells, in the housing, from the nose. */
function section(...measured: readonly PictureLines[]): PictureLines {
  return [
    metal(box(86, 2, 128, 116)),
    circle(150, 60, 52),
    ...pipe(arc(150, 60, 52, 0, whole), arc(150, 60, 42, 0, whole)),
    metal(arc(150, 60, 34, 0, whole)),
    edge([86, 60, 108, 60]),
    edge([192, 60, 214, 60]),
    ...measured.flat(),
  ]
}
const wall = () => section(pinch(192, 60, 202, 60))
/** Crank webs at both sides of a saddle with its washers. */
function endFloat(...measured: readonly PictureLines[]): PictureLines {
  return [
    metal(box(96, 46, 108, 22)),
    metal(box(60, 8, 36, 80)),
    metal(box(204, 8, 36, 80)),
    metal(box(112, 34, 80, 80)),
    metal(box(104, 34, 8, 44)),
    metal(box(192, 34, 8, 44)),
    axis(30, 57, 270, 57),
    ...measured.flat(),
  ]
}

/** Pictures of what is said of bearings and of the crank's float. */
export const ofBearings: Readonly<Record<string, () => PictureLines>> = {
  'fits.clearance': () => section(pinch(184, 60, 192, 60)),
  'fits.housing.marks.band': () => section(span(98, 60, 202, 60)),
  'fits.journal.marks.band': () => section(span(116, 60, 184, 60)),
  'fits.grades.wall': wall,
  'fits.wornWall': wall,
  'fits.undersizes.wornWall': wall,
  'fits.undersizes.walls.wall': wall,
  'fits.undersizes.undersize': () => section([circle(150, 60, 28), ...pinch(150 + 28, 60, 184, 60)]),
  endFloat: () => endFloat(pinch(96, 22, 104, 22)),
  'endFloat.washers.thickness': () => endFloat(pinch(104, 88, 112, 88)),
}
