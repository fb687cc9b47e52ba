import { done, refused, type Outcome } from '../problem/index.ts'
import { angleAmount, degrees, roundHalfAway, type Angle } from '../quantity/index.ts'

/**
 * What turns the fastener. A ratchet can be put back anywhere, a plain end only by whole flats, a bi-hexagon
 * by half ones.
 */
export const grips = ['hexagon', 'bi-hexagon', 'ratchet'] as const
export type Grip = (typeof grips)[number]

/** How far a handle must come back for its end to go on again, in degrees: a hexagon has six flats. */
const backBy: Readonly<Record<Exclude<Grip, 'ratchet'>, number>> = { hexagon: 60, 'bi-hexagon': 30 }

const flat = 60
/** Two turns. Common practice, no source: published passes turn by a full turn at most. */
const mostTurn = degrees(720)

/** One pull of the handle without taking it off. */
export interface Swing {
  readonly by: Angle
  /** Turned since the first swing began, this one included. */
  readonly turned: Angle
}

/**
 * Splits a turn into swings that the room allows, the last one being what is left. With a plain end each
 * swing but the last is as many whole flats (30° for a bi-hexagon) as there is room for, because only there
 * does it go on again.
 *
 * Refuses `turn-missing` at 0°, `turn-out-of-range` above 720°, `no-room` at 0°, `room-too-small` where a
 * plain end does not reach the next flat.
 */
export function swings(total: Angle, room: Angle, grip: Grip): Outcome<readonly Swing[]> {
  if (total <= 0) return refused('turn-missing', {})
  if (total > mostTurn)
    return refused('turn-out-of-range', { typed: angleAmount(total), most: angleAmount(mostTurn) })
  if (room <= 0) return refused('no-room', {})
  if (room >= total) return done([{ by: total, turned: total }])

  if (grip !== 'ratchet' && room < backBy[grip])
    return refused('room-too-small', {
      room: angleAmount(room),
      flat: angleAmount(degrees(backBy[grip])),
      grip,
    })
  const by = grip === 'ratchet' ? room : Math.floor(room / backBy[grip]) * backBy[grip]
  const found: Swing[] = []
  let turned = 0
  while (total - turned > room) {
    turned += by
    found.push({ by: degrees(by), turned: degrees(turned) })
  }
  return done([...found, { by: degrees(total - turned), turned: total }])
}

/** A turn as it can be seen on a hexagon: whole flats and a part of one, or flats in tenths. */
export type Flats =
  | { readonly whole: number; readonly part: { readonly count: number; readonly of: number } | null }
  | { readonly decimal: number }

/** 1 and 2/3 for 100°: in twelfths of a flat where that is exact, in lowest terms; else in tenths. */
export function inFlats(angle: Angle): Flats {
  const whole = Math.floor(angle / flat)
  const twelfths = (angle - whole * flat) / (flat / 12)
  if (!Number.isInteger(twelfths)) return { decimal: roundHalfAway(angle / flat, 1) }
  if (twelfths === 0) return { whole, part: null }
  const shared = [6, 4, 3, 2].find((each) => twelfths % each === 0) ?? 1
  return { whole, part: { count: twelfths / shared, of: 12 / shared } }
}
