import { degrees, type Angle } from '../quantity/index.ts'
import type { Ring, RingSet } from './rings.ts'

/** Where the gap of a ring stands: clockwise from the nose side of the piston, looking at its crown. */
export interface SetGap {
  readonly ring: string
  /** 0 up to 360. */
  readonly degrees: number
}

/** Something that is wrong with where gaps stand. `apart` is what was found, `least` what is wanted. */
export type ClockFault =
  | {
      readonly kind: 'in-line'
      readonly rings: readonly [Ring, Ring]
      readonly apart: Angle
      readonly least: Angle
    }
  | {
      readonly kind: 'over-pin' | 'on-thrust'
      readonly ring: Ring
      readonly apart: Angle
      readonly least: Angle
    }

/** The two ends of the pin, which lies along the crank, and the two sides that bear on the bore. */
const pinEnds = [0, 180] as const
export const thrustSides = [90, 270] as const

/** The lesser of the two angles between directions, 0 to 180. */
export function angleBetween(one: number, other: number): Angle {
  const turn = (((one - other) % 360) + 360) % 360
  return degrees(Math.min(turn, 360 - turn))
}

/**
 * Rings between whose gaps nothing seals: those that follow each other from the crown down, and the two on either side of an expander,
 * which lets gas and oil through.
 */
export function neighbours({ rings }: RingSet): readonly (readonly [Ring, Ring])[] {
  const follow = (list: readonly Ring[]) => list.slice(1).map((ring, index) => [list[index]!, ring] as const)
  const sealing = rings.filter(({ kind }) => kind !== 'expander')
  const pairs = follow(rings)
  const across = follow(sealing).filter(
    ([one, other]) => !pairs.some(([first, second]) => first === one && second === other),
  )
  return [...pairs, ...across]
}

/** The gaps as the spec wants them. */
export function gapsBySpec({ rings }: RingSet): readonly SetGap[] {
  return rings.map(({ id, gapAt }) => ({ ring: id, degrees: gapAt }))
}

/** Everything that is wrong with gaps that stand so: exactly at a least angle is right. A ring without a gap there is left out. */
export function clockFaults(set: RingSet, gaps: readonly SetGap[]): readonly ClockFault[] {
  const { apart: least, offPin, offThrust } = set.clock
  const at = new Map(gaps.map(({ ring, degrees: angle }) => [ring, angle]))
  const near = (
    kind: 'over-pin' | 'on-thrust',
    places: readonly number[],
    wanted: Angle | undefined,
  ): readonly ClockFault[] =>
    set.rings.flatMap((ring) => {
      const angle = at.get(ring.id)
      if (wanted === undefined || angle === undefined) return []
      const apart = degrees(Math.min(...places.map((place) => angleBetween(angle, place))))
      return apart < wanted ? [{ kind, ring, apart, least: wanted }] : []
    })
  const inLine = neighbours(set).flatMap((rings): readonly ClockFault[] => {
    const [one, other] = rings.map(({ id }) => at.get(id))
    if (one === undefined || other === undefined) return []
    const apart = angleBetween(one, other)
    return apart < least ? [{ kind: 'in-line', rings, apart, least }] : []
  })
  return [...inLine, ...near('over-pin', pinEnds, offPin), ...near('on-thrust', thrustSides, offThrust)]
}
