import { angleBetween, thrustSides, type RingSet, type SetGap } from '../engine/index.ts'
import type { Words } from '../words/index.ts'

/** A line of the clock. `gap` leads from the gap of a ring to its number; `thrust` lies where the piston bears on its bore. */
export interface ClockLine {
  readonly role: 'piston' | 'ring' | 'pin' | 'gap' | 'thrust' | 'nose'
  /** x0, y0, x1, y1, … in the clock's own units. */
  readonly points: readonly number[]
  readonly closed: boolean
  /** The ring it belongs to; null for the piston. */
  readonly ring: string | null
}

export interface ClockText {
  readonly text: string
  readonly x: number
  readonly y: number
  readonly anchor: 'start' | 'middle' | 'end'
  /** Whether it is the number of a ring, which is to be read from afar. */
  readonly isNumber: boolean
}

/** A piston from above, its nose side at the left, with the gap of each ring; the top ring is the outermost, as one looks down on it. */
export interface RingClock {
  readonly size: number
  readonly lines: readonly ClockLine[]
  readonly texts: readonly ClockText[]
}

const size = 300
const middle = size / 2
/** Radii, from the crown's edge to the numbers outside it. */
const at = { crown: 112, outermost: 98, innermost: 44, numbers: 132 } as const
/** Half of a gap as it is drawn, and half of the arc that marks a thrust side. In degrees. */
const half = { gap: 6, thrust: 25 } as const
/** Gaps that stand as near as this share a place for their numbers. In degrees. */
const together = 10

interface StandingGap {
  readonly id: string
  readonly degrees: number
  readonly number: number
  readonly radius: number
}

export function ringClock({ rings: words }: Words, set: RingSet, gaps: readonly SetGap[]): RingClock {
  const step = Math.min(14, (at.outermost - at.innermost) / Math.max(1, set.rings.length - 1))
  const standing = set.rings.flatMap(({ id }, index): readonly StandingGap[] => {
    const gap = gaps.find(({ ring }) => ring === id)
    return gap === undefined
      ? []
      : [{ id, degrees: gap.degrees, number: index + 1, radius: at.outermost - step * index }]
  })
  const isThrust = (side: 'left' | 'right') =>
    set.clock.thrustSide === undefined || set.clock.thrustSide === side
  return {
    size,
    lines: [
      line('piston', arc(at.crown, 0, 360), true),
      line('pin', [middle - at.crown, middle, middle + at.crown, middle]),
      ...[-1, 1].map((side) => line('pin', pinEnd(side), true)),
      ...thrustSides.map((side) => line('thrust', arc(at.crown, side - half.thrust, side + half.thrust))),
      line('nose', [64, 20, 14, 20]),
      line('nose', [24, 14, 14, 20, 24, 26]),
      ...standing.flatMap(({ id, degrees, radius }) => [
        line('ring', arc(radius, degrees + half.gap, degrees + 360 - half.gap), false, id),
        ...[-half.gap, half.gap].map((end) =>
          line('gap', [...polar(radius - 5, degrees + end), ...polar(radius + 5, degrees + end)], false, id),
        ),
        line('gap', [...polar(radius, degrees), ...polar(at.numbers - 12, degrees)], false, id),
      ]),
    ],
    texts: [
      { text: words.nose, x: 14, y: 42, anchor: 'start', isNumber: false },
      { text: words.pin, x: middle, y: middle - 5, anchor: 'middle', isNumber: false },
      // Looking at the crown and towards the nose at the left, the right hand is at the top.
      {
        text: words.above({ thrust: isThrust('right') }),
        x: size - 6,
        y: 18,
        anchor: 'end',
        isNumber: false,
      },
      {
        text: words.below({ thrust: isThrust('left') }),
        x: size - 6,
        y: size - 8,
        anchor: 'end',
        isNumber: false,
      },
      ...numbersOf(standing),
    ],
  }
}

function pinEnd(side: number): readonly number[] {
  const [inner, outer] = [middle + side * 20, middle + side * at.innermost * 0.8]
  return [inner, middle - 12, outer, middle - 12, outer, middle + 12, inner, middle + 12]
}

function line(
  role: ClockLine['role'],
  points: readonly number[],
  closed = false,
  ring: string | null = null,
): ClockLine {
  return { role, points, closed, ring }
}

function numbersOf(all: readonly StandingGap[]): readonly ClockText[] {
  const groups: StandingGap[][] = []
  for (const each of all) {
    const near = groups.find(([first]) => angleBetween(first!.degrees, each.degrees) <= together)
    if (near === undefined) groups.push([each])
    else near.push(each)
  }
  return groups.map((group): ClockText => {
    const [x = 0, y = 0] = polar(at.numbers, group[0]!.degrees)
    return {
      text: group.map(({ number }) => number).join(' '),
      x,
      y: y + 6,
      anchor: 'middle',
      isNumber: true,
    }
  })
}

/** The point at a radius and an angle clockwise from the left. */
function polar(radius: number, angle: number): readonly number[] {
  const turn = (angle * Math.PI) / 180
  return [round(middle - radius * Math.cos(turn)), round(middle - radius * Math.sin(turn))]
}

function arc(radius: number, from: number, to: number): readonly number[] {
  const steps = Math.max(8, Math.ceil((to - from) / 5))
  return Array.from({ length: steps + 1 }, (_, each) =>
    polar(radius, from + ((to - from) * each) / steps),
  ).flat()
}

function round(value: number): number {
  return Math.round(value * 10) / 10
}
